/** A run of 3,000 ft and one of thirty thousand resolve: no depth of legs is too deep, and time grows as the run does. */
import { expect, test } from 'vitest';
import { resolveRun } from '../../src/run/resolve.ts';
import type { Joint, Leg, Run, Support } from '../../src/run/types.ts';
import { ticks } from '../../src/trade/length.ts';
import { catalogue } from './practice.ts';

const FOOT = 12 * 8128;

/** Legs of 10 ft, an elbow between each two, a splice and two supports on each; a cable over all. */
function stairs(feet: number): Run {
  const count = feet / 10;
  const legs: Leg[] = [];
  const joints: Joint[] = [];
  const supports: Support[] = [];
  for (let k = 0; k < count; k++) {
    const leg = `L${k}`;
    legs.push({
      id: leg,
      from: k === 0 ? 'start' : `L${k - 1}`,
      fitting: k === 0 ? null : 'card-4-elbow-90',
      dir: k % 2 === 0 ? 'N' : 'E',
      length: ticks(10 * FOOT),
    });
    joints.push({ leg, at: ticks(5 * FOOT), kind: 'socketed' });
    for (const at of [2, 8]) supports.push({ leg, at: ticks(at * FOOT), way: 'horizontal', hold: 'guide' });
  }
  return { v: 1, tray: 'card-4', start: { kind: 'free', joint: 'free' }, legs, joints, supports };
}

function msFor(run: Run): number {
  const times = [0, 1, 2].map(() => {
    const begun = performance.now();
    const { legs, sections } = resolveRun(run, catalogue);
    const ms = performance.now() - begun;
    expect([legs.length, sections.length]).toEqual([run.legs.length, 1]);
    return ms;
  });
  return Math.min(...times);
}

test('ten times the run takes no more than some twenty times as long', () => {
  const short = msFor(stairs(3000));
  const long = msFor(stairs(30_000));
  // Room for a busy machine; time that grew with the square of the length would be a hundred times.
  expect(long / Math.max(short, 1)).toBeLessThan(25);
});

test('three thousand legs are refused as quickly as they are taken', () => {
  const run = stairs(30_000);
  const wrong = run.legs.map((leg, k) => (k % 2 === 1 ? { ...leg, dir: 'U' as const } : leg));
  const begun = performance.now();
  expect(() => resolveRun({ ...run, legs: wrong }, catalogue)).toThrow();
  expect(performance.now() - begun).toBeLessThan(2000);
});
