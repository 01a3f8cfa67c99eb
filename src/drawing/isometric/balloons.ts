/** Balloons that name the legs, with their lengths beside them where no dimension stands; and balloons of steps. */

import { type Fault, GivenError } from '../../trade/given.ts';
import { shortLength } from '../../trade/shortLength.ts';
import { textWidth } from '../glyphs.ts';
import { SIZES } from '../plan.ts';
import { jointNames, legMarks } from '../runNames.ts';
import { anyBox, freeBox, rimOf } from '../search.ts';
import type { Box, Point } from '../shapes.ts';
import { dimension } from './dimensions.ts';
import { station } from './fittings.ts';
import type { DrawnLeg } from './route.ts';
import { capsule, middleOf, type Setting } from './setting.ts';
import { off } from './space.ts';

export interface Stood {
  /** Middle of each balloon by what it carries. */
  readonly balloons: ReadonlyMap<string, Point>;
  /** Whether every one stands. */
  readonly all: boolean;
  /** Lengths that found no place: the mark of the leg and the length. */
  readonly unsaid: readonly { readonly mark: string; readonly length: string }[];
}

/** Shares of a leg that a balloon may point at, the liked one first. */
const POINTS = [0.5, 0.36, 0.64, 0.22, 0.78, 0.1, 0.9];

/** A place on the channel of a leg, on the sheet. */
export function onLeg({ place }: Setting, drawn: DrawnLeg, share: number): Point {
  const { before, after, length, deep } = drawn;
  const here = station(drawn, before + (length - before - after) * share);
  return place(off(here.at, here.frame.open, deep * 0.4));
}

/** A leg drawn shorter than this, px, has no dimension. */
const SHORT = 24;

/** Dimensions of the legs, long ones first; the phone has no room for them. */
export function dimensionLegs(setting: Setting): ReadonlySet<DrawnLeg> {
  const { scene, sizes, form } = setting;
  if (form === 'phone') return new Set();
  const legs = [...scene.route.legs].sort((a, b) => b.length - a.length);
  return new Set(
    legs.filter(
      ({ from, to, leg, half, length }) =>
        length > SHORT &&
        dimension(setting, {
          from,
          to,
          along: leg.frame.along,
          clear: half + 6,
          text: shortLength(leg.length),
          size: sizes.big,
          part: `leg ${leg.leg}`,
        }) !== undefined,
    ),
  );
}

export function nameLegs(setting: Setting, dimensioned: ReadonlySet<DrawnLeg>): Stood {
  const { given, scene } = setting;
  const marks = legMarks(given.resolved);
  const balloons = new Map<string, Point>();
  const unsaid: { mark: string; length: string }[] = [];
  let all = true;
  const named = given.balloons === undefined;
  for (const drawn of scene.route.legs) {
    const mark = marks.get(drawn.leg) ?? drawn.leg.leg;
    const length = dimensioned.has(drawn) ? undefined : shortLength(drawn.leg.length);
    if (named) {
      const stood = balloonAt(
        setting,
        mark,
        POINTS.map((p) => onLeg(setting, drawn, p)),
        length,
      );
      if (stood === undefined) all = false;
      else balloons.set(mark, stood.at);
      if (length !== undefined && stood?.said !== true) unsaid.push({ mark, length });
    } else if (length !== undefined && !textAt(setting, drawn, length)) unsaid.push({ mark, length });
  }
  return { balloons, all, unsaid };
}

function textAt(setting: Setting, drawn: DrawnLeg, words: string): boolean {
  const { plan, room } = setting;
  const size = { w: textWidth(words, SIZES.text), h: SIZES.text };
  const box = freeBox(room, onLeg(setting, drawn, 0.5), size, { likes: -90, from: 8, to: 50, ink: 1 });
  if (box === undefined) return false;
  plan.text([box.x + box.w / 2, box.y + SIZES.text * 0.78], words, { part: `leg ${drawn.leg.leg}` });
  room.keep(box);
  return true;
}

/** With more legs than this, balloons stand without lengths. */
export const CROWDED = 24;

/** How much nearer a balloon must stand without its length, which is then said in the notes, px. */
const SILENT = 60;

interface Balloon {
  readonly at: Point;
  readonly said: boolean;
}

