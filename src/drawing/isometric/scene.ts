/** The run in space as solids in painter's order, and the places that labels point at. */
import type { PlacedSupport, ResolvedLeg, ResolvedRun } from '../../run/resolved.ts';
import type { ResolvedJoint } from '../../run/straight.ts';
import type { JointKind } from '../../run/types.ts';
import { cross, dot, minus, square, UP, type Vec } from '../../run/vector.ts';
import { inches } from '../../trade/length.ts';
import type { Form } from '../types.ts';
import { facePlates, sleeve, stub } from './ends.ts';
import { fittingPart, station } from './fittings.ts';
import { type Crossing, crossings, paintOrder } from './order.ts';
import { type DrawnLeg, type Route, routeOf } from './route.ts';
import { type Sizes, sizesAt } from './sizes.ts';
import { channel, girdle, laterHides, type Plate, type Solid } from './solids.ts';
import { between, nearness, off, seen, unitOr } from './space.ts';

export interface Scene {
  readonly route: Route;
  /** From back to front; a patch breaks what lies behind, where they pass. */
  readonly solids: readonly (Solid & { readonly breaks: readonly Break[] })[];
  readonly drawn: (leg: ResolvedLeg) => DrawnLeg;
  readonly supports: readonly Strut[];
  readonly joints: readonly { readonly joint: ResolvedJoint; readonly drawn: DrawnLeg; readonly at: Vec }[];
  readonly stubs: readonly {
    readonly side: 'start' | 'end';
    readonly leg: ResolvedLeg;
    readonly label: Vec;
  }[];
  /** How many of the run's struts and joints one drawn one stands for. */
  readonly each: { readonly struts: number; readonly joints: number };
}

/** Ground laid under a solid where it passes before another: between two places on its axis, this wide. */
export interface Break {
  readonly from: Vec;
  readonly to: Vec;
  readonly radius: number;
}

export interface Strut {
  readonly support: PlacedSupport;
  readonly leg: ResolvedLeg;
  /** Its two ends, and the way from the first to the second. */
  readonly ends: readonly [Vec, Vec];
}

/** A stretch of one leg's channel, px along it. */
interface Stretch {
  readonly drawn: DrawnLeg;
  readonly from: number;
  readonly to: number;
  readonly links: readonly [first: boolean, last: boolean];
}

type Body = Pick<Solid, 'axis' | 'radius'> & { readonly make: () => readonly Plate[] };

/** Opening of a gap, px at least. */
const GAP = 6;

