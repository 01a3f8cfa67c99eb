import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answersApart } from '../../src/practice/apart.ts';
import { type Draw, drawOf, modelOf } from '../../src/practice/draw.ts';
import { kindsOf } from '../../src/practice/family.ts';
import { keyOf } from '../../src/practice/key.ts';
import { showDraw, tellDraw } from '../../src/practice/show.ts';
import type { Piece } from '../../src/run/straight.ts';
import { inches } from '../../src/trade/length.ts';
import { draw, families, family, how, language, world } from './means.ts';

const ids = [...families.keys()].sort();
const seeds = fc.string({ minLength: 1, maxLength: 64, unit: 'grapheme' });

test('every kind of ask is in use', () => {
  const kinds = new Set([...families.values()].flatMap(kindsOf));
  expect([...kinds].sort()).toEqual(
    ['choice', 'faults', 'job', 'number', 'order', 'place', 'reading', 'sticks', 'stop'].sort(),
  );
});

/**
 * A seed fixes its draw for ever. These values were kept when the families were made; a change that alters one alters
 * exercises that people have answered, and needs a new family id.
 */
describe('kept draws', () => {
  test.each([
    ['cut-with-insertion', 'hand-3', { cut: 110.25, left: 129.625 }],
    ['cut-with-insertion', '1', { cut: 45.6875, left: 194.1875 }],
    ['read-feet-inch', 'hand-2', { tape: 130.125, sum: 142, drop: 153, metric: 80.875 }],
    ['read-feet-inch', '1', { tape: 126.25, sum: 101.375, drop: 213, metric: 138.6875 }],
    ['fill-check', '1', { area: 2.0556226130601414, row: 'ventilated-several', within: 'yes' }],
    [
      'order-of-cutting',
      'Año 4 · ✂ 🪚',
      { order: ['choose', 'support', 'clamp', 'cut', 'stop', 'deburr', 'protect'] },
    ],
  ])('%s, seed %s', (id, seed, right) => {
    expect(draw(id, seed).right).toEqual(right);
  });
});

describe.each(ids)('%s', (id) => {
  // Few: the proofs draw hundreds. A run that is laid out takes longer.
  const count = modelOf(family(id), world).laidOut === true ? 3 : 12;
  const all = Array.from({ length: count }, (_, i) => draw(id, `d${i}`));

  test('the same seed is the same draw; another is another', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const [one, two] = [draw(id, seed), draw(id, seed)];
        expect(showDraw(one, world, language, how)).toEqual(showDraw(two, world, language, how));
        expect(keyOf(one, world, language)).toEqual(keyOf(two, world, language));
      }),
      { numRuns: 3 },
    );
    const told = (one: Draw) => ({ ...tellDraw(one, world, language), seed: '' });
    const shown = all.map((one) => JSON.stringify([told(one), one.right]));
    expect(new Set(shown).size).toBeGreaterThan(count * 0.8);
  });

  test('right and wrong answers stand apart, each from each', () => {
    for (const one of all) expect(answersApart(one)).toBe(true);
  });

  test('a draw has exactly the fields of the contract, and never its answer', () => {
    for (const one of all) {
      const shown = showDraw(one, world, language, how);
      expect(Object.keys(shown)).toEqual([
        'id',
        'seed',
        'generator',
        'title',
        'tasks',
        'text',
        'givens',
        'figures',
        'asks',
      ]);
      for (const given of shown.givens)
        expect(Object.keys(given)).toEqual(['id', 'label', 'value', 'unit', 'text']);
      for (const figure of shown.figures) expect(Object.keys(figure)).toEqual(['svg', 'words']);
      const text = JSON.stringify(shown);
      for (const ask of one.family.asks) {
        const right = one.right[ask.id];
        if (ask.kind === 'order') expect(text).not.toContain(JSON.stringify(right));
        if (ask.kind === 'number' && ask.unit !== 'count') {
          const given = shown.givens.filter((g) => g.unit === ask.unit).map((g) => g.value);
          expect(given).not.toContain(right);
        }
        // Of a choice every option is shown, in the order of the file.
        const asked = shown.asks.find((a) => a.id === ask.id);
        if (ask.kind === 'choice')
          expect(asked?.options?.map((o) => o.id)).toEqual(ask.options.map((o) => o.id));
      }
    }
  });

  test('no place of a text is left unfilled', () => {
    for (const one of all) {
      const shown = showDraw(one, world, language, how);
      const key = keyOf(one, world, language);
      const texts = [
        shown.text,
        ...shown.givens.map((g) => g.text),
        ...shown.asks.map((a) => a.prompt),
        ...key.working,
      ];
      for (const text of [...texts, ...key.mistakes.map((m) => m.says)]) expect(text).not.toMatch(/[{}]/);
    }
  });
});

test('the cut by the sum is the cut of the run that is drawn', () => {
  for (let i = 0; i < 100; i++) {
    const { right, plan } = draw('cut-with-insertion', `run${i}`);
    const { piece } = plan as unknown as { readonly piece: Piece };
    expect(right['cut']).toBe(inches(piece.cut));
  }
});

test('ask the engineer is the right answer of about as many draws as 2-in ventilated is drawn', () => {
  const all = Array.from({ length: 300 }, (_, i) => draw('fill-check', `a${i}`).right['within']);
  const asks = all.filter((a) => a === 'ask').length;
  // One width of five, one bottom of two: a tenth, before tries are passed over.
  expect(asks).toBeGreaterThan(12);
  expect(asks).toBeLessThan(60);
  expect(new Set(all)).toEqual(new Set(['yes', 'no', 'ask']));
});

test('tries that are passed over are counted, and a family that never works is an error', () => {
  expect(Array.from({ length: 40 }, (_, i) => draw('fill-check', `r${i}`).rejected).some((n) => n > 0)).toBe(
    true,
  );
  const never = {
    ...family('cut-with-insertion'),
    parameters: { ...family('cut-with-insertion').parameters, first: { choice: ['free'] } },
  };
  expect(() => drawOf(never, '1', world)).toThrow('none of 2000 tries');
});
