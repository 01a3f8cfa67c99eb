/** Where the legs stand: one scale, bars beside each other in rows, a bar longer than a row broken over several. */
import type { ResolvedLeg, ResolvedRun } from '../../run/resolved.ts';
import type { ResolvedJoint } from '../../run/straight.ts';
import { inches, type Ticks, ticks } from '../../trade/length.ts';
import { MARGIN } from '../frame.ts';
import type { Form } from '../types.ts';

export interface Sizes {
  readonly width: number;
  /** From the frame to the first bar. */
  readonly side: number;
  readonly gap: number;
  /** Least room of a leg, so that its name and length have room over it. */
  readonly cell: number;
  readonly high: number;
  /** Most px to the inch. */
  readonly scale: number;
  readonly rows: number;
  /** Px wanted between neighbouring supports or joints. */
  readonly apart: number;
  /** Room at an end for what stands there. */
  readonly face: number;
}

const desk: Sizes = {
  width: 752,
  side: 14,
  gap: 26,
  cell: 104,
  high: 30,
  scale: 2.4,
  rows: 9,
  apart: 26,
  face: 44,
};
export const SIZES_OF: Readonly<Record<Form, Sizes>> = {
  phone: { width: 328, side: 10, gap: 18, cell: 92, high: 26, scale: 1.8, rows: 16, apart: 24, face: 38 },
  desk,
  paper: { ...desk, width: 718 },
};

/** A stretch of one leg in a row; `first` and `last` where the leg begins and ends, else it is broken there. */
export interface Bar {
  readonly leg: ResolvedLeg;
  readonly row: number;
  /** Left edge of its cell and of its bar, and the room of the cell. */
  readonly cell: { readonly x: number; readonly w: number };
  readonly from: number;
  readonly to: number;
  readonly first: boolean;
  readonly last: boolean;
  /** Px of a place along the leg, inches. */
  readonly x: (at: number) => number;
}

export interface Flow {
  readonly bars: readonly Bar[];
  readonly rows: number;
  readonly pxPerInch: number;
}

const longOf = (leg: ResolvedLeg) => inches(leg.length);
const stands = (leg: ResolvedLeg, side: 'start' | 'end') =>
  (side === 'start' ? leg.parent === null : leg.fittingAfter === null) &&
  (leg[side].kind !== 'free' || leg[side].joint !== 'free');

/** Bars at one scale. */
function flowAt(legs: readonly ResolvedLeg[], form: Form, px: number): Flow {
  const { width, side, gap, cell, face } = SIZES_OF[form];
  const left = MARGIN[form] + side;
  const right = width - MARGIN[form] - side;
  const bars: Bar[] = [];
  let [row, cursor] = [0, left];
  const place = (leg: ResolvedLeg, from: number, to: number) => {
    const [first, last] = [from === 0, to === longOf(leg)];
    const before = first && stands(leg, 'start') ? face : 0;
    const after = last && stands(leg, 'end') ? face : 0;
    const long = (to - from) * px;
    const w = Math.max(cell, before + long + after);
    if (cursor > left && cursor + w > right + 0.01) [row, cursor] = [row + 1, left];
    const x0 = cursor + before;
    bars.push({ leg, row, cell: { x: cursor, w }, from, to, first, last, x: (at) => x0 + (at - from) * px });
    cursor += w + gap;
  };
  for (const leg of legs) {
    const long = longOf(leg);
    const [before, after] = [stands(leg, 'start') ? face : 0, stands(leg, 'end') ? face : 0];
    if (before + long * px + after <= right - left) {
      place(leg, 0, long);
      continue;
    }
    // Broken: whole rows, and the rest in the last, never a stump.
    if (cursor > left) [row, cursor] = [row + 1, left];
    let from = 0;
    while (from < long) {
      const room = (right - left - (from === 0 ? before : 0)) / px;
      const rest = long - from;
      const last = rest * px + after <= right - left - (from === 0 ? before : 0);
      const to = last ? long : Math.min(long, from + Math.min(room, Math.max(rest - 40 / px, rest / 2)));
      place(leg, from, clearOf(leg, from, to, long));
      from = bars.at(-1)?.to ?? long;
    }
  }
  return { bars, rows: row + 1, pxPerInch: px };
}

/** A break stands clear of joints. */
function clearOf(leg: ResolvedLeg, from: number, to: number, long: number): number {
  if (to >= long) return long;
  // At a whole foot where the row is long enough for one.
  const foot = Math.floor(to / 12) * 12;
  const even = foot > from + 12 ? foot : to;
  const half = ({ length, opening }: ResolvedJoint) => inches(ticks(Math.max(length, opening))) / 2 + 4;
  const joint = leg.joints.find((j) => Math.abs(inches(j.at) - even) < half(j));
  if (joint === undefined) return even;
  const before = Math.floor((inches(joint.at) - half(joint)) / 12) * 12;
  return before > from + 12 ? before : even;
}

/** What stands closest along the legs, inches, on the whole: the scale must keep it apart. */
function closeness(legs: readonly ResolvedLeg[]): number {
  const apart = legs.flatMap((leg) => {
    const places = [...leg.supports, ...leg.joints]
      .map(({ at }) => inches(at as Ticks))
      .sort((a, b) => a - b);
    return places.slice(1).map((at, i) => at - (places[i] ?? 0));
  });
  if (apart.length === 0) return Math.min(...legs.map(longOf)) / 3;
  apart.sort((a, b) => a - b);
  return apart[Math.floor(apart.length * 0.3)] ?? 1;
}

/** As few rows as keep neighbours apart, at the largest scale that they hold. */
export function flowOf({ legs }: Pick<ResolvedRun, 'legs'>, form: Form): Flow {
  const { rows: most, scale, apart } = SIZES_OF[form];
  const close = Math.max(0.5, closeness(legs));
  let best: Flow | undefined;
  for (let rows = 1; rows <= most || best === undefined; rows++) {
    let [low, high] = [0, scale];
    let made: Flow | undefined;
    for (let i = 0; i < 16; i++) {
      const px = i === 0 ? high : i === 1 ? 1e-4 : (low + high) / 2;
      const flow = flowAt(legs, form, px);
      if (flow.rows <= rows) {
        [low, made] = [px, flow];
        if (i === 0) break;
      } else if (i === 1) break;
      else high = px;
    }
    if (made === undefined) continue;
    best = made;
    if (made.pxPerInch * close >= apart || made.pxPerInch >= scale) break;
    // Rows that would be needed at the scale wanted: no need to try those between.
    const wanted = flowAt(legs, form, Math.min(scale, apart / close)).rows;
    rows = Math.max(rows, Math.min(wanted, most) - 1);
  }
  return best as Flow;
}
