/** One more row of a list: what was typed and cannot be read keeps it from being added. Common practice, no source. */
import { expect, test } from 'vitest';
import { formOf } from '../../../src/site/calculators/form.ts';
import { LISTS, listFields, type RunFields } from '../../../src/site/run/fields.ts';
import { mayAdd, missingOf, unreadOf } from '../../../src/site/run/newRow.ts';
import { usual } from '../../../src/site/settings.ts';
import { readFields } from '../../../src/site/tape.ts';
import { catalogue, leg, whole } from '../../run/practice.ts';

const run = whole([leg('1', 'E')]);
const none: ReadonlySet<string> = new Set();
const plain = (fields: RunFields) =>
  Object.fromEntries(Object.entries(fields).flatMap(([name, f]) => (f.kind === 'pair' ? [] : [[name, f]])));
const lengthsOf = (fields: RunFields) =>
  Object.entries(fields).flatMap(([name, { kind }]) => (kind === 'length' ? [name] : []));

const entries = LISTS.flatMap((list) =>
  lengthsOf(listFields(list, run, catalogue)).map((name) => [list, name] as const),
);
test('there are lengths to try', () => expect(entries.length).toBeGreaterThan(4));

test.each(entries)(
  '%s, %s: 18 in the inches field keeps the row from being added; 6 does not',
  (list, name) => {
    const fields = listFields(list, run, catalogue);
    const row = Object.fromEntries(Object.keys(fields).map((one) => [one, 'given']));
    const form = (inches: string) => ({
      ...formOf(plain(fields), {}, usual),
      [name]: readFields({ feet: '', inches, part: '0' }),
    });
    expect(unreadOf(fields, form('18'), usual, none)).toEqual([name]);
    expect(mayAdd(fields, row, unreadOf(fields, form('18'), usual, none))).toBe(false);
    expect(mayAdd(fields, row, unreadOf(fields, form('6'), usual, none))).toBe(true);
  },
);

test('a length that may be left empty may be left empty; one that must be given is missing', () => {
  const ends = listFields('ends', run, catalogue);
  expect(unreadOf(ends, formOf(plain(ends), {}, usual), usual, none)).toEqual([]);
  expect(missingOf(ends, { leg: '1', kind: 'free', joint: 'free' })).toEqual([]);
  const marks = listFields('marks', run, catalogue);
  expect(missingOf(marks, { leg: '1', kind: 'step' })).toEqual(['at']);
});

test('a pair that cannot be read keeps the row back as well', () => {
  const fields = listFields('joints', run, catalogue);
  const form = formOf(plain(fields), {}, usual);
  expect(unreadOf(fields, form, usual, new Set(['insertions']))).toEqual(['insertions']);
});

test('an end can stand on last legs alone, or where one was put already', () => {
  const two = whole([leg('1', 'E'), { ...leg('2', 'N'), from: '1' }]);
  const offered = (of: typeof two) => {
    const { leg: on } = listFields('ends', of, catalogue);
    return on?.kind === 'choice' ? on.options.map(({ value }) => value) : [];
  };
  expect(offered(two)).toEqual(['2']);
  expect(offered({ ...two, ends: [{ leg: '1', kind: 'free', joint: 'free' }] })).toEqual(['1', '2']);
});
