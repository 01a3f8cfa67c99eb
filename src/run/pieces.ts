/** The pieces of channel between the joints of a straight leg. */
import { type Ticks, ticks } from '../trade/length.ts';
import type { Face, Piece, PieceEnd, ResolvedJoint } from './straight.ts';

const NONE = ticks(0);

/** A place where a piece begins or ends: how far along, and the piece's end there. */
interface Stop {
  readonly at: Ticks;
  readonly end: PieceEnd;
}

function faceStop(joint: 'start' | 'end', at: Ticks, face: Face): Stop {
  const { takeOut, insertion, share } = face;
  return { at, end: { joint, kind: face.joint, takeOut, insertion, share } };
}

function jointStop(joint: ResolvedJoint, side: 0 | 1): Stop {
  return {
    at: joint.at,
    end: {
      joint: joint.name,
      kind: joint.kind,
      takeOut: joint.takeOuts[side],
      insertion: joint.insertions[side],
      share: joint.shares[side],
    },
  };
}

/**
 * Length to cut between two working points: `cut = D − T1 − T2 + i1 + i2 − s1 − s2`. Measured from edge to edge of
 * what the piece goes into, the take-outs are 0.
 */
export function cutBetween(between: Ticks, [a, b]: readonly [CutEnd, CutEnd]): Ticks {
  return ticks(between - a.takeOut - b.takeOut + a.insertion + b.insertion - a.share - b.share);
}

/** What one end of a piece takes from the distance, and what it adds. */
export type CutEnd = Pick<PieceEnd, 'takeOut' | 'insertion' | 'share'>;

/**
 * Pieces in order along a leg. Lengths may come out at 0 or below when joints stand too close; who gave the joints
 * says so (resolve.ts).
 *
 * @param joints  in order along the leg
 */
export function piecesOf(
  leg: string,
  length: Ticks,
  start: Face,
  joints: readonly ResolvedJoint[],
  end: Face,
): readonly Piece[] {
  const begins = [faceStop('start', NONE, start), ...joints.map((j) => jointStop(j, 1))];
  const finishes = [...joints.map((j) => jointStop(j, 0)), faceStop('end', length, end)];
  return begins.map((first, i) => {
    const second = finishes[i] as Stop;
    const [a, b] = [first.end, second.end];
    const cut = cutBetween(ticks(second.at - first.at), [a, b]);
    return {
      id: `${leg}-${i + 1}`,
      number: i + 1,
      leg,
      from: ticks(first.at + a.takeOut - a.insertion + a.share),
      to: ticks(second.at - b.takeOut + b.insertion - b.share),
      cut,
      clear: ticks(cut - a.insertion - b.insertion),
      ends: [a, b],
    };
  });
}
