/** How a cutting plan is said: the answer, and how sure it is. Pure. */
import { formatLength, fromInches, type Ticks } from '../../trade/length.ts';
import type { SticksGiven, SticksResult } from '../../trade/sticks/types.ts';
import { type Measure, tape } from '../calculators/measure.ts';
import { line, type ResultRow } from '../calculators/sum.ts';
import type { Tell } from '../speak.ts';
import { countOf } from './fields.ts';

type Counted = 'stick' | 'newStick' | 'remnant' | 'piece';
const counted = (what: Counted, count: number, tell: Tell): string =>
  tell(`sticksSheet.${what}-${manyOf(count)}`, { count });
const manyOf = (count: number): 'one' | 'many' => (count === 1 ? 'one' : 'many');

/** `7 sticks for 26 pieces`; `6 new sticks and 2 remnants for 26 pieces`. */
export function answerOf(result: SticksResult, given: SticksGiven, looking: boolean, tell: Tell): string {
  const pieces = counted('piece', countOf(given), tell);
  if (!result.feasible) return tell(looking ? 'sticksSheet.shortSoFar' : 'sticksSheet.short', { pieces });
  const fresh = result.lengthsUsed ?? 0;
  const old = result.lengths.length - fresh;
  const from =
    old === 0
      ? counted('stick', fresh, tell)
      : fresh === 0
        ? counted('remnant', old, tell)
        : tell('sticksSheet.both', {
            sticks: counted('newStick', fresh, tell),
            remnants: counted('remnant', old, tell),
          });
  return tell('sticksSheet.answer', { from, pieces });
}

/** That it is proven and what cannot be done with less, or the bound and the gap to it; nothing where there is no plan. */
export function proofOf(result: SticksResult, given: SticksGiven, tell: Tell): string | undefined {
  const { feasible, proven, lengthsUsed, newStockIn, lowerBoundIn } = result;
  if (!feasible || lengthsUsed === null || newStockIn === null || lowerBoundIn === null) return undefined;
  const kinds = new Set(given.stock.map(({ length }) => length));
  const [only] = kinds;
  const alike = kinds.size === 1 ? only : undefined;
  const onRack = (given.offcuts?.length ?? 0) > 0;
  const stick = onRack ? 'newStick' : 'stick';
  if (proven) {
    if (newStockIn === 0) return tell('sticksSheet.provenNone');
    if (alike === undefined) return tell('sticksSheet.provenLength', { length: text(newStockIn) });
    if (lengthsUsed === 1) return tell('sticksSheet.provenOne');
    return tell(onRack ? 'sticksSheet.provenWithRack' : 'sticksSheet.provenFewer', {
      sticks: counted(stick, lengthsUsed - 1, tell),
    });
  }
  if (alike === undefined)
    return tell('sticksSheet.bestLength', {
      taken: text(newStockIn),
      least: text(lowerBoundIn),
      gap: text(newStockIn - lowerBoundIn),
    });
  const least = leastSticks(lowerBoundIn, alike);
  return tell('sticksSheet.bestCount', {
    least: counted(stick, least, tell),
    gap: counted('stick', lengthsUsed - least, tell),
  });
}

const text = (inch: number): string => formatLength(fromInches(inch), 64);
const leastSticks = (inch: number, stick: Ticks): number => Math.ceil(fromInches(inch) / stick);

/** What the plan comes to, beside its answer. */
export function rowsOf(result: SticksResult): readonly ResultRow[] {
  const { newStockIn, cutFromOffcutsIn, longestReusableIn, setups, stopSettings } = result;
  const length = (inch: number): Measure => tape(inch, 64);
  return [
    { label: line('sticksSheet.stock'), value: length(newStockIn ?? 0) },
    ...(cutFromOffcutsIn ? [{ label: line('sticksSheet.fromRack'), value: length(cutFromOffcutsIn) }] : []),
    ...(longestReusableIn ? [{ label: line('sticksSheet.longest'), value: length(longestReusableIn) }] : []),
    { label: line('sticksSheet.setups'), value: String(setups ?? 0) },
    { label: line('sticksSheet.stops'), value: String(stopSettings ?? 0) },
  ];
}
