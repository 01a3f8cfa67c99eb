/** Whether the right and the wrong answers of a draw can be told apart. */
import type { Ask } from './family.ts';
import { kindOf } from './kinds/index.ts';
import type { Answer, Answers } from './model.ts';

/** Whether on every ask the right answer and those of all mistakes stand apart, each from each. */
export function answersApart(draw: {
  readonly family: { readonly asks: readonly Ask[] };
  readonly right: Answers;
  readonly wrong: readonly { readonly ask: string; readonly answer: Answer }[];
}): boolean {
  return draw.family.asks.every((ask) => {
    const kind = kindOf(ask);
    const all = [
      draw.right[ask.id] as Answer,
      ...draw.wrong.filter((w) => w.ask === ask.id).map((w) => w.answer),
    ];
    return all.every((one, i) => all.slice(i + 1).every((other) => kind.apart(ask, one, other)));
  });
}
