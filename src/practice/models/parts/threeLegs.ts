/** A run of three legs, a piece each, between two elbows: what a first job of one's own looks like. */
import { resolveRun } from '../../../run/resolve.ts';
import type { ResolvedRun } from '../../../run/resolved.ts';
import type { PieceEnd } from '../../../run/straight.ts';
import type { Direction, EndJoint, Run, RunCable } from '../../../run/types.ts';
import { TRADE_USUAL } from '../../../run/usual.ts';
import type { Step } from '../../../trade/answer.ts';
import { formatLength, inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import { sticks } from '../../../trade/sticks/sticks.ts';
import type { World } from '../../model.ts';
import { CABLES, type CableName, type PracticeCable } from '../../runs/cables.ts';

type Three<T> = readonly [T, T, T];

export interface ThreeLegs {
  readonly width: string;
  readonly lengths: Three<Ticks>;
  readonly dirs: Three<Direction>;
  /** Behind the channel's id: `elbow-90`. */
  readonly elbows: readonly [string, string];
  readonly start: EndJoint;
  readonly end: EndJoint;
  readonly cables: readonly { readonly cable: CableName; readonly count: number }[];
}

/** From ladder tray to an instrument. */
export function threeLegs(given: ThreeLegs, world: World): ResolvedRun {
  const { width, lengths, dirs, elbows, start, end } = given;
  const leg = (i: 0 | 1 | 2): Run['legs'][number] => ({
    id: `L${i + 1}`,
    from: i === 0 ? 'start' : `L${i}`,
    fitting: i === 0 ? null : `${width}-${elbows[i - 1]}`,
    dir: dirs[i],
    length: lengths[i],
  });
  const cables = given.cables.map(({ cable, count }, i): RunCable => {
    const { type, odIn, lbPerFt, use, deviceA }: PracticeCable = CABLES[cable];
    return {
      id: `C${i + 1}`,
      type,
      odIn,
      lbPerFt,
      count,
      make: 'multiconductor',
      use,
      ...(deviceA === undefined ? {} : { deviceA }),
      to: 'L3',
    };
  });
  const run: Run = {
    v: 1,
    tray: width,
    start: { kind: 'ladder', joint: start },
    legs: [leg(0), leg(1), leg(2)],
    ends: [{ leg: 'L3', kind: 'instrument', joint: end }],
    cables,
  };
  // Draws are fixed for ever: no paper of a site may change them.
  return resolveRun(run, world.catalogue, TRADE_USUAL);
}

/** What stands at the two ends of a piece, as a person takes it. */
export type Ends = readonly [
  Pick<PieceEnd, 'takeOut' | 'insertion'>,
  Pick<PieceEnd, 'takeOut' | 'insertion'>,
];

/** One piece a leg: its length by working points, and its two ends. */
export interface PieceToCut {
  readonly length: Ticks;
  readonly ends: Ends;
}

export const piecesOf = ({ legs }: ResolvedRun): readonly PieceToCut[] =>
  legs.flatMap(({ length, pieces }) => pieces.map(({ ends }) => ({ length, ends })));

/** `D − T1 − T2 + i1 + i2` */
export const cutOf = ({ length, ends: [a, b] }: PieceToCut): Ticks =>
  ticks(length - a.takeOut - b.takeOut + a.insertion + b.insertion);

/** Cuts of the three legs as a job's step names them. */
export const cutsAnswer = (pieces: readonly PieceToCut[]): Readonly<Record<string, number>> =>
  Object.fromEntries(pieces.map((piece, i) => [`l${i + 1}`, inches(cutOf(piece))]));

/** The sum of each piece, a line each: `route.cutLeg`. */
export const cutSteps = (pieces: readonly PieceToCut[]): readonly Step[] =>
  pieces.map((piece, i) => {
    const [a, b] = piece.ends;
    return {
      say: 'route.cutLeg',
      values: {
        leg: `L${i + 1}`,
        length: formatLength(piece.length),
        off: shortLength(ticks(a.takeOut + b.takeOut)),
        goesIn: shortLength(ticks(a.insertion + b.insertion)),
        cut: formatLength(cutOf(piece)),
      },
    };
  });

/** What a person forgets of the ends; null where it changes nothing. */
export type EndSlip = (pieces: readonly PieceToCut[]) => readonly PieceToCut[] | null;

const changed = (pieces: readonly PieceToCut[], to: readonly PieceToCut[]) =>
  to.every((one, i) => cutOf(one) === cutOf(pieces[i] as PieceToCut)) ? null : to;
const NONE = ticks(0);

export const endSlips = {
  noInsertion: (pieces) =>
    changed(
      pieces,
      pieces.map(({ length, ends: [a, b] }) => ({
        length,
        ends: [
          { ...a, insertion: NONE },
          { ...b, insertion: NONE },
        ],
      })),
    ),
  oneInsertion: (pieces) =>
    changed(
      pieces,
      pieces.map(({ length, ends: [a, b] }) => ({
        length,
        ends: a.insertion > 0 ? [a, { ...b, insertion: NONE }] : [a, b],
      })),
    ),
  noTakeOut: (pieces) =>
    changed(
      pieces,
      pieces.map(({ length, ends: [a, b] }) => ({
        length,
        ends: [
          { ...a, takeOut: NONE },
          { ...b, takeOut: NONE },
        ],
      })),
    ),
  oneTakeOut: (pieces) =>
    changed(
      pieces,
      pieces.map(({ length, ends: [a, b] }) => ({
        length,
        ends: a.takeOut > 0 ? [a, { ...b, takeOut: NONE }] : [a, b],
      })),
    ),
} satisfies Readonly<Record<string, EndSlip>>;

/** Whole lengths that these cuts take at least; null where one is longer than a length, or the search cannot tell. */
export function lengthsFor(cuts: readonly Ticks[], stock: Ticks, kerf: Ticks): number | null {
  if (cuts.some((cut) => cut <= 0 || cut > stock)) return null;
  const pieces = cuts.map((length) => ({ length, count: 1 }));
  const { result } = sticks({ stock: [{ length: stock }], pieces, kerf });
  return result.proven ? result.lengthsUsed : null;
}
