/**
 * Re-checks a whole answer from what was given alone: every bar, every piece, the five numbers, the bound. It shares no
 * code with the search, and counts in ticks where the search counts in units.
 */
import { fromInches, TICKS_PER_INCH, type Ticks } from '../length.ts';
import type { Certificate, CutLength, SticksGiven, SticksResult } from './types.ts';

const close = (a: number | null, b: number): boolean => a !== null && Math.abs(a - b) <= 1e-6;
const toTicks = (inches: number): number => Math.round(inches * TICKS_PER_INCH);
const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);

/** What is wrong with an answer, one line each; empty when it holds. */
export function faultsOf(given: SticksGiven, result: SticksResult): readonly string[] {
  if (!result.feasible)
    return [
      ...(result.lengths.length === 0 && result.certificate === null && !result.proven
        ? []
        : ['no plan, yet parts of one']),
      ...(result.why === undefined || result.why.length === 0 ? ['no plan, and no reason'] : []),
    ];
  return [
    ...barFaults(given, result.lengths),
    ...pieceFaults(given, result.lengths),
    ...numberFaults(given, result),
    ...proofFaults(given, result),
  ];
}

function barFaults(given: SticksGiven, lengths: readonly CutLength[]): string[] {
  const faults: string[] = [];
  const used = new Map<string, number>();
  for (const [i, { fromIn, offcut, pieces, leftIn }] of lengths.entries()) {
    const bar = toTicks(fromIn);
    const cut = pieces.map((p) => toTicks(p.in));
    if (cut.length === 0) faults.push(`bar ${i} is opened for nothing`);
    if (sum(cut) + (cut.length - 1) * given.kerf > bar) faults.push(`bar ${i} is cut beyond its end`);
    const left = Math.max(0, bar - sum(cut) - cut.length * given.kerf);
    if (!close(leftIn, left / TICKS_PER_INCH))
      faults.push(`bar ${i} leaves ${left / TICKS_PER_INCH}, not ${leftIn}`);
    const name = `${offcut ? 'off-cut' : 'stock'} ${bar}`;
    used.set(name, (used.get(name) ?? 0) + 1);
  }
  const there = new Map<string, number>();
  const add = (name: string, count: number) => there.set(name, (there.get(name) ?? 0) + count);
  for (const { length, count } of given.stock) add(`stock ${length}`, count ?? Number.POSITIVE_INFINITY);
  for (const { length, count } of given.offcuts ?? []) add(`off-cut ${length}`, count);
  for (const [name, count] of used)
    if (count > (there.get(name) ?? 0))
      faults.push(`${count} bars of ${name}, where there are ${there.get(name) ?? 0}`);
  return faults;
}

function pieceFaults(given: SticksGiven, lengths: readonly CutLength[]): string[] {
  const open = new Map<string, number>();
  const add = (length: number, mark: string | undefined, n: number) => {
    const name = JSON.stringify([length, mark ?? null]);
    open.set(name, (open.get(name) ?? 0) + n);
  };
  for (const { length, mark, count } of given.pieces) add(length, mark, count);
  for (const { pieces } of lengths) for (const piece of pieces) add(toTicks(piece.in), piece.mark, -1);
  return [...open].filter(([, n]) => n !== 0).map(([name, n]) => `${n} of piece ${name} too few`);
}

function numberFaults(given: SticksGiven, result: SticksResult): string[] {
  const { lengths } = result;
  const stock = lengths.filter((l) => !l.offcut);
  const reusable = (given.minReusable ?? fromInches(12)) / TICKS_PER_INCH;
  const patterns = new Map(
    lengths.map(({ pieces }) => {
      const cut = pieces.map((p) => toTicks(p.in)).sort((a, b) => a - b);
      return [cut.join(), new Set(cut).size];
    }),
  );
  const longest = Math.max(0, ...lengths.map((l) => l.leftIn).filter((left) => left >= reusable - 1e-9));
  const wanted: readonly [keyof SticksResult, number][] = [
    ['lengthsUsed', stock.length],
    ['newStockIn', sum(stock.map((l) => l.fromIn))],
    ['cutFromOffcutsIn', sum(lengths.filter((l) => l.offcut).flatMap((l) => l.pieces.map((p) => p.in)))],
    ['longestReusableIn', longest],
    ['setups', patterns.size],
    ['stopSettings', sum([...patterns.values()])],
  ];
  return wanted
    .filter(([name, n]) => !close(result[name] as number | null, n))
    .map(([name, n]) => `${name} is ${n}`);
}

