/**
 * Cut with insertion (T05): one piece between two ends of any kind, measured to edges and faces or to the middles of
 * splices. Right lengths come from the run; slips change what stands at an end and go through the same sum.
 */
import { drawPiece } from '../../../drawing/piece.ts';
import { type CutEnd, cutBetween } from '../../../run/pieces.ts';
import { resolveRun } from '../../../run/resolve.ts';
import type { Piece, StraightLeg } from '../../../run/straight.ts';
import type { EndJoint, Joint } from '../../../run/types.ts';
import { TRADE_USUAL } from '../../../run/usual.ts';
import type { Step } from '../../../trade/answer.ts';
import { KERF, SOCKET } from '../../../trade/habits.ts';
import { formatLength, fromInches, inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import { type Drawn, model, type Slip, type World } from '../../model.ts';
import { pieceShown } from '../parts/pieceShown.ts';
import { read } from '../parts/reads.ts';

const ENDS = ['sleeve', 'plate', 'socket', 'butt', 'free'] as const;
const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  measured: ['edges', 'middles'],
  first: ENDS,
  second: ENDS,
  distance: 'length',
  before: 'length',
} as const;
type Kind = (typeof ENDS)[number];
type Pair<T> = readonly [T, T];

interface Plan {
  readonly kinds: Pair<Kind>;
  readonly measured: 'edges' | 'middles';
  /** What the tape shows, between the two places it is held to. */
  readonly distance: Ticks;
  /** What the person takes each end to be; the right one has what the run has. */
  readonly ends: Pair<CutEnd>;
  /** Added to or taken off the sum without a reason in the ends. */
  readonly extra: Ticks;
  readonly kerfs: number;
  readonly stock: Ticks;
  readonly kerf: Ticks;
  readonly sleeve: { readonly length: Ticks; readonly insertion: Ticks };
  readonly plate: { readonly length: Ticks };
  readonly width: string;
  readonly leg: StraightLeg;
  readonly piece: Piece;
}

const NONE = ticks(0);
/** Shortest and longest piece worth an exercise: no offcut scrap, and a rest of the length to work out. */
const [SHORTEST, LONGEST] = [fromInches(20), fromInches(228)];

const goesIn = (kind: Kind) => kind === 'sleeve' || kind === 'socket';
const isSplice = (kind: Kind) => kind === 'sleeve' || kind === 'plate';

function plan(drawn: Drawn<typeof wants>, world: World): Plan | null {
  const { first, second, measured, distance } = drawn;
  if (first === 'free' || second === 'butt') return null;
  if (!goesIn(first) && !goesIn(second)) return null;
  if (measured === 'middles' && !(goesIn(first) && goesIn(second) && [first, second].includes('sleeve')))
    return null;
  const kinds = [first, second] as const;
  const tray = read(world, drawn.width, 'tray');
  const sleeve = read(world, tray.own.socketed, 'sleeve');
  const plate = read(world, tray.own.butt, 'plate');
  const { leg, piece } = layOut(kinds, drawn, world);
  const ends = piece.ends.map(({ takeOut, insertion, share }) =>
    measured === 'edges' ? { takeOut: NONE, insertion, share: NONE } : { takeOut, insertion, share },
  ) as unknown as Pair<CutEnd>;
  const made: Plan = {
    kinds,
    measured,
    distance,
    ends,
    extra: NONE,
    kerfs: 1,
    stock: tray.length,
    kerf: KERF.length,
    sleeve,
    plate,
    width: drawn.width,
    leg,
    piece,
  };
  return piece.cut < SHORTEST || piece.cut > LONGEST ? null : made;
}

