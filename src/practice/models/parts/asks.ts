/** Facts and asks in short, for models that have several of each. */
import type { Step } from '../../../trade/answer.ts';
import type { Ticks } from '../../../trade/length.ts';
import type { Answers, Fact, Facts, ModelAsk, World } from '../../model.ts';

/** `words`: the family's words that say it, where those do not have the fact's own name. */
export const word = (value: string, words?: string): Fact => ({
  kind: 'word',
  value,
  ...(words === undefined ? {} : { words }),
});
export const num = (value: number, decimals?: number): Fact => ({
  kind: 'number',
  value,
  text: decimals === undefined ? String(value) : value.toFixed(decimals),
});
export const long = (ticks: Ticks): Fact => ({ kind: 'length', ticks });
export const rows = (list: readonly Facts[]): Fact => ({ kind: 'rows', rows: list });

type Of<Plan, A> = (plan: Plan, world: World) => A;
/** The answer that is right for what was answered to earlier asks. */
export interface Follows<Plan> {
  readonly asks: readonly string[];
  readonly answer: (plan: Plan, world: World, earlier: Answers) => string | number | null;
}

export const numberAsk = <Plan>(
  answer: Of<Plan, number>,
  steps: Of<Plan, readonly Step[]>,
  follows?: Follows<Plan>,
): ModelAsk<Plan> => ({ kind: 'number', answer, steps, ...(follows === undefined ? {} : { follows }) });

/** Many roads lead to the same choice: a slip has to do with it only where it leads to another. */
export const choiceAsk = <Plan>(
  answer: Of<Plan, string>,
  steps: Of<Plan, readonly Step[]> = () => [],
  follows?: Follows<Plan>,
): ModelAsk<Plan> => ({
  kind: 'choice',
  answer,
  steps,
  touched: (taken, world, plan) => answer(taken, world) !== answer(plan, world),
  ...(follows === undefined ? {} : { follows }),
});
