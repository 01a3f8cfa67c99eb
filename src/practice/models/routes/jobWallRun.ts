/**
 * A run along a wall, from its sketch to its jumpers (T01, T02, T11): cuts, whole lengths, supports of the long leg, jumpers. What is
 * taken on from an earlier step is judged from there.
 */

import { jumperPlaces } from '../../../run/jumpers.ts';
import type { ResolvedLeg, ResolvedRun } from '../../../run/resolved.ts';
import { jumper } from '../../../trade/jumper.ts';
import { formatLength, fromInches, inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import {
  type Answers,
  type Drawn,
  type Facts,
  model,
  type PlacedAt,
  type Slip,
  type World,
} from '../../model.ts';
import { length, number, rows, runFacts, word } from '../../runs/facts.ts';
import { CARRIES, SPANS } from '../../runs/wants.ts';
import { courses, isometricOf } from '../parts/placing.ts';
import {
  cutOf,
  cutSteps,
  cutsAnswer,
  type EndSlip,
  endSlips,
  lengthsFor,
  type PieceToCut,
  piecesOf,
  threeLegs,
} from '../parts/threeLegs.ts';

const SIDES = ['left', 'right'] as const;
const wants = {
  width: ['card-4', 'card-6'],
  start: ['socketed', 'butt'],
  end: ['socketed', 'free'],
  first: SIDES,
  second: SIDES,
  one: 'length',
  two: 'length',
  three: 'length',
  /** From a face to the nearest support. */
  off: 'length',
  ...SPANS,
  ...CARRIES,
} as const;

interface Supports {
  readonly count: number;
  readonly spacing: Ticks;
}
interface Plan {
  readonly resolved: ResolvedRun;
  readonly off: Ticks;
  readonly maxSpan: Ticks;
  readonly pieces: readonly PieceToCut[];
  readonly whole: number;
  readonly supports: Supports;
  readonly fitted: readonly PlacedAt[];
  readonly size: string;
}

const TURN = {
  E: { left: 'N', right: 'S' },
  N: { left: 'W', right: 'E' },
  S: { left: 'E', right: 'W' },
} as const;

function plan(drawn: Drawn<typeof wants>, world: World): Plan | null {
  const { width, one, two, three, off, maxSpan, cables } = drawn;
  const second = TURN.E[drawn.first];
  const resolved = threeLegs(
    {
      width,
      lengths: [one, two, three],
      dirs: ['E', second, TURN[second][drawn.second]],
      elbows: ['elbow-90', 'elbow-90'],
      start: drawn.start,
      end: drawn.end,
      cables,
    },
    world,
  );
  const pieces = piecesOf(resolved);
  const cuts = pieces.map(cutOf);
  // Each leg is one piece, and none so short that its two fittings touch.
  if (cuts.length !== 3 || cuts.some((cut) => cut < SHORTEST || cut > resolved.stock)) return null;
  const whole = lengthsFor(cuts, resolved.stock, resolved.kerf);
  const supports = supportsOf(between(resolved) - 2 * off, maxSpan);
  const size = sizeOf(devicesOf(resolved), world);
  if (whole === null || supports === null || size === null) return null;
  const fitted = marksOf(resolved, world, (reason) => reason !== null);
  return { resolved, off, maxSpan, pieces, whole, supports, fitted, size };
}
const SHORTEST = fromInches(20);

const secondLeg = ({ legs }: ResolvedRun) => legs[1] as ResolvedLeg;
/** From face to face of the second leg. */
function between(resolved: ResolvedRun): number {
  const { length: long, start, end } = secondLeg(resolved);
  return long - start.takeOut - end.takeOut;
}
/** Even spans no longer than the longest. */
function supportsOf(distance: number, maxSpan: Ticks): Supports | null {
  if (distance <= 0) return null;
  const spans = Math.ceil(distance / maxSpan);
  return { count: spans + 1, spacing: ticks(Math.round(distance / spans)) };
}
const devicesOf = ({ run }: ResolvedRun) => (run.cables ?? []).flatMap(({ deviceA }) => deviceA ?? []);
const sizeOf = (devicesA: readonly number[], { tables }: World) =>
  jumper({ devicesA, metal: 'copper' }, tables.jumper).result.size;
const idOf = (size: string) => size.toLowerCase().replace(' ', '-');

function marksOf(
  resolved: ResolvedRun,
  { catalogue, tables }: World,
  wanted: (reason: string | null) => boolean,
): readonly PlacedAt[] {
  return jumperPlaces(resolved, catalogue, tables)
    .filter(({ reason }) => wanted(reason))
    .map(({ leg, at }) => ({ leg: leg.leg, at: inches(at), what: 'jumper' }));
}

const total = (cuts: readonly Ticks[]) => inches(ticks(cuts.reduce((sum, cut) => sum + cut, 0)));
const lengthsAnswer = (cuts: readonly Ticks[], whole: number) => ({ total: total(cuts), whole });

/** What is right for the cuts that were answered. */
function lengthsFrom({ resolved }: Plan, _: World, { cuts }: Answers) {
  const given = cuts as Readonly<Record<string, number>>;
  const own = ['l1', 'l2', 'l3'].flatMap((id) => (given[id] === undefined ? [] : [fromInches(given[id])]));
  const whole = own.length < 3 ? null : lengthsFor(own, resolved.stock, resolved.kerf);
  return whole === null ? null : lengthsAnswer(own, whole);
}

type JobSlip = Slip<Plan>;
const cutting =
  (by: EndSlip): JobSlip =>
  (plan) => {
    const pieces = by(plan.pieces);
    return pieces === null || pieces.some((one) => cutOf(one) <= 0) ? null : { ...plan, pieces };
  };
const spanning =
  (other: (plan: Plan) => Supports | null): JobSlip =>
  (plan) => {
    const supports = other(plan);
    return supports === null ? null : { ...plan, supports };
  };

const slips = {
  noInsertion: cutting(endSlips.noInsertion),
  oneInsertion: cutting(endSlips.oneInsertion),
  noTakeOut: cutting(endSlips.noTakeOut),
  oneTakeOut: cutting(endSlips.oneTakeOut),
  /** All added up and divided by a length. */
  addedUp: (plan) => {
    const whole = Math.ceil(total(plan.pieces.map(cutOf)) / inches(plan.resolved.stock));
    return whole === plan.whole ? null : { ...plan, whole };
  },
  lengthEach: (plan) => (plan.whole === plan.pieces.length ? null : { ...plan, whole: plan.pieces.length }),
  /** Spans counted for supports. */
  spansForSupports: spanning(({ supports }) => ({ ...supports, count: supports.count - 1 })),
  /** From face to face, as if the first and the last stood on the faces. */
  facesForSupports: spanning(({ resolved, maxSpan }) => supportsOf(between(resolved), maxSpan)),
  /** Rounded down: the spans are too long. */
  roundedDown: spanning(({ resolved, off, maxSpan }) => {
    const distance = between(resolved) - 2 * off;
    const spans = Math.floor(distance / maxSpan);
    return spans < 1 || spans * maxSpan === distance
      ? null
      : { count: spans + 1, spacing: ticks(Math.round(distance / spans)) };
  }),
  everywhere: (plan, world) => ({ ...plan, fitted: marksOf(plan.resolved, world, () => true) }),
  startOnly: (plan) => ({ ...plan, fitted: plan.fitted.slice(0, 1) }),
  devicesAdded: (plan, world) => {
    const size = sizeOf([devicesOf(plan.resolved).reduce((sum, one) => sum + one, 0)], world);
    return size === null || size === plan.size ? null : { ...plan, size };
  },
  smallestDevice: (plan, world) => {
    const size = sizeOf([Math.min(...devicesOf(plan.resolved))], world);
    return size === null || size === plan.size ? null : { ...plan, size };
  },
} satisfies Readonly<Record<string, JobSlip>>;

export const jobWallRun = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ resolved, off, maxSpan }, world): Facts => ({
    ...runFacts(resolved, world),
    startJoint: word(resolved.start.joint),
    endJoint: word(resolved.run.ends?.[0]?.joint ?? 'free'),
    stock: length(resolved.stock),
    kerf: length(resolved.kerf),
    takeOut: length(secondLeg(resolved).start.takeOut),
    goesIn: length(secondLeg(resolved).start.insertion),
    off: length(off),
    maxSpan: length(maxSpan),
    sizes: rows(
      world.tables.jumper.rows
        .filter(({ deviceA }) => deviceA <= 400)
        .map(({ deviceA, copper }) => ({ device: number(deviceA), size: word(copper) })),
    ),
  }),
  asks: {
    cuts: {
      kind: 'job',
      answer: ({ pieces }) => cutsAnswer(pieces),
      steps: ({ pieces }) => cutSteps(pieces),
    },
    lengths: {
      kind: 'job',
      answer: ({ pieces, whole }) => lengthsAnswer(pieces.map(cutOf), whole),
      steps: ({ pieces, whole }) => [
        {
          say: 'route.lengths',
          values: { total: formatLength(fromInches(total(pieces.map(cutOf)))), whole },
        },
      ],
      follows: { asks: ['cuts'], answer: lengthsFrom },
    },
    supports: {
      kind: 'job',
      answer: ({ supports: { count, spacing } }) => ({ count, spacing: inches(spacing) }),
      steps: ({ resolved, off, supports: { count, spacing } }) => [
        {
          say: 'route.spacing',
          values: {
            between: shortLength(ticks(between(resolved) - 2 * off)),
            spans: count - 1,
            count,
            spacing: shortLength(spacing),
          },
        },
      ],
    },
    bonding: {
      kind: 'job',
      answer: ({ fitted, size }) => ({ where: fitted, size: idOf(size) }),
      steps: ({ size }) => [{ say: 'route.startAndEnd', values: { size } }],
      on: ({ resolved }) => resolved,
    },
  },
  slips,
  figures: ({ resolved }, world, how) => isometricOf(resolved, world, how),
  figured: ({ resolved }) => [
    { kind: 'lengths', ticks: resolved.legs.map((leg) => leg.length) },
    courses(resolved),
  ],
  says: ['cutLeg', 'lengths', 'spacing', 'startAndEnd'].map((key) => `route.${key}`),
});
