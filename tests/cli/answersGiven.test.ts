/** The shapes in which `register answer` takes the answers to a sheet. */
import { describe, expect, test } from 'vitest';
import { answersGiven } from '../../src/cli/register/answersGiven.ts';
import { GivenError } from '../../src/trade/given.ts';

const places = [
  { place: 1, family: 'cut', seed: 'a-sheet/12/1' },
  { place: 2, family: 'cut', seed: 'a-sheet/12/2' },
  { place: 3, family: 'read', seed: 'a-sheet/12/3' },
];
const all = [{ cut: 1 }, { cut: '2\'-0"' }, { tape: 3 }];
const carried = places.map(({ family, seed }, i) => ({ family, seed, answers: all[i] }));

describe('answers come to the same', () => {
  const byPlace = { 1: all[0], 2: all[1], 3: all[2] };
  test.each([
    ['by place', byPlace],
    ['by place, under answers', { answers: byPlace }],
    ['by seed', Object.fromEntries(carried.map(({ seed, answers }) => [seed, answers]))],
    ['in order', all],
    ['in order, under answers', { answers: all }],
    ['as an answers file carries them', carried],
    ['in another order', [...carried].reverse()],
    ['without the family', carried.map(({ family: _, ...rest }) => rest)],
  ])('%s', (_, given) => expect(answersGiven(given, places)).toEqual(carried));

  test.each([
    ['nothing', {}, [{}, {}, {}]],
    ['an empty list', [], [{}, {}, {}]],
    ['one place', { 2: { cut: 5 } }, [{}, { cut: 5 }, {}]],
    ['the first alone', [{ cut: 5 }], [{ cut: 5 }, {}, {}]],
  ])('%s leaves the rest blank', (_, given, found) =>
    expect(answersGiven(given, places).map(({ answers }) => answers)).toEqual(found),
  );
});

const fieldsOf = (given: unknown): readonly string[] => {
  try {
    answersGiven(given, places);
    return [];
  } catch (cause) {
    if (!(cause instanceof GivenError)) throw cause;
    return cause.faults.map(({ field }) => field);
  }
};

test.each([
  ['a place beyond the last', { 4: {} }, ['answers.4']],
  ['a place 0', { 0: {} }, ['answers.0']],
  ['a place written otherwise', { '01': {} }, ['answers.01']],
  ['one answer too many', [{}, {}, {}, {}], ['answers[3]']],
  ['no answers at a place', { 3: 12 }, ['answers.3']],
  ['a list at a place', { 3: [] }, ['answers.3']],
  ['no answers at all', 'twelve', ['answers']],
  ['null', null, ['answers']],
  ['a draw twice', [carried[0], carried[0]], ['answers[1].seed']],
  ['a place and its seed', { 1: {}, 'a-sheet/12/1': {} }, ['answers.a-sheet/12/1']],
  ['another bench', [{ seed: 'a-sheet/13/1', answers: {} }], ['answers[0].seed']],
  ['another family', [{ family: 'read', seed: 'a-sheet/12/1', answers: {} }], ['answers[0].seed']],
  ['a field beside', { answers: {}, grade: 100 }, ['answers.grade']],
  ['a field in an entry', [{ ...carried[0], verdict: 'holds' }], ['answers[0].verdict']],
  ['several at once', { 3: 12, 4: {} }, ['answers.3', 'answers.4']],
])('%s is refused', (_, given, fields) => expect(fieldsOf(given)).toEqual(fields));