/** A balloon with a length to one side of it, else without. */
function balloonAt(
  setting: Setting,
  mark: string,
  points: readonly Point[],
  length?: string,
): Balloon | undefined {
  const { room, sizes, form, scene } = setting;
  const crowded = scene.route.legs.length > CROWDED;
  const r = sizes.balloon;
  const own = Math.max(2 * r, textWidth(mark, SIZES.text) + 14);
  const said = length === undefined ? 0 : textWidth(length, SIZES.text) + 6;
  const ways = length === undefined || crowded ? [0] : [said, -said, 0];
  let best:
    | {
        readonly box: Box;
        readonly head: Box;
        readonly to: Point;
        readonly cost: number;
        readonly way: number;
      }
    | undefined;
  for (const way of ways) {
    const silent = length !== undefined && way === 0 ? SILENT : 0;
    const size = { w: own + Math.abs(way), h: 2 * r };
    const leader = { x: way < 0 ? -way : 0, w: own };
    points.slice(0, crowded ? 2 : undefined).forEach((to, i) => {
      const box = freeBox(room, to, size, {
        likes: -80,
        from: 12,
        to: form === 'phone' ? 110 : 150,
        leader,
        ink: 1,
        air: 3,
      });
      if (box === undefined) return;
      const head = { ...box, x: box.x + leader.x, w: own };
      const [cx, cy] = middleOf(head);
      const cost = Math.hypot(cx - to[0], cy - to[1]) + i * 4 + silent;
      if (best === undefined || cost < best.cost) best = { box, head, to, cost, way };
    });
  }
  if (best === undefined) {
    // Wherever there is room: a balloon always stands, its leader as long as it must be.
    const to = points[0] as Point;
    const box = anyBox(room, to, { w: own, h: 2 * r });
    if (box === undefined) return undefined;
    best = { box, head: box, to, cost: 0, way: 0 };
  }
  const { box, head, to, way } = best;
  drawBalloon(setting, mark, head, to);
  if (length !== undefined && way !== 0) {
    const [, cy] = middleOf(head);
    const x = way > 0 ? head.x + head.w + 6 : head.x - 6;
    setting.plan.text([x, cy + 5.5], length, { anchor: way > 0 ? 'start' : 'end', part: `balloon ${mark}` });
  }
  room.keep(box);
  return { at: middleOf(head), said: length === undefined || way !== 0 };
}

/** Leader with a dot on the part, a ring round the mark. */
function drawBalloon({ plan, room }: Setting, mark: string, head: Box, to: Point): void {
  const [cx, cy] = middleOf(head);
  const round = head.w <= head.h + 0.01;
  const far = Math.hypot(to[0] - cx, to[1] - cy) || 1;
  const rim: Point = round
    ? [cx + ((to[0] - cx) / far) * (head.w / 2), cy + ((to[1] - cy) / far) * (head.h / 2)]
    : rimOf(head, to);
  plan.line('dimension', rim, to, `leader ${mark}`);
  room.ink(rim, to);
  plan.circle(to, 2.8, { fill: 'ink' });
  if (round) plan.circle([cx, cy], head.w / 2, { fill: 'sheet', pen: 'thin', part: `balloon ${mark}` });
  else plan.polygon(capsule(head), { fill: 'sheet', pen: 'thin', part: `balloon ${mark}` });
  plan.text([cx, cy + 5.5], mark, { part: `balloon ${mark}` });
}

/** Balloons of steps, at the parts they name. */
export function stepBalloons(setting: Setting): Pick<Stood, 'balloons' | 'all'> {
  const { given } = setting;
  const targets = partsOf(setting);
  const faults: Fault[] = (given.balloons ?? []).flatMap(({ at }, i) =>
    targets.has(at)
      ? []
      : [
          {
            field: `balloons[${i}].at`,
            value: at,
            message: 'the view shows no such part',
            todo: `point at one of ${[...targets.keys()].join(' ')}`,
          },
        ],
  );
  if (faults.length > 0) throw new GivenError(faults);
  const balloons = new Map<string, Point>();
  let all = true;
  for (const { number, at } of given.balloons ?? []) {
    const stood = balloonAt(setting, number, targets.get(at) as readonly Point[]);
    if (stood === undefined) all = false;
    else balloons.set(number, stood.at);
  }
  return { balloons, all };
}

/** What a balloon may point at. */
function partsOf(setting: Setting): ReadonlyMap<string, readonly Point[]> {
  const { given, scene, place } = setting;
  const { legs } = scene.route;
  const names = jointNames(given.resolved);
  const first = legs[0];
  return new Map<string, readonly Point[]>([
    ...(first === undefined ? [] : [['start', [place(first.from)]] as const]),
    ...legs.map((d) => [`leg-${d.leg.leg}`, POINTS.map((p) => onLeg(setting, d, p))] as const),
    ...legs
      .filter((d) => d.leg.fittingAfter === null)
      .map((d) => [`end-${d.leg.leg}`, [place(d.to)]] as const),
    ...legs
      .filter((d) => d.leg.fittingBefore !== null)
      .map((d) => [`fitting-${d.leg.leg}`, [place(d.from)]] as const),
    ...scene.joints.map((j) => [(names.get(j.joint) ?? j.joint.name).toLowerCase(), [place(j.at)]] as const),
    ...scene.supports.map((s) => [`support-${s.support.name}`, s.ends.map(place)] as const),
  ]);
}
