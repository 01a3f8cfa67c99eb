/**
 * Seeds for ever: what a published family drew when its fingerprint was taken, it draws today. The fingerprints are in
 * tests/references/fingerprints.json; `npm run fingerprints` adds those of new families and changes none.
 */
import { describe, expect, test } from 'vitest';
import type { AuthoredFamily } from '../../src/practice/family.ts';
import { GENERATOR } from '../../src/practice/generator.ts';
import type { AnyModel } from '../../src/practice/model.ts';
import { type Fingerprint, fingerprintOf, keptFingerprints, withNew } from '../../src/setup/fingerprints.ts';
import { families, family, language, world } from './means.ts';

const kept = keptFingerprints();
const all = [...families.values()];

test('the generator is the one that the fingerprints were taken with', () =>
  expect(kept.generator).toBe(GENERATOR));

test.each(all)('$id draws what it drew when it was published', (one) => {
  const known = kept.families[one.id];
  expect(
    known,
    `${one.id} has no fingerprint yet: run npm run fingerprints, and keep the file`,
  ).toBeDefined();
  const now = fingerprintOf(one, world, language);
  expect(
    now.draws,
    `${one.id} draws something else than it did. Sheets on paper and answers that were signed for rest on its draws: ` +
      'leave it as it was, or withdraw it and give what it means now a new id',
  ).toBe(known?.draws);
  expect(
    now.words,
    `${one.id} says its draws in other words. Where they still mean the same, run npm run fingerprints -- --words ` +
      `${one.id}; a changed meaning needs a new id`,
  ).toBe(known?.words);
});

describe('a fingerprint tells', () => {
  const first = family('cut-with-insertion');
  const before = fingerprintOf(first, world, language);
  const changed = (change: Partial<AuthoredFamily>) =>
    fingerprintOf({ ...first, ...change }, world, language);

  test('nothing of what no draw shows', () =>
    expect(changed({ number: first.number + 1, worked: { ...first.worked, sum: [] } })).toEqual(before));

  test('another way to pass', () => {
    expect(changed({ mark: first.mark - 1 }).draws).not.toBe(before.draws);
    expect(changed({ critical: [] }).draws).not.toBe(before.draws);
  });

  test('another order that holds', () => {
    const order = family('order-of-cutting');
    const asks = order.asks.map((ask) =>
      ask.kind === 'order' ? { ...ask, precedence: ask.precedence.slice(2) } : ask,
    );
    const now = fingerprintOf({ ...order, asks }, world, language);
    expect(now.draws).not.toBe(fingerprintOf(order, world, language).draws);
  });

  test('another answer beside the right one that holds', () => {
    const packing = family('pack-lengths');
    const own = world.models.get(packing.model) as AnyModel;
    const plan = own.asks['plan'] as NonNullable<AnyModel['asks'][string]>;
    const lenient = { ...own, asks: { ...own.asks, plan: { ...plan, holds: () => true } } };
    const models = new Map([...world.models, [packing.model, lenient]]);
    // What was a mistake would hold too: such draws are passed over, and others are drawn.
    const harmless = { ...packing, mistakes: [] };
    expect(fingerprintOf(harmless, { ...world, models }, language).draws).not.toBe(
      fingerprintOf(harmless, world, language).draws,
    );
  });

  test('another id, whose seeds draw other numbers', () =>
    expect(changed({ id: 'cut-with-insertions' }).draws).not.toBe(before.draws));

  test('another tolerance', () => {
    const asks = first.asks.map((ask) =>
      ask.kind === 'number' ? { ...ask, tolerance: ask.tolerance * 1.0001 } : ask,
    );
    expect(changed({ asks }).draws).not.toBe(before.draws);
  });

  test('other words from other draws', () => {
    const { draws, words } = changed({ text: { en: 'Cut it.' } });
    expect(draws).toBe(before.draws);
    expect(words).not.toBe(before.words);
  });
});

describe('taking fingerprints', () => {
  const print = (name: string): Fingerprint => ({ draws: `d-${name}`, words: `w-${name}` });
  const some = ['a', 'b', 'c'].map((id) => ({ id }) as AuthoredFamily);
  const before = { v: 1, generator: GENERATOR, families: { b: print('old'), gone: print('gone') } } as const;

  test('adds what is new, changes nothing, forgets nothing', () =>
    expect(withNew(before, some, ({ id }) => print(id)).families).toEqual({
      a: print('a'),
      b: print('old'),
      c: print('c'),
      gone: print('gone'),
    }));

  test('takes new words where the draws are the same, and only there', () => {
    const reworded = new Set(['b']);
    const same = { draws: 'd-old', words: 'w-new' };
    expect(withNew(before, some, () => same, reworded).families['b']).toEqual(same);
    expect(withNew(before, some, ({ id }) => print(id), reworded).families['b']).toEqual(print('old'));
    expect(withNew(before, some, () => same).families['b']).toEqual(print('old'));
  });
});
