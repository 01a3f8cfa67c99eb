/** By what fitting a leg can go on, and which way. */
import type { Item } from '../catalogue.ts';
import type { FittingItem, Frame, Turn, WayOut } from '../resolved.ts';
import { settle } from '../settle.ts';
import { turnInto, waysOf } from '../turns.ts';
import type { Direction } from '../types.ts';
import { angleDeg, directionOf, type Vec } from '../vector.ts';
import type { Place } from './place.ts';

/** What a new leg is given besides its length. */
export interface WayOutChoice {
  /** `start`, a leg, or `LEG:left`, `LEG:right`. */
  readonly from: string;
  readonly fitting: string | null;
  readonly dir: Direction;
  readonly onEdge: boolean;
  readonly turn: Turn;
  readonly turnDeg: number;
}

export const AXES = ['N', 'E', 'S', 'W', 'U', 'D'] as const;
export type Axis = (typeof AXES)[number];

/** Why no elbow goes a way. */
export type NoWay = 'on' | 'back' | 'full' | 'branch' | 'upside' | 'noElbow';

export interface Way {
  readonly axis: Axis;
  /** By the elbow that goes there, the largest turn first; null where none does. */
  readonly choice: WayOutChoice | null;
  readonly why: NoWay | null;
}

export interface FittingOut {
  readonly item: FittingItem;
  /** Empty for a hinge, which turns into any direction: see `hingeOut`. */
  readonly ways: readonly WayOutChoice[];
}

const SAME = 0.1;

/** The first leg leaves the start any way. */
export const firstWays = (onEdge: boolean): readonly Way[] =>
  AXES.map((axis) => ({ axis, choice: firstLeg(axis, onEdge && axis !== 'U' && axis !== 'D'), why: null }));

export const firstLeg = (dir: Direction, onEdge: boolean): WayOutChoice => ({
  from: 'start',
  fitting: null,
  dir,
  onEdge,
  turn: 'none',
  turnDeg: 0,
});

/** The six axes from the end of a leg: by which elbow, or why not. */
export function waysOut(place: Place): readonly Way[] {
  const elbows = place.stands === null ? fittingsAt(place).filter(({ kind }) => kind === 'elbow') : [];
  const outs = elbows.flatMap((item) => waysBy(place, item)).sort((a, b) => b.turnDeg - a.turnDeg);
  return AXES.map((axis) => {
    const to = directionOf(axis);
    const choice = outs.find(({ dir }) => angleDeg(directionOf(dir), to) <= SAME) ?? null;
    return {
      axis,
      choice: choice === null ? null : { ...choice, dir: axis },
      why: choice === null ? whyNot(place, to, elbows) : null,
    };
  });
}

function whyNot(place: Place, to: Vec, elbows: readonly FittingItem[]): NoWay {
  if (place.full) return 'full';
  if (place.stands !== null) return 'branch';
  const [frame] = place.frames;
  if (frame === undefined) return 'noElbow';
  const off = angleDeg(frame.along, to);
  if (off <= SAME) return 'on';
  if (off >= 180 - SAME) return 'back';
  const turned = elbows.some((item) =>
    rawWays(frame, item, 'straight').some(({ along }) => angleDeg(along, to) <= SAME),
  );
  return turned ? 'upside' : 'noElbow';
}

/** Fittings other than those that the axes name by themselves, in the order of the catalogue. */
export function fittingsOut(place: Place): readonly FittingOut[] {
  return fittingsAt(place)
    .map((item) => ({ item, ways: item.kind === 'hinge' ? [] : waysBy(place, item) }))
    .filter(({ item, ways }) => item.kind === 'hinge' || ways.length > 0);
}

/** A hinge into any direction; null where it cannot turn so. */
export function hingeOut(place: Place, fitting: string, dir: Direction): WayOutChoice | null {
  const item = place.catalogue.get(fitting);
  if (item?.kind !== 'hinge' || place.full) return null;
  const to = directionOf(dir);
  for (const frame of place.frames) {
    const turned = turnInto(frame, item, 'straight', to);
    if ('part' in turned) continue;
    const found = settled(place, item, 'straight', turned);
    if (found !== null) return { ...found, dir };
  }
  return null;
}

const isFitting = (item: Item): item is FittingItem =>
  ['elbow', 'tee', 'cross', 'reducer', 'hinge'].includes(item.kind);

function fittingsAt({ stands, full, tray, catalogue }: Place): readonly FittingItem[] {
  if (full) return [];
  if (stands !== null) return [stands];
  return [...catalogue.values()].filter(
    (item): item is FittingItem =>
      isFitting(item) &&
      item.metal === tray.metal &&
      (item.width === tray.width || (item.kind === 'reducer' && item.narrow === tray.width)),
  );
}

const WAYS = ['straight', 'left', 'right'] as const;

function waysBy(place: Place, item: FittingItem): readonly WayOutChoice[] {
  const outs = item.kind === 'tee' || item.kind === 'cross' ? WAYS : (['straight'] as const);
  const found = outs
    .filter((way) => !place.taken.includes(way))
    .flatMap((way) =>
      place.frames.flatMap((frame) =>
        rawWays(frame, item, way).flatMap((turned) => settled(place, item, way, turned) ?? []),
      ),
    );
  // Where the open side is still free, several ways of lying give one direction.
  return found.filter((one, k) => found.findIndex((other) => sameWay(one, other)) === k);
}

const sameWay = (a: WayOutChoice, b: WayOutChoice): boolean =>
  a.from === b.from && angleDeg(directionOf(a.dir), directionOf(b.dir)) <= SAME;

const rawWays = (frame: Frame, item: FittingItem, way: WayOut) =>
  item.kind === 'hinge' ? [] : waysOf(frame, item, way);

type Turned = ReturnType<typeof waysOf>[number];

/** As it comes to lie: flat, on edge, or not at all. */
function settled(place: Place, item: FittingItem, way: WayOut, turned: Turned): WayOutChoice | null {
  const onEdge = [false, true].find((edge) => !('part' in settle(turned, edge)));
  if (onEdge === undefined) return null;
  return {
    from: way === 'straight' ? place.leg : `${place.leg}:${way}`,
    fitting: item.id,
    dir: directionNamed(turned.along),
    onEdge,
    turn: turned.turn,
    turnDeg: turned.turnDeg,
  };
}

/** A letter where it goes along an axis; else degrees, good to far less than what is told apart. */
export function directionNamed(along: Vec): Direction {
  const axis = AXES.find((name) => angleDeg(directionOf(name), along) <= SAME);
  if (axis !== undefined) return axis;
  const [x, y, z] = along;
  const round = (deg: number) => Math.round(deg * 1e4) / 1e4 + 0;
  const azimuth = round(((Math.atan2(x, y) * 180) / Math.PI + 360) % 360);
  return {
    azimuthDeg: azimuth === 360 ? 0 : azimuth,
    slopeDeg: round((Math.asin(Math.max(-1, Math.min(1, z))) * 180) / Math.PI),
  };
}
