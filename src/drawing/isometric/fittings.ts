/** Fittings as solids. */
import type { ResolvedFitting, ResolvedLeg } from '../../run/resolved.ts';
import { angleDeg, cross, dot, minus, plus, type Vec } from '../../run/vector.ts';
import type { DrawnLeg } from './route.ts';
import { bend, chain, channel, laterHides, type Plate, type Station } from './solids.ts';
import { off, unitOr } from './space.ts';

/** A place of a leg, px along it. */
export function station({ leg, from, half, deep }: DrawnLeg, along: number): Station {
  return { at: off(from, leg.frame.along, along), frame: leg.frame, half, deep };
}

export interface FittingPart {
  readonly plates: readonly Plate[];
  /** From face to face. */
  readonly axis: readonly [Vec, Vec];
  readonly radius: number;
}

interface Given {
  readonly fitting: ResolvedFitting;
  readonly drawn: (leg: ResolvedLeg) => DrawnLeg;
  readonly cable: (leg: ResolvedLeg) => boolean;
}

/** One fitting; a tee or cross is one solid, whatever leaves it. */
export function fittingPart(given: Given): FittingPart {
  const { fitting, drawn } = given;
  const into = drawn(fitting.into);
  const first = fitting.out[0];
  if (first === undefined) return { plates: [], axis: [into.to, into.to], radius: 0 };
  const out = drawn(first.leg);
  const kind = fitting.item.kind;
  const plates =
    kind === 'tee' || kind === 'cross'
      ? branch(given, into)
      : kind === 'reducer'
        ? taper(given, into, out)
        : turn(given, into, out);
  return {
    plates,
    axis: [station(into, into.length - into.after).at, station(out, out.before).at],
    radius: Math.max(into.half, out.half) + into.deep * 0.7,
  };
}

/** The wall of a reducer runs from one channel's to the other's. */
function taper({ cable }: Given, into: DrawnLeg, out: DrawnLeg): readonly Plate[] {
  const [a, b] = [station(into, into.length - into.after), station(out, out.before)];
  return channel(a, b, { ends: [true, true], cable: cable(out.leg), part: 'reducer' });
}

/** An elbow goes round; a hinge meets at its pivot. */
function turn({ fitting, cable }: Given, into: DrawnLeg, out: DrawnLeg): readonly Plate[] {
  const [a, b] = [station(into, into.length - into.after), station(out, out.before)];
  const [from, to] = [into.leg.frame.along, out.leg.frame.along];
  const axis = unitOr(cross(from, to), into.leg.frame.open);
  const angle = (angleDeg(from, to) * Math.PI) / 180;
  const kept = cable(out.leg);
  if (fitting.item.kind === 'hinge' || angle < 0.01) {
    // Both halves end in the plane that halves the angle.
    const tilt = unitOr(plus(from, to), from);
    const middle = into.to;
    const wide = 1 / Math.max(0.3, Math.cos(angle / 2));
    const frame = {
      along: tilt,
      open: into.leg.frame.open,
      left: unitOr(cross(into.leg.frame.open, tilt), into.leg.frame.left),
    };
    const flat = Math.abs(dot(axis, into.leg.frame.open)) > 0.5;
    const mid: Station = flat
      ? { at: middle, frame, half: into.half * wide, deep: into.deep }
      : {
          at: middle,
          frame: {
            along: tilt,
            left: into.leg.frame.left,
            open: unitOr(cross(tilt, into.leg.frame.left), into.leg.frame.open),
          },
          half: into.half,
          deep: into.deep * wide,
        };
    const halves = [
      channel(a, mid, { ends: [true, true], cable: kept, part: 'hinge' }),
      channel(mid, b, { ends: [true, true], cable: kept, part: 'hinge' }),
    ];
    const reach = (flat ? into.deep : into.half) + 4;
    const pin: Plate = {
      points: [],
      edges: [[off(middle, axis, flat ? -4 : -reach), off(middle, axis, reach)]],
      pen: 'edge',
      part: 'pin',
    };
    return [...chain(halves, [tilt]), pin];
  }
  const stations = bend(into.to, a, b, axis, angle, Math.min(into.after, out.before));
  // Where one side takes more than the other, a straight stub makes up for it.
  const all: Station[] = [
    a,
    ...stations.slice(into.after > out.before + 0.5 ? 0 : 1, -1),
    ...(out.before > into.after + 0.5 ? [stations.at(-1) as Station] : []),
    b,
  ];
  const parts = all
    .slice(1)
    .map((s, i) =>
      channel(all[i] as Station, s, { ends: [i === 0, i === all.length - 2], cable: kept, part: 'elbow' }),
    );
  return chain(
    parts,
    all.slice(1, -1).map((s) => s.frame.along),
  );
}

