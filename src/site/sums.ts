/**
 * What the calculator sheets ask the pure rooms, put together for a page: figures that belong to a sum, and lists that
 * follow from it. Islands call these and compute nothing themselves.
 */

import type { SpliceGiven } from '../drawing/splice.ts';
import type { Tray } from '../run/catalogue.ts';
import { type CutAtHole, cutAtHole } from '../run/clearPlaces.ts';
import { FREE_FACE } from '../run/faces.ts';
import { placeSplice } from '../run/joints.ts';
import { piecesOf } from '../run/pieces.ts';
import type { FilledStraight, StraightGiven } from '../run/spliceStraight.ts';
import { spliceStraightRun } from '../run/spliceStraight.ts';
import type { Piece, ResolvedJoint, SocketedJoint, StraightLeg } from '../run/straight.ts';
import type { Answered } from '../trade/answer.ts';
import { type CutGiven, type CutResult, cut } from '../trade/cut.ts';
import { OPENING } from '../trade/habits.ts';
import { formatLength, fromInches, type Ticks, ticks } from '../trade/length.ts';
import { shortLength } from '../trade/shortLength.ts';
import type { SleeveSet } from './items.ts';
import type { Bar } from './pictures/bars.ts';
import type { Tell } from './speak.ts';

/** Channel beyond the joints of the figure, so that the eye sees it go on. */
const beyond = fromInches(30);

export interface PieceSum {
  readonly answer: Answered<CutResult>;
  /** The piece as it stands in a run: neighbours and splices drawn, its cut computed by src/run. */
  readonly leg: StraightLeg;
  readonly piece: Piece;
}

/** One piece between its splices: the cut by src/trade, and the same piece in a leg for the figure. */
export function pieceSum(given: CutGiven & { readonly insertion: Ticks }): PieceSum {
  const { toSpliceEdge, insertedEnds, insertion } = given;
  const splice = {
    kind: 'socketed',
    length: ticks(2 * insertion + OPENING.length),
    insertions: [insertion, insertion],
  } as const;
  const half = Math.floor(splice.length / 2);
  const at: number[] = [];
  let begin = 0;
  if (insertedEnds === 2) {
    begin = beyond + splice.length;
    at.push(beyond + half);
  }
  if (insertedEnds > 0) at.push(begin + toSpliceEdge + half);
  const end = insertedEnds > 0 ? begin + toSpliceEdge + splice.length + beyond : toSpliceEdge;
  const joints: readonly ResolvedJoint[] = at.map((place, k) =>
    placeSplice(`S${k + 1}`, ticks(place), splice, null),
  );
  const pieces = piecesOf('1', ticks(end), FREE_FACE, joints, FREE_FACE);
  const piece = pieces[insertedEnds === 2 ? 1 : 0];
  if (piece === undefined) throw new Error('a leg has at least one piece');
  const leg: StraightLeg = {
    leg: '1',
    length: ticks(end),
    start: FREE_FACE,
    end: FREE_FACE,
    joints,
    pieces,
    supports: [],
  };
  return { answer: cut(given), leg, piece };
}

export interface RunGiven {
  readonly length: Ticks;
  readonly insertion: Ticks;
  readonly gap: Ticks;
  readonly kerf: Ticks;
  readonly stock: Ticks;
}

/** Whole lengths and the remainder, with a sleeve as long as both insertions and the gap. */
export function runSum({ length, insertion, gap, kerf, stock }: RunGiven): Answered<FilledStraight> {
  const given: StraightGiven = {
    length,
    stock,
    kerf,
    splice: { kind: 'socketed', length: ticks(2 * insertion + gap), insertions: [insertion, insertion] },
  };
  return spliceStraightRun(given);
}

/** A row of the cut list: which length the piece comes from, and what is left of it. */
export interface CutRow {
  readonly number: number;
  readonly cut: string;
  readonly whole: boolean;
  readonly left: string;
  readonly clear: string;
  /** What goes into splices, an entry an end. */
  readonly into: readonly string[];
}

export function cutRows({ leg, leftOver }: FilledStraight): readonly CutRow[] {
  return leg.pieces.map(({ id, number, cut: length, clear, ends }) => {
    const left = leftOver.find(({ piece }) => piece === id)?.length;
    return {
      number,
      cut: formatLength(length),
      whole: left === undefined,
      left: left === undefined ? '' : formatLength(left),
      clear: formatLength(clear),
      into: ends.filter(({ insertion }) => insertion > 0).map(({ insertion }) => shortLength(insertion)),
    };
  });
}

/** A cut of a run that keeps too little metal to a hole of the floor, by the number of its piece. */
export interface PieceAtHole {
  readonly piece: number;
  readonly found: CutAtHole;
}

export const cutsAtHoles = (
  { cuts }: FilledStraight,
  stock: Ticks,
  { webHoles }: Pick<Tray, 'webHoles'>,
): readonly PieceAtHole[] =>
  cuts.flatMap(({ number, cut: length }) => {
    const found = cutAtHole(length, webHoles, stock);
    return found === null ? [] : [{ piece: number, found }];
  });

/** Middles of the splices, from face A. */
export const splicePlaces = ({
  leg,
}: FilledStraight): readonly { readonly name: string; readonly at: string }[] =>
  leg.joints.map(({ name, at }) => ({ name, at: formatLength(at) }));

/** The stock lengths as bars: a piece each, its share of the length, what is left over. */
export function barsOf(filled: FilledStraight, stock: Ticks, tell: Tell): readonly Bar[] {
  return cutRows(filled).map(({ number, whole, left }, k) => ({
    label: tell('cutSheet.length', { number }),
    piece: whole ? tell('cutSheet.useWhole', { number }) : String(number),
    left: whole ? '' : tell('cutSheet.leftOver', { left }),
    share: whole ? 1 : (filled.leg.pieces[k]?.cut ?? stock) / stock,
  }));
}

/** The detail of a joint: the sleeve of the catalogue, as long as the sum makes it. */
export function detailOf(joint: SocketedJoint, { insertion }: RunGiven, set: SleeveSet): SpliceGiven {
  const { tray, sleeve, fastening } = set;
  return { joint, tray, fastening, item: { ...sleeve, length: joint.length, insertion } };
}
