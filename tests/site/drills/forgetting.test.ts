/** Names of people who were erased, taken out of the names that a device keeps. */
import { expect, test } from 'vitest';
import { peopleOfText } from '../../../src/register/people.ts';
import { namesWithout } from '../../../src/site/drills/forgetting.ts';

const text = '\uFEFF{"people":[{"id":"P1","name":"Dana Mott"},{"id":"P2"},{"id":"P10","name":"Ray Cole"}]}';

test('an erased person is taken out, whoever is not stays, and what names no such person is not touched', () => {
  const left = namesWithout(text, new Set(['P1', 'P2'])) ?? '';
  expect(peopleOfText(left)).toEqual({ ids: ['P10'], names: new Map([['P10', 'Ray Cole']]) });
  expect(left).not.toContain('Dana');
  expect(namesWithout(text, new Set(['P3']))).toBe(text);
  expect(peopleOfText(namesWithout(text, new Set(['P1', 'P2', 'P10'])) ?? '').ids).toEqual([]);
});

test.each(['', '{', '[]', '{"people":7}', '"P1"'])('%j says of nobody whom it names: it goes', (odd) => {
  expect(namesWithout(odd, new Set(['P1']))).toBeUndefined();
});
