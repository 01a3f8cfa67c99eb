/** The answers of a draw, where each mistake leads, and the working. */
import type { Step } from '../trade/answer.ts';
import { askOf, criticalIn, type Draw } from './draw.ts';
import type { Answer, Answers, World } from './model.ts';
import { type Language, textOf, textsOf } from './words.ts';

export interface Key {
  readonly answers: Answers;
  readonly mistakes: readonly {
    readonly id: string;
    readonly ask: string;
    readonly answer: Answer;
    readonly says: string;
  }[];
  /** The working of the right answers, a line each, in the order of the asks. */
  readonly working: readonly string[];
  /** Asks that must hold in this draw. */
  readonly critical: readonly string[];
}

export function keyOf(draw: Draw, world: World, { lang, speak }: Language): Key {
  const texts = textsOf(draw, lang);
  return {
    answers: draw.right,
    mistakes: draw.wrong.map(({ mistake, ask, answer }) => ({
      id: mistake.id,
      ask,
      answer,
      says: textOf(mistake.says, lang, texts),
    })),
    working: draw.family.asks.flatMap((ask) =>
      ask.kind === 'order'
        ? inOrder(draw, ask.id, lang, speak)
        : askOf(draw.model, ask.id)
            .steps(draw.plan, world)
            .map((step) => line(step, speak)),
    ),
    critical: criticalIn(draw, world),
  };
}

/** A step as one line; where it ends in a number, the number behind its sentence, to at most four decimals. */
function line(step: Step, speak: Language['speak']): string {
  const { value, unit } = step;
  if (value === undefined) return speak(step);
  const number = typeof value === 'number' ? Number(value.toFixed(4)) : value;
  const named = unit === undefined ? [] : [speak({ say: `unit.${unit}` })];
  return [speak(step).replace(/\.$/, ':'), number, ...named].join(' ');
}

/** One order that holds, numbered. */
function inOrder(draw: Draw, id: string, lang: string, speak: Language['speak']): readonly string[] {
  const ask = draw.family.asks.find((a) => a.id === id);
  if (ask?.kind !== 'order') return [];
  return (draw.right[id] as readonly string[]).map((item, i) => {
    const text = ask.items.find((one) => one.id === item)?.text ?? {};
    return speak({ say: 'practice.orderStep', values: { number: i + 1, item: textOf(text, lang, {}) } });
  });
}
