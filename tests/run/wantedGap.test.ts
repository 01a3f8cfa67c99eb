/** One gap for a run and for the calculator: NEMA VE 2-2013, gap setting (from memory): it falls straight from cold to hot. */
import { expect, test } from 'vitest';
import { wantedGap } from '../../src/run/wantedGap.ts';
import { expansion } from '../../src/trade/expansion.ts';
import { gapAt } from '../../src/trade/gapAt.ts';
import { inches, ticks } from '../../src/trade/length.ts';
import { tables as trade } from '../trade/tables.ts';

test.each([
  // low, high, now, gap of 1 in; the ends of the range are in it, with a hair for what decimals lose
  [0, 100, 0, 1],
  [0, 100, 100, 0],
  [0, 100, 25, 0.75],
  [-20, 100, 40, 0.5],
  [0, 0.3, 0.1 + 0.2, 0],
  [0, 100, 100.001, null],
  [0, 100, -0.001, null],
  [50, 50, 50, null],
])('%d to %d °F, now %d: %s in', (lowF, highF, nowF, gap) => {
  const wanted = wantedGap({ lowF, highF, nowF }, ticks(8128));
  expect(wanted === null ? null : inches(wanted)).toBe(gap);
  const { gapIn } = expansion({ metal: 'steel', lowF, highF, installF: nowF }, trade.expansion).result;
  expect(gapIn).toBe(gapAt(lowF, highF, nowF, 1));
  if (gap === null) expect(gapIn).toBeNull();
  else expect(gapIn).toBeCloseTo(gap, 12);
});
