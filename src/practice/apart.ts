/** When two answers are the same, and whether the right and the wrong answers of a draw can be told apart. */
import type { Ask } from './family.ts';
import type { Answer, Answers } from './model.ts';

/** Slack for numbers that are no whole binary fraction; far below every tolerance. */
const SLACK = 1e-9;

/** Whether an answer is this one: numbers within the tolerance, both ends included. */
export function sameAnswer(ask: Ask, given: Answer, wanted: Answer): boolean {
  if (ask.kind === 'number') return Math.abs((given as number) - (wanted as number)) <= ask.tolerance + SLACK;
  if (ask.kind === 'choice') return given === wanted;
  return (given as readonly string[]).join('\n') === (wanted as readonly string[]).join('\n');
}

/** Outside the tolerance and within twice of it. */
export function nearAnswer(ask: Ask, given: Answer, wanted: Answer): boolean {
  if (ask.kind !== 'number') return false;
  const out = Math.abs((given as number) - (wanted as number));
  return out > ask.tolerance + SLACK && out <= 2 * ask.tolerance + SLACK;
}

/** Whether two answers are far enough from each other that no answer could be taken for both. */
export function apart(ask: Ask, one: Answer, other: Answer): boolean {
  if (ask.kind !== 'number') return !sameAnswer(ask, one, other);
  return Math.abs((one as number) - (other as number)) > 2 * ask.tolerance + SLACK;
}

/** Whether on every ask the right answer and those of all mistakes stand apart, each from each. */
export function answersApart(draw: {
  readonly family: { readonly asks: readonly Ask[] };
  readonly right: Answers;
  readonly wrong: readonly { readonly ask: string; readonly answer: Answer }[];
}): boolean {
  return draw.family.asks.every((ask) => {
    const all = [
      draw.right[ask.id] as Answer,
      ...draw.wrong.filter((w) => w.ask === ask.id).map((w) => w.answer),
    ];
    return all.every((one, i) => all.slice(i + 1).every((other) => apart(ask, one, other)));
  });
}
