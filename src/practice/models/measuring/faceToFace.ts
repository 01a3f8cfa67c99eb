/** Face to face (T05): one piece between two faces, each with a socket or without; the tape goes from face to face. */
import { drawPiece } from '../../../drawing/piece.ts';
import type { CutEnd } from '../../../run/pieces.ts';
import { resolveRun } from '../../../run/resolve.ts';
import type { StraightLeg } from '../../../run/straight.ts';
import { TRADE_USUAL } from '../../../run/usual.ts';
import { SOCKET } from '../../../trade/habits.ts';
import type { Ticks } from '../../../trade/length.ts';
import { type Drawn, model, type World } from '../../model.ts';
import {
  type Between,
  cutAsk,
  cutOf,
  endSays,
  endSlips,
  endsAsk,
  NONE,
  type Pair,
  PLAIN,
  worthCutting,
} from '../parts/pieceEnds.ts';
import { pieceShown } from '../parts/pieceShown.ts';
import { read } from '../parts/reads.ts';

const JOINTS = ['socket', 'butt'] as const;
const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  first: JOINTS,
  second: JOINTS,
  distance: 'length',
} as const;
type Joint = (typeof JOINTS)[number];

interface Plan extends Between {
  readonly width: string;
  readonly joints: Pair<Joint>;
  readonly stock: Ticks;
  readonly leg: StraightLeg;
}

const endOf = (joint: Joint): CutEnd => (joint === 'socket' ? { ...PLAIN, insertion: SOCKET.length } : PLAIN);

function plan({ width, first, second, distance }: Drawn<typeof wants>, world: World): Plan | null {
  // Between two faces that it butts against, the piece is as long as the tape shows.
  if (first === 'butt' && second === 'butt') return null;
  const stock = read(world, width, 'tray').length;
  const joint = (one: Joint) => (one === 'socket' ? 'socketed' : 'butt');
  const { legs } = resolveRun(
    {
      v: 1,
      tray: width,
      start: { kind: 'ladder', joint: joint(first) },
      legs: [{ id: 'L1', from: 'start', fitting: null, dir: 'E', length: distance }],
      ends: [{ leg: 'L1', kind: 'tray', joint: joint(second) }],
    },
    world.catalogue,
    // Draws and keys are fixed for ever: no paper of a site may change them.
    TRADE_USUAL,
  );
  const made: Plan = {
    width,
    joints: [first, second],
    stock,
    distance,
    ends: [endOf(first), endOf(second)],
    extra: NONE,
    leg: legs[0] as StraightLeg,
  };
  return worthCutting(cutOf(made), stock) ? made : null;
}

export const faceToFace = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ width, joints, distance }) => ({
    width: { kind: 'word', value: width },
    first: { kind: 'word', value: joints[0] },
    second: { kind: 'word', value: joints[1] },
    distance: { kind: 'length', ticks: distance },
    insertion: { kind: 'length', ticks: SOCKET.length },
  }),
  asks: { ends: endsAsk, cut: cutAsk },
  slips: endSlips,
  figures: ({ leg }, _, how) => [drawPiece({ leg, piece: 1, insertion: 'hidden' }, how)],
  figured: ({ leg, distance }) => [{ kind: 'lengths', ticks: [distance] }, ...pieceShown(leg, 1, 'hidden')],
  says: endSays,
});
