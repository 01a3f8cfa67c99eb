/** Tries brought back to the page of a family: which draw it opens with, and how often anything is drawn. */
import { describe, expect, test } from 'vitest';
import type { Attempt } from '../../src/practice/attempts.ts';
import { GENERATOR, SEED_SIGNS } from '../../src/practice/generator.ts';
import type { AnyModel } from '../../src/practice/model.ts';
import { askedSeed, givesWay, notes, opensWith, whatCame } from '../../src/site/islands/practice/tries.ts';
import { draw, family, language, world } from '../practice/means.ts';

const CUT = 'cut-with-insertion';
const right = (seed: string) => draw(CUT, seed).right;
let minute = 0;
const attempt = (seed: string, answers: Attempt['answers'], more: Partial<Attempt> = {}): Attempt => {
  minute += 1;
  const at = `2026-03-09T14:${String(minute % 60).padStart(2, '0')}:00.000Z`;
  return { family: CUT, seed, generator: GENERATOR, at, answers, ...more };
};

/** The grading of the page, with every seed that is drawn written down. */
function counted() {
  const drawn: string[] = [];
  const own = world.models.get(family(CUT).model) as AnyModel;
  // A draw asks for its facts once, however many tries of it came before.
  const model: AnyModel = {
    ...own,
    facts: (plan, given) => {
      drawn.push('draw');
      return own.facts(plan, given);
    },
  };
  const models = new Map([...world.models, [family(CUT).model, model]]);
  const once = () => {
    drawn.length = 0;
    opensWith('a-1', 'built', { before: [attempt('a-1', right('a-1'))] }, grading);
    return drawn.length;
  };
  const grading = { family: family(CUT), world: { ...world, models }, language };
  const each = once();
  drawn.length = 0;
  return { grading, draws: () => drawn.length / each };
}

describe('the draw that the address names', () => {
  test.each([
    ['', null],
    ['?draw=', null],
    [`?draw=${'x'.repeat(SEED_SIGNS)}`, 'x'.repeat(SEED_SIGNS)],
    [`?draw=${'x'.repeat(SEED_SIGNS + 1)}`, null],
    ['?draw=4172', '4172'],
  ])('%s', (search, seed) => expect(askedSeed(search)).toBe(seed));

  test('an older try without a seed that can be drawn opens nothing', () => {
    const { grading } = counted();
    const before = [attempt('a-1', right('a-1')), attempt('', {})];
    const tried = right('a-1');
    const back = { seed: 'a-1', tries: [tried], answers: tried };
    expect(opensWith(null, 'built', { before }, grading)).toEqual(back);
    expect(opensWith('b-2', 'built', { before }, grading)).toEqual({ seed: 'b-2', tries: [], answers: {} });
    const none = { seed: 'built', tries: [], answers: {} };
    expect(opensWith(null, 'built', { before: [] }, grading)).toEqual(none);
  });
});

describe('answers that were being given', () => {
  const { grading } = counted();
  const before = [attempt('a-1', right('a-1'))];
  const begun = { family: CUT, seed: 'a-2', generator: GENERATOR, answers: { cut: 40 } };

  test('open with their draw, and stand in its entries', () => {
    const opened = opensWith(null, 'built', { before, begun }, grading);
    expect(opened).toEqual({ seed: 'a-2', tries: [], answers: { cut: 40 } });
  });

  test('stand over what was given before at the same draw', () => {
    const again = { ...begun, seed: 'a-1' };
    const opened = opensWith(null, 'built', { before, begun: again }, grading);
    expect(opened).toEqual({ seed: 'a-1', tries: [right('a-1')], answers: { cut: 40 } });
  });

  test('wait while the address names another draw', () => {
    const opened = opensWith('a-1', 'built', { before, begun }, grading);
    expect(opened).toEqual({ seed: 'a-1', tries: [right('a-1')], answers: right('a-1') });
  });

  test.each([
    ['an ask that this edition does not have', { answers: { other: 40 } }],
    ['an answer of another kind', { answers: { cut: ['a', 'b'] } }],
    ['another generator', { generator: 'other' }],
    ['a seed that cannot be drawn', { seed: '' }],
  ])('are left where they are with %s', (_, unfit) => {
    const opened = opensWith(null, 'built', { before, begun: { ...begun, ...unfit } }, grading);
    expect(opened).toEqual({ seed: 'a-1', tries: [right('a-1')], answers: right('a-1') });
  });
});

test('answers that were begun give way to nothing but another draw that the address names', () => {
  expect(givesWay(true, null, 'built')).toBe(false);
  expect(givesWay(true, 'built', 'built')).toBe(false);
  expect(givesWay(true, 'other', 'built')).toBe(true);
  expect(givesWay(false, null, 'built')).toBe(true);
});

describe('drawn once a draw', () => {
  const before = [
    ...['a-1', 'a-1', 'a-2', 'a-2', 'a-2'].map((seed) => attempt(seed, right(seed))),
    attempt('a-1', { cut: 1 }),
    attempt('a-1', { cut: 'long' }),
  ];

  test('to open with, however many tries there are', () => {
    const { grading, draws } = counted();
    expect(opensWith('a-1', 'built', { before }, grading).tries).toEqual([
      right('a-1'),
      right('a-1'),
      { cut: 1 },
    ]);
    expect(draws()).toBe(1);
  });

  test('for notes, a draw a step; what has its note costs nothing', () => {
    const { grading, draws } = counted();
    const noted = notes([...before, attempt('a-3', right('a-3'), { came: 'passed' })], grading);
    expect(draws()).toBe(0);
    const first = noted.next();
    expect(draws()).toBe(1);
    expect(first.value).toMatchObject([{ came: 'passed' }, { came: 'passed' }, { came: 'not' }]);
    expect([...noted].flat().map(({ seed, came }) => [seed, came])).toEqual(
      Array.from({ length: 3 }, () => ['a-2', 'passed']),
    );
    expect(draws()).toBe(2);
  });

  test('no tries, no draw', () => {
    const { grading, draws } = counted();
    expect(whatCame('a-1', [], grading)).toEqual([]);
    expect(draws()).toBe(0);
  });
});
