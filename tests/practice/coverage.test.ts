/**
 * Which family carries which mistake of the trade and which point that fails a try. The table is an own list (common
 * practice, no source); its numbers were worked by hand on the practice catalogue (training values) and NFPA 70, 2023.
 */
import { describe, expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { askOf, slip } from '../../src/practice/draw.ts';
import type { Answer, AnyModel, AnyPlan } from '../../src/practice/model.ts';
import { models } from '../../src/practice/models/index.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { readLength } from '../../src/trade/length.ts';
import coverage from '../references/coverage.json' with { type: 'json' };
import { draw, families, family, world } from './means.ts';

interface Case {
  readonly family: string;
  readonly drawn: Readonly<Record<string, unknown>>;
  readonly right: Readonly<Record<string, unknown>>;
  /** How far a worked value may lie from the model's; 1/32 in where the table says nothing. */
  readonly within?: number;
}
interface Row {
  readonly row: string;
  readonly mistake: string;
  readonly family: string;
  readonly id: string;
  readonly ask: string;
  /** The case whose numbers the mistake is made on, and what then comes out. */
  readonly case?: string;
  readonly gives?: unknown;
}
interface Point {
  readonly point: string;
  readonly family: string;
  readonly ask: string;
  readonly mistake?: string;
}
const cases = coverage.cases as unknown as Readonly<Record<string, Case>>;
const rows = coverage.rows as readonly Row[];
const points = coverage.points as readonly Point[];
const traces = coverage.traces as readonly (Omit<Point, 'point'> & { task: string; trace: string })[];
const notAnswered = coverage.notAnswered as readonly { point: string; why: string }[];

const WITHIN = 1 / 32 + 1e-9;
const numbered = (letter: string, many: number, wide = 1) =>
  Array.from({ length: many }, (_, i) => letter + String(i + 1).padStart(wide, '0'));
const mistakeOf = (id: string, mistake: string) => family(id).mistakes.find((m) => m.id === mistake);

describe('every idea of the list', () => {
  test('has a family', () =>
    expect([...new Set(rows.map(({ row }) => row))].sort()).toEqual(numbered('S', 56, 2)));
  test.each(rows)('$row, $mistake: $family $id', ({ family: id, id: mistake, ask }) => {
    expect(family(id).asks.map((a) => a.id)).toContain(ask);
    expect(mistakeOf(id, mistake)?.asks).toContain(ask);
  });
});

describe('worked by hand', () => {
  test.each(Object.entries(cases))('%s, right', (_, { family: id, drawn, right, within }) => {
    const { model, plan } = planOf(id, drawn);
    for (const [ask, wanted] of Object.entries(right))
      agrees(askOf(model, ask).answer(plan, world), wanted, within);
  });
  test.each(rows.filter((row) => row.case !== undefined))('$row, $mistake: $gives', (row) => {
    const { family: id, drawn, within } = cases[row.case as string] as Case;
    expect(row.family).toBe(id);
    const { model, plan } = planOf(id, drawn);
    const mistake = mistakeOf(id, row.id);
    const taken = mistake === undefined ? null : slip(model, mistake, plan, world);
    if (taken === null) throw new Error(`${id}: ${row.id} cannot be made on these numbers`);
    agrees(askOf(model, row.ask).answer(taken, world), row.gives, within);
  });
});

describe('every point that fails a try', () => {
  test.each(points)('$point: $family $ask $mistake', ({ family: id, ask, mistake }) => {
    expect(family(id).critical).toContain(ask);
    if (mistake === undefined) return;
    expect(mistakeOf(id, mistake)?.asks).toContain(ask);
    // The mistake is made, and on an ask that fails the try.
    expect(isMade(id, mistake, (on) => family(id).critical.includes(on))).toBe(true);
  });

  test('of a task’s own list is met, or said not to be', () => {
    const named = new Set([...points, ...notAnswered].map(({ point }) => point));
    const wanted = [...readLibrary(contentFiles()).library.tasks.values()].flatMap(({ id, critical }) =>
      (critical ?? []).map((point) => `${id}.${point}`),
    );
    expect(wanted.filter((point) => !named.has(point))).toEqual([]);
  });
  test('a point that is said not to be asked is not asked, and has a reason', () => {
    const asked = new Set(points.map(({ point }) => point));
    expect(notAnswered.filter(({ point, why }) => asked.has(point) || why.length <= 20)).toEqual([]);
  });
  test('tasks and safe work all have some', () => {
    const of = new Set(points.map(({ point }) => point.split('.')[0]));
    expect([...numbered('T', 15, 2), ...numbered('W', 8)].filter((id) => !of.has(id))).toEqual([]);
  });
});

test('every task, and safe work of every kind, has a family', () => {
  const tasks = new Set([...families.values()].flatMap((one) => one.tasks as readonly string[]));
  expect([...numbered('T', 15, 2), ...numbered('W', 8)].filter((id) => !tasks.has(id))).toEqual([]);
});

test('nine kinds of asks are used', () => {
  const kinds = new Set([...families.values()].flatMap(({ asks }) => asks.map(({ kind }) => kind)));
  expect([...kinds].sort()).toEqual(
    ['choice', 'faults', 'job', 'number', 'order', 'place', 'reading', 'sticks', 'stop'].sort(),
  );
});

test('a tape, a drawing, an elevation, a revision, a title block and a sheet of a maker are read', () => {
  const readings = [...families.values()].flatMap(({ id, asks }) =>
    asks.filter(({ kind }) => kind === 'reading').map((ask) => `${id}.${ask.id}`),
  );
  expect(readings.sort()).toEqual([
    'decimal-elevations.unit',
    'od-from-sheet.column',
    'read-drawing.dimension',
    'read-drawing.elevation',
    'read-drawing.revision',
    'read-tape.length',
  ]);
});

describe('what a mistake leaves behind, beside those of the list', () => {
  test.each(traces)('$task, $trace: $family $ask $mistake', ({ task, family: id, ask, mistake = '' }) => {
    expect(family(id).tasks).toContain(task);
    expect(isMade(id, mistake, (on) => on === ask)).toBe(true);
  });
});

/** Whether some draw allows this mistake on such an ask. */
function isMade(id: string, mistake: string, on: (ask: string) => boolean): boolean {
  return numbered('coverage-', 400).some((seed) =>
    draw(id, seed).wrong.some((w) => w.mistake.id === mistake && on(w.ask)),
  );
}

function planOf(id: string, drawn: Case['drawn']): { model: AnyModel; plan: AnyPlan } {
  const one = family(id);
  const model = models.get(one.model);
  const plan = model?.plan(lengths(drawn) as Record<string, unknown>, world, one) ?? null;
  if (model === undefined || plan === null) throw new Error(`${id}: no job from these numbers`);
  return { model, plan };
}

/** Lengths are written as people write them, under `length`. */
function lengths(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(lengths);
  if (typeof value !== 'object' || value === null) return value;
  const { length, ...rest } = value as Readonly<Record<string, unknown>>;
  if (typeof length === 'string' && Object.keys(rest).length === 0) return readLength(length);
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, lengths(one)]));
}

function agrees(answer: Answer, wanted: unknown, within = WITHIN): void {
  if (typeof wanted === 'number') {
    expect(Math.abs((answer as number) - wanted)).toBeLessThanOrEqual(within);
  } else if (typeof wanted === 'object' && wanted !== null) {
    const { listed, ...parts } = wanted as { readonly listed?: readonly number[] };
    if (listed !== undefined) expect(placesOf(answer)).toEqual(listed);
    for (const [part, one] of Object.entries(parts))
      agrees((answer as unknown as Record<string, Answer>)[part] as Answer, one, within);
  } else expect(answer).toBe(wanted);
}

/** Places of a list that get something, by number. */
const placesOf = (answer: Answer) =>
  Object.entries(answer as unknown as Record<string, string>)
    .filter(([, why]) => why !== 'none')
    .map(([place]) => Number(place.slice(1)));