/** @param phantom  a leg that is only being entered: it and the fitting before it are drawn in phantom line */
export function sceneOf(resolved: ResolvedRun, form: Form, phantom?: string): Scene {
  const route = routeOf(resolved, form);
  const sizes = sizesAt(form, route.least);
  const byLeg = new Map(route.legs.map((d) => [d.leg, d]));
  const drawn = (leg: ResolvedLeg): DrawnLeg => byLeg.get(leg) as DrawnLeg;
  const cable = (leg: ResolvedLeg) => resolved.cablesOver(leg).length > 0;

  const struts = route.legs.flatMap((d) => d.leg.supports.map((support) => strutOf(support, d, sizes.strut)));
  const eachStrut = thinning(route.legs, (l) => l.supports.length, sizes.apart.strut);
  const shownStruts = struts.filter((_, i) => i % eachStrut === 0);
  const eachJoint = thinning(route.legs, (l) => l.joints.length, sizes.apart.splice);
  const all = route.legs.flatMap((d) =>
    d.leg.joints.map((joint) => ({ joint, drawn: d, at: off(d.from, d.leg.frame.along, d.along(joint.at)) })),
  );
  const joints = all.filter(({ joint }, i) => i % eachJoint === 0 || isBreak(joint.kind));

  const bodies: Body[] = [];
  const pairs: [number, number][] = [];
  const linked = new Set<string>();
  const link = (up: number, down: number, along: Vec) => {
    linked.add(`${Math.min(up, down)} ${Math.max(up, down)}`);
    pairs.push(laterHides(along) ? [up, down] : [down, up]);
  };
  const put = (body: Body): number => bodies.push(body) - 1;

  const fittings = resolved.fittings.map((fitting) => fittingPart({ fitting, drawn, cable }));
  const stubs = stubsOf(route.legs, sizes);
  const stretches = split(
    route.legs.flatMap((d) => stretchesOf(d, joints)),
    [...fittings, ...stubs.map((s) => s.solid)],
  );

  const fittingAt = fittings.map((part, i) => {
    const entered = resolved.fittings[i]?.out.every(({ leg }) => leg.leg === phantom) === true;
    return put({ ...part, make: () => (entered ? part.plates.map(asPhantom) : part.plates) });
  });
  let before: { readonly stretch: Stretch; readonly at: number } | undefined;
  const firstOf = new Map<DrawnLeg, number>();
  const lastOf = new Map<DrawnLeg, number>();
  for (const stretch of stretches) {
    const { drawn: d } = stretch;
    const whole = bodyOf(stretch, {
      cable: cable(d.leg),
      struts: shownStruts.filter((s) => s.leg === d.leg && holds(stretch, d.along(s.support.at))),
      joints: joints.filter((j) => j.drawn === d && holds(stretch, d.along(j.joint.at))),
      half: sizes.strut.half,
    });
    const entered = d.leg.leg === phantom;
    const at = put(entered ? { ...whole, make: () => whole.make().map(asPhantom) } : whole);
    if (before?.stretch.drawn === d) link(before.at, at, d.leg.frame.along);
    if (!firstOf.has(d)) firstOf.set(d, at);
    lastOf.set(d, at);
    before = { stretch, at };
  }
  resolved.fittings.forEach((fitting, i) => {
    const at = fittingAt[i] as number;
    const into = lastOf.get(drawn(fitting.into));
    if (into !== undefined) link(into, at, fitting.into.frame.along);
    for (const { leg } of fitting.out) {
      const out = firstOf.get(drawn(leg));
      if (out !== undefined) link(at, out, leg.frame.along);
      // What meets in one fitting is told apart there, not on the sheet.
      if (into !== undefined && out !== undefined)
        linked.add(`${Math.min(into, out)} ${Math.max(into, out)}`);
      for (const { leg: other } of fitting.out) {
        const two = firstOf.get(drawn(other));
        if (out !== undefined && two !== undefined && out !== two)
          linked.add(`${Math.min(two, out)} ${Math.max(two, out)}`);
      }
    }
  });
  for (const { solid, side, leg } of stubs) {
    const at = put({ axis: solid.axis, radius: solid.radius, make: () => solid.plates });
    const end = side === 'start' ? firstOf.get(drawn(leg)) : lastOf.get(drawn(leg));
    if (end === undefined) continue;
    if (side === 'start') link(at, end, leg.frame.along);
    else link(end, at, leg.frame.along);
  }

  const passes = crossings(bodies, (i, j) => linked.has(`${i} ${j}`));
  for (const { behind, front } of passes) pairs.push([behind, front]);
  const order = paintOrder(bodies.length, (i) => farness(bodies[i]), pairs);
  const solids = order.map((i) => {
    const body = bodies[i] as Body;
    return {
      plates: body.make(),
      axis: body.axis,
      radius: body.radius,
      breaks: breaksOf(
        passes.filter((p) => p.front === i),
        body,
        bodies,
      ),
    };
  });
  return {
    route,
    solids,
    drawn,
    supports: shownStruts,
    joints,
    stubs: stubs.map(({ side, leg, solid }) => ({ side, leg, label: solid.label })),
    each: { struts: eachStrut, joints: eachJoint },
  };
}

/** Its lines alone, in phantom: nothing is there yet, so it hides nothing. */
const asPhantom = ({ points, edges, part }: Plate): Plate => ({
  points,
  edges,
  pen: 'phantom',
  ...(part === undefined ? {} : { part }),
});

const farness = (body: Body | undefined) => (body === undefined ? 0 : nearness(between(...body.axis, 0.5)));
const isBreak = (kind: JointKind) => kind === 'gap' || kind === 'expansion' || kind === 'hinged';

/** One drawn for every so many, so that they stand `apart`. */
function thinning(legs: readonly DrawnLeg[], count: (leg: ResolvedLeg) => number, apart: number): number {
  const [many, long] = legs.reduce(
    ([n, l], d) => [n + count(d.leg), l + (count(d.leg) > 0 ? d.length : 0)],
    [0, 0],
  );
  return many < 2 ? 1 : Math.max(1, Math.ceil((many * apart) / Math.max(1, long)));
}

