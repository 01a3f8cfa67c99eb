/**
 * What the families of one piece between two ends share: the length it is cut to, which of its ends go in, and the
 * ways in which a person takes an end wrongly. Every sum is the run's own (`cutBetween`).
 */
import { type CutEnd, cutBetween } from '../../../run/pieces.ts';
import type { Step } from '../../../trade/answer.ts';
import { formatLength, fromInches, inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';

export type Pair<T> = readonly [T, T];

/** A piece between two places as the person takes it; `extra` comes on or goes off without a reason in the ends. */
export interface Between {
  readonly distance: Ticks;
  readonly ends: Pair<CutEnd>;
  readonly extra: Ticks;
}

export const NONE = ticks(0);
/** An end that butts or stands free, where it was measured to. */
export const PLAIN: CutEnd = { takeOut: NONE, insertion: NONE, share: NONE };

export const cutOf = ({ distance, ends, extra }: Between): Ticks => ticks(cutBetween(distance, ends) + extra);

/** Which ends go into something: the ids of the choice. */
export function goesIn({ ends }: Between): string {
  const [first, second] = ends.map(({ insertion }) => insertion > 0);
  if (first) return second ? 'both' : 'first';
  return second ? 'second' : 'neither';
}

export const withEnds = <P extends Between>(plan: P, change: (end: CutEnd, i: 0 | 1) => CutEnd): P => ({
  ...plan,
  ends: [change(plan.ends[0], 0), change(plan.ends[1], 1)],
});
const count = ({ ends }: Between, part: 'insertion' | 'takeOut') =>
  ends.filter((end) => end[part] > 0).length;
const dropped =
  (part: 'insertion' | 'takeOut', at: readonly (0 | 1)[], least: 1 | 2) =>
  <P extends Between>(plan: P): P | null =>
    count(plan, part) < least
      ? null
      : withEnds(plan, (end, i) => (at.includes(i) ? { ...end, [part]: NONE } : end));

/** Nothing is added for what goes in. */
export const noInsertion = dropped('insertion', [0, 1], 1);
/** Both ends go in, and only the first one's insertion is added. */
export const firstInsertionOnly = dropped('insertion', [1], 2);
/** Both ends go in, and only the second one's insertion is added. */
export const secondInsertionOnly = dropped('insertion', [0], 2);
/** No take-out comes off: the working points are taken for faces. */
export const noTakeOut = dropped('takeOut', [0, 1], 1);
/** Both ends have a take-out, and only the first one's comes off. */
export const firstTakeOutOnly = dropped('takeOut', [1], 2);
/** Both ends have a take-out, and only the second one's comes off; the same as above where they are equal. */
export const secondTakeOutOnly = <P extends Between>(plan: P): P | null =>
  plan.ends[0].takeOut === plan.ends[1].takeOut ? null : dropped('takeOut', [0], 2)(plan);

/** What goes in is taken off. */
export const insertionTakenOff = <P extends Between>(plan: P): P | null =>
  count(plan, 'insertion') === 0
    ? null
    : withEnds(plan, (end) => ({ ...end, insertion: ticks(-end.insertion) }));

/** The end that goes into nothing is given the insertion of the other one. */
export const insertionAtBoth = <P extends Between>({ ends: [a, b], ...plan }: P): P | null =>
  count({ ...plan, ends: [a, b] }, 'insertion') !== 1
    ? null
    : ({ ...plan, ends: [given(a, b), given(b, a)] } as unknown as P);
const given = (end: CutEnd, other: CutEnd): CutEnd =>
  end.insertion > 0 ? end : { ...end, insertion: other.insertion };

/** One end goes in, and the insertion is given to the other: the same length, for a reason that fails next time. */
export const insertionAtOther = <P extends Between>(plan: P): P | null =>
  count(plan, 'insertion') !== 1
    ? null
    : withEnds(plan, (end, i) => ({ ...end, insertion: plan.ends[i === 0 ? 1 : 0].insertion }));

const say = (key: string, values: Record<string, string>): Step => ({ say: `measuring.${key}`, values });

/** One line an end: what goes in there. */
export const endSteps = ({ ends }: Between): readonly Step[] =>
  ends.map(({ insertion }, i) =>
    insertion > 0
      ? say('goesIn', { end: `${i + 1}`, length: shortLength(insertion) })
      : say('goesNowhere', { end: `${i + 1}` }),
  );

/** From the distance to the cut, a line each. */
export function cutSteps(plan: Between): readonly Step[] {
  const off = plan.ends.flatMap(({ takeOut, share }, i) => [
    ...(takeOut > 0 ? [say('takeOut', { end: `${i + 1}`, length: shortLength(takeOut) })] : []),
    ...(share > 0 ? [say('share', { end: `${i + 1}`, length: shortLength(share) })] : []),
  ]);
  return [
    say('distance', { length: formatLength(plan.distance) }),
    ...off,
    say('cut', { length: formatLength(cutOf(plan)) }),
  ];
}
export const endSays = ['distance', 'goesIn', 'goesNowhere', 'takeOut', 'share', 'cut'].map(
  (key) => `measuring.${key}`,
);

/** The two asks of such a piece: which ends go in, and the length to cut. */
export const endsAsk = { kind: 'choice', answer: goesIn, steps: endSteps } as const;
export const cutAsk = {
  kind: 'number',
  answer: (plan: Between) => inches(cutOf(plan)),
  steps: cutSteps,
} as const;

/** Slips that every such piece may have. */
export const endSlips = {
  noInsertion,
  firstInsertionOnly,
  secondInsertionOnly,
  insertionTakenOff,
  insertionAtBoth,
  insertionAtOther,
  noTakeOut,
  firstTakeOutOnly,
  secondTakeOutOnly,
};

/** A piece that is worth an exercise: no scrap, and out of one length. */
export const worthCutting = (cut: Ticks, stock: Ticks): boolean =>
  inches(cut) >= 20 && stock - cut >= fromInches(6);
