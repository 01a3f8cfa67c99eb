/**
 * Orders of work: steps of a job in a chance order, to be put right. What must come before what stands in the family's
 * file; any order that keeps to it holds. A slip does one step too late. `stepsModel` is the model of every family that
 * is an order and nothing besides; its families draw `steps` and one `setting`, whose words are in their file.
 */
import type { Family, Precedence } from '../../family.ts';
import { type Drawn, type ModelAsk, model, type Slip } from '../../model.ts';

export interface Ordered {
  /** As shown to the person. */
  readonly shown: readonly string[];
  readonly precedence: readonly Precedence[];
  /** As the person does them. */
  readonly order: readonly string[];
}

/** Every pair in which the first must come before the second, however many steps lie between. */
export function everyPrecedence(steps: readonly string[], direct: readonly Precedence[]): Precedence[] {
  const behind = (step: string): ReadonlySet<string> =>
    new Set(direct.filter(([before]) => before === step).flatMap(([, after]) => [after, ...behind(after)]));
  return steps.flatMap((step) =>
    [...behind(step)].filter((after) => steps.includes(after)).map((after): Precedence => [step, after]),
  );
}

/** Whether an order keeps to every precedence among its steps. */
export function keeps(order: readonly string[], precedence: readonly Precedence[]): boolean {
  return precedence.every(([before, after]) => order.indexOf(before) < order.indexOf(after));
}

/**
 * The steps drawn, held against the order ask of the family; null where they already stand in an order that holds,
 * which would show the answer.
 * @throws {Error} when the family asks for no order: its check finds that
 */
export function orderedFrom(steps: readonly string[], family: Family): Ordered | null {
  const ask = family.asks.find((one) => one.kind === 'order');
  if (ask === undefined) throw new Error(`${family.id}: it asks for no order`);
  const precedence = everyPrecedence(steps, ask.precedence);
  if (keeps(steps, precedence)) return null;
  const order = ask.items.map(({ id }) => id).filter((step) => steps.includes(step));
  return { shown: steps, precedence, order };
}

/** Does the step `late` directly after the step `early`, before which it belongs; all else stays as it is. */
export function tooLate<Plan extends Ordered>(): Slip<Plan> {
  return (plan, _, { early = '', late = '' }) => {
    if (!plan.shown.includes(early) || !plan.shown.includes(late)) return null;
    const rest = plan.order.filter((step) => step !== late);
    const behind = rest.indexOf(early) + 1;
    return { ...plan, order: [...rest.slice(0, behind), late, ...rest.slice(behind)] };
  };
}

/** The ask for an order; its working is the order itself, a step a line. */
export function orderAsk<Plan extends Ordered>(): ModelAsk<Plan> {
  return {
    kind: 'order',
    answer: (plan) => plan.order,
    steps: (plan) =>
      plan.order.map((item, i) => ({ say: 'practice.orderStep', values: { number: i + 1, item } })),
    order: ({ shown, precedence }) => ({ shown, precedence }),
  };
}

const wants = { steps: 'some', setting: 'some' } as const;
interface Plan extends Ordered {
  readonly setting: string;
}

function plan({ steps, setting }: Drawn<typeof wants>, _: unknown, family: Family): Plan | null {
  const made = orderedFrom(steps, family);
  const [where] = setting;
  return made === null || where === undefined ? null : { ...made, setting: where };
}

export const stepsModel = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ setting, shown }) => ({
    setting: { kind: 'word', value: setting },
    count: { kind: 'number', value: shown.length },
  }),
  asks: { order: orderAsk() },
  slips: { tooLate: tooLate() },
  figures: () => [],
  figured: () => [],
  says: [],
});
