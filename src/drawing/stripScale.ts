/** Sizes, scale and places of a strip. */
import type { Face, StraightLeg } from '../run/straight.ts';
import type { Ticks } from '../trade/length.ts';
import { MARGIN } from './frame.ts';
import { SIZES } from './plan.ts';
import type { StripGiven } from './stripGiven.ts';
import type { Form } from './types.ts';

interface Layout {
  readonly width: number;
  readonly side: number;
  readonly bar: number;
  readonly high: number;
  /** Least drawn length of a splice. */
  readonly splice: number;
  readonly whole: number;
}

export const STRIP_LAYOUT: Readonly<Record<Form, Layout>> = {
  phone: { width: 328, side: 12, bar: 112, high: 26, splice: 9, whole: SIZES.text },
  desk: { width: 752, side: 28, bar: 122, high: 34, splice: 10, whole: SIZES.big },
  paper: { width: 718, side: 26, bar: 122, high: 34, splice: 10, whole: SIZES.big },
};
/** Room for what stands at a face: a stub, a wall, an instrument. */
const FACE_ROOM = 26;

/** The scale and the places that the strip is drawn by; tests measure by the same. */
export function stripScale({ leg, stock, kerf }: StripGiven, form: Form) {
  const { width, side } = STRIP_LAYOUT[form];
  const margin = MARGIN[form];
  const left = leftOver(leg, stock, kerf);
  const beyond = left === undefined ? leg.end.open : left.kerf + left.length;
  const stub = (face: Face) => (face.joint === 'free' && face.kind !== 'instrument' ? 0 : FACE_ROOM);
  const x0 = margin + side + stub(leg.start);
  const x1 = width - margin - side - stub(leg.end);
  const pxPerTick = (x1 - x0) / (leg.length + beyond);
  return { x: (at: number) => x0 + at * pxPerTick, pxPerTick, left, beyond };
}

/** What is left of the last length, where it is the only one cut; `undefined` where there is no telling. */
export function leftOver(leg: StraightLeg, stock?: Ticks, kerf: Ticks | 0 = 0) {
  const last = leg.pieces.at(-1);
  if (stock === undefined || last === undefined || last.cut >= stock) return undefined;
  if (leg.pieces.slice(0, -1).some(({ cut }) => cut !== stock)) return undefined;
  const length = Math.max(0, stock - last.cut - kerf) as Ticks;
  return { kerf: Math.min(kerf, stock - last.cut), length };
}