/** Channel of a leg, parted at its gaps. */
function stretchesOf(drawn: DrawnLeg, joints: Scene['joints']): readonly Stretch[] {
  const { leg, before, after, length } = drawn;
  const gaps = joints.filter((j) => j.drawn === drawn && j.joint.kind === 'gap').map((j) => j.joint);
  const ends = [
    before,
    ...gaps.flatMap(({ at, opening }) => {
      const wide = Math.max(GAP, inches(opening) * (drawn.length / inches(leg.length)));
      const middle = drawn.along(at);
      return [Math.max(before, middle - wide / 2), Math.min(length - after, middle + wide / 2)];
    }),
    Math.max(before, length - after),
  ];
  const made: Stretch[] = [];
  for (let i = 0; i + 1 < ends.length; i += 2)
    made.push({ drawn, from: ends[i] as number, to: ends[i + 1] as number, links: [true, true] });
  return made;
}

/** Parts a stretch that passes several others, so that it can lie before one and behind the next. */
function split(
  stretches: readonly Stretch[],
  others: readonly Pick<Solid, 'axis' | 'radius'>[],
): readonly Stretch[] {
  const axes = [...stretches.map(axisOf), ...others];
  const at: number[][] = stretches.map(() => []);
  const near = (i: number, j: number) => {
    const [a, b] = [axes[i]?.axis, axes[j]?.axis];
    if (a === undefined || b === undefined) return true;
    return a.some((p) => b.some((q) => Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]) < 0.5));
  };
  for (const { behind, front, at: share } of crossings(axes, near)) {
    at[behind]?.push(share.behind);
    at[front]?.push(share.front);
  }
  return stretches.flatMap((stretch, i) => {
    const places = (at[i] ?? []).sort((a, b) => a - b);
    const cuts = places
      .slice(1)
      .map((b, k) => ((places[k] as number) + b) / 2)
      .filter((c, k, cs) => c > (k === 0 ? 0 : (cs[k - 1] as number)) + 0.02 && c < 0.98);
    const long = stretch.to - stretch.from;
    const ends = [stretch.from, ...cuts.map((c) => stretch.from + c * long), stretch.to];
    return ends.slice(1).map(
      (to, k): Stretch => ({
        drawn: stretch.drawn,
        from: ends[k] as number,
        to,
        links: [k === 0 && stretch.links[0], k === ends.length - 2 && stretch.links[1]],
      }),
    );
  });
}

function axisOf({ drawn, from, to }: Stretch): Pick<Solid, 'axis' | 'radius'> {
  return { axis: [station(drawn, from).at, station(drawn, to).at], radius: drawn.half + drawn.deep * 0.7 };
}

const holds = ({ from, to }: Stretch, at: number) => at >= from - 0.01 && at < to + 0.01;

interface On {
  readonly cable: boolean;
  readonly struts: readonly Strut[];
  readonly joints: Scene['joints'];
  readonly half: number;
}

function bodyOf(stretch: Stretch, on: On): Body {
  const { drawn, from, to, links } = stretch;
  return {
    ...axisOf(stretch),
    make: () => {
      const plates = channel(station(drawn, from), station(drawn, to), {
        ends: links,
        cable: on.cable,
        part: `leg ${drawn.leg.leg}`,
      });
      const [back, front]: [Plate[], Plate[]] = [[], []];
      for (const strut of on.struts) {
        const middle = between(...strut.ends, 0.5);
        const out = off(middle, station(drawn, drawn.along(strut.support.at)).at, -1);
        (drawn.leg.plumb && seen(out) ? front : back).push(strutPlate(strut, drawn, on.half));
      }
      const first =
        drawn.leg.parent === null && from <= drawn.before + 0.01 ? facePlates(drawn, 'start') : undefined;
      const last =
        drawn.leg.fittingAfter === null && to >= drawn.length - 0.01 ? facePlates(drawn, 'end') : undefined;
      return [
        ...(first?.behind ?? []),
        ...(last?.behind ?? []),
        ...back,
        ...plates,
        ...on.joints.flatMap(({ joint }) => jointPlates(joint, drawn)),
        ...(first?.front ?? []),
        ...(last?.front ?? []),
        ...front,
      ];
    },
  };
}

