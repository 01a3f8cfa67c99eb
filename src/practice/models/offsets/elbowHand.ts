/**
 * Which elbow (T08a, T08b): two turns of a run told in words, each flat, inside vertical or outside vertical by how the open
 * side of the channel lies, and the straight between them with their take-outs. The run's own turns say which it is.
 */
import type { Drawing, How } from '../../../drawing/types.ts';
import { drawRun } from '../../../drawing/views.ts';
import { type CutEnd, cutBetween } from '../../../run/pieces.ts';
import type { Frame } from '../../../run/resolved.ts';
import { waysOf } from '../../../run/turns.ts';
import type { Direction, Leg } from '../../../run/types.ts';
import { cross, directionOf, dot, minus, NORTH, UP, type Vec } from '../../../run/vector.ts';
import { figure } from '../../../trade/figure.ts';
import { fromInches, inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import type { Drawn, World } from '../../model.ts';
import { mustResolve } from '../parts/placing.ts';
import { read } from '../parts/reads.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lengthFact, lineOf, rowsFact, wordFact } from '../parts/told.ts';

const TURNS = ['left', 'right', 'up', 'down', 'on'] as const;
const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  first: TURNS,
  second: TURNS,
  between: 'length',
} as const;
type Turn = (typeof TURNS)[number];
const KINDS = ['flat', 'inside', 'outside'] as const;
type Kind = (typeof KINDS)[number];
const PART: Readonly<Record<Kind, string>> = { flat: 'elbow', inside: 'inside', outside: 'outside' };
const elbowOf = (world: World, width: string, kind: Kind) =>
  read(world, `${width}-${PART[kind]}-90`, 'elbow');

interface Job {
  readonly width: string;
  readonly turns: readonly [Turn, Turn];
  /** What each elbow is taken to be. */
  readonly kinds: readonly [Kind, Kind];
  readonly between: Ticks;
  readonly ends: readonly [CutEnd, CutEnd];
}

const START: Frame = { along: NORTH, open: UP, left: directionOf('W') };

/** Where a turn leads from a frame; null where the words make no sense there. `heading` is the level way it came. */
function direction(turn: Turn, { along, left }: Frame, heading: Vec): Vec | null {
  const plumb = along[2] !== 0;
  // Off a plumb leg it goes on as it was heading: turned back, the channel would lie upside down.
  if (turn === 'on') return plumb ? heading : null;
  if (plumb) return null;
  return { left, right: minus(left), up: UP, down: minus(UP) }[turn];
}
function step(
  turn: Turn,
  frame: Frame,
  heading: Vec,
  width: string,
  world: World,
): { kind: Kind; frame: Frame } | null {
  const to = direction(turn, frame, heading);
  if (to === null) return null;
  for (const kind of KINDS) {
    const way = waysOf(frame, elbowOf(world, width, kind), 'straight').find(
      ({ along }) => dot(along, to) > 0.999,
    );
    if (way !== undefined) return { kind, frame: { along: to, open: way.open, left: cross(way.open, to) } };
  }
  return null;
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
    const one = step(first, START, NORTH, width, world);
    const two = one === null ? null : step(second, one.frame, NORTH, width, world);
    if (one === null || two === null) return null;
    const end = (kind: Kind): CutEnd => {
      const { takeOut, insertion } = elbowOf(world, width, kind);
      return { takeOut, insertion, share: NONE };
    };
    return {
      width,
      turns: [first, second],
      kinds: [one.kind, two.kind],
      between,
      ends: [end(one.kind), end(two.kind)],
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
  figures: (job, world, how) => [isometricOf(job, world, how)].flat(),
  figured: ({ between }) => [between],
  says: keysOf('offsets', ['elbow-flat', 'elbow-inside', 'elbow-outside', 'elbowCut', 'anElbow']),
});

/** The legs before and behind: an eighth longer than any piece here, so that no answer stands at them. */
const BESIDE = fromInches(48 + 1 / 8);

/** The run as it goes; its words do not say which elbows it turns by. */
function isometricOf({ width, turns, kinds, between }: Job, world: World, how: How): readonly Drawing[] {
  const ways = wayOf(turns);
  const fitting = (i: 0 | 1) => elbowOf(world, width, kinds[i]).id;
  const legs: Leg[] = [
    { id: 'L1', from: 'start', fitting: null, dir: 'N', length: BESIDE },
    { id: 'L2', from: 'L1', fitting: fitting(0), dir: ways[0], length: between },
    { id: 'L3', from: 'L2', fitting: fitting(1), dir: ways[1], length: BESIDE },
  ];
  const resolved = mustResolve(
    {
      v: 1,
      tray: width,
      start: { kind: 'free', joint: 'free' },
      legs,
      ends: [{ leg: 'L3', kind: 'free', joint: 'free' }],
    },
    world,
  );
  const { tables, catalogue } = world;
  const speak: How['speak'] = (one) =>
    how.speak(
      one.say.startsWith('rundrawing.elbow-') && 'angle' in (one.values ?? {})
        ? { say: 'offsets.anElbow' }
        : one,
    );
  return drawRun(resolved, { tables, catalogue, views: ['isometric'] }, { ...how, speak });
}

/** Where the second and the third leg go; the first goes north. */
function wayOf([first, second]: Job['turns']): readonly [Direction, Direction] {
  const level = { left: 'W', right: 'E', up: 'U', down: 'D', on: 'N' } as const;
  const one = level[first];
  if (first === 'up' || first === 'down' || second === 'up' || second === 'down') return [one, level[second]];
  // Level and turned once: left and right are counted from there.
  return [one, (first === 'left') === (second === 'left') ? 'S' : 'N'];
}
