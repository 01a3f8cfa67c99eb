/** The working of the cuts: what each end of a piece takes and adds, then the whole sum, piece by piece. */
import type { Source, Step } from '../trade/answer.ts';
import { INSERTED } from '../trade/habits.ts';
import { type Ticks, ticks } from '../trade/length.ts';
import { shortLength } from '../trade/shortLength.ts';
import type { ResolvedFitting, ResolvedLeg, ResolvedRun } from './resolved.ts';
import type { Piece, PieceEnd } from './straight.ts';

/** Steps of all pieces in order of travel: a line for each end that takes or adds something, then the sum to the cut. */
export function pieceSteps({ legs }: ResolvedRun): {
  readonly steps: readonly Step[];
  readonly sources: readonly Source[];
} {
  const steps = legs.flatMap((leg) => leg.pieces.flatMap((piece) => [...endSteps(leg, piece), sum(piece)]));
  return { steps: [{ say: 'takeoff.pieceHow' }, ...steps], sources: [INSERTED] };
}

function endSteps(
  { fittingBefore, fittingAfter }: ResolvedLeg,
  { id, ends: [a, b] }: Piece,
): readonly Step[] {
  return [...endStep(id, a, fittingBefore), ...endStep(id, b, fittingAfter)];
}

/** @param fitting  at the leg's working point on that side */
function endStep(piece: string, end: PieceEnd, fitting: ResolvedFitting | null): readonly Step[] {
  const { takeOut, insertion, share } = end;
  if (takeOut === 0 && insertion === 0 && share === 0) return [];
  const values = {
    piece,
    joint: end.joint,
    takeOut: shortLength(takeOut),
    into: shortLength(insertion),
    share: shortLength(share),
  };
  return [{ say: `takeoff.pieceAt-${nameOf(end, fitting)}`, values }];
}

/** What stands at the end: an elbow by its turn, a socket at a start or end of the run. */
function nameOf({ kind, joint }: PieceEnd, fitting: ResolvedFitting | null): string {
  if (kind === 'fitting' && fitting !== null) {
    const { item } = fitting;
    return item.kind === 'elbow' ? item.turn : item.kind === 'hinge' ? 'hinged-fitting' : item.kind;
  }
  const outer = joint === 'start' || joint === 'end';
  return outer ? `${joint}-${kind}` : kind;
}

/** `D − T1 − T2 − s1 − s2 + i1 + i2 =`, parts of 0 left out. */
function sum({ id, cut, ends: [a, b] }: Piece): Step {
  const less = [a.takeOut, b.takeOut, a.share, b.share].filter((part) => part !== 0);
  const plus = [a.insertion, b.insertion].filter((part) => part !== 0);
  const between = ticks(cut + total(less) - total(plus));
  const values = {
    piece: id,
    between: shortLength(between),
    sum: [
      ...less.map((part) => ` − ${shortLength(part)}`),
      ...plus.map((part) => ` + ${shortLength(part)}`),
    ].join(''),
  };
  return {
    say: less.length + plus.length > 0 ? 'takeoff.piece' : 'takeoff.pieceWhole',
    values,
    value: shortLength(cut),
  };
}

const total = (parts: readonly Ticks[]) => parts.reduce((all, part) => all + part, 0);
