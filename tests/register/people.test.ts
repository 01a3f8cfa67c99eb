/** The one reader of a names file: all of its faults, with their fields. */
import { describe, expect, test } from 'vitest';
import { peopleOfText } from '../../src/register/people.ts';
import { GivenError } from '../../src/trade/given.ts';

const faults = (text: string): string[] => {
  try {
    peopleOfText(text);
    return [];
  } catch (error) {
    if (!(error instanceof GivenError)) throw error;
    return error.faults.map(({ field, message }) => `${field}: ${message}`);
  }
};

describe('a names file', () => {
  test('ids with their names, and ids without', () => {
    const { ids, names } = peopleOfText('{"people":[{"id":"p-1","name":" Ann Pell "},{"id":"p-2"}]}');
    expect([ids, [...names]]).toEqual([['p-1', 'p-2'], [['p-1', 'Ann Pell']]]);
    expect(peopleOfText('{"people":[{"id":"a","name":""}]}').names.size).toBe(0);
  });
  test.each([
    ['no JSON', '{', [expect.stringMatching(/^file: no JSON/)]],
    ['no object', '[]', ['people: no list of people']],
    ['no list', '{"people":{}}', ['people: no list of people']],
    ['no person', '{"people":[3]}', ['people[0]: no person']],
    [
      'an id with a space',
      '{"people":[{"id":"a b"}]}',
      ['people[0].id: wants 1 to 64 letters, digits, or -_.'],
    ],
    ['no id', '{"people":[{"name":"Ann"}]}', ['people[0].id: is missing']],
    ['an id twice', '{"people":[{"id":"a"},{"id":"a"}]}', ['people[1].id: stands twice']],
    [
      'all at once',
      '{"people":[{"id":"a","name":3,"age":9},{"id":""}],"on":1}',
      [
        'on: no such field',
        'people[0].age: no such field',
        'people[0].name: no text',
        'people[1].id: wants 1 to 64 letters, digits, or -_.',
      ],
    ],
  ])('that is none is refused: %s', (_, text, want) => {
    expect(faults(text)).toEqual(want);
  });
});
