/**
 * Which elbow (T08a, T08b): two turns of a run told in words, each flat, inside vertical or outside vertical by how the open
 * side of the channel lies, and the straight between them with their take-outs. The run's own turns say which it is.
 */
import { type CutEnd, cutBetween } from '../../../run/pieces.ts';
import { figure } from '../../../trade/figure.ts';
import { inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import type { Drawn, World } from '../../model.ts';
import { courses } from '../parts/placing.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lengthFact, lineOf, rowsFact, wordFact } from '../parts/told.ts';
import {
  elbowOf,
  isometricOf,
  KINDS,
  type Kind,
  kindsOf,
  TURNS,
  type TwoTurns,
  turnedTwice,
} from '../parts/twoTurns.ts';

const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  first: TURNS,
  second: TURNS,
  between: 'length',
} as const;
/** `kinds` is what each elbow is taken to be. */
interface Job extends TwoTurns {
  readonly ends: readonly [CutEnd, CutEnd];
}

const NONE = ticks(0);
const cut = ({ between, ends }: Job): Ticks => cutBetween(between, ends);
function withKinds(job: Job, world: World, kinds: readonly [Kind, Kind]): Job {
  const [a, b] = kinds.map((kind, i): CutEnd => {
    const { takeOut } = elbowOf(world, job.width, kind);
    return { ...(job.ends[i] as CutEnd), takeOut };
  }) as [CutEnd, CutEnd];
  return { ...job, kinds, ends: [a, b] };
}
const withEnds = (job: Job, change: (end: CutEnd, i: number) => CutEnd): Job => ({
  ...job,
  ends: [change(job.ends[0], 0), change(job.ends[1], 1)],
});
const SWAPPED: Readonly<Record<Kind, Kind>> = { flat: 'flat', inside: 'outside', outside: 'inside' };
const say = lineOf('offsets');

export const elbowHand = slippingModel<typeof wants, Job>({
  wants,
  plan: ({ width, first, second, between }: Drawn<typeof wants>, world) => {
    const kinds = kindsOf([first, second], width, world);
    if (kinds === null) return null;
    const end = (kind: Kind): CutEnd => {
      const { takeOut, insertion } = elbowOf(world, width, kind);
      return { takeOut, insertion, share: NONE };
    };
    return {
      width,
      turns: [first, second],
      kinds,
      between,
      ends: [end(kinds[0]), end(kinds[1])],
    };
  },
  facts: ({ width, turns, between, ends }, world) => ({
    width: wordFact(width),
    first: wordFact(turns[0]),
    second: wordFact(turns[1]),
    between: lengthFact(between),
    insertion: lengthFact(ends[0].insertion),
    takeOuts: rowsFact(
      KINDS.map((kind) => ({
        kind: wordFact(kind),
        takeOut: lengthFact(elbowOf(world, width, kind).takeOut),
      })),
    ),
    rule: wordFact('rule'),
  }),
  asks: {
    first: {
      kind: 'choice',
      answer: ({ kinds }) => kinds[0],
      steps: ({ kinds }) => [say(`elbow-${kinds[0]}`)],
    },
    second: {
      kind: 'choice',
      answer: ({ kinds }) => kinds[1],
      steps: ({ kinds }) => [say(`elbow-${kinds[1]}`)],
    },
    cut: {
      kind: 'number',
      answer: (job) => inches(cut(job)),
      steps: (job) => [
        say(
          'elbowCut',
          {
            between: figure(inches(job.between)),
            one: shortLength(job.ends[0].takeOut),
            two: shortLength(job.ends[1].takeOut),
            insertion: shortLength(job.ends[0].insertion),
          },
          inches(cut(job)),
          'in',
        ),
      ],
      follows: {
        asks: ['first', 'second'],
        answer: (job, world, earlier) => {
          const kinds = [earlier['first'], earlier['second']] as unknown as readonly [Kind, Kind];
          return inches(cut(withKinds(job, world, kinds)));
        },
      },
    },
  },
  slips: {
    exchanged: (job) => ({ ...job, kinds: [SWAPPED[job.kinds[0]], SWAPPED[job.kinds[1]]] }),
    sameAgain: (job) => ({ ...job, kinds: [job.kinds[0], job.kinds[0]] }),
    allFlat: (job, world) => withKinds(job, world, ['flat', 'flat']),
    allVertical: (job, world) =>
      withKinds(job, world, [
        job.kinds[0] === 'flat' ? 'inside' : job.kinds[0],
        job.kinds[1] === 'flat' ? 'inside' : job.kinds[1],
      ]),
    noTakeOut: (job) => withEnds(job, (end) => ({ ...end, takeOut: NONE })),
    oneTakeOut: (job) => withEnds(job, (end, i) => (i === 0 ? end : { ...end, takeOut: NONE })),
    noInsertion: (job) => withEnds(job, (end) => ({ ...end, insertion: NONE })),
    oneInsertion: (job) => withEnds(job, (end, i) => (i === 0 ? end : { ...end, insertion: NONE })),
  },
  figures: (job, world, how) => isometricOf(job, world, how),
  figured: (job, world) => [{ kind: 'lengths', ticks: [job.between] }, courses(turnedTwice(job, world))],
  says: keysOf('offsets', ['elbow-flat', 'elbow-inside', 'elbow-outside', 'elbowCut', 'anElbow']),
});
