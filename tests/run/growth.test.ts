/** A run of thirty thousand feet resolves: no depth of legs is too deep. How long it takes is in tests/bench/growth.ts. */
import { expect, test } from 'vitest';
import { resolveRun } from '../../src/run/resolve.ts';
import { TRADE_USUAL } from '../../src/run/usual.ts';
import { catalogue, faultFields } from './practice.ts';
import { stairs } from './stairs.ts';

test('three thousand legs make one line, every joint and support on it', () => {
  const run = stairs(30_000);
  const { legs, sections } = resolveRun(run, catalogue, TRADE_USUAL);
  expect(legs.map(({ leg }) => leg)).toEqual(run.legs.map(({ id }) => id));
  expect(sections).toHaveLength(1);
  expect(legs.map(({ joints }) => joints.length)).toEqual(run.legs.map(() => 1));
  expect(legs.map(({ supports }) => supports.length)).toEqual(run.legs.map(() => 2));
});

test('of three thousand legs every one that cannot lie as it is drawn is told', () => {
  const run = stairs(30_000);
  // An elbow brings a leg that lies flat to a leg that lies flat; every other leg is drawn going up.
  const legs = run.legs.map((leg, k) => (k % 2 === 1 ? { ...leg, dir: 'U' as const } : leg));
  const wanted = legs.slice(1).map((_, k) => `legs[${k + 1}].${k % 2 === 0 ? 'dir' : 'onEdge'}`);
  expect(new Set(faultFields({ ...run, legs }))).toEqual(new Set(wanted));
});
