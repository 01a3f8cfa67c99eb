/** A family's file that cannot be used: which field is named, and what to do. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { check } from '../../src/schema/faults.ts';
import { familyShape } from '../../src/schema/scenario.ts';
import { readYaml } from '../../src/schema/yaml.ts';

const text = (id: string) =>
  readFileSync(new URL(`../../content/scenarios/${id}.yaml`, import.meta.url), 'utf8');

/** The fields at fault once `change` has been made in the file's text. */
function fields(id: string, ...changes: readonly (readonly [string, string])[]): readonly string[] {
  const changed = changes.reduce((t, [from, to]) => {
    expect(t).toContain(from);
    return t.replace(from, to);
  }, text(id));
  const read = readYaml(changed);
  expect(read.faults).toEqual([]);
  const checked = check(familyShape, read.data);
  if (!('faults' in checked)) return [];
  for (const { message, todo } of checked.faults) {
    // What is wrong and what to do, two different sentences.
    expect(message.split(' ').length).toBeGreaterThan(2);
    expect(todo.split(' ').length).toBeGreaterThan(1);
    expect(todo).not.toBe(message);
  }
  return checked.faults.map((f) => f.field);
}

const cut = 'cut-with-insertion';

describe('a family’s file', () => {
  test.each(['cut-with-insertion', 'fill-check', 'order-of-cutting', 'read-feet-inch'])(
    '%s is good',
    (id) => {
      expect(fields(id)).toEqual([]);
    },
  );

  test.each([
    ['an unknown model', [`model: ${cut}`, 'model: cutting'], ['model']],
    ['an unknown slip', ['slip: kerfOff', 'slip: kerfOn'], ['mistakes[10].slip']],
    ['a mistake on no ask', ['asks: [left]', 'asks: [lost]'], ['mistakes[11].asks[0]']],
    ['a critical ask that is not there', ['critical: [cut]', 'critical: [cat]'], ['critical[0]']],
    ['an unknown field', ['mark: 80', 'mark: 80\nmarks: 80'], ['marks']],
    ['a mark above 100', ['mark: 80', 'mark: 101'], ['mark']],
    ['a mark below 80', ['mark: 80', 'mark: 79'], ['mark']],
    ['a mark between two whole numbers', ['mark: 80', 'mark: 80.5'], ['mark']],
    ['a tolerance of 0', ['tolerance: 1/32', 'tolerance: 0'], ['asks[0].tolerance']],
    ['a tolerance that is no length', ['tolerance: 1/32', 'tolerance: small'], ['asks[0].tolerance']],
    ['a text without English', ['title: { en:', 'title: { de:'], ['title']],
    ['an id twice', ['id: kerf-twice', 'id: kerf-forgotten'], ['mistakes[12].id']],
    [
      'a word the model does not know',
      ['measured: { choice: [edges,', 'measured: { choice: [corners,'],
      ['parameters.measured.choice[0]'],
    ],
    [
      'a parameter of another kind',
      [
        'before: { length: { from:',
        'before: { decimal: { from: 1, to: 2, step: 1 } }\n  behind: { length: { from:',
      ],
      ['parameters.before', 'parameters.behind'],
    ],
    ['no answer worked by hand', [`cut: "9'-2 1/4\\"", `, ''], ['worked.answers.cut']],
  ] as const)('%s', (_, change, wanted) => {
    expect(fields(cut, change)).toEqual(wanted);
  });

  test('80 and 100 are marks', () => {
    expect(fields(cut, ['mark: 80', 'mark: 100'])).toEqual([]);
    expect(text(cut)).toContain('mark: 80');
  });

  test('no mistake at all', () => {
    const read = readYaml(text(cut)).data as { mistakes: unknown[] };
    read.mistakes = [];
    const checked = check(familyShape, read);
    expect('faults' in checked ? checked.faults : []).toEqual([
      {
        field: 'mistakes',
        value: [],
        message: 'the family knows no mistake, so it can say of no wrong answer what went wrong',
        todo: 'add the mistakes that people make here, each with its slip and what it says',
      },
    ]);
  });

  test('a seed worked by hand of which nothing was read', () => {
    const read = readYaml(text(cut)).data as { worked: { givens: object } };
    read.worked.givens = {};
    const checked = check(familyShape, read);
    expect('faults' in checked ? checked.faults : []).toMatchObject([
      { field: 'worked.givens', message: 'nothing was read off the draw' },
    ]);
  });

  test('a mistake without what it says', () => {
    const read = readYaml(text(cut)).data as { mistakes: { says?: unknown }[] };
    delete read.mistakes[0]?.says;
    const checked = check(familyShape, read);
    expect('faults' in checked ? checked.faults : []).toMatchObject([
      { field: 'mistakes[0].says', message: 'this field is missing' },
    ]);
  });

  test('a range the wrong way round, more of a thing than there are', () => {
    expect(
      fields('read-feet-inch', [
        'metric: { whole: { from: 610, to: 5890 } }',
        'metric: { whole: { from: 6100, to: 5890 } }',
      ]),
    ).toEqual(['parameters.metric.whole.to']);
    expect(fields('order-of-cutting', ['to: 9', 'to: 15'])).toEqual(['parameters.steps.some']);
    expect(fields('order-of-cutting', ['from: 7', 'from: 3'])).toEqual(['parameters.steps.some']);
  });

  test('a pair of an order that is no item, or stands the other way round among the items', () => {
    const order = 'order-of-cutting';
    expect(fields(order, ['[cut, stop]', '[saw, stop]'])).toEqual(['asks[0].precedence[5][0]']);
    expect(fields(order, ['[cut, stop]', '[stop, cut]'])).toEqual(['asks[0].precedence[5]']);
    expect(fields(order, ['[cut, stop]', '[cut, cut]'])).toEqual(['asks[0].precedence[5]']);
  });

  test('every fault at once', () => {
    expect(
      fields(
        cut,
        ['critical: [cut]', 'critical: [cat]'],
        ['slip: kerfOff', 'slip: kerfOn'],
        ['id: kerf-twice', 'id: kerf-forgotten'],
      ),
    ).toEqual(['mistakes[12].id', 'critical[0]', 'mistakes[10].slip']);
  });
});