/** A splice in place, its length to scale if that is enough to be seen. */
function jointPlates(joint: ResolvedJoint, drawn: DrawnLeg): readonly Plate[] {
  const { length, deep } = drawn;
  const middle = drawn.along(joint.at);
  const kind: JointKind = joint.kind;
  const part = `splice ${joint.name}`;
  const real = inches(joint.length) * (length / inches(drawn.leg.length));
  const half = Math.max(real / 2, 3.5 + deep * 0.25);
  const at = (by: number) =>
    station(drawn, Math.min(length - drawn.after, Math.max(drawn.before, middle + by)));
  const around: Readonly<Record<JointKind, () => readonly Plate[]>> = {
    socketed: () => [...sleeve(at(-half), at(half), part), girdle(at(0), part)],
    butt: () => [girdle(at(0), part)],
    expansion: () => [...sleeve(at(-half), at(half), part), girdle(at(-1.8), part), girdle(at(1.8), part)],
    hinged: () => [...sleeve(at(-half * 0.8), at(half * 0.8), part), pin(at(0), part)],
    gap: () => [],
  };
  return around[kind]();
}

/** The pivot of a hinge that stands straight. */
function pin({ at, frame, half }: ReturnType<typeof station>, part: string): Plate {
  return {
    points: [],
    edges: [[off(at, frame.left, half + 4), off(at, frame.left, -half - 4)]],
    pen: 'edge',
    part,
  };
}

/** A strut under the channel, or behind a plumb one; it is level and square to the way. */
function strutOf(support: PlacedSupport, drawn: DrawnLeg, { reach }: { readonly reach: number }): Strut {
  const { leg, half, deep } = drawn;
  const { frame, plumb } = leg;
  const here = station(drawn, drawn.along(support.at)).at;
  const axis = plumb ? frame.left : unitOr(cross(frame.along, UP), frame.left);
  const down = plumb ? minus(frame.open) : minus(square(UP, frame.along));
  const corner = [half, -half].flatMap((l) =>
    [0, deep].map((o) => off(off([0, 0, 0], frame.left, l), frame.open, o)),
  );
  const [lows, highs] = [corner.map((c) => dot(c, axis)), corner.map((c) => dot(c, down))];
  const base = off(here, down, Math.max(...highs) + 1);
  return {
    support,
    leg,
    ends: [off(base, axis, Math.min(...lows) - reach), off(base, axis, Math.max(...lows) + reach)],
  };
}

function strutPlate({ ends: [a, b], support }: Strut, { leg }: DrawnLeg, half: number): Plate {
  const { along } = leg.frame;
  const t = half * (support.hold === 'load' ? 1.5 : 1);
  const points = [off(a, along, -t), off(b, along, -t), off(b, along, t), off(a, along, t)];
  return { points, fill: 'sheet', edges: [[...points, points[0] as Vec]], part: `support ${support.name}` };
}

function stubsOf(legs: readonly DrawnLeg[], sizes: Sizes) {
  return legs.flatMap((d) =>
    (['start', 'end'] as const).flatMap((side) => {
      const { kind } = d.leg[side];
      const stands = side === 'start' ? d.leg.parent === null : d.leg.fittingAfter === null;
      return stands && (kind === 'ladder' || kind === 'tray')
        ? [{ side, leg: d.leg, solid: stub(kind, d, side, sizes) }]
        : [];
    }),
  );
}

/** Where a solid passes before another at an angle, ground beside it breaks the one behind. */
function breaksOf(passes: readonly Crossing[], body: Body, bodies: readonly Body[]): readonly Break[] {
  return passes.flatMap(({ behind, at, sine }) => {
    const other = bodies[behind];
    if (
      other === undefined ||
      sine < 0.3 ||
      at.behind <= 0 ||
      at.behind >= 1 ||
      at.front <= 0 ||
      at.front >= 1
    )
      return [];
    const [a, b] = body.axis;
    const long = Math.sqrt(dot(off(b, a, -1), off(b, a, -1)));
    const half = (other.radius / sine + 4) / Math.max(1, long);
    return [
      {
        from: between(a, b, Math.max(0, at.front - half)),
        to: between(a, b, Math.min(1, at.front + half)),
        radius: body.radius + 4,
      },
    ];
  });
}
