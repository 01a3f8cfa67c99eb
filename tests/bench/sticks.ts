/**
 * `npm run bench -- sticks [SECONDS]`: cutting plans beside a general solver on the same jobs in the same run, SECONDS
 * (10) for each; then a battery of random tray jobs beside the plan made by hand.
 */

import { chanceOf } from '../../src/trade/sticks/chance.ts';
import { faultsOf } from '../../src/trade/sticks/check.ts';
import { byHand } from '../../src/trade/sticks/firstFit.ts';
import { jobOf } from '../../src/trade/sticks/job.ts';
import { rankOf } from '../../src/trade/sticks/plan.ts';
import { sticks } from '../../src/trade/sticks/sticks.ts';
import type { SticksGiven, SticksResult } from '../../src/trade/sticks/types.ts';
import { byArcFlow } from '../trade/sticks/arcFlow.ts';
import { published, tray, UNIT, units } from '../trade/sticks/jobs.ts';

const SECONDS = Number(process.argv[3] ?? 10);
const MOST_ARCS = 60_000;

function ours(given: SticksGiven): { result: SticksResult; ms: number } {
  const began = performance.now();
  const { result } = sticks(given, { stop: () => performance.now() - began > SECONDS * 1000 });
  const ms = performance.now() - began;
  const faults = faultsOf(given, result);
  if (faults.length > 0) throw new Error(faults.join('; '));
  return { result, ms };
}

const median = (numbers: readonly number[], at = 0.5): number =>
  [...numbers].sort((a, b) => a - b)[Math.min(numbers.length - 1, Math.floor(at * numbers.length))] ??
  Number.NaN;

async function beside(
  title: string,
  jobs: readonly { id: string; given: SticksGiven; best: number }[],
): Promise<void> {
  const count = { proven: 0, best: 0, flow: 0 };
  const ratios: number[] = [];
  for (const { given } of jobs.slice(0, 4)) ours(given); // warms up
  for (const { id, given, best } of jobs) {
    const { result, ms } = ours(given);
    const flow = await byArcFlow(jobOf(given), SECONDS, MOST_ARCS);
    const stock = Math.round((result.newStockIn ?? 0) * 8128);
    if (result.proven) count.proven++;
    if (stock === best) count.best++;
    if (flow.stock !== null) count.flow++;
    if (flow.stock !== null && flow.stock !== best)
      console.log(`${id}: the general solver says ${flow.stock}`);
    if (result.proven && flow.stock !== null) ratios.push(ms / flow.ms);
    console.log(
      `${id}: ${result.proven ? 'proven' : 'not proven'}${stock === best ? '' : `, ${(stock - best) / best} above the best`}, ${result.provenLevels} aims, ${ms.toFixed(1)} ms, ${(ms / flow.ms).toFixed(3)} × HiGHS (${flow.stock === null ? 'not solved, ' : ''}${flow.ms.toFixed(0)} ms, ${flow.arcs} arcs)`,
    );
  }
  console.log(
    `${title}: ${count.proven} of ${jobs.length} proven, ${count.best} at the best known; HiGHS ${count.flow}; median ${median(ratios).toFixed(3)} × HiGHS where both are proven\n`,
  );
}

const FAMILIES: readonly (readonly [name: string, from: number, to: number])[] = [
  ['mixed', 8 * 16, 220 * 16],
  ['short', 6 * 16, 60 * 16],
  ['medium', 40 * 16, 130 * 16],
  ['long', 70 * 16, 200 * 16],
];
const PARTS = [2, 3, 4, 5, 6, 8, 10, 12];

/** A job of about so many pieces; the family tells how long they are. */
function randomJob(family: string, pieces: number, chance: () => number): SticksGiven {
  const int = (from: number, to: number): number => from + Math.floor(chance() * (to - from + 1));
  const kinds = Math.min(30, Math.max(3, Math.round(pieces / int(2, 8))));
  const lengths: number[] = [];
  if (family === 'no waste') {
    // Sticks cut up without a remainder: the best plan wastes nothing.
    for (let left = pieces; left > 0; ) {
      const parts = int(2, 5);
      const cuts = Array.from({ length: parts - 1 }, () => int(1, 119) * 32).sort((a, b) => a - b);
      const ends = [0, ...cuts, 3842];
      const own = ends.slice(1).map((end, i) => end - (ends[i] as number) - 2);
      if (own.some((l) => l < 96)) continue;
      const times = Math.min(int(1, 6), Math.ceil(left / parts));
      for (let t = 0; t < times; t++) lengths.push(...own);
      left -= times * parts;
      if (new Set(lengths).size > 26) break;
    }
  } else {
    const [, from = 0, to = 0] = FAMILIES.find(([name]) => name === family) ?? [];
    const own = Array.from({ length: kinds }, () =>
      family === 'divisors'
        ? Math.floor((3842 - 2 * 12) / (PARTS[int(0, PARTS.length - 1)] ?? 2)) - int(0, 3)
        : int(from, to),
    );
    for (let i = 0; i < pieces; i++) lengths.push(own[i < kinds ? i : int(0, kinds - 1)] as number);
  }
  return {
    stock: [{ length: units(3840) }],
    pieces: lengths.map((l) => ({ length: units(l), count: 1 })),
    kerf: units(2),
  };
}

function battery(each: number): void {
  const families = [...FAMILIES.map(([name]) => name), 'divisors', 'no waste'];
  let [all, proven] = [0, 0];
  for (const pieces of [8, 20, 50, 100, 200, 400]) {
    const times: number[] = [];
    const hands: number[] = [];
    const own = { proven: 0, worse: 0, saved: 0 };
    for (const [f, family] of families.entries()) {
      const chance = chanceOf(pieces * 100 + f);
      for (let k = 0; k < each; k++) {
        const given = randomJob(family, pieces, chance);
        const began = performance.now();
        const hand = byHand(jobOf(given));
        hands.push(performance.now() - began);
        const { result, ms } = ours(given);
        times.push(ms);
        const byHandIn = hand === null ? Number.POSITIVE_INFINITY : rankOf(hand, jobOf(given))[0] / 8128;
        if (result.proven) own.proven++;
        if ((result.newStockIn ?? 0) > byHandIn) own.worse++;
        own.saved += Math.round((byHandIn - (result.newStockIn ?? 0)) / 240);
      }
    }
    all += times.length;
    proven += own.proven;
    console.log(
      `${pieces} pieces, ${times.length} jobs: ${own.proven} proven, ${own.saved} sticks fewer than by hand, ${own.worse} times more; median ${median(times).toFixed(1)} ms, 95 % ${median(times, 0.95).toFixed(1)} ms, most ${Math.max(...times).toFixed(0)} ms, ${(median(times) / median(hands)).toFixed(0)} × by hand`,
    );
  }
  console.log(`random tray jobs: ${proven} of ${all} proven, ${((100 * proven) / all).toFixed(2)} %`);
}

await beside(
  'tray jobs',
  tray.map(({ id, given, newStock }) => ({ id, given, best: newStock * UNIT })),
);
battery(20);
await beside(
  'published instances',
  published.map(({ id, given, bins }) => ({ id, given, best: bins * (given.stock[0]?.length ?? 0) })),
);
