/** A fitting to scale: working point, take-outs, how far the channel goes in, inside radius, the cuts that meet it. */
import type { ResolvedFitting } from '../../run/resolved.ts';
import type { Piece } from '../../run/straight.ts';
import { type Ticks, ticks } from '../../trade/length.ts';
import { shortLength } from '../../trade/shortLength.ts';
import type { Target } from '../balloon.ts';
import { fittingWords } from '../direction.ts';
import { MARGIN } from '../frame.ts';
import { textWidth } from '../glyphs.ts';
import { boxOf, Plan, SIZES } from '../plan.ts';
import type { Point } from '../shapes.ts';
import { spoken, together } from '../spoken.ts';
import type { Form, How } from '../types.ts';
import { aligned } from './aligned.ts';
import { type Callout, callouts } from './callouts.ts';
import { type Detail, type DetailGiven, pick } from './detail.ts';
import { endSheet } from './endSheet.ts';
import { type Arm, type Body, bodyOf, leftOf } from './fittingGeometry.ts';
import { fittingName } from './places.ts';
import { zigzag } from './zigzag.ts';

interface Layout {
  readonly width: number;
  /** Most height of the fitting with its channel, and most px to the inch. */
  readonly tall: number;
  readonly scale: number;
  /** Channel seen beyond a face, px. */
  readonly stub: number;
  /** Room round it for dimensions. */
  readonly pad: { readonly x: number; readonly y: number };
  readonly row: number;
}

const DESK: Layout = { width: 660, tall: 340, scale: 24, stub: 92, pad: { x: 92, y: 98 }, row: 34 };
const LAYOUT: Readonly<Record<Form, Layout>> = {
  phone: { width: 328, tall: 250, scale: 13, stub: 42, pad: { x: 62, y: 96 }, row: 30 },
  desk: DESK,
  paper: DESK,
};

export const fittingPlaces = ({ resolved }: Pick<DetailGiven, 'resolved'>): readonly string[] =>
  resolved.fittings.map(fittingName);

/** Places of the drawing: px of a point given in inches from the working point. */
export function fittingScale(body: Body, form: Form) {
  const { width, tall, scale, stub, pad } = LAYOUT[form];
  // In inches, with the stubs in px on top: the scale that lets both directions fit.
  const ends = (px: number) => {
    const points = body.arms.flatMap((arm) => armCorners(arm, stub / px));
    const all = [...points, ...body.outline];
    const [xs, ys] = [all.map((p) => p[0]), all.map((p) => p[1])];
    return {
      x: Math.min(...xs),
      y: Math.min(...ys),
      w: Math.max(...xs) - Math.min(...xs),
      h: Math.max(...ys) - Math.min(...ys),
    };
  };
  const room = width - 2 * MARGIN[form] - 2 * pad.x;
  let px = scale;
  while (px > 2 && (ends(px).w * px > room || ends(px).h * px > tall)) px *= 0.97;
  const box = ends(px);
  // Dimensions stand to the right of an arm that goes up or down.
  const x0 = width / 2 - (form === 'phone' ? 8 : 0) - (box.x + box.w / 2) * px;
  const y0 = MARGIN[form] + pad.y - box.y * px;
  return {
    px,
    to: ([x, y]: Point): Point => [x0 + x * px, y0 + y * px],
    bottom: y0 + (box.y + box.h) * px,
  };
}

/** Corners of the channel seen in a mouth, from the face outwards. */
function armCorners({ way, take, wide, shift = 0 }: Arm, stub: number): readonly Point[] {
  const n = leftOf(way);
  const on = (k: number, side: number): Point => [
    way[0] * k + n[0] * (side + shift),
    way[1] * k + n[1] * (side + shift),
  ];
  return [on(take, wide / 2), on(take + stub, wide / 2), on(take + stub, -wide / 2), on(take, -wide / 2)];
}

/** The piece of a mouth's leg that goes into it. */
const pieceAt = ({ leg, side }: Arm): Piece | undefined =>
  side === 'into' ? leg?.pieces.at(-1) : leg?.pieces[0];

export function layFitting(given: DetailGiven, how: How): Detail {
  const fitting = pick(given.resolved.fittings, fittingName, given.of);
  return layBody(given, fitting, how);
}

