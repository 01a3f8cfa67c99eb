/** From drawn values to a run without supports and splices: legs, fittings, what parts a leg, ends, cables. */
import type { Catalogue, Item } from '../../run/catalogue.ts';
import type { Direction, End, EndJoint, Joint, Leg, Run, RunCable, Start } from '../../run/types.ts';
import { wantedGap } from '../../run/wantedGap.ts';
import { MOVEMENT } from '../../trade/habits.ts';
import { fromInches, roundTo, TICKS_PER_INCH, type Ticks, ticks } from '../../trade/length.ts';
import { CABLES, type PracticeCable } from './cables.ts';
import type { LegValues, RouteValues, Turn } from './wants.ts';

/** An open gap in the channel, as at a wall. */
const OPEN_GAP = fromInches(10);
const HINGE_DEG = 30;

interface Heading {
  readonly azimuthDeg: number;
  /** Where the leg goes plumb; the azimuth is the heading it goes on in behind it. */
  readonly plumb: 'U' | 'D' | null;
}

/** Where the leg behind goes, and by which part of the catalogue's it turns. */
interface Way {
  readonly heading: Heading;
  /** Behind the channel's id: `card-4` and `elbow-90`. */
  readonly part: string;
  readonly keeps?: Leg['keeps'];
  readonly side?: 'left' | 'right';
}

const turned = ({ azimuthDeg }: Heading, by: number): Heading => ({
  azimuthDeg: (azimuthDeg + by + 360) % 360,
  plumb: null,
});

const WAYS: Readonly<Record<Turn, (h: Heading) => Way>> = {
  left: (h) => ({ heading: turned(h, -90), part: 'elbow-90' }),
  right: (h) => ({ heading: turned(h, 90), part: 'elbow-90' }),
  'half-left': (h) => ({ heading: turned(h, -45), part: 'elbow-45' }),
  'half-right': (h) => ({ heading: turned(h, 45), part: 'elbow-45' }),
  // The open side is up: up turns towards it.
  up: (h) => ({ heading: { ...h, plumb: 'U' }, part: 'inside-90' }),
  down: (h) => ({ heading: { ...h, plumb: 'D' }, part: 'outside-90' }),
  'hinge-left': (h) => ({ heading: turned(h, -HINGE_DEG), part: 'hinge' }),
  'hinge-right': (h) => ({ heading: turned(h, HINGE_DEG), part: 'hinge' }),
  reduce: (h) => ({ heading: h, part: 'reducer-straight', keeps: 'centre' }),
  // From the wide end the hand names the wall that runs straight on.
  'reduce-left': (h) => ({ heading: h, part: 'reducer-left', keeps: 'left' }),
  'reduce-right': (h) => ({ heading: h, part: 'reducer-right', keeps: 'right' }),
  'branch-left': (h) => ({ heading: turned(h, -90), part: 'tee', side: 'left' }),
  'branch-right': (h) => ({ heading: turned(h, 90), part: 'tee', side: 'right' }),
};

/** Off a plumb leg, level again in the heading there was: at the foot of a drop towards the open side, at the head of a rise away. */
const levelAgain = ({ azimuthDeg, plumb }: Heading): Way => ({
  heading: { azimuthDeg, plumb: null },
  part: plumb === 'D' ? 'inside-90' : 'outside-90',
});
const throughTee = (heading: Heading): Way => ({ heading, part: 'tee' });

const AZIMUTHS = { north: 0, east: 90, south: 180, west: 270 } as const;
const NAMED: ReadonlyMap<number, Direction> = new Map([
  [0, 'N'],
  [90, 'E'],
  [180, 'S'],
  [270, 'W'],
]);

function directionOf({ azimuthDeg, plumb }: Heading): Direction {
  return plumb ?? NAMED.get(azimuthDeg) ?? { azimuthDeg, slopeDeg: 0 };
}

interface Growing {
  readonly legs: Leg[];
  /** Last leg of the way that goes on, and how it lies. */
  on: string;
  heading: Heading;
  tray: string;
  /** Whether the last row was a branch: the next goes straight on from its tee. */
  teed: boolean;
  branch: string | null;
}

/** @returns null where these turns make no run */
function legsOf({ width, heading, legs }: RouteValues, catalogue: Catalogue): Growing | null {
  const grown: Growing = {
    legs: [],
    on: 'start',
    heading: { azimuthDeg: AZIMUTHS[heading], plumb: null },
    tray: width,
    teed: false,
    branch: null,
  };
  for (const row of legs) if (!add(grown, row, catalogue)) return null;
  return grown.teed || grown.legs.length === 0 ? null : grown;
}

