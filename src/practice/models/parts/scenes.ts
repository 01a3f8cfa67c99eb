/**
 * Scenes of a job, each to be answered by going on, asking first, or stopping. A family draws some scenes of a pool,
 * with the numbers that stand in them; what is right follows from those numbers. A slip is a habit (`finishFirst`):
 * it changes what is done in the scenes it has to do with, and in no other. Stopping where asking was enough holds,
 * and where the work may go on nothing is critical: nobody is ever blamed for a stop.
 */
import type { Say, Step } from '../../../trade/answer.ts';
import { fromInches, type Ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import {
  type AnyModel,
  type Drawn,
  type Fact,
  type Facts,
  type ModelAsk,
  model,
  type Slip,
  type Wants,
} from '../../model.ts';

export type Reply = 'go' | 'ask' | 'stop';

export interface Scene<D> {
  /** What is done by someone with this habit; `null`: by one who does it right. */
  readonly reply: (drawn: D, habit: string | null) => Reply;
  /** Habits that may show in this scene, gravest first. */
  readonly habits: readonly string[];
  /** What is seen, and what it is held against, for the working; `null` where it is not the number that decides. */
  readonly against?: (drawn: D) => readonly [seen: string, limit: string] | null;
}

/** The same whatever is drawn; who has the habit goes on. */
export const always = <D>(right: Reply, habit?: string): Scene<D> => ({
  reply: (_, shown) => (shown !== null && shown === habit ? 'go' : right),
  habits: habit === undefined ? [] : [habit],
});
export const mustStop = <D>(habit: string): Scene<D> => always('stop', habit);
export const mustAsk = <D>(habit: string): Scene<D> => always('ask', habit);
export const mayGo = <D>(): Scene<D> => always('go');

/** A number held against a limit: `right` beyond it, go within it. Each habit has a limit of its own. */
export interface Held<D> {
  readonly seen: (drawn: D) => number;
  readonly limit: (drawn: D) => number;
  /** The side on which it no longer holds; at the limit itself as `atLimit` says. */
  readonly beyond: 'above' | 'below';
  readonly atLimit: 'holds' | 'fails';
  readonly right: 'ask' | 'stop';
  /** What is written behind the number; `sixteenths` of an inch are written as a length. */
  readonly unit: string;
  readonly habits: Readonly<Record<string, (drawn: D) => number>>;
}
export function heldAgainst<D>(held: Held<D>): Scene<D> {
  const { seen, limit, beyond, atLimit, right, unit, habits } = held;
  const fails = (n: number, at: number) =>
    n === at ? atLimit === 'fails' : beyond === 'above' ? n > at : n < at;
  return {
    reply: (drawn, habit) => {
      const own = habit === null ? undefined : habits[habit];
      return fails(seen(drawn), (own ?? limit)(drawn)) ? right : 'go';
    },
    habits: Object.keys(habits),
    against: (drawn) => [said(seen(drawn), unit), said(limit(drawn), unit)],
  };
}

const sixteenths = (n: number): Ticks => fromInches(n / 16);
const said = (n: number, unit: string) =>
  unit === 'sixteenths' ? shortLength(sixteenths(n)) : `${Number(n.toFixed(2))} ${unit}`;

/** What anyone may do in any scene: each has its mistake in every family. */
const ANYWHERE: Readonly<Record<string, readonly [from: Reply, to: Reply]>> = {
  /** The numbers allow it, and it is asked all the same. */
  asksAnyway: ['go', 'ask'],
  stopsAnyway: ['go', 'stop'],
  /** Asks and stays at it, where everything must stand still first. */
  onlyAsks: ['stop', 'ask'],
};

const SAYS: Readonly<Record<Reply, Say['say']>> = {
  go: 'working.sceneGo',
  ask: 'working.sceneAsk',
  stop: 'working.sceneStop',
};
const AGAINST: Readonly<Record<Reply, Say['say']>> = {
  go: 'working.againstGo',
  ask: 'working.againstAsk',
  stop: 'working.againstStop',
};

interface Plan<D> {
  readonly drawn: D;
  /** Scenes in the order in which they are asked. */
  readonly shown: readonly string[];
  readonly habit: string | null;
}

interface Made<W extends Wants> {
  /** What is drawn beside the scenes. */
  readonly wants: W;
  /** How many scenes a draw shows: asks `scene-1` and so on. */
  readonly asks: number;
  readonly scenes: Readonly<Record<string, Scene<Drawn<W>>>>;
  /** Facts beside what is drawn: limits, and what follows from the values. */
  readonly beside?: (drawn: Drawn<W>) => Readonly<Record<string, number>>;
  /** Of what is drawn, whole sixteenths of an inch: told as lengths. */
  readonly sixteenths?: readonly (keyof W & string)[];
  /** Whether these values leave no doubt; left out, all do. */
  readonly clear?: (drawn: Drawn<W>) => boolean;
}

/** Numbers and words of a draw, and fixed limits, as facts by their own names. */
function factsOf(values: object): Facts {
  const facts: Record<string, Fact> = {};
  for (const [name, value] of Object.entries(values as Record<string, unknown>)) {
    if (typeof value === 'number') facts[name] = { kind: 'number', value };
    if (typeof value === 'string') facts[name] = { kind: 'word', value };
  }
  return facts;
}

/** Of these, sixteenths of an inch, as lengths. */
function lengthsOf(values: object, names: readonly string[]): Facts {
  const drawn = values as Readonly<Record<string, number>>;
  return Object.fromEntries(
    names.map((name) => [name, { kind: 'length', ticks: sixteenths(drawn[name] ?? 0) }]),
  );
}

/** The model of a family of scenes: it draws `scenes` and what `wants` names. */
export function scenesModel<const W extends Wants>({
  wants,
  asks,
  scenes,
  beside,
  sixteenths: lengths = [],
  clear,
}: Made<W>): AnyModel {
  type D = Drawn<W>;
  type P = Plan<D>;
  const sceneAt = (plan: P, i: number) => {
    const found = scenes[plan.shown[i] ?? ''];
    if (found === undefined) throw new Error(`no scene ${plan.shown[i]}`);
    return found;
  };
  const replyBy = (plan: P, i: number, habit: string | null): Reply => {
    const scene = sceneAt(plan, i);
    const right = scene.reply(plan.drawn, null);
    if (habit === null) return right;
    const general = ANYWHERE[habit];
    if (general !== undefined) return general[0] === right ? general[1] : right;
    return scene.reply(plan.drawn, habit);
  };
  /** Whether this habit shows here, and no graver one leads to the same. */
  const shows = (plan: P, i: number, habit: string): boolean => {
    const done = replyBy(plan, i, habit);
    const all = [...sceneAt(plan, i).habits, ...Object.keys(ANYWHERE)];
    return done !== replyBy(plan, i, null) && all.find((one) => replyBy(plan, i, one) === done) === habit;
  };
  const places = Array.from({ length: asks }, (_, i) => i);

  const ask = (i: number): ModelAsk<P> => ({
    kind: 'stop',
    answer: (plan) => replyBy(plan, i, plan.habit),
    critical: (plan) => replyBy(plan, i, null) !== 'go',
    touched: (taken) => taken.habit !== null && shows(taken, i, taken.habit),
    holds: (plan, _, given) => {
      const right = replyBy(plan, i, null);
      return given === right || (right === 'ask' && given === 'stop');
    },
    steps: (plan): readonly Step[] => {
      const right = replyBy(plan, i, null);
      const held = sceneAt(plan, i).against?.(plan.drawn);
      const values = { number: i + 1 };
      if (held === undefined || held === null) return [{ say: SAYS[right], values }];
      return [{ say: AGAINST[right], values: { ...values, seen: held[0], limit: held[1] } }];
    },
  });
  const slip =
    (habit: string): Slip<P> =>
    (plan) =>
      places.some((i) => shows(plan, i, habit)) ? { ...plan, habit } : null;
  const habits = new Set([...Object.values(scenes).flatMap((s) => s.habits), ...Object.keys(ANYWHERE)]);
  const all = { scenes: 'some', ...wants } as const;

  return model<typeof all, P>({
    wants: all,
    plan: (values, _, family) => {
      const { scenes: shown, ...drawn } = values as unknown as { scenes: readonly string[] } & D;
      const made: P = { drawn: drawn as unknown as D, shown, habit: null };
      if (clear !== undefined && !clear(made.drawn)) return null;
      const right = places.map((i) => replyBy(made, i, null));
      const goes = right.filter((one) => one === 'go').length;
      // One answer for all of them must never do: stopped, or gone on.
      const stopsReach = 100 * (asks - goes) >= family.mark * asks;
      return stopsReach || goes === asks ? null : made;
    },
    facts: ({ drawn, shown }) => ({
      // A given that is a rule in words and no number.
      rule: { kind: 'word', value: 'rule' },
      ...factsOf({ ...beside?.(drawn), ...(drawn as object) }),
      ...lengthsOf(drawn as object, lengths),
      ...Object.fromEntries(
        shown.map((value, i) => [`scene${i + 1}`, { kind: 'word', value, words: 'scene' }] as const),
      ),
    }),
    asks: Object.fromEntries(places.map((i) => [`scene-${i + 1}`, ask(i)])),
    slips: Object.fromEntries([...habits].map((habit) => [habit, slip(habit)])),
    figures: () => [],
    figured: () => [],
    says: [...Object.values(SAYS), ...Object.values(AGAINST)],
  });
}
