/** Names of people where something is signed: the id beside the name, and a name that is written for an id. */
import { describe, expect, test } from 'vitest';
import { peopleOfText } from '../../src/register/people.ts';
import { idsOfName, named } from '../../src/site/people.ts';

const people = peopleOfText(
  JSON.stringify({
    people: [
      { id: 'p-ap', name: 'Ann Pell' },
      { id: 'p-bo', name: 'Bo Lind' },
      { id: 'p-b2', name: 'Bo Lind' },
      { id: 'p-x', name: 'p-ap' },
    ],
  }),
);
const both = ({ name, id }: { readonly name: string; readonly id: string }) => `${name} (${id})`;

describe('a name and its id', () => {
  test('stand together, and the id alone where nobody has named it', () => {
    expect(named('p-ap', people.names, both)).toBe('Ann Pell (p-ap)');
    expect(named('p-17', people.names, both)).toBe('p-17');
  });
});

describe('a name that is written for an id', () => {
  test.each([
    ['Ann Pell', ['p-ap']],
    ['  ann   PELL ', ['p-ap']],
    ['Bo Lind', ['p-bo', 'p-b2']],
    ['Ann', []],
    ['Ann Pell Jr', []],
    ['', []],
    ['p-bo', []],
    ['p-ap', []],
    ['p-17', []],
  ])('%j is of %j', (text, ids) => {
    expect(idsOfName(text, people, ['p-17'])).toEqual(ids);
  });

  test('an id that the register knows is an id, whatever somebody is called', () => {
    expect(idsOfName('Ann Pell', people, ['Ann Pell'])).toEqual([]);
  });
});