function add(grown: Growing, { length, turn }: LegValues, catalogue: Catalogue): boolean {
  const { legs, heading, teed } = grown;
  const id = `L${legs.length + 1}`;
  if (legs.length === 0) {
    legs.push({ id, from: 'start', fitting: null, dir: directionOf(heading), length });
    grown.on = id;
    return true;
  }
  const way = teed ? throughTee(heading) : heading.plumb === null ? WAYS[turn](heading) : levelAgain(heading);
  const { side, keeps } = way;
  // A run branches once.
  if (side !== undefined && grown.branch !== null) return false;
  const part = partOf(grown.tray, way.part, catalogue);
  if (part === null) return false;
  legs.push({
    id,
    from: side === undefined ? grown.on : `${grown.on}:${side}`,
    fitting: part.id,
    dir: directionOf(way.heading),
    length,
    ...(keeps === undefined ? {} : { keeps }),
  });
  grown.teed = side !== undefined;
  if (side !== undefined) {
    grown.branch = id;
    return true;
  }
  if (part.kind === 'reducer') grown.tray = `card-${part.narrow / TICKS_PER_INCH}`;
  grown.on = id;
  grown.heading = way.heading;
  return true;
}

/** The part of this channel; a reducer is named by both widths. */
function partOf(
  tray: string,
  part: string,
  catalogue: Catalogue,
): Exclude<Item, { kind: 'fastening' }> | null {
  const narrower = tray === 'card-6' ? 4 : 2;
  const id = part.startsWith('reducer') ? `${tray}-${narrower}-${part}` : `${tray}-${part}`;
  const item = catalogue.get(id);
  return item === undefined || item.kind === 'fastening' ? null : item;
}

function joinedBy(kind: Start['kind'] | End['kind']): EndJoint {
  return kind === 'free' ? 'free' : 'socketed';
}

/** The joints that part legs, at whole inches. */
function jointsOf(values: RouteValues, legs: readonly Leg[], gap: Ticks | null): readonly Joint[] | null {
  const joints: Joint[] = [];
  for (const [i, { parted, part, length }] of values.legs.entries()) {
    const { id, dir } = legs[i] as Leg;
    if (parted === 'none') continue;
    // A drop is short and hangs on one support: it is not parted.
    if (dir === 'U' || dir === 'D') return null;
    const at = ticks(Math.round((length * part) / 100 / TICKS_PER_INCH) * TICKS_PER_INCH);
    if (parted === 'hinged') joints.push({ leg: id, at, kind: 'hinged' });
    else if (parted === 'gap') joints.push({ leg: id, at, kind: 'gap', gap: OPEN_GAP });
    else if (gap === null) return null;
    else joints.push({ leg: id, at, kind: 'expansion', gap });
  }
  return joints;
}

/** Cables of a row go to the last leg; with a branch those of the first row go there. */
function cablesOf(
  { cables = [], barrier = false }: RouteValues,
  last: string,
  branch: string | null,
): RunCable[] {
  return cables.map(({ cable, count }, i): RunCable => {
    const { type, odIn, lbPerFt, use, deviceA }: PracticeCable = CABLES[cable];
    return {
      id: `C${i + 1}`,
      type,
      odIn,
      lbPerFt,
      count,
      make: 'multiconductor',
      use,
      ...(deviceA === undefined ? {} : { deviceA }),
      ...(barrier ? { side: use === 'power' ? 'left' : 'right' } : {}),
      to: i === 0 && branch !== null ? branch : last,
    } as const;
  });
}

function warmth({ lowF, highF, nowF }: RouteValues): Run['temps'] {
  return lowF === undefined || highF === undefined || nowF === undefined ? undefined : { lowF, highF, nowF };
}

/** The run before supports, splices and jumpers. @returns null where these values make none */
export function routeOf(values: RouteValues, catalogue: Catalogue): Run | null {
  const grown = legsOf(values, catalogue);
  if (grown === null) return null;
  const { legs, on: last, branch } = grown;
  if (branch !== null && (values.cables?.length ?? 2) < 2) return null;
  const temps = values.legs.some(({ parted }) => parted === 'expansion') ? warmth(values) : undefined;
  const wanted = temps === undefined ? null : wantedGap(temps, MOVEMENT.length);
  const joints = jointsOf(values, legs, wanted === null ? null : roundTo(wanted, 16));
  if (joints === null) return null;
  const end = (leg: string, kind: End['kind']): End => ({ leg, kind, joint: joinedBy(kind) });
  return {
    v: 1,
    tray: values.width,
    start: { kind: values.start, joint: joinedBy(values.start) },
    legs: legs.map((leg, i) => ({
      ...leg,
      ...(values.barrier === true ? { barrier: true } : {}),
      ...(values.painted === i + 1 ? { bare: false } : {}),
    })),
    ends: [...(branch === null ? [] : [end(branch, 'instrument')]), end(last, values.end)],
    joints,
    cables: cablesOf(values, last, branch),
    ...(values.maxSpan === undefined ? {} : { limits: { maxSpan: values.maxSpan } }),
    ...(temps === undefined ? {} : { temps }),
  };
}
