/** A seed worked by hand proves something where its author read what the seed drew: else it would hold for any draw. */
import { describe, expect, test } from 'vitest';
import type { AuthoredFamily } from '../../src/practice/family.ts';
import { proveFamily } from '../../src/practice/prove.ts';
import { tellDraw } from '../../src/practice/show.ts';
import { draw, families, family, language, means, world } from './means.ts';

/** What stands there of each given or ask that the author named. */
function read(one: AuthoredFamily, seed: string): string {
  const { givens, asks } = tellDraw(draw(one.id, seed), world, language);
  const prompts = asks.flatMap((ask) => [ask, ...(ask.parts ?? [])]);
  return Object.keys(one.worked.givens)
    .map((id) => givens.find((g) => g.id === id)?.text ?? prompts.find((a) => a.id === id)?.prompt)
    .join('\n');
}
const SEEDS = Array.from({ length: 40 }, (_, i) => `worked-${i}`);

test.each([...families.values()])('$id: what its author read is what a seed draws', (one) => {
  expect(Object.keys(one.worked.givens)).not.toEqual([]);
  const first = read(one, one.worked.seed);
  expect(SEEDS.some((seed) => read(one, seed) !== first)).toBe(true);
});

describe('words that stand elsewhere than the author read them are told', () => {
  const faults = (id: string, givens: AuthoredFamily['worked']['givens']) => {
    const one = family(id);
    const { faults } = proveFamily({ ...one, worked: { ...one.worked, givens } }, 1, means);
    return faults.filter(({ cause }) => cause.startsWith('worked by hand')).map(({ cause }) => cause);
  };
  const { givens } = family('laying-cables').worked;

  test('as they stand', () => expect(faults('laying-cables', givens)).toEqual([]));
  test('of another scene', () => {
    const [fault, ...more] = faults('laying-cables', { ...givens, 'scene-2': 'The reel says 114' });
    expect(fault).toMatch(/scene-2 asks “The tie gun .*”, not “The reel says 114”/);
    expect(more).toEqual([]);
  });
  test('of a part of a step', () =>
    expect(faults('jumper-list', { j4: 'Expansion splice' })[0]).toMatch(/j4 asks “J4: /));
  test('of nothing that is there', () =>
    expect(faults('laying-cables', { 'scene-9': 'The reel' })[0]).toMatch(/given scene-9 is not there/));
});
