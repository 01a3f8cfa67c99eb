/**
 * Whole valid runs by chance: every fitting and joint of the practice catalogue, all widths, branches, legs on edge, odd
 * directions, cables, supports, temperatures, ends. The same seed gives the same run.
 * Directions are turned here by a working of its own (rotation about an axis), not by the code under test.
 */
import fc from 'fast-check';
import type { Elbow, Item } from '../../src/run/catalogue.ts';
import type {
  Direction,
  End,
  EndJoint,
  Joint,
  Jumper,
  Leg,
  Mark,
  Places,
  Run,
  RunCable,
  Support,
} from '../../src/run/types.ts';
import { TICKS_PER_INCH, type Ticks, ticks } from '../../src/trade/length.ts';
import { catalogue } from './practice.ts';

type V3 = readonly [number, number, number];
interface Frame {
  readonly along: V3;
  readonly open: V3;
}

/** What chance gives: whole numbers, one of several, yes or no. */
export class Chance {
  private state: number;
  constructor(seed: number) {
    this.state = seed >>> 0;
  }
  /** From 0 up to and not including 1. */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) >>> 0;
    let t = this.state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  }
  /** Whole, ends included. */
  whole(from: number, to: number): number {
    return from + Math.floor(this.next() * (to - from + 1));
  }
  yes(share: number): boolean {
    return this.next() < share;
  }
  of<T>(all: readonly T[]): T {
    return all[this.whole(0, all.length - 1)] as T;
  }
  /** A length between two numbers of inches: mostly whole sixteenths, now and then any tick. */
  length(fromIn: number, toIn: number): Ticks {
    return this.yes(0.8)
      ? ticks(this.whole(fromIn * 16, toIn * 16) * (TICKS_PER_INCH / 16))
      : ticks(this.whole(fromIn * TICKS_PER_INCH, toIn * TICKS_PER_INCH));
  }
}