function layBody({ balloons = [] }: DetailGiven, fitting: ResolvedFitting, how: How): Detail {
  const { form, speak } = how;
  const { width, stub, row } = LAYOUT[form];
  const margin = MARGIN[form];
  const body = bodyOf(fitting);
  const { px, to, bottom } = fittingScale(body, form);
  const { item } = fitting;
  const plan = new Plan();
  const say = (key: string, values: Record<string, string | number> = {}) =>
    speak({ say: `detail.${key}`, values });

  drawArms(plan, body, { px, to, stub });
  const wp = to([0, 0]);
  plan.circle(wp, 4, { pen: 'thin', fill: 'sheet', part: 'working point' });
  plan.line('dimension', [wp[0] - 10, wp[1]], [wp[0] + 10, wp[1]]);
  plan.line('dimension', [wp[0], wp[1] - 10], [wp[0], wp[1] + 10]);

  const targets: Record<string, Target> = { 'working-point': { at: wp, likes: -45 } };
  const named: Callout[] = [];
  const { left: outer, sides } = outerSides(body);
  body.arms.forEach((arm, i) => {
    const normal = sides[i] ?? outer;
    const mark = i === 0 ? 'first' : i === 1 ? 'second' : 'third';
    const face = to([arm.way[0] * arm.take, arm.way[1] * arm.take]);
    const shift = (arm.shift ?? 0) * px;
    const out = dotOf(normal, leftOf(arm.way)) > 0 ? 1 : -1;
    const edge = (arm.wide * px) / 2 + out * shift + 5;
    const bodyEdge = Math.max(
      edge,
      ...body.arms.map(
        (a) => (a.wide * px) / 2 + Math.sign(dotOf(normal, leftOf(a.way))) * (a.shift ?? 0) * px + 5,
      ),
    );
    if (arm.leg !== undefined && sides[i] !== undefined) {
      const end = to([arm.way[0] * (arm.take - arm.insertion), arm.way[1] * (arm.take - arm.insertion)]);
      aligned(plan, face, end, shortLength(item.insertion), {
        normal,
        off: bodyEdge + row * 0.62,
        from: edge,
        beyond: 'first',
        size: SIZES.note,
        part: 'insertion',
      });
    }
    if (arm.leg !== undefined) {
      targets[`${mark}-face`] = {
        at: [face[0] - normal[0] * edge * 0.6, face[1] - normal[1] * edge * 0.6],
        likes: 200,
      };
      const [along, aside] = [arm.take + (stub * 0.55) / px, arm.shift ?? 0];
      const n = leftOf(arm.way);
      const seen = to([arm.way[0] * along + n[0] * aside, arm.way[1] * along + n[1] * aside]);
      targets[`${mark}-channel`] = { at: seen, likes: 90 };
      const piece = pieceAt(arm);
      if (piece !== undefined) {
        named.push({
          at: [seen[0] - (normal[0] * arm.wide * px) / 4, seen[1] - (normal[1] * arm.wide * px) / 4],
          text: say('piece', { piece: piece.id }),
          below: say('cut', { cut: shortLength(piece.cut) }),
          likes: degreesOf([-normal[0], -normal[1]]),
        });
      }
    } else {
      named.push({
        at: [face[0] - arm.way[0] * 8, face[1] - arm.way[1] * 8],
        text: say('openMouth'),
        likes: 90,
      });
    }
    // Texts stay upright: beside an arm that goes up or down they need their width between them.
    const texts =
      8 +
      (textWidth(shortLength(item.insertion), SIZES.note) +
        textWidth(shortLength(item.takeOut), SIZES.text)) /
        2;
    if (sides[i] === undefined || (body.arms.length > 2 && arm.way[0] > 0.5)) return;
    aligned(plan, face, wp, shortLength(item.takeOut), {
      normal,
      off: bodyEdge + row * 0.62 + Math.max(row, texts * Math.min(1, 1.3 * Math.abs(arm.way[1]))),
      from: edge,
      beyond: 'first',
      part: 'take-out',
    });
  });
  if (body.bend !== undefined && item.kind === 'elbow')
    radius(plan, body.bend, shortLength(item.insideRadius), to, targets);
  targets['working-point'] = { at: wp, likes: degreesOf([outer[0] + 0.4, outer[1]]) };
  if (balloons.length === 0) {
    named.unshift({
      at: [wp[0] + 3, wp[1] + 3],
      text: say('workingPoint'),
      likes: body.bend === undefined ? -50 : 45,
    });
  }
  const titleAt = Math.max(bottom + (form === 'phone' ? 88 : 66), bottomOf(plan) + 34);
  const title = titleOf(fitting, how).toUpperCase();
  plan.viewTitle([width / 2, titleAt], title, speak({ say: 'drawing.scale' }));
  // With steps numbered on it, what the pieces are cut to stands in the notes.
  const left =
    balloons.length > 0
      ? named
      : callouts(
          plan,
          { x: margin + 6, y: margin + 5, w: width - 2 * margin - 12, h: titleAt - margin - 26 },
          named,
        );
  const notes = [
    say('takeOutNote', { length: shortLength(item.takeOut) }),
    say('insertionNote', { length: shortLength(item.insertion) }),
    ...(item.kind === 'elbow' ? [say('radiusNote', { length: shortLength(item.insideRadius) })] : []),
    ...(item.kind === 'reducer' ? [say('faceToFace', { length: shortLength(item.faceToFace) })] : []),
    ...left.map(({ text, below }) => (below === undefined ? text : `${text}: ${below}`)),
    ...(item.grounding ? [] : [say('needsJumper')]),
  ];
  return endSheet(plan, {
    view: 'fitting',
    form,
    width,
    notes,
    top: titleAt + 42,
    balloons,
    targets,
    words: wordsOf(fitting, body, how),
  });
}

