/**
 * The route as it is drawn: working points in space, to one scale. Channel and fittings are drawn wider than life, so
 * a fitting takes more of its legs; a leg that would be too short for that is drawn longer, and the sheet says so.
 */
import type { ResolvedFitting, ResolvedLeg, ResolvedRun } from '../../run/resolved.ts';
import { plus, type Vec } from '../../run/vector.ts';
import { inches, TICKS_PER_INCH, type Ticks } from '../../trade/length.ts';
import type { Form } from '../types.ts';
import { leastWidth, SIZES_OF } from './sizes.ts';
import { off, project } from './space.ts';

export interface DrawnLeg {
  readonly leg: ResolvedLeg;
  /** Working points. */
  readonly from: Vec;
  readonly to: Vec;
  readonly length: number;
  /** What the fittings at its ends take, px. */
  readonly before: number;
  readonly after: number;
  /** Half the outside width of its channel, and the height of its walls. */
  readonly half: number;
  readonly deep: number;
  /** Px along the leg of a place on it. */
  readonly along: (at: Ticks | number) => number;
}

export interface Route {
  readonly legs: readonly DrawnLeg[];
  readonly pxPerInch: number;
  /** How many times as wide as to scale channel is drawn. */
  readonly wider: number;
  /** Legs that are drawn longer than to scale. */
  readonly longer: number;
  /** Share of the drawn length that is to scale. */
  readonly faithful: number;
  /** 1, or less where much stands on little room. */
  readonly least: number;
  readonly box: { readonly x: number; readonly y: number; readonly w: number; readonly h: number };
}

/** Half width and depth of a channel at a scale. */
function channelOf(leg: ResolvedLeg, px: number) {
  const { outsideWidth, depth } = leg.tray;
  return { half: (inches(outsideWidth) * px) / 2, deep: inches(depth) * px };
}

/** What a fitting takes of a leg, px: to scale, but never so little that its bend has no inside. */
function taken(fitting: ResolvedFitting | null, half: number, pxPerInch: number, least: number): number {
  if (fitting === null) return 0;
  const { kind, takeOut } = fitting.item;
  const real = inches(takeOut) * pxPerInch;
  if (kind === 'reducer') return Math.max(real, 7 * least);
  if (kind === 'hinge') return Math.max(real, 5 * least);
  const turn = ((fitting.turnDeg === 0 ? 90 : fitting.turnDeg) * Math.PI) / 180;
  const needed =
    kind === 'elbow' ? (half + 3 * least) * Math.tan(Math.min(turn, Math.PI / 2) / 2) : half + 4 * least;
  return Math.max(real, needed);
}

/** Channel left between two fittings, px at least, so that a balloon has something to point at. */
const CLEAR: Readonly<Record<Form, number>> = { phone: 10, desk: 16, paper: 16 };

/** Everything at one scale; `least` below 1 lets channel be narrower and legs shorter, where there are many of them. */
function lay(resolved: ResolvedRun, form: Form, pxPerInch: number, least: number): Route {
  const trays = new Set(resolved.legs.map((l) => l.tray));
  const wider = Math.max(
    1,
    ...[...trays].map((t) => (leastWidth(form, t.width) * least) / (inches(t.outsideWidth) * pxPerInch)),
  );
  const done = new Map<ResolvedLeg, DrawnLeg>();
  let longer = 0;
  let [drawnLong, realLong] = [0, 0];
  for (const leg of resolved.legs) {
    const { half, deep } = channelOf(leg, pxPerInch * wider);
    const parent = leg.parent === null ? undefined : done.get(leg.parent);
    const before = taken(leg.fittingBefore, Math.max(half, parent?.half ?? 0), pxPerInch, least);
    const after = taken(leg.fittingAfter, half, pxPerInch, least);
    const real = (leg.length / TICKS_PER_INCH) * pxPerInch;
    const room = before + after + CLEAR[form] * least;
    const length = Math.max(real, room);
    if (length > real + 0.01) longer++;
    drawnLong += length;
    realLong += real;
    const from = parent === undefined ? ([0, 0, 0] as const) : plus(parent.to, shift(leg, parent, half));
    const [t1, t2] = [leg.start.takeOut, leg.end.takeOut];
    const clear = Math.max(1, leg.length - t1 - t2);
    done.set(leg, {
      leg,
      from,
      to: off(from, leg.frame.along, length),
      length,
      before,
      after,
      half,
      deep,
      along: (at) => {
        if (at < t1) return t1 === 0 ? (at / clear) * (length - before - after) : (at / t1) * before;
        if (at > leg.length - t2 && t2 > 0) return length - ((leg.length - at) / t2) * after;
        return before + ((at - t1) / clear) * (length - before - after);
      },
    });
  }
  const legs = [...done.values()];
  const faithful = realLong / drawnLong;
  return { legs, pxPerInch, wider, longer, faithful, least, box: boxOf(legs, form, pxPerInch) };
}

