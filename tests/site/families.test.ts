import { expect, test } from 'vitest';
import type { Library } from '../../src/schema/library.ts';
import { familiesOf, practiceNumber } from '../../src/site/families.ts';

const two = (k: number) => String(k).padStart(2, '0');
const made: readonly (readonly [id: string, task: string])[] = [
  ...Array.from({ length: 53 }, (_, k) => [`f${two(k)}`, 'T05'] as const),
  ['head', 'T08'],
  ['head-more', 'T08'],
  ['part', 'T08a'],
  ['part-more', 'T08a'],
  ['part-b', 'T08b'],
  ['hot', 'W3'],
  ['hot-more', 'W3'],
];
const library = {
  // Numbered as they come within their task; the order of the file says nothing.
  scenarios: new Map(
    made
      .map(([id, task], k) => {
        const number = made.slice(0, k + 1).filter(([, one]) => one === task).length;
        return [id, { id, number, tasks: [task] }] as const;
      })
      .reverse(),
  ),
  tasks: new Map([
    ['T05', { parts: [] }],
    ['T08', { parts: ['T08a', 'T08b'] }],
  ]),
} as unknown as Library;

test.each([
  ['f00', 'TH-P05'],
  ['f01', 'TH-P05b'],
  ['f25', 'TH-P05z'],
  ['f26', 'TH-P05aa'],
  ['f51', 'TH-P05az'],
  ['f52', 'TH-P05ba'],
  ['head', 'TH-P08'],
  ['head-more', 'TH-P08-2'],
  ['part', 'TH-P08a'],
  ['part-more', 'TH-P08a-2'],
  ['part-b', 'TH-P08b'],
  ['hot', 'TH-PW3'],
  ['hot-more', 'TH-PW3b'],
])('%s is %s', (id, number) => expect(practiceNumber(library, id)).toBe(number));

test('no two families go by one number', () => {
  const numbers = familiesOf(library).map(({ id }) => practiceNumber(library, id));
  expect(new Set(numbers).size).toBe(made.length);
});

test('by their first task, then by their numbers', () => {
  expect(familiesOf(library).map(({ id }) => id)).toEqual(made.map(([id]) => id));
});