const dot = (a: V3, b: V3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: V3, b: V3): V3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** Turned about an axis by the right-hand rule (Rodrigues' formula). */
function about(axis: V3, deg: number, v: V3): V3 {
  const a = (deg * Math.PI) / 180;
  const [c, s] = [Math.cos(a), Math.sin(a)];
  const k = dot(axis, v) * (1 - c);
  const w = cross(axis, v);
  return [
    v[0] * c + w[0] * s + axis[0] * k,
    v[1] * c + w[1] * s + axis[1] * k,
    v[2] * c + w[2] * s + axis[2] * k,
  ];
}

const NAMED: Readonly<Record<string, V3>> = {
  N: [0, 1, 0],
  E: [1, 0, 0],
  S: [0, -1, 0],
  W: [-1, 0, 0],
  U: [0, 0, 1],
  D: [0, 0, -1],
};

function dirOf(v: V3): Direction {
  for (const [name, axis] of Object.entries(NAMED)) {
    if (dot(axis, v) > 1 - 1e-9) return name as 'N';
  }
  // Plus 0: no -0, which JSON cannot keep.
  const round = (deg: number) => Math.round(deg * 1e6) / 1e6 + 0;
  const slopeDeg = round((Math.asin(Math.max(-1, Math.min(1, v[2]))) * 180) / Math.PI);
  const azimuthDeg = round(((Math.atan2(v[0], v[1]) * 180) / Math.PI + 360) % 360);
  return { azimuthDeg: azimuthDeg >= 360 ? 0 : azimuthDeg, slopeDeg };
}

/** How a channel may lie: flat, on edge, plumb; null where no channel may. */
function lies({ along, open }: Frame): 'flat' | 'edge' | 'plumb' | null {
  const up = Math.abs(along[2]);
  if (up > 1 - 1e-9) return 'plumb';
  if (up > 0.999) return null;
  if (Math.abs(open[2]) < 1e-6) return 'edge';
  if (up < 1e-6) return open[2] > 1 - 1e-9 ? 'flat' : null;
  return up > 0.02 && open[2] > 0.05 ? 'flat' : null;
}

/** A leg while the run grows. */
interface Growing {
  readonly leg: Omit<Leg, 'length'>;
  readonly width: number;
  readonly frame: Frame;
  /** Of the fittings at its two ends. */
  readonly takeOut: [number, number];
  last: boolean;
}

const fittings = [...catalogue.values()].filter(
  (i): i is Extract<Item, { takeOut: Ticks }> => 'takeOut' in i,
);
const inches = (t: Ticks) => t / TICKS_PER_INCH;

/** Legs that may leave a leg by a fitting: how each would lie. */
function turnsOf(chance: Chance, { along, open }: Frame, item: (typeof fittings)[number]): readonly Frame[] {
  const left = cross(open, along);
  if (item.kind === 'elbow') return elbow({ along, open }, item);
  if (item.kind === 'reducer') return [{ along, open }];
  if (item.kind !== 'hinge') return [];
  const deg = chance.of([-1, 1]) * chance.of([5, 15, 22.5, 30, 45, 60, 90, chance.whole(3, 120)]);
  return [
    { along: about(open, deg, along), open },
    { along: about(left, deg, along), open: about(left, deg, open) },
  ];
}

function elbow({ along, open }: Frame, { turn, angleDeg }: Elbow): readonly Frame[] {
  const left = cross(open, along);
  if (turn === 'flat') return [1, -1].map((k) => ({ along: about(open, k * angleDeg, along), open }));
  // About the left-hand axis a positive turn sends the leg away from the open side.
  const deg = turn === 'inside' ? -angleDeg : angleDeg;
  return [{ along: about(left, deg, along), open: about(left, deg, open) }];
}

function firstFrame(chance: Chance): Frame {
  const side = chance.of(['N', 'E', 'S', 'W']);
  const way = chance.whole(0, 9);
  if (way < 6) return { along: NAMED[side] as V3, open: NAMED['U'] as V3 };
  if (way === 6) return { along: NAMED[chance.of(['U', 'D'])] as V3, open: NAMED[side] as V3 };
  if (way === 7) {
    const along = NAMED[side] as V3;
    const right = cross(along, NAMED['U'] as V3);
    return { along, open: chance.yes(0.5) ? right : (right.map((x) => -x) as unknown as V3) };
  }
  const along = about(NAMED['U'] as V3, chance.of([15, 45, 37, 120]), NAMED[side] as V3);
  if (way === 8) return { along, open: NAMED['U'] as V3 };
  const left = cross(NAMED['U'] as V3, along);
  const deg = chance.of([-30, 20, 45, -45]);
  return { along: about(left, deg, along), open: about(left, deg, NAMED['U'] as V3) };
}

/** Tree, fittings and directions; at least one leg, at most so many. */
function grow(chance: Chance, most: number): readonly Growing[] {
  const legs: Growing[] = [];
  const name = () => chance.of(['', 'L', 'leg ', 'X-']) + (legs.length + 1);
  const add = (from: string, fitting: string | null, frame: Frame, width: number, takeOut: number) => {
    const how = lies(frame);
    const id = name();
    legs.push({
      leg: {
        id,
        from,
        fitting,
        dir: dirOf(frame.along),
        ...(how === 'edge'
          ? { onEdge: true }
          : chance.yes(0.1)
            ? { onEdge: how === 'plumb' && chance.yes(0.5) }
            : {}),
        ...(chance.yes(0.15) ? { barrier: true } : {}),
      },
      width,
      frame,
      takeOut: [takeOut, 0],
      last: true,
    });
  };
  add('start', null, firstFrame(chance), chance.of([2, 4, 6]), 0);
  for (let tries = 0; legs.length < most && tries < 8 * most; tries++) {
    const from = chance.of(legs.filter(({ last }) => last));
    const { frame, width } = from;
    const own = fittings.filter(
      (i) => inches(i.width) === width || (i.kind === 'reducer' && inches(i.narrow) === width),
    );
    const kind = chance.of(['elbow', 'elbow', 'elbow', 'tee', 'cross', 'reducer', 'hinge'] as const);
    const item = chance.of(own.filter((i) => i.kind === kind));
    if (item === undefined) continue;
    const out =
      item.kind === 'reducer' && inches(item.width) === width ? inches(item.narrow) : inches(item.width);
    const ways: { way: string; frame: Frame }[] = [];
    if (item.kind === 'tee' || item.kind === 'cross') {
      const left = cross(frame.open, frame.along);
      const all = [
        { way: '', frame },
        { way: ':left', frame: { along: left, open: frame.open } },
        { way: ':right', frame: { along: left.map((x) => -x) as unknown as V3, open: frame.open } },
      ].filter((w) => lies(w.frame) !== null);
      const mouths = Math.min(chance.whole(1, item.kind === 'tee' ? 2 : 3), most - legs.length);
      while (ways.length < mouths && all.length > 0)
        ways.push(...all.splice(chance.whole(0, all.length - 1), 1));
    } else {
      const turns = turnsOf(chance, frame, item).filter((f) => lies(f) !== null);
      if (turns.length > 0) ways.push({ way: '', frame: chance.of(turns) });
    }
    if (ways.length === 0) continue;
    from.last = false;
    from.takeOut[1] = inches(item.takeOut);
    for (const { way, frame: to } of ways) {
      const begun = legs.length;
      add(from.leg.id + way, item.id, to, out, inches(item.takeOut));
      const grown = legs[begun];
      if (grown !== undefined && item.kind === 'reducer' && chance.yes(0.7)) {
        legs[begun] = {
          ...grown,
          leg: { ...grown.leg, keeps: chance.of(['left', 'centre', 'right'] as const) },
        };
      }
    }
  }
  return legs;
}

const SIZES: readonly Jumper[] = [null, '14 AWG', '8 AWG', '6 AWG', '3 AWG', '1 AWG', '1/0 AWG', '250 kcmil'];

function bonding(chance: Chance): { bare?: boolean; jumper?: Jumper } {
  return {
    ...(chance.yes(0.15) ? { bare: chance.yes(0.6) } : {}),
    ...(chance.yes(0.25) ? { jumper: chance.of(SIZES) } : {}),
  };
}

/** Joints of a leg and its length; every piece has a length, and is not above a stock length. */
function fill(chance: Chance, { leg, width, takeOut }: Growing, temps: boolean) {
  const joints: Joint[] = [];
  let at = ticks(takeOut[0] * TICKS_PER_INCH);
  const ahead = (rest = 0) => ticks(at + rest + chance.length(14, 190));
  for (let n = chance.whole(0, 4); n > 0; n--) {
    const kind = chance.of([
      'socketed',
      'socketed',
      'socketed',
      'butt',
      'hinged',
      'expansion',
      'gap',
    ] as const);
    const gap =
      kind === 'gap'
        ? chance.length(1, chance.of([3, 80]))
        : kind === 'butt' && chance.yes(0.4)
          ? chance.length(0, 1)
          : kind === 'expansion' && (!temps || chance.yes(0.4))
            ? chance.length(0, 1)
            : undefined;
    const insertions =
      kind === 'socketed' && chance.yes(0.3)
        ? ([chance.length(3, 5), chance.length(3, 5)] as const)
        : kind === 'hinged' && chance.yes(0.3)
          ? ([chance.length(1, 3), chance.length(1, 3)] as const)
          : undefined;
    at = ahead(Math.ceil((gap ?? 0) / 2));
    joints.push({
      leg: leg.id,
      at,
      kind,
      ...(gap === undefined ? {} : { gap }),
      ...(insertions === undefined ? {} : { insertions }),
      ...(kind === 'socketed' && chance.yes(0.1) ? { item: `card-${width}-sleeve-steel` } : {}),
      ...(kind === 'butt' && chance.yes(0.2) ? { item: `card-${width}-plate` } : {}),
      ...(chance.yes(0.1) ? { hole: chance.of(['small', 'large'] as const) } : {}),
      ...bonding(chance),
    });
    if (gap !== undefined) at = ticks(at + Math.ceil(gap / 2));
  }
  const length = ticks(ahead() + takeOut[1] * TICKS_PER_INCH);
  return { joints, length };
}

/** Supports on channel, some near together and some far apart. */
function hold(
  chance: Chance,
  { leg, takeOut, frame }: Growing,
  length: Ticks,
  joints: readonly Joint[],
): Support[] {
  const supports: Support[] = [];
  const [from, to] = [takeOut[0] * TICKS_PER_INCH, length - takeOut[1] * TICKS_PER_INCH];
  const plumb = lies(frame) === 'plumb';
  let at = ticks(from + chance.length(0, 30));
  while (at <= to) {
    const place = at;
    const clear = joints.every(({ kind, at: middle, gap = 0 }) => {
      const half = kind === 'hinged' ? 3 * TICKS_PER_INCH : kind === 'gap' ? Math.ceil(gap / 2) : -1;
      return Math.abs(place - middle) >= half;
    });
    if (clear && !chance.yes(0.05)) {
      supports.push({
        leg: leg.id,
        at,
        way: plumb && chance.yes(0.8) ? 'vertical' : 'horizontal',
        hold: chance.of(['clamp', 'guide', 'guide', 'load'] as const),
      });
    }
    at = ticks(at + chance.length(8, 96));
  }
  return supports;
}

const TYPES = ['TC', 'MC interlocked', 'MC smooth', 'MC shielded', 'ITC', 'PLTC', 'over 1000 V'] as const;

function cable(chance: Chance, k: number, legs: readonly Growing[]): RunCable {
  const air = chance.yes(0.15);
  const to = chance.of(legs).leg;
  return {
    id: `C${k + 1}`,
    type: air ? 'tube' : chance.of(TYPES),
    ...(chance.yes(0.2) ? { shielded: chance.yes(0.5) } : {}),
    odIn: chance.whole(20, 160) / 100,
    lbPerFt: chance.whole(0, 300) / 100,
    count: chance.of([1, 1, 1, 2, 3, 8]),
    make: chance.yes(0.85) ? 'multiconductor' : 'single',
    use: air ? 'air' : chance.of(['power', 'signal'] as const),
    ...(chance.yes(0.6) ? { deviceA: chance.of([15, 20, 60, 100, 400, 1200, 1600]) } : {}),
    // Which legs have a barrier is not looked up: elsewhere a side is ignored.
    ...(air ? {} : { side: chance.of(['left', 'right'] as const) }),
    to: to.id,
  };
}

function shuffled<T>(chance: Chance, all: readonly T[]): readonly T[] {
  const left = [...all];
  const out: T[] = [];
  while (left.length > 0) out.push(...left.splice(chance.whole(0, left.length - 1), 1));
  return out;
}

/** @param most  legs at most, from 1 */
export function randomRun(seed: number, most = 12): Run {
  const chance = new Chance(seed);
  const legs = grow(chance, most);
  const lowF = chance.whole(-40, 40);
  const highF = lowF + chance.whole(20, 120);
  const temps = chance.yes(0.6) ? { lowF, highF, nowF: chance.whole(lowF, highF) } : undefined;
  const outer = (): EndJoint =>
    chance.of(['socketed', 'butt', 'free', ...(temps === undefined ? [] : ['expansion' as const])]);
  const joints: Joint[] = [];
  const supports: Support[] = [];
  const ends: End[] = [];
  const marks: Mark[] = [];
  const places: Places[] = [];
  const made = legs.map((growing): Leg => {
    const { leg, last } = growing;
    const { joints: own, length } = fill(chance, growing, temps !== undefined);
    joints.push(...own);
    supports.push(...hold(chance, growing, length, own));
    if (last && chance.yes(0.8)) {
      const kind = chance.of(['free', 'instrument', 'tray'] as const);
      const open = kind !== 'free' && chance.yes(0.3) ? { open: chance.length(0, 80) } : {};
      ends.push({ leg: leg.id, kind, joint: outer(), ...open, ...bonding(chance) });
    }
    if (chance.yes(0.08))
      marks.push({ leg: leg.id, at: chance.length(0, Math.floor(inches(length))), kind: 'step' });
    if (chance.yes(0.08)) {
      const at = [0, 0, 0].map(() => chance.length(0, Math.floor(inches(length)))).sort((a, b) => a - b);
      places.push({ leg: leg.id, at });
    }
    return { ...leg, ...bonding(chance), length };
  });
  const cables = Array.from({ length: chance.whole(0, 6) }, (_, k) => cable(chance, k, legs));
  const limits = chance.yes(0.5) ? { maxSpan: chance.length(48, 120) } : undefined;
  return {
    v: 1,
    tray: `card-${legs[0]?.width ?? 4}`,
    ...(chance.yes(0.3) ? { stock: ticks(chance.of([240, 288]) * TICKS_PER_INCH) } : {}),
    ...(chance.yes(0.3) ? { kerf: chance.length(0, 1) } : {}),
    start: { kind: chance.of(['ladder', 'tray', 'free'] as const), joint: outer(), ...bonding(chance) },
    legs: shuffled(chance, made),
    ends: shuffled(chance, ends),
    joints: shuffled(chance, joints),
    supports: shuffled(chance, supports),
    cables,
    ...(marks.length > 0 ? { marks } : {}),
    ...(places.length > 0 ? { places } : {}),
    ...(limits === undefined ? {} : { limits }),
    ...(temps === undefined ? {} : { temps }),
  };
}

/** Whole valid runs; shrinks to fewer legs. */
export const randomRuns: fc.Arbitrary<Run> = fc
  .record({ most: fc.integer({ min: 1, max: 12 }), seed: fc.integer({ min: 0, max: 0xffffffff }) })
  .map(({ seed, most }) => randomRun(seed, most));

const mapDir = (dir: Direction, named: Readonly<Record<string, string>>, azimuth: (deg: number) => number) =>
  typeof dir === 'string'
    ? ((named[dir] ?? dir) as 'N')
    : { ...dir, azimuthDeg: ((azimuth(dir.azimuthDeg) % 360) + 360) % 360 };

/** The whole run turned a quarter to the right: north becomes east. */
export const turned = (run: Run): Run => ({
  ...run,
  legs: run.legs.map((leg) => ({
    ...leg,
    dir: mapDir(leg.dir, { N: 'E', E: 'S', S: 'W', W: 'N' }, (deg) => deg + 90),
  })),
});

const other = <T extends string | undefined>(side: T): T =>
  (side === 'left' ? 'right' : side === 'right' ? 'left' : side) as T;

/** The whole run as in a mirror that stands north and south: east becomes west, left becomes right. */
export const mirrored = (run: Run): Run => ({
  ...run,
  legs: run.legs.map((leg) => ({
    ...leg,
    dir: mapDir(leg.dir, { E: 'W', W: 'E' }, (deg) => 360 - deg),
    from: leg.from.replace(/:(left|right)$/, (_, side: string) => `:${other(side)}`),
    fitting:
      leg.fitting?.replace(/-reducer-(left|right)$/, (_, side: string) => `-reducer-${other(side)}`) ?? null,
    ...(leg.keeps === undefined ? {} : { keeps: other(leg.keeps) }),
  })),
  ...(run.cables === undefined
    ? {}
    : {
        cables: run.cables.map((c) => (c.side === undefined ? c : { ...c, side: other(c.side) })),
      }),
});
