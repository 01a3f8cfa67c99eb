/**
 * Splices for a straight length: whole stock lengths one after the other, and one cut piece at the end.
 *
 * The last piece is at least as long as its splice: a shorter one would stand wholly or mostly inside it (common
 * practice, no source). Where the remainder is too short for that (or the length ends inside an opening), the whole
 * length before it is cut back and the last piece is the shortest that may be.
 */
import type { Answered, Step } from '../trade/answer.ts';
import { type Fault, GivenError } from '../trade/given.ts';
import { formatLength, type Ticks, ticks } from '../trade/length.ts';
import { shortLength } from '../trade/shortLength.ts';
import { FREE_FACE } from './faces.ts';
import { openingOf, placeSplice, type Splice } from './joints.ts';
import { piecesOf } from './pieces.ts';
import type { Piece, ResolvedJoint, StraightLeg } from './straight.ts';

export interface StraightGiven {
  /** End to end of the channel, from face A. */
  readonly length: Ticks;
  /** One length as it comes. */
  readonly stock: Ticks;
  /** What the saw takes. */
  readonly kerf: Ticks;
  /** The splice used throughout. For a sleeve the opening follows: length less both insertions. */
  readonly splice: Splice;
  /** Catalogue id of the splice, where it has one. */
  readonly item?: string | undefined;
}

export interface FilledStraight {
  readonly leg: StraightLeg;
  /** Stock lengths used, whole ones and cut ones. */
  readonly lengths: number;
  /** Pieces that are cut; a piece of a whole length is not. */
  readonly cuts: readonly Piece[];
  /** What is left of the stock length of each cut, after the saw; 0 where the saw takes it all. */
  readonly leftOver: readonly { readonly piece: string; readonly length: Ticks }[];
}

/**
 * Fills a straight length with whole lengths and the remainder.
 *
 * @returns result, and the sum both ways: along the run (lengths and gaps), and by piece (clear and what goes in)
 * @throws {GivenError} a length, stock or splice that cannot be
 * Source: arithmetic; no document needed.
 */
export function spliceStraightRun(given: StraightGiven): Answered<FilledStraight> {
  const { length, stock, kerf, splice } = given;
  const faults = straightFaults(given);
  if (faults.length > 0) throw new GivenError(faults);
  const opening = openingOf(splice);
  const cuts = pieceLengths(length, stock, opening, splice.length);

  const joints: ResolvedJoint[] = [];
  let along = 0;
  for (const cut of cuts.slice(0, -1)) {
    along += cut;
    const at = ticks(along + Math.floor(opening / 2));
    joints.push(placeSplice(`S${joints.length + 1}`, at, splice, given.item ?? null));
    along += opening;
  }
  const pieces = piecesOf('1', length, FREE_FACE, joints, FREE_FACE);
  const sawn = pieces.filter(({ cut }) => cut < stock);
  const result: FilledStraight = {
    leg: { leg: '1', length, start: FREE_FACE, end: FREE_FACE, joints, pieces, supports: [] },
    lengths: pieces.length,
    cuts: sawn,
    leftOver: sawn.map(({ id, cut }) => ({ piece: id, length: ticks(Math.max(0, stock - cut - kerf)) })),
  };
  return { result, steps: stepsOf(result, given, opening), sources: [] };
}

function pieceLengths(length: number, stock: number, opening: number, least: number): readonly number[] {
  if (length <= stock) return [length];
  const whole = Math.floor((length + opening) / (stock + opening));
  const over = length - (whole * stock + (whole - 1) * opening);
  const wholes = new Array<number>(whole).fill(stock);
  if (over === 0) return wholes;
  const last = over - opening;
  if (last >= least) return [...wholes, last];
  return [...wholes.slice(0, -1), stock - (least - last), least];
}

function straightFaults({ length, stock, kerf, splice }: StraightGiven): readonly Fault[] {
  const faults: Fault[] = [];
  const bad = (field: string, value: unknown, message: string, todo: string) =>
    faults.push({ field, value, message, todo });
  if (length <= 0) bad('length', length, 'there is nothing to fill', 'give a length above 0');
  if (kerf < 0) bad('kerf', kerf, 'a saw takes nothing or more', 'give 0 or more');
  if (splice.kind === 'socketed') {
    const [a, b] = splice.insertions;
    if (a < 0 || b < 0) bad('insertions', splice.insertions, 'an insertion is below 0', 'give 0 or more');
    if (openingOf(splice) < 0) {
      bad(
        'insertions',
        splice.insertions,
        `together more than the sleeve, which is ${formatLength(splice.length)} long`,
        'let both ends together go in no farther than its length',
      );
    }
  } else if (splice.gap < 0) bad('gap', splice.gap, 'a gap is below 0', 'give 0 or more');
  if (splice.length <= 0) bad('splice', splice.length, 'a splice has a length', 'give a length above 0');
  const least = 2 * splice.length;
  if (stock <= least) {
    bad(
      'stock',
      stock,
      'a stock length goes into its two splices whole',
      `give more than ${formatLength(ticks(Math.max(0, least)))}`,
    );
  }
  return faults;
}

/** Along the run, then by piece; the two must say the same. */
function stepsOf({ leg }: FilledStraight, { stock, splice }: StraightGiven, opening: Ticks): readonly Step[] {
  const whole = leg.pieces.filter(({ cut }) => cut === stock).length;
  const others = leg.pieces.filter(({ cut }) => cut !== stock);
  const splices = leg.joints.length;
  const along: Step[] = [
    ...(whole > 0
      ? [
          {
            say: whole === 1 ? 'run.oneWhole' : 'run.wholes',
            values: { count: whole, stock: shortLength(stock) },
          },
        ]
      : []),
    ...others.map(({ number, cut }) => ({
      say: 'run.plusPiece',
      values: { number, cut: shortLength(cut) },
    })),
    ...(splices > 0
      ? [
          {
            say: splices === 1 ? 'run.plusGap' : 'run.plusGaps',
            values: { count: splices, gap: shortLength(opening) },
          },
        ]
      : []),
    { say: 'run.isRun', values: { length: shortLength(leg.length) }, value: shortLength(leg.length) },
  ];
  const byPiece = leg.pieces.map(({ number, clear, ends, cut }) => {
    const into = ends[0].insertion + ends[1].insertion;
    const values = {
      number,
      clear: shortLength(clear),
      into: shortLength(ticks(into)),
      cut: shortLength(cut),
    };
    return { say: into > 0 ? 'run.pieceIn' : 'run.piece', values, value: shortLength(cut) };
  });
  const lengths: Step[] =
    splice.kind === 'socketed' && splices > 0
      ? [
          {
            say: 'run.sleeve',
            values: {
              length: shortLength(splice.length),
              first: shortLength(splice.insertions[0]),
              gap: shortLength(opening),
              second: shortLength(splice.insertions[1]),
            },
          },
        ]
      : [];
  return [...along, ...byPiece, ...lengths];
}