/** How far down the sheet anything reaches. */
function bottomOf({ shapes, texts }: Plan): number {
  const ys = shapes.map((s) => {
    if (s.kind === 'line') return Math.max(s.from[1], s.to[1]);
    return s.kind === 'polygon' ? Math.max(...s.points.map((p) => p[1])) : 0;
  });
  return Math.max(...ys, ...texts.map((t) => t.at[1] + 4));
}

const dotOf = (a: Point, b: Point) => a[0] * b[0] + a[1] * b[1];
const degreesOf = ([x, y]: Point) => (Math.atan2(y, x) * 180) / Math.PI;

/** Which side of each arm its dimensions stand on: the outside of a bend; beside a branch, away from it. */
function outerSides({ arms }: Body): {
  readonly left: Point;
  readonly sides: readonly (Point | undefined)[];
} {
  const going = arms[1];
  const up = going === undefined ? 0 : going.way[1];
  if (arms.length === 2) {
    // Behind a bend to the left (up the sheet) the outside is below.
    const below: Point = [0, up < -1e-9 ? 1 : up > 1e-9 ? -1 : 1];
    const n = leftOf(going?.way ?? [1, 0]);
    const second: Point =
      dotOf(n, [1, 0]) > 1e-9 || (Math.abs(n[0]) < 1e-9 && n[1] * below[1] > 0) ? n : [-n[0], -n[1]];
    return { left: below, sides: [below, second] };
  }
  const right = arms.some((a) => a.way[1] > 0.5);
  const left = arms.some((a) => a.way[1] < -0.5);
  const away: Point = [0, left && !right ? 1 : -1];
  // Take-outs of a branch are one: with both sides taken, the lower stands for the upper and for straight on.
  const sides = arms.map((a): Point | undefined => {
    if (right && left && (a.way[1] < -0.5 || a.way[0] > 0.5)) return undefined;
    return Math.abs(a.way[1]) > 0.5 ? [1, 0] : away;
  });
  return { left: away, sides };
}

interface Scaled {
  readonly px: number;
  readonly to: (p: Point) => Point;
  readonly stub: number;
}

/** How much larger than the channel the body is drawn, px. */
const SKIN = 3;

