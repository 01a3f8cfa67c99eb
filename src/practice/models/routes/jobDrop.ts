/**
 * A drop with an elbow at its head and one at its foot (T01, T04): how far down, the cuts, the weight at the support that bears it,
 * the brackets. Later steps are judged from the height that was answered.
 */
import { drawSection } from '../../../drawing/section.ts';
import { weightPerFt } from '../../../run/loads.ts';
import type { ResolvedLeg, ResolvedRun } from '../../../run/resolved.ts';
import { formatLength, fromInches, inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import { type Answers, type Drawn, type Facts, model, type Slip, type World } from '../../model.ts';
import { CABLES, type PracticeCable } from '../../runs/cables.ts';
import { length, number, runFacts, word } from '../../runs/facts.ts';
import { CARRIES, SPANS } from '../../runs/wants.ts';
import { read } from '../parts/reads.ts';
import {
  cutOf,
  cutSteps,
  cutsAnswer,
  type EndSlip,
  endSlips,
  type PieceToCut,
  piecesOf,
  threeLegs,
} from '../parts/threeLegs.ts';

const wants = {
  width: ['card-4', 'card-6'],
  start: ['socketed', 'butt'],
  end: ['socketed', 'free'],
  /** Elevations of the centre lines, in feet and decimals of a foot. */
  upper: 'decimal',
  lower: 'decimal',
  one: 'length',
  three: 'length',
  /** From an elbow's face to the nearest bracket. */
  off: 'length',
  /** Which bracket the drawing lets bear the weight. */
  bears: ['top', 'middle', 'bottom'],
  ...SPANS,
  ...CARRIES,
} as const;
type Given = Drawn<typeof wants>;

type Bears = Given['bears'] | 'all';
interface Plan {
  readonly drawn: Given;
  readonly resolved: ResolvedRun;
  /** As the person reads the elevations. */
  readonly height: Ticks;
  readonly pieces: readonly PieceToCut[];
  readonly lbPerFt: number;
  /** The length that the weight is worked over: of the leg, between the elbows' faces, of the piece that was cut. */
  readonly weighed: 'leg' | 'faces' | 'piece';
  /** Supports that the weight is thought to hang on. */
  readonly shared: number;
  readonly brackets: number;
  readonly bears: Bears;
}

function plan(drawn: Given, world: World): Plan | null {
  const height = heightOf(drawn, 12);
  if (height < LEAST_DROP || height > MOST_DROP) return null;
  const { width, one, three, start, end, cables } = drawn;
  const resolved = threeLegs(
    {
      width,
      lengths: [one, height, three],
      dirs: ['E', 'D', 'E'],
      elbows: ['outside-90', 'inside-90'],
      start,
      end,
      cables,
    },
    world,
  );
  const pieces = piecesOf(resolved);
  if (pieces.some((piece) => cutOf(piece) < SHORTEST || cutOf(piece) > resolved.stock)) return null;
  const brackets = bracketsOf(distance(drawn, dropOf(resolved)), drawn.maxSpan, Math.ceil);
  // Three at least: with fewer there is nothing between the first and the last.
  if (brackets < 3 || (drawn.bears === 'middle' && brackets % 2 === 0)) return null;
  const { lb } = weightPerFt(dropOf(resolved), resolved);
  const made: Plan = {
    drawn,
    resolved,
    height,
    pieces,
    lbPerFt: lb,
    weighed: 'leg',
    shared: 1,
    brackets,
    bears: drawn.bears,
  };
  return weightsApart(made, world) ? made : null;
}
/** Whether every wrong road to the weight ends at a weight of its own: the weight a foot may be right on all of them. */
function weightsApart(plan: Plan, world: World): boolean {
  const ways: readonly JobSlip[] = [
    slips.sharedByAll,
    slips.channelOnly,
    slips.cablesOnly,
    slips.weighedFaces,
    slips.weighedPiece,
  ];
  const all = ways.map((way) => lbOf(way(plan, world, {}) ?? plan, inches(plan.height)));
  return all.every((one, i) => all.slice(i + 1).every((other) => Math.abs(one - other) >= LEAST_LB_APART));
}
/** Twice the tolerance of the weight, and a little. */
const LEAST_LB_APART = 0.32;
const [LEAST_DROP, MOST_DROP, SHORTEST] = [6 * 12, 19 * 12, 20].map(fromInches) as [Ticks, Ticks, Ticks];

/** Decimals of a foot times twelve make inches; times ten, where they are read as inches. */
function heightOf({ upper, lower }: Given, inchesAFoot: number): Ticks {
  const read = (feet: number) => 12 * Math.floor(feet) + inchesAFoot * (feet - Math.floor(feet));
  return fromInches(read(upper) - read(lower));
}

const dropOf = ({ legs }: ResolvedRun) => legs[1] as ResolvedLeg;
const distance = ({ off }: Given, { length: long, start, end }: ResolvedLeg) =>
  long - start.takeOut - end.takeOut - 2 * off;
const bracketsOf = (from: number, span: Ticks, round: (n: number) => number) => round(from / span) + 1;

/** What is off the leg's height in the length that is weighed, in inches. */
function notWeighed({ resolved, pieces, weighed }: Plan): number {
  const { start, end, length: leg } = dropOf(resolved);
  const off = { leg: 0, faces: start.takeOut + end.takeOut, piece: leg - cutOf(pieces[1] as PieceToCut) };
  return inches(ticks(off[weighed]));
}
const lbOf = (plan: Plan, height: number) => (plan.lbPerFt * (height - notWeighed(plan))) / 12 / plan.shared;
const loadAnswer = (plan: Plan, height: number) => ({ foot: plan.lbPerFt, lb: lbOf(plan, height) });

/** The height that was answered, as a leg that can be; null where it cannot. */
function heightIn({ drop }: Answers): Ticks | null {
  const given = (drop as Readonly<Record<string, number>>)['height'];
  return given === undefined || given < 24 || given > 40 * 12 ? null : fromInches(given);
}
function cutsFrom({ pieces }: Plan, _: World, answers: Answers) {
  const height = heightIn(answers);
  if (height === null) return null;
  return cutsAnswer(pieces.map((piece, i) => (i === 1 ? { ...piece, length: height } : piece)));
}

type JobSlip = Slip<Plan>;
const cutting =
  (by: EndSlip): JobSlip =>
  (plan) => {
    const pieces = by(plan.pieces);
    return pieces === null || pieces.some((one) => cutOf(one) <= 0) ? null : { ...plan, pieces };
  };
const readAs =
  (height: (plan: Plan) => Ticks): JobSlip =>
  (plan) => {
    const other = height(plan);
    return other === plan.height || other <= 0 ? null : { ...plan, height: other };
  };
const weights = ({ resolved }: Plan) => weightPerFt(dropOf(resolved), resolved);

const slips = {
  /** `.75 ft` for 7.5 in. */
  tenthsAsInches: readAs(({ drawn }) => heightOf(drawn, 10)),
  /** From face to face of the elbows, which is what one sees of the drop. */
  faceToFace: readAs(({ resolved, height }) =>
    ticks(height - dropOf(resolved).start.takeOut - dropOf(resolved).end.takeOut),
  ),
  noInsertion: cutting(endSlips.noInsertion),
  oneInsertion: cutting(endSlips.oneInsertion),
  noTakeOut: cutting(endSlips.noTakeOut),
  oneTakeOut: cutting(endSlips.oneTakeOut),
  sharedByAll: (plan) => ({ ...plan, shared: plan.brackets }),
  channelOnly: (plan) => ({ ...plan, lbPerFt: weights(plan).trayLb }),
  cablesOnly: (plan) => ({ ...plan, lbPerFt: weights(plan).cablesLb }),
  weighedFaces: (plan) => ({ ...plan, weighed: 'faces' }),
  weighedPiece: (plan) => ({ ...plan, weighed: 'piece' }),
  allBear: (plan) => ({ ...plan, bears: 'all' }),
  /** Where a drop is borne as a rule, whatever this drawing says. */
  topAsUsual: (plan) => (plan.bears === 'top' ? null : { ...plan, bears: 'top' }),
  lowestBears: (plan) => (plan.bears === 'bottom' ? null : { ...plan, bears: 'bottom' }),
  spansForBrackets: (plan) => ({ ...plan, brackets: plan.brackets - 1 }),
  /** From face to face, as if the first and the last stood on the faces. */
  facesForBrackets: (plan) => {
    const { off, maxSpan } = plan.drawn;
    const brackets = bracketsOf(distance(plan.drawn, dropOf(plan.resolved)) + 2 * off, maxSpan, Math.ceil);
    return brackets === plan.brackets ? null : { ...plan, brackets };
  },
} satisfies Readonly<Record<string, JobSlip>>;

const two = (value: number) => value.toFixed(2);
const cablesOf = ({ cables }: Given) =>
  cables.map(({ cable, count }) => {
    const { odIn }: PracticeCable = CABLES[cable];
    return { odIn, count };
  });
export const jobDrop = model<typeof wants, Plan>({
  wants,
  plan,
  facts: (plan, world): Facts => {
    const { drawn, resolved } = plan;
    const drop = dropOf(resolved);
    return {
      ...runFacts(resolved, world),
      upper: number(drawn.upper, 2),
      lower: number(drawn.lower, 2),
      one: length(drawn.one),
      three: length(drawn.three),
      startJoint: word(drawn.start),
      endJoint: word(drawn.end),
      takeOut: length(drop.start.takeOut),
      goesIn: length(drop.start.insertion),
      trayLb: number(drop.tray.weightLbPerFt, 2),
      off: length(drawn.off),
      maxSpan: length(drawn.maxSpan),
      bears: word(drawn.bears),
    };
  },
  asks: {
    drop: {
      kind: 'job',
      answer: ({ height }) => ({ height: inches(height) }),
      steps: ({ drawn, height }) => [
        {
          say: 'route.height',
          values: { upper: two(drawn.upper), lower: two(drawn.lower), length: formatLength(height) },
        },
      ],
    },
    cuts: {
      kind: 'job',
      answer: ({ pieces }) => cutsAnswer(pieces),
      steps: ({ pieces }) => cutSteps(pieces),
      follows: { asks: ['drop'], answer: cutsFrom },
    },
    load: {
      kind: 'job',
      answer: (plan) => loadAnswer(plan, inches(plan.height)),
      steps: (plan) => [
        {
          say: 'route.dropLoad',
          values: {
            perFt: two(plan.lbPerFt),
            height: formatLength(plan.height),
            lb: two(lbOf(plan, inches(plan.height))),
          },
        },
      ],
      follows: {
        asks: ['drop'],
        answer: (plan, _, answers) => {
          const height = heightIn(answers);
          return height === null ? null : loadAnswer(plan, inches(height));
        },
      },
    },
    brackets: {
      kind: 'job',
      answer: ({ brackets, bears }) => ({ count: brackets, bears }),
      steps: ({ drawn, resolved, brackets }) => [
        {
          say: 'route.brackets',
          values: {
            between: shortLength(ticks(distance(drawn, dropOf(resolved)))),
            span: shortLength(drawn.maxSpan),
            count: brackets,
          },
        },
      ],
      follows: {
        asks: ['drop'],
        answer: ({ drawn, resolved }, _, answers) => {
          const height = heightIn(answers);
          const from = height === null ? 0 : distance(drawn, { ...dropOf(resolved), length: height });
          return from <= 0 ? null : { count: bracketsOf(from, drawn.maxSpan, Math.ceil), bears: drawn.bears };
        },
      },
    },
  },
  slips,
  figures: ({ drawn }, world, how) => [
    drawSection(
      {
        tray: read(world, drawn.width, 'tray'),
        cables: cablesOf(drawn),
      },
      how,
    ),
  ],
  figured: ({ drawn }, world) => [
    { kind: 'cables', widthIn: inches(read(world, drawn.width, 'tray').width), cables: cablesOf(drawn) },
  ],
  says: ['height', 'cutLeg', 'dropLoad', 'brackets'].map((key) => `route.${key}`),
});
