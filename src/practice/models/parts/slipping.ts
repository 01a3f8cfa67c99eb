/**
 * A model of jobs whose asks a slip may touch or leave alone. The model's author writes the job as a person takes it, the
 * answers that follow from it, and slips that change it; here it is seen to that a slip counts only where it leads to
 * another answer, and on an ask of a few options only where no graver slip leads to the same option: the others are told
 * apart by the asks beside it.
 */
import {
  type Answer,
  type AnyModel,
  type Model,
  type ModelAsk,
  model,
  type Slip,
  type Wants,
  type World,
} from '../../model.ts';

interface Taken<Job> {
  readonly right: Job;
  readonly taken: Job;
  /** Of the slips that were made, the first. */
  readonly by: string | null;
}

type JobAsk<Job> = Omit<ModelAsk<Job>, 'touched'>;
/** As a model; slips in the order of their gravity. */
type Made<W extends Wants, Job> = Omit<Model<W, Job>, 'asks'> & {
  readonly asks: Readonly<Record<string, JobAsk<Job>>>;
};

/** Kinds of which every answer is one of a few; a reading is where an option is read. */
const FEW: ReadonlySet<string> = new Set(['choice', 'stop']);
const isFew = (kind: string, answer: Answer) =>
  FEW.has(kind) || (kind === 'reading' && typeof answer === 'string');
const HAIR = 1e-9;
const same = (one: Answer, other: Answer) =>
  typeof one === 'number' && typeof other === 'number'
    ? Math.abs(one - other) <= HAIR
    : JSON.stringify(one) === JSON.stringify(other);

export function slippingModel<const W extends Wants, Job>(made: Made<W, Job>): AnyModel {
  type P = Taken<Job>;
  /** What a slip leads to on an ask; undefined where it cannot be made. */
  const led = (name: string, ask: JobAsk<Job>, { right }: P, world: World): Answer | undefined => {
    const job = made.slips[name]?.(right, world, {}) ?? null;
    return job === null ? undefined : ask.answer(job, world);
  };
  const touches = (ask: JobAsk<Job>, plan: P, world: World): boolean => {
    const answer = ask.answer(plan.taken, world);
    if (same(answer, ask.answer(plan.right, world))) return false;
    if (!isFew(ask.kind, answer) || plan.by === null) return true;
    const graver = Object.keys(made.slips);
    return graver.slice(0, graver.indexOf(plan.by)).every((name) => {
      const other = led(name, ask, plan, world);
      return other === undefined || !same(other, answer);
    });
  };
  const asks = Object.entries(made.asks).map(([id, ask]): [string, ModelAsk<WithWorld<P>>] => {
    const { follows, critical, holds, blames, notes } = ask;
    return [
      id,
      {
        kind: ask.kind,
        answer: ({ taken }, world) => ask.answer(taken, world),
        steps: ({ right }, world) => ask.steps(right, world),
        touched: (plan) => touches(ask, plan, plan.world),
        ...(follows === undefined
          ? {}
          : {
              follows: {
                asks: follows.asks,
                answer: ({ right }, world, earlier) => follows.answer(right, world, earlier),
              },
            }),
        ...(holds === undefined
          ? {}
          : { holds: ({ right }, world, given, own) => holds(right, world, given, own) }),
        ...(blames === undefined
          ? {}
          : { blames: ({ right }, world, given, own) => blames(right, world, given, own) }),
        ...(critical === undefined ? {} : { critical: ({ right }, world) => critical(right, world) }),
        ...(notes === undefined ? {} : { notes: ({ right }, world, given) => notes(right, world, given) }),
      },
    ];
  });
  const slips = Object.entries(made.slips).map(([name, slip]): [string, Slip<WithWorld<P>>] => [
    name,
    (plan, world, told) => {
      const taken = slip(plan.taken, world, told);
      if (taken === null) return null;
      const next = { ...plan, taken, by: plan.by ?? name };
      return Object.values(made.asks).some((ask) => touches(ask, next, world)) ? next : null;
    },
  ]);
  return model<W, WithWorld<P>>({
    ...made,
    plan: (drawn, world, family) => {
      const right = made.plan(drawn, world, family);
      return right === null ? null : { right, taken: right, by: null, world };
    },
    facts: ({ right }, world) => made.facts(right, world),
    asks: Object.fromEntries(asks),
    slips: Object.fromEntries(slips),
    figures: ({ right }, world, how) => made.figures(right, world, how),
    figured: ({ right }, world) => made.figured(right, world),
  });
}

/** `touched` is asked without the world. */
type WithWorld<P> = P & { readonly world: World };