/** The run in which this piece lies: its ends where the tape of the exercise meets them. */
function layOut(kinds: Pair<Kind>, { width, measured, distance, before }: Drawn<typeof wants>, world: World) {
  const tray = read(world, width, 'tray');
  const reach = (kind: Kind) =>
    kind === 'sleeve' && measured === 'edges' ? read(world, tray.own.socketed, 'sleeve').length / 2 : 0;
  const [first, second] = kinds;
  const from = isSplice(first) ? before : NONE;
  const to = ticks(from + reach(first) + distance + reach(second));
  const joint = (kind: Kind, at: Ticks): Joint[] =>
    isSplice(kind) ? [{ leg: 'L1', at, kind: kind === 'sleeve' ? 'socketed' : 'butt' }] : [];
  const face = (kind: Kind): EndJoint => (kind === 'socket' ? 'socketed' : kind === 'butt' ? 'butt' : 'free');
  const length = isSplice(second) ? ticks(to + before) : to;
  const resolved = resolveRun(
    {
      v: 1,
      tray: width,
      start: isSplice(first) ? { kind: 'free', joint: 'free' } : { kind: 'ladder', joint: face(first) },
      legs: [{ id: 'L1', from: 'start', fitting: null, dir: 'E', length }],
      joints: [...joint(first, from), ...joint(second, to)],
      ends: [
        isSplice(second) || second === 'free'
          ? { leg: 'L1', kind: 'free', joint: 'free' }
          : { leg: 'L1', kind: 'tray', joint: face(second) },
      ],
    },
    world.catalogue,
    // Draws and keys are fixed for ever: no paper of a site may change them.
    TRADE_USUAL,
  );
  const leg = resolved.legs[0] as StraightLeg;
  return { leg, piece: leg.pieces[isSplice(first) ? 1 : 0] as Piece };
}

const cut = (plan: Plan): Ticks => ticks(cutBetween(plan.distance, plan.ends) + plan.extra);
const left = (plan: Plan, piece: Ticks = cut(plan)): Ticks =>
  ticks(plan.stock - piece - plan.kerfs * plan.kerf);

function steps(plan: Plan): Step[] {
  const say = (key: string, values: Record<string, string>): Step => ({ say: `practice.${key}`, values });
  const measured = say('measured', { length: formatLength(plan.distance) });
  const parts = plan.ends.flatMap(({ takeOut, insertion }, i) => [
    ...(takeOut > 0 ? [say('takeOut', { end: `${i + 1}`, length: shortLength(takeOut) })] : []),
    ...(insertion > 0 ? [say('insertion', { end: `${i + 1}`, length: shortLength(insertion) })] : []),
    ...(takeOut === 0 && insertion === 0 ? [say('nothing', { end: `${i + 1}` })] : []),
  ]);
  const piece = cut(plan);
  return [measured, ...parts, say('cut', { length: formatLength(piece) })];
}

type CutSlip = Slip<Plan>;
const withEnds = (plan: Plan, change: (end: CutEnd, i: 0 | 1) => CutEnd): Plan => ({
  ...plan,
  ends: [change(plan.ends[0], 0), change(plan.ends[1], 1)],
});
const inserted = (plan: Plan) => plan.ends.map((e) => e.insertion > 0);
const insertions = (plan: Plan) => plan.ends.map((e) => e.insertion);

const nothingAdded: CutSlip = (plan) =>
  inserted(plan).includes(true) ? withEnds(plan, (end) => ({ ...end, insertion: NONE })) : null;

/** Both ends go in, and only the first one's insertion is added. */
const firstEndOnly: CutSlip = (plan) =>
  inserted(plan).includes(false)
    ? null
    : withEnds(plan, (end, i) => ({ ...end, insertion: i === 0 ? end.insertion : NONE }));

/** As above with the ends changed about; the same answer where both ends go in equally far. */
const secondEndOnly: CutSlip = (plan) =>
  inserted(plan).includes(false) || insertions(plan)[0] === insertions(plan)[1]
    ? null
    : withEnds(plan, (end, i) => ({ ...end, insertion: i === 1 ? end.insertion : NONE }));

const subtracted: CutSlip = (plan) => withEnds(plan, (end) => ({ ...end, insertion: ticks(-end.insertion) }));

/** An end that butts or stands free is given the insertion of the other one. */
const addedAtButt: CutSlip = (plan) =>
  inserted(plan).includes(false)
    ? withEnds(plan, (end, i) =>
        end.insertion > 0 ? end : { ...end, insertion: plan.ends[i === 0 ? 1 : 0].insertion },
      )
    : null;

/** A sleeve and a socket take different insertions; the sleeve's is used for both. */
const oneInsertionForAll: CutSlip = (plan) => {
  const [a, b] = insertions(plan);
  return a !== undefined && b !== undefined && a > 0 && b > 0 && a !== b
    ? withEnds(plan, (end) => ({ ...end, insertion: plan.sleeve.insertion }))
    : null;
};