function drawArms(plan: Plan, body: Body, { px, to, stub }: Scaled): void {
  for (const arm of body.arms) {
    if (arm.leg === undefined) continue;
    const corners = armCorners(arm, stub / px).map(to);
    plan.polygon(corners, { fill: 'galv', part: 'channel' });
    const [a, b, c, d] = corners as [Point, Point, Point, Point];
    plan.line('edge', a, b);
    plan.line('edge', d, c);
    zigzag(plan, b, c, arm.way);
    const xs = corners.map((p) => p[0]);
    const ys = corners.map((p) => p[1]);
    // Balloons and words keep off the channel, however it lies.
    const step = arm.wide * 0.35;
    for (let k = 0; k < arm.take + stub / px; k += step) {
      const [mx, my] = to([arm.way[0] * k, arm.way[1] * k]);
      plan.keep({ x: mx - step * px, y: my - step * px, w: 2 * step * px, h: 2 * step * px });
    }
    const straight = Math.abs(arm.way[0]) < 0.02 || Math.abs(arm.way[1]) < 0.02;
    if (straight) {
      const [x, y] = [Math.min(...xs), Math.min(...ys)];
      plan.keep({ x, y, w: Math.max(...xs) - x, h: Math.max(...ys) - y });
    }
  }
  const outline = body.outline.map(to);
  plan.polygon(outline, { fill: 'sheet', pen: 'edge', part: 'fitting' });
  for (const arm of body.arms) {
    const n = leftOf(arm.way);
    const s = arm.shift ?? 0;
    const on = (k: number, side: number): Point =>
      to([arm.way[0] * k + n[0] * (side + s), arm.way[1] * k + n[1] * (side + s)]);
    const half = arm.wide / 2;
    // The face stands out over the channel: the body is the larger part.
    const lip = SKIN / px;
    plan.line('edge', on(arm.take, half + lip), on(arm.take, -half - lip), 'face');
    if (arm.leg !== undefined) {
      const end = arm.take - arm.insertion;
      const inner = half - 4 / px;
      plan.line('hidden', on(arm.take, inner), on(end, inner));
      plan.line('hidden', on(arm.take, -inner), on(end, -inner));
      plan.line('hidden', on(end, inner), on(end, -inner), 'channel end');
    }
    plan.line('centre', to([0, 0]), on(arm.take + (stub * 0.7) / px, -s));
  }
}

/** From the centre of the bend to its inner edge. */
function radius(
  plan: Plan,
  { centre, on }: NonNullable<Body['bend']>,
  text: string,
  to: (p: Point) => Point,
  targets: Record<string, Target>,
): void {
  const [c, p] = [to(centre), to(on)];
  const length = Math.hypot(p[0] - c[0], p[1] - c[1]);
  const way: Point = [(p[0] - c[0]) / length, (p[1] - c[1]) / length];
  // A far centre is not drawn out: the line begins part of the way along.
  const reach = Math.min(length, 62);
  const start: Point = [p[0] - way[0] * reach, p[1] - way[1] * reach];
  plan.line('dimension', start, p, 'radius');
  plan.arrow(p, degreesOf(way));
  const made = plan.text([start[0] - way[0] * 4, start[1] - way[1] * 12 + 5.5], `R ${text}`, {
    ground: 'sheet',
    part: 'radius',
  });
  plan.keep(boxOf(made));
  targets['radius'] = { at: [p[0] - way[0] * 14, p[1] - way[1] * 14], likes: degreesOf([-way[1], way[0]]) };
}

/** `FLAT ELBOW 90°, LEFT`; of a tee or cross its kind alone. */
function titleOf({ item, out }: ResolvedFitting, { speak }: How): string {
  if (item.kind === 'tee' || item.kind === 'cross') return speak({ say: `detail.${item.kind}` });
  const leg = out[0]?.leg;
  return (leg === undefined ? undefined : fittingWords(leg, speak)) ?? speak({ say: `detail.${item.kind}` });
}

function wordsOf(fitting: ResolvedFitting, body: Body, how: How): string {
  const { speak } = how;
  const { item } = fitting;
  const length = (t: Ticks) => spoken(t, speak);
  const say = (key: string, values: Record<string, string | number> = {}) =>
    speak({ say: `detail.${key}`, values });
  return together([
    say(body.seenFrom === 'above' ? 'fittingAbove' : 'fittingSide', { what: titleOf(fitting, how) }),
    say('takeOutWords', { length: length(item.takeOut) }),
    say('insertionWords', { length: length(item.insertion) }),
    item.kind === 'elbow' ? say('radiusWords', { length: length(item.insideRadius) }) : undefined,
    item.kind === 'reducer' ? say('faceToFaceWords', { length: length(item.faceToFace) }) : undefined,
    ...body.arms.map((arm) => {
      const piece = pieceAt(arm);
      if (piece === undefined) return say('openMouthWords');
      return say(arm.side === 'into' ? 'pieceInto' : 'pieceOut', {
        piece: piece.id,
        leg: piece.leg,
        cut: length(ticks(piece.cut)),
      });
    }),
    item.grounding ? undefined : say('needsJumperWords'),
  ]).replaceAll('"', ' in');
}