function proofFaults(
  given: SticksGiven,
  { proven, provenLevels, certificate, newStockIn, lowerBoundIn }: SticksResult,
) {
  const faults: string[] = [];
  if (proven !== (certificate !== null)) faults.push('proven and certificate do not go together');
  if (proven !== provenLevels >= 1) faults.push('proven and provenLevels do not go together');
  if (![0, 1, 2, 3, 4, 5].includes(provenLevels)) faults.push(`${provenLevels} levels`);
  if ((lowerBoundIn ?? 0) > (newStockIn ?? 0) + 1e-6) faults.push('the bound is above the plan');
  if (proven && !close(lowerBoundIn, newStockIn ?? -1)) faults.push('proven, yet the bound is not met');
  if (certificate === null) return faults;
  const claimed =
    'U' in certificate
      ? certificate.bound * ((given.stock[0]?.length ?? 0) / TICKS_PER_INCH)
      : certificate.bound;
  if (!close(claimed, newStockIn ?? -1)) faults.push('the certificate is not for this plan');
  return [...faults, ...certificateFaults(given, certificate)];
}

/** Whether whole weights prove what they say, from the pieces and bars that were given. */
function certificateFaults(given: SticksGiven, certificate: Certificate): string[] {
  const grain = Math.round(certificate.grid * TICKS_PER_INCH);
  const up = (length: number) => Math.ceil(length / grain);
  const kerf = up(given.kerf);
  const bars = [
    ...given.stock.map((s) => ({ ...s, offcut: false })),
    ...(given.offcuts ?? []).map((o) => ({ ...o, offcut: true })),
  ];
  const longest = Math.floor(Math.max(...bars.map((b) => b.length)) / grain);
  const u = new Map(certificate.weights.map((w) => [w.length, w.u]));
  const faults: string[] = [];
  for (const number of certificate.weights.flatMap((w) => [w.length, w.u]))
    if (!Number.isSafeInteger(number) || number < 0) faults.push(`${number} is no whole number from 0`);
  const wanted = new Map<number, number>();
  for (const { length, count } of given.pieces) {
    const units = Math.min(up(length), longest);
    wanted.set(units, (wanted.get(units) ?? 0) + count);
    if (!u.has(units)) faults.push(`no weight for a piece of ${units} units`);
  }
  const pieces = [...wanted].map(([length, count]) => ({
    size: length + kerf,
    count,
    u: u.get(length) ?? 0,
  }));
  const weight = sum(pieces.map((p) => p.count * p.u));
  const heaviest = heaviestFilling(pieces, longest + kerf);
  // Of two bars that differ by less than a unit the shorter one counts as a unit shorter.
  const tallest = Math.max(...bars.map((b) => b.length));
  const unitsOf = (length: number): number => {
    const units = Math.floor(length / grain);
    return length < tallest && units === longest ? units - 1 : units;
  };
  const holds = (length: number): number => heaviest[unitsOf(length) + kerf] ?? 0;
  if ('U' in certificate) {
    const most = holds(given.stock[0]?.length ?? 0);
    if (most > certificate.U) faults.push(`a bar holds ${most}, more than ${certificate.U}`);
    if (Math.ceil(weight / certificate.U) < certificate.bound) faults.push('the weights prove fewer bars');
    return faults;
  }
  for (const { length } of bars) {
    const units = unitsOf(length);
    const named = certificate.perStock.find((p) => p.length === units);
    if (named === undefined || holds(length) > named.U)
      faults.push(`a bar of ${units} units holds ${holds(length)}`);
  }
  const most = (length: number) => certificate.perStock.find((p) => p.length === unitsOf(length))?.U ?? 0;
  const free = sum(bars.filter((b) => b.offcut).map((b) => (b.count ?? 0) * most(b.length)));
  const least = leastStock(given.stock, most, weight - free);
  if (least < certificate.bound - 1e-6) faults.push(`the weights prove ${least} in`);
  return faults;
}

interface Heavy {
  readonly size: number;
  readonly count: number;
  readonly u: number;
}

/** Greatest weight of pieces in every room, piece by piece. */
function heaviestFilling(pieces: readonly Heavy[], room: number): readonly number[] {
  let heaviest = new Array<number>(room + 1).fill(0);
  for (const { size, count, u } of pieces) {
    const before = heaviest;
    heaviest = before.map((best, c) => {
      let most = best;
      for (let n = 1; n <= count && n * size <= c; n++)
        most = Math.max(most, (before[c - n * size] as number) + n * u);
      return most;
    });
  }
  return heaviest;
}

/** The least new stock, in inches, whose bars can weigh so much; length after length. */
function leastStock(stock: SticksGiven['stock'], most: (length: Ticks) => number, weight: number): number {
  const [first, ...rest] = stock;
  if (weight <= 0) return 0;
  if (first === undefined) return Number.POSITIVE_INFINITY;
  const U = most(first.length);
  const all = U === 0 ? 0 : Math.min(first.count ?? Number.POSITIVE_INFINITY, Math.ceil(weight / U));
  let least = Number.POSITIVE_INFINITY;
  for (let n = 0; n <= all; n++)
    least = Math.min(least, (n * first.length) / TICKS_PER_INCH + leastStock(rest, most, weight - n * U));
  return least;
}
