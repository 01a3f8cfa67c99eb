import { expect, test } from 'vitest';
import words from '../../../content/words/en/yourrun.json' with { type: 'json' };
import { runShape } from '../../../src/schema/run.ts';
import type { PlainField } from '../../../src/site/calculators/fields.ts';
import { readField } from '../../../src/site/calculators/form.ts';
import {
  type Field,
  LISTS,
  legFields,
  limitFields,
  listFields,
  type RunFields,
  startFields,
  stockFields,
  tempFields,
} from '../../../src/site/run/fields.ts';
import { usual } from '../../../src/site/settings.ts';
import { catalogue, leg, whole } from '../../run/practice.ts';

const run = whole([leg('1', 'E')]);
type Shape = { unwrap?: () => Shape; element?: Shape; shape?: Record<string, Shape> };
/** Names of the fields of an object, or of the rows of a list, optional or not. */
function namesOf(shape: Shape | undefined): readonly string[] {
  if (shape?.shape !== undefined) return Object.keys(shape.shape);
  if (shape?.element !== undefined) return namesOf(shape.element);
  return shape?.unwrap === undefined ? [] : namesOf(shape.unwrap());
}
const shapes = (runShape as unknown as Shape).shape ?? {};
const names = (fields: RunFields) => Object.keys(fields).sort();

test('every field that a run has can be entered, and no other', () => {
  for (const list of LISTS)
    expect(names(listFields(list, run, catalogue))).toEqual([...namesOf(shapes[list])].sort());
  expect(names(startFields)).toEqual([...namesOf(shapes['start'])].sort());
  expect(names(limitFields)).toEqual([...namesOf(shapes['limits'])].sort());
  expect(names(tempFields)).toEqual([...namesOf(shapes['temps'])].sort());
  // Where a leg comes from, by what and which way is chosen as it is added.
  expect([...names(legFields), 'id', 'from', 'fitting', 'dir'].sort()).toEqual(
    [...namesOf(shapes['legs'])].sort(),
  );
  const parts = ['v', 'tray', 'start', 'legs', 'limits', 'temps', ...LISTS, ...names(stockFields)];
  expect(parts.sort()).toEqual(Object.keys(shapes).sort());
});

test('every field and every choice has its words', () => {
  const all = [
    ...LISTS.map((list) => listFields(list, run, catalogue)),
    ...[startFields, legFields, limitFields, stockFields, tempFields],
  ];
  const keys = all
    .flatMap(Object.values)
    .flatMap((field: Field) => [
      field.label,
      ...(field.kind === 'choice' ? field.options.flatMap(({ label }) => label ?? []) : []),
    ]);
  const known = new Set(Object.keys(words.yourRun).map((key) => `yourRun.${key}`));
  expect(keys.filter((key) => !known.has(key))).toEqual([]);
});

test.each([
  ['1\'-6"; 84; 254 mm', [18 * 8128, 84 * 8128, 10 * 8128]],
  ['63-7-8', [763.5 * 8128]],
])('several lengths are read as every length is: %s', (text, ticks) => {
  expect(readField({ kind: 'lengths', label: 'yourRun.placesAt' }, text, usual)).toEqual({ value: ticks });
});
test.each(['1\'-6";', "1'-6\", 7'", 'here'])('%s is not read, and says why', (text) => {
  expect(readField({ kind: 'lengths', label: 'yourRun.placesAt' }, text, usual)).toHaveProperty('message');
});
test('a weight may be nothing, not less; a diameter is more than nothing', () => {
  const { lbPerFt, odIn } = listFields('cables', run, catalogue);
  expect(readField(lbPerFt as PlainField, '0', usual)).toEqual({ value: 0 });
  expect(readField(lbPerFt as PlainField, '-0.1', usual)).toHaveProperty('message');
  expect(readField(odIn as PlainField, '0', usual)).toHaveProperty('message');
  expect(readField(odIn as PlainField, '1/2', usual)).toEqual({ value: 0.5 });
});