/** A square middle and an arm to each way; the sides without an arm are walled. */
function branch({ fitting, drawn, cable }: Given, into: DrawnLeg): readonly Plate[] {
  const { frame } = into.leg;
  const { half, deep, to: at } = into;
  const arms: {
    readonly along: Vec;
    readonly reach: number;
    readonly cable: boolean;
    readonly used: boolean;
  }[] = [
    {
      along: minus(frame.along),
      reach: into.after,
      cable: fitting.out.some(({ leg }) => cable(leg)),
      used: true,
    },
    ...fitting.out.map(({ leg }) => ({
      along: leg.frame.along,
      reach: drawn(leg).before,
      cable: cable(leg),
      used: true,
    })),
  ];
  const ways: readonly Vec[] = [frame.along, frame.left, minus(frame.left)];
  if (fitting.item.kind === 'cross') {
    for (const way of ways) {
      if (!arms.some((a) => dot(a.along, way) > 0.9))
        arms.push({ along: way, reach: into.after, cable: false, used: false });
    }
  }
  const walls: Plate[] = [];
  const [front, back]: [Plate[], Plate[]] = [[], []];
  for (const way of [...ways, minus(frame.along)]) {
    const arm = arms.find((a) => dot(a.along, way) > 0.9);
    const left = unitOr(cross(frame.open, way), frame.left);
    const inner: Station = {
      at: off(at, way, half),
      frame: { along: way, open: frame.open, left },
      half,
      deep,
    };
    if (arm === undefined) {
      const edge = [off(inner.at, left, half), off(inner.at, left, -half)] as const;
      const lip = edge.map((p) => off(p, frame.open, deep)) as [Vec, Vec];
      walls.push({
        points: [edge[0], edge[1], lip[1], lip[0]],
        fill: laterHides(way) ? 'galv' : 'galv2',
        edges: [edge, lip],
        part: 'branch',
      });
      continue;
    }
    const outer: Station = { ...inner, at: off(at, way, arm.reach) };
    const plates = channel(inner, outer, { ends: [false, true], cable: arm.cable, part: 'branch' });
    (laterHides(way) ? front : back).push(...plates);
  }
  const floorAt = [
    [1, 1],
    [1, -1],
    [-1, -1],
    [-1, 1],
  ].map(([x = 0, y = 0]) => off(off(at, frame.along, x * half), frame.left, y * half));
  const fromBelow = !laterHides(frame.open);
  const floor: Plate = { points: floorAt, fill: fromBelow ? 'galv' : 'sheet', edges: [], part: 'branch' };
  const lies = Math.min(2, deep / 3);
  const cables: Plate[] = fromBelow
    ? []
    : arms
        .filter((a) => a.cable)
        .map((a) => ({
          points: [],
          edges: [[off(at, frame.open, lies), off(off(at, a.along, half + 0.5), frame.open, lies)]],
          part: 'cable',
        }));
  const far = walls.filter((w) => w.fill === 'galv2');
  const near = walls.filter((w) => w.fill === 'galv');
  const centre = fromBelow ? [...far, ...near, floor] : [floor, ...far, ...cables, ...near];
  return [...back, ...centre, ...front];
}
