import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { hashesNow, readRecord } from '../../src/cli/proofHashes.ts';
import type { Drawing } from '../../src/drawing/types.ts';
import type { Draw } from '../../src/practice/draw.ts';
import type { AuthoredFamily } from '../../src/practice/family.ts';
import { notFigured } from '../../src/practice/figures/faults.ts';
import type { AnyModel } from '../../src/practice/model.ts';
import {
  type ProofRecord,
  proofFaults,
  proofText,
  staleFamilies,
  touchesProofs,
} from '../../src/practice/proofs.ts';
import { proveFamily, seedsFor } from '../../src/practice/prove.ts';
import { draw, families, family, how, language, means, world } from './means.ts';

describe('proofs, run for real', () => {
  const hashes = hashesNow();
  const record = readRecord();
  const stale = staleFamilies(record, hashes);

  test('every family has been proven, over as many seeds as are wanted', () => {
    expect(Object.keys(hashes).sort()).toEqual([...families.keys()].sort());
    for (const [id, { seeds }] of Object.entries(record?.families ?? {}))
      expect(seeds, id).toBeGreaterThanOrEqual(seedsFor(family(id), means.world));
  });

  /** An unchanged family costs nothing but a few seeds, so that the record is not all there is. */
  const FEW = 10;
  test.each([...families.keys()])('%s', (id) => {
    const seeds = stale.includes(id) ? seedsFor(family(id), means.world) : FEW;
    const { drawn, faults } = proveFamily(family(id), seeds, means);
    expect(faults).toEqual([]);
    expect(drawn).toBe(seeds);
  });
});

describe('a family that is wrong is found', () => {
  const cut = family('cut-with-insertion');
  const causes = (wrong: AuthoredFamily, seeds = 20) =>
    proveFamily(wrong, seeds, means).faults.map((f) => f.cause);
  const ask = (id: string, change: object): AuthoredFamily => ({
    ...cut,
    asks: cut.asks.map((a) => (a.id === id ? { ...a, ...change } : a)) as AuthoredFamily['asks'],
  });

  test('answers out of range', () => {
    expect(causes(ask('cut', { range: { from: 20, to: 100 } }))).toContainEqual(
      expect.stringContaining('is outside 20 to 100'),
    );
  });

  test('a tolerance too wide for its mistakes: no draw can be used', () => {
    expect(causes(ask('cut', { tolerance: 6 }), 1)[0]).toContain('none of 2000 tries');
  });

  test('a text that shows the answer', () => {
    // One distance and kind of ends only, so that a text can give its answer away: 60 + 5 + 5.
    const one: AuthoredFamily = {
      ...cut,
      parameters: {
        ...cut.parameters,
        measured: { choice: ['edges'] },
        first: { choice: ['sleeve'] },
        second: { choice: ['sleeve'] },
        distance: { length: { from: 487680 as never, to: 487680 as never, step: 8128 as never } },
      },
      text: { en: `Cut it to 5'-10".` },
    };
    const found = causes(one, 3);
    expect(found).toContain('cut: the draw shows its answer 70');
    expect(found).toContainEqual(expect.stringMatching(/^only \d of 3 draws differ$/));
  });

  test('a text whose place has no value', () => {
    expect(causes({ ...cut, text: { en: 'Cut {this}.' } }, 1)[0]).toContain('no value for {this}');
  });

  test('a hand-worked seed that does not agree', () => {
    const worked = { ...cut.worked, answers: { ...cut.worked.answers, cut: 109 } };
    expect(causes({ ...cut, worked }, 1)).toContainEqual(
      expect.stringContaining('worked by hand: cut is graded rework'),
    );
    const given = { ...cut.worked, givens: { distance: `8'-7"` } };
    expect(causes({ ...cut, worked: given }, 1)).toContainEqual(
      expect.stringContaining('worked by hand: given distance'),
    );
  });

  test('a mistake of an order that another one hides', () => {
    const order = family('order-of-cutting');
    const again = order.mistakes.map((m) => ({ ...m, id: `${m.id}-again` }));
    expect(causes({ ...order, mistakes: [...order.mistakes, ...again] }, 5).length).toBeGreaterThan(0);
  });
});

