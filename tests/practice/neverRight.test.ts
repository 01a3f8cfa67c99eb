/**
 * No option is there only to be struck out: over many draws each is right at least once, or is listed with its reason in
 * neverRight.ts. What is listed is a mistake that somebody makes, and is right in none.
 */
import { describe, expect, test } from 'vitest';
import type { Ask, AuthoredFamily } from '../../src/practice/family.ts';
import type { Answer } from '../../src/practice/model.ts';
import { draw, families } from './means.ts';
import { NEVER_RIGHT } from './neverRight.ts';

const SEEDS = 200;
const REPLIES = ['go', 'ask', 'stop'];

/** What is chosen from: `ask`, or `ask.part` of a job, and the ids of the options. */
interface Chosen {
  readonly at: readonly string[];
  readonly options: readonly string[];
}
function chosenIn(ask: Ask, before: readonly string[] = []): readonly Chosen[] {
  const at = [...before, ask.id];
  if (ask.kind === 'job') return ask.parts.flatMap((part) => chosenIn(part as Ask, at));
  if (ask.kind === 'stop') return [{ at, options: REPLIES }];
  return 'options' in ask ? [{ at, options: ask.options.map(({ id }) => id) }] : [];
}
const answerAt = (right: unknown, at: readonly string[]) =>
  at.reduce((of, id) => (of as Readonly<Record<string, unknown>>)[id], right) as Answer;

interface Never {
  readonly ask: string;
  readonly option: string;
}
function neverRight(family: AuthoredFamily): readonly Never[] {
  const chosen = family.asks.flatMap((ask) => chosenIn(ask));
  const draws = Array.from({ length: SEEDS }, (_, i) => draw(family.id, `option-${i}`));
  return chosen.flatMap(({ at, options }) => {
    const right = new Set(draws.map((one) => answerAt(one.right, at)));
    return options.filter((option) => !right.has(option)).map((option) => ({ ask: at.join('.'), option }));
  });
}

const choosing = [...families.values()].filter(({ asks }) => asks.some((ask) => chosenIn(ask).length > 0));
const listed = (id: string): readonly Never[] =>
  NEVER_RIGHT.filter(({ family }) => family === id).flatMap(({ ask, options }) =>
    options.map((option) => ({ ask, option })),
  );
const sorted = (all: readonly Never[]) => all.map(({ ask, option }) => `${ask}: ${option}`).sort();

describe('an option is right now and then, or never with a reason', () => {
  test.each(choosing)('$id', (family) =>
    expect(
      sorted(neverRight(family)),
      `${family.id}: let it draw a case in which the option is right, or say in neverRight.ts why there is none`,
    ).toEqual(sorted(listed(family.id))),
  );
});

test('asking first is never a mere distractor', () =>
  expect(NEVER_RIGHT.filter(({ options }) => options.includes('ask'))).toEqual([]));

test('what is listed is there, once, with a reason', () => {
  const ids = new Set(choosing.map(({ id }) => id));
  expect(NEVER_RIGHT.filter(({ family, why }) => !ids.has(family) || why.length < 30)).toEqual([]);
  const all = NEVER_RIGHT.map(({ family, ask }) => `${family} ${ask}`);
  expect(new Set(all).size).toBe(all.length);
});
