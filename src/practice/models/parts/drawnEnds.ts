/** A piece and what it meets at its two ends, with no tape to it: where that is held is for the learner to say. */
import { frameOf, MARGIN } from '../../../drawing/frame.ts';
import { pieceScale } from '../../../drawing/piece.ts';
import { drawPieceEnd } from '../../../drawing/pieceEnd.ts';
import { endKey } from '../../../drawing/pieceWords.ts';
import { Plan, SIZES } from '../../../drawing/plan.ts';
import { render } from '../../../drawing/svg.ts';
import type { Drawing, How } from '../../../drawing/types.ts';
import { resolveRun } from '../../../run/resolve.ts';
import type { StraightLeg } from '../../../run/straight.ts';
import type { EndJoint, Joint } from '../../../run/types.ts';
import { TRADE_USUAL } from '../../../run/usual.ts';
import type { Say } from '../../../trade/answer.ts';
import { fromInches, type Ticks, ticks } from '../../../trade/length.ts';
import type { World } from '../../model.ts';
import type { Pair } from './pieceEnds.ts';

export type EndKind = 'sleeve' | 'plate' | 'socket' | 'butt' | 'free';

/** Of the piece and of what lies before and behind it: for the picture alone. */
const [PIECE, BESIDE] = [fromInches(72), fromInches(48)];

const isSplice = (kind: EndKind) => kind === 'sleeve' || kind === 'plate';
const face = (kind: EndKind): EndJoint =>
  kind === 'socket' ? 'socketed' : kind === 'butt' ? 'butt' : 'free';
const joints = (kind: EndKind, at: Ticks): readonly Joint[] =>
  isSplice(kind) ? [{ leg: 'L1', at, kind: kind === 'sleeve' ? 'socketed' : 'butt' }] : [];

/** @returns the leg, and the number of the piece in it */
function layOut([first, second]: Pair<EndKind>, width: string, world: World) {
  const from = isSplice(first) ? BESIDE : ticks(0);
  const to = ticks(from + PIECE);
  const { legs } = resolveRun(
    {
      v: 1,
      tray: width,
      start:
        isSplice(first) || first === 'free'
          ? { kind: 'free', joint: 'free' }
          : { kind: 'tray', joint: face(first) },
      legs: [
        {
          id: 'L1',
          from: 'start',
          fitting: null,
          dir: 'E',
          length: isSplice(second) ? ticks(to + BESIDE) : to,
        },
      ],
      joints: [...joints(first, from), ...joints(second, to)],
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
  return { leg: legs[0] as StraightLeg, number: isSplice(first) ? 2 : 1 };
}

const SIZE = {
  phone: { width: 328, high: 30, stub: 12 },
  desk: { width: 660, high: 40, stub: 42 },
  paper: { width: 660, high: 40, stub: 42 },
} as const;

export function drawEnds(kinds: Pair<EndKind>, width: string, world: World, how: How): Drawing {
  const { leg, number } = layOut(kinds, width, world);
  const { form, speak } = how;
  const { width: wide, high, stub } = SIZE[form];
  const margin = MARGIN[form];
  const bar = margin + 42;
  const { sides, px, edges } = pieceScale({ leg, piece: number }, form);
  const plan = new Plan();
  const [from, to] = edges;
  plan.rect({ x: from, y: bar, w: to - from, h: high }, { fill: 'galv', part: 'piece' });
  for (const y of [bar, bar + high]) plan.line('edge', [from, y], [to, y]);
  sides.forEach((side, i) => {
    drawPieceEnd(plan, side, { edge: edges[i] ?? 0, way: i === 0 ? -1 : 1, bar, high, stub, px });
  });
  const middle = (from + to) / 2;
  for (const x of [middle - 6, middle + 6]) plan.breakLine(x, bar, bar + high);
  const names = sides.map((side) =>
    speak({ say: endKey(side), values: side.joint === undefined ? {} : { name: side.joint.name } }),
  );
  const foot = bar + high + 42;
  names.forEach((name, i) => {
    const at = [i === 0 ? margin + 12 : wide - margin - 12, foot + (form === 'phone' ? i * 20 : 0)] as const;
    plan.text([at[0], at[1]], name, { size: SIZES.note, anchor: i === 0 ? 'start' : 'end', part: 'end' });
  });
  const height = Math.ceil(foot + (form === 'phone' ? 34 : 16) + margin);
  const [first = '', second = ''] = names;
  const words = speak({ say: 'measuring.endsWords', values: { first, second } });
  const frame = frameOf(form, wide, height);
  return render({ view: 'piece', width: wide, height, frame, plan, words, zones: {} }, how);
}

/** What the two ends are called on such a drawing: splices by their names, the others by what they meet. */
export function endNames(kinds: Pair<EndKind>): readonly Say[] {
  const splice = (i: number) => kinds.slice(0, i + 1).filter(isSplice).length;
  return kinds.map((kind, i) => ({
    say: END_SAYS[kind],
    values: isSplice(kind) ? { name: `S${splice(i)}` } : {},
  }));
}
const END_SAYS: Readonly<Record<EndKind, Say['say']>> = {
  sleeve: 'drawing.endSleeve',
  plate: 'drawing.endPlate',
  socket: 'drawing.end-socketed-tray',
  butt: 'drawing.end-butt-tray',
  free: 'drawing.endFree',
};
export const drawnEndsSays = ['measuring.endsWords'];