const sleeves = (plan: Plan) => plan.kinds.filter((k) => k === 'sleeve').length;

/**
 * The channel is run to the middle of each sleeve, so that the ends butt inside. At one sleeve that is half the
 * opening, which no tape tells from a slip of the hand: looked for only where both ends have one.
 */
const toMiddle: CutSlip = (plan) =>
  sleeves(plan) < 2
    ? null
    : withEnds(plan, (end) => ({
        ...end,
        insertion: plan.measured === 'edges' ? ticks(plan.sleeve.length / 2) : end.takeOut,
      }));

/** The whole sleeve is added where one end of it is the piece's. */
const wholeSleeve: CutSlip = (plan) =>
  plan.measured === 'edges' && sleeves(plan) > 0
    ? withEnds(plan, (end, i) =>
        plan.kinds[i] === 'sleeve' ? { ...end, insertion: plan.sleeve.length } : end,
      )
    : null;

/** The middles are taken for edges: insertions added, take-outs left alone. */
const middleForEdge: CutSlip = (plan) =>
  plan.measured === 'middles' ? withEnds(plan, (end) => ({ ...end, takeOut: NONE })) : null;

/** Measured to the plate's edge in place of the channel's end: half the plate goes missing at each plate. */
const toPlateEdge: CutSlip = (plan) =>
  plan.kinds.includes('plate')
    ? withEnds(plan, (end, i) =>
        plan.kinds[i] === 'plate' ? { ...end, share: ticks(plan.plate.length / 2) } : end,
      )
    : null;

const kerfOff: CutSlip = (plan) => ({ ...plan, extra: ticks(plan.extra - plan.kerf) });

export const cutWithInsertion = model<typeof wants, Plan>({
  wants,
  plan,
  facts: (plan) => ({
    width: { kind: 'word', value: plan.width },
    measured: { kind: 'word', value: plan.measured },
    first: { kind: 'word', value: plan.kinds[0] },
    second: { kind: 'word', value: plan.kinds[1] },
    distance: { kind: 'length', ticks: plan.distance },
    sleeveLength: { kind: 'length', ticks: plan.sleeve.length },
    sleeveInsertion: { kind: 'length', ticks: plan.sleeve.insertion },
    socketInsertion: { kind: 'length', ticks: SOCKET.length },
    plateLength: { kind: 'length', ticks: plan.plate.length },
    stock: { kind: 'length', ticks: plan.stock },
    kerf: { kind: 'length', ticks: plan.kerf },
  }),
  asks: {
    cut: { kind: 'number', answer: (plan) => inches(cut(plan)), steps },
    left: {
      kind: 'number',
      answer: (plan) => inches(left(plan)),
      steps: (plan) => [
        {
          say: 'practice.left',
          values: {
            stock: formatLength(plan.stock),
            cut: formatLength(cut(plan)),
            kerf: shortLength(plan.kerf),
            length: formatLength(left(plan)),
          },
        },
      ],
      follows: {
        asks: ['cut'],
        answer: (plan, _, earlier) => {
          const piece = fromInches(earlier['cut'] as number);
          return piece > 0 && piece <= plan.stock ? inches(left(plan, piece)) : null;
        },
      },
    },
  },
  slips: {
    nothingAdded,
    firstEndOnly,
    secondEndOnly,
    subtracted,
    addedAtButt,
    oneInsertionForAll,
    toMiddle,
    wholeSleeve,
    middleForEdge,
    toPlateEdge,
    kerfOff,
    noKerf: (plan) => ({ ...plan, kerfs: 0 }),
    twoKerfs: (plan) => ({ ...plan, kerfs: 2 }),
  },
  figures: ({ leg, piece, measured }, _, how) => [drawPiece({ leg, piece: piece.number, measured }, how)],
  figured: ({ leg, piece, distance }) => [
    { kind: 'lengths', ticks: [distance] },
    ...pieceShown(leg, piece.number, 'shown'),
  ],
  says: ['measured', 'takeOut', 'insertion', 'nothing', 'cut', 'left'].map((key) => `practice.${key}`),
});