describe('a draw with the figures of another draw is found', () => {
  const SEEDS = ['1', '2', '3', '4'];
  /** Of every family with figures, the first seeds with what their figures show. */
  const figured = [...families.values()].flatMap((one) => {
    const draws = SEEDS.map((seed) => draw(one.id, seed));
    const { model, plan: first } = draws[0] as Draw;
    const shows = draws.map(({ plan }) => JSON.stringify(model.figured(plan, world)));
    const drawn = draws.map(({ plan }) => model.figures(plan, world, { ...how, speak: language.speak }));
    return drawn.some((figures) => figures.length > 0)
      ? [{ family: one, model, drawn, shows, wanted: model.figured(first, world) }]
      : [];
  });
  /** What is found when every draw of the family is shown these figures. */
  const foundWith = (of: AuthoredFamily, model: AnyModel, figures: readonly Drawing[]) => {
    const models = new Map([...world.models, [of.model, { ...model, figures: () => figures }]]);
    return proveFamily(of, 1, { ...means, world: { ...world, models } }).faults;
  };

  test.each(figured)('$family.id', ({ family: of, model, drawn, shows, wanted }) => {
    const others = drawn.filter((_, i) => shows[i] !== shows[0]);
    for (const figures of others)
      expect(
        notFigured(
          wanted,
          figures.map(({ svg }) => svg),
          language.speak,
        ),
      ).not.toEqual([]);
    expect(foundWith(of, model, drawn[0] ?? [])).toEqual([]);
    if (others[0] !== undefined)
      expect(foundWith(of, model, others[0])).toContainEqual({
        seed: '1',
        cause: expect.stringMatching(/^no figure shows /),
      });
    // One picture for all draws, and the same number in every one.
    if (of.id === 'pack-lengths') expect(new Set(drawn.map(([one]) => one?.svg)).size).toBe(1);
    else expect(others).not.toEqual([]);
  });

  test('figures of which nothing is said, and figures that are not there', () => {
    const {
      model,
      drawn,
      family: of,
    } = figured.find((one) => one.family.id === 'read-tape') as (typeof figured)[0];
    const causes = (change: Partial<AnyModel>) =>
      proveFamily(of, 1, {
        ...means,
        world: { ...world, models: new Map([...world.models, [of.model, { ...model, ...change }]]) },
      }).faults.map(({ cause }) => cause);
    expect(drawn[0]).toHaveLength(1);
    expect(causes({ figured: () => [] })).toEqual(['nothing is said of what its figures show']);
    expect(causes({ figures: () => [] })).toEqual(['no figure shows tape']);
  });
});

describe('whether proofs are current', () => {
  const record: ProofRecord = {
    v: 2,
    families: { a: { hash: 'f1', seeds: 500, rejected: 0, variants: 500 } },
  };
  const fields = (hashes: Parameters<typeof proofFaults>[1], of: ProofRecord | undefined = record) =>
    proofFaults(of, hashes).map((f) => f.field);

  test('current, and each way of not being it', () => {
    expect(fields({ a: 'f1' })).toEqual([]);
    expect(fields({ a: 'f2' })).toEqual(['families.a']);
    expect(fields({ a: 'f1', b: 'f1' })).toEqual(['families.b']);
    expect(fields({})).toEqual(['families.a']);
    expect(proofFaults(undefined, {})).toHaveLength(1);
  });

  test('what counts as the code', () => {
    expect(
      [
        'src/practice/grade.ts',
        'src/trade/cut.ts',
        'content/rules/x.yaml',
        'src/practice/models/parts/reads.ts',
      ].every(touchesProofs),
    ).toBe(true);
    expect(
      [
        'src/site/practice.ts',
        'src/practice/README.md',
        // Their own families alone: hashed with them.
        'src/practice/models/measuring/cutWithInsertion.ts',
        'src/practice/models/measuring/index.ts',
        'src/practice/models/index.ts',
        'content/tasks/T05.yaml',
        'tests/practice/x.ts',
      ].some(touchesProofs),
    ).toBe(false);
    expect(readers().filter((path) => !touchesProofs(path))).toEqual([]);
    const a = { path: 'src/trade/a.ts', text: 'x' };
    const b = { path: 'src/trade/b.ts', text: 'y' };
    expect(proofText([a, b])).toBe(proofText([b, a]));
    // A sign moved from one file to the next is a change.
    expect(
      proofText([
        { ...a, text: 'xy' },
        { ...b, text: '' },
      ]),
    ).not.toBe(proofText([a, b]));
  });
});

/** Files of src/schema that a family, the catalogue and the tables are read with, by their imports. */
function readers(): readonly string[] {
  const found = new Set<string>();
  const walk = (name: string) => {
    if (found.has(name)) return;
    found.add(name);
    const file = new URL(`../../src/schema/${name}.ts`, import.meta.url);
    for (const [, next = ''] of readFileSync(file, 'utf8').matchAll(/from '(\.\.?\/[\w/]+)\.ts'/g)) {
      const path = new URL(next, file).pathname;
      const inside = path.indexOf('/src/schema/');
      if (inside >= 0) walk(path.slice(inside + '/src/schema/'.length));
    }
  };
  for (const name of ['scenario', 'catalogue', 'rules', 'shelf', 'words']) walk(name);
  expect(found.size).toBeGreaterThan(8);
  return [...found].map((name) => `src/schema/${name}.ts`);
}