/** Behind a reducer the centre line stands aside, so that the wall it keeps is straight. */
function shift(leg: ResolvedLeg, before: DrawnLeg, half: number): Vec {
  const item = leg.fittingBefore?.item;
  if (item?.kind !== 'reducer' || item.hand === 'straight') return [0, 0, 0];
  const way = (item.hand === 'left' ? 1 : -1) * Math.abs(before.half - half);
  return off([0, 0, 0], leg.frame.left, way);
}

/** Extent on the sheet: the channel, what stands at its ends, its struts. */
function boxOf(legs: readonly DrawnLeg[], form: Form, pxPerInch: number): Route['box'] {
  const { stub, bubble, strut } = SIZES_OF[form];
  const [xs, ys]: [number[], number[]] = [[], []];
  const reach = (at: Vec, r: number) => {
    const [x, y] = project(at);
    xs.push(x - r, x + r);
    ys.push(y - r, y + r);
  };
  for (const { leg, from, to, half, deep } of legs) {
    for (const at of [from, to]) reach(at, half + deep * 0.5 + strut.reach * 0.7);
    if (leg.start.kind === 'ladder' || leg.start.kind === 'tray') reach(from, stub.half * 0.8);
    if (leg.end.kind === 'tray') reach(to, stub.half * 0.8);
    if (leg.end.kind === 'instrument') {
      const [x, y] = project(off(to, leg.frame.along, openOf(leg, form, pxPerInch)));
      const [x0, y0] = project(to);
      const far = Math.hypot(x - x0, y - y0) || 1;
      const [cx, cy] = [x + ((x - x0) / far) * bubble, y + ((y - y0) / far) * bubble];
      xs.push(cx - bubble, cx + bubble);
      ys.push(cy - bubble, cy + bubble);
    }
  }
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, w: Math.max(...xs) - x, h: Math.max(...ys) - y };
}

/** Px from the channel's end to an instrument. */
export function openOf(leg: ResolvedLeg, form: Form, pxPerInch: number): number {
  return Math.min(
    Math.max(inches(leg.end.open) * pxPerInch, form === 'phone' ? 8 : 14),
    form === 'phone' ? 30 : 60,
  );
}

/** How narrow channel gets before legs that are too short for it are drawn longer than to scale. */
const LEAST = [1, 0.8, 0.6, 0.45, 0.3, 0.2, 0.1, 0.03, 0.003];
/** A sheet on which less than this is to scale says nothing of lengths. */
const FAITHFUL = 0.75;
/** Length of a leg, on the mean, to its width. */
const SLENDER = 4.5;

/** The route at the largest scale that the sheet holds. */
export function routeOf(resolved: ResolvedRun, form: Form): Route {
  const { width, pad, most, scale } = SIZES_OF[form];
  const room = { w: width - 34 - 2 * pad.x, h: most };
  const fits = ({ box }: Route) => box.w <= room.w && box.h <= room.h;
  let best: Route | undefined;
  for (const least of LEAST) {
    let [low, high] = [1e-7, scale];
    const whole = lay(resolved, form, high, least);
    if (fits(whole)) return whole;
    if (!fits(lay(resolved, form, low, least))) continue;
    for (let i = 0; i < 22; i++) {
      const middle = Math.sqrt(low * high);
      if (fits(lay(resolved, form, middle, least))) low = middle;
      else high = middle;
    }
    best = lay(resolved, form, low, least);
    const mean = best.legs.reduce((sum, l) => sum + l.length / (2 * l.half), 0) / best.legs.length;
    if (best.faithful >= FAITHFUL && (mean >= SLENDER || least < 0.5)) break;
  }
  return best ?? lay(resolved, form, 1e-7, LEAST.at(-1) ?? 1);
}
