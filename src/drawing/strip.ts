/** A straight run to scale: pieces, splices, the whole, and what is left of the last length. */
import { shortLength } from '../run/shortLength.ts';
import type { Face, Piece, StraightLeg } from '../run/straight.ts';
import { formatLength, type Ticks } from '../trade/length.ts';
import { drawBalloons, type Target } from './balloon.ts';
import { across } from './dimension.ts';
import { frameOf, LETTERS, MARGIN } from './frame.ts';
import { textWidth } from './glyphs.ts';
import { layLabels } from './labels.ts';
import { drawNotes } from './notes.ts';
import { boxOf, Plan, SIZES } from './plan.ts';
import type { Box, Colour, Point } from './shapes.ts';
import { overlaps } from './shapes.ts';
import type { StripGiven } from './stripGiven.ts';
import { stripWords } from './stripWords.ts';
import { render, type Sheet } from './svg.ts';
import type { Drawing, Form, How } from './types.ts';

export type { StripGiven } from './stripGiven.ts';

interface Layout {
  readonly width: number;
  readonly side: number;
  readonly bar: number;
  readonly high: number;
  /** Least drawn length of a splice. */
  readonly splice: number;
  readonly whole: number;
}

const LAYOUT: Readonly<Record<Form, Layout>> = {
  phone: { width: 328, side: 12, bar: 112, high: 26, splice: 9, whole: SIZES.text },
  desk: { width: 752, side: 28, bar: 122, high: 34, splice: 10, whole: SIZES.big },
  paper: { width: 718, side: 26, bar: 122, high: 34, splice: 10, whole: SIZES.big },
};
/** Room for what stands at a face: a stub, a wall, an instrument. */
const FACE_ROOM = 26;

export function drawStrip(given: StripGiven, how: How): Drawing {
  return render(layStrip(given, how), how);
}

/** The scale and the places that the strip is drawn by; tests measure by the same. */
export function stripScale({ leg, stock, kerf }: StripGiven, form: Form) {
  const { width, side } = LAYOUT[form];
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
function leftOver(leg: StraightLeg, stock?: Ticks, kerf: Ticks | 0 = 0) {
  const last = leg.pieces.at(-1);
  if (stock === undefined || last === undefined || last.cut >= stock) return undefined;
  if (leg.pieces.slice(0, -1).some(({ cut }) => cut !== stock)) return undefined;
  const length = Math.max(0, stock - last.cut - kerf) as Ticks;
  return { kerf: Math.min(kerf, stock - last.cut), length };
}

export function layStrip(given: StripGiven, how: How): Sheet {
  const { leg, stock, balloons = [] } = given;
  const { form, speak } = how;
  const { width, bar, high, splice: least, whole } = LAYOUT[form];
  const margin = MARGIN[form];
  const { x, pxPerTick, left } = stripScale(given, form);
  const plan = new Plan();
  const targets: Record<string, Target> = {};
  const end = x(leg.length);

  if (left !== undefined && left.length > 0) {
    const from = x(leg.length + left.kerf);
    plan.rect(
      { x: from, y: bar, w: x(leg.length + left.kerf + left.length) - from, h: high },
      { pen: 'phantom', part: 'left over' },
    );
    targets['left-over'] = {
      at: [(from + x(leg.length + left.kerf + left.length)) / 2, bar + high * 0.8],
      likes: 60,
    };
  }

  for (const { number, from, to, cut } of leg.pieces) {
    const box = { x: x(from), y: bar, w: (to - from) * pxPerTick, h: high };
    const fill: Colour = stock !== undefined && cut < stock ? 'sheet' : 'galv';
    plan.rect(box, { pen: 'edge', fill, part: `piece ${number}` });
    targets[`piece-${number}`] = { at: [box.x + Math.min(box.w * 0.2, 26), bar + high - 2], likes: 110 };
  }
  if (left !== undefined) plan.line('mark', [end, bar - 6], [end, bar + high + 6], 'cut');
  targets['start'] = { at: [x(0), bar + high * 0.5], likes: 130 };
  targets['end'] = { at: [end, bar + high * 0.5], likes: 50 };

  let wider = false;
  for (const { name, at, kind, length } of leg.joints) {
    const real = length * pxPerTick;
    const w = Math.max(real, least);
    wider ||= w > real;
    const part = `splice ${name}`;
    if (kind === 'socketed')
      plan.rect({ x: x(at) - w / 2, y: bar - 5, w, h: high + 10 }, { pen: 'thin', fill: 'sheet', part });
    else {
      plan.rect(
        { x: x(at) - w / 2, y: bar + high * 0.22, w, h: high * 0.56 },
        { pen: 'thin', fill: 'sheet', part },
      );
      plan.line('edge', [x(at), bar], [x(at), bar + high]);
    }
    plan.line('centre', [x(at), bar - 14], [x(at), bar + high + 12]);
    targets[name.toLowerCase()] = { at: [x(at) + w / 2, bar + 4], likes: -60 };
  }

  drawFace(plan, leg.start, x(0), -1, bar, high);
  drawFace(plan, leg.end, end, 1, bar, high, pxPerTick);
  leg.supports.forEach(({ at }, i) => {
    const box = { x: x(at) - 5, y: bar + high + 1.5, w: 10, h: 9 };
    plan.rect(box, { pen: 'thin', fill: 'sheet', part: `support ${i}` });
    plan.text([x(at), bar + high + 25], LETTERS[i % LETTERS.length] ?? '', {
      size: SIZES.note,
      part: `support ${i}`,
    });
  });

  across(plan, x(0), end, margin + 38, formatLength(leg.length), {
    from: bar,
    size: whole,
    part: 'whole',
    beside: 'behind',
  });
  targets['whole'] = { at: [x(0) + (end - x(0)) * 0.2, margin + 38], likes: 90 };
  plan.keep({ x: x(0), y: bar - 6, w: end - x(0), h: high + 12 });

  const lettered = pieceLabels(plan, given, form, x, bar, high);
  if (left !== undefined && left.length > 0) {
    const from = x(leg.length + left.kerf);
    const room = x(leg.length + left.kerf + left.length) - from;
    const text = speak({ say: 'drawing.left', values: { length: shortLength(left.length) } });
    if (textWidth(text, SIZES.note) + 12 < room) {
      plan.text([from + room / 2, bar + high / 2 + 5], text, { size: SIZES.note, part: 'left over' });
    }
  }

  const under = leg.supports.length > 0 ? 20 : 0;
  const datum = speak({ say: form === 'phone' ? 'drawing.datumShort' : `drawing.datum-${leg.start.kind}` });
  const rows = layLabels(plan, {
    datum: { x: x(0), text: datum },
    marks: leg.joints.map(({ name, at }) => ({
      x: x(at),
      full: `${name}  ${formatLength(at)}`,
      short: name,
    })),
    from: bar + high,
    top: bar + high + under,
    bounds: [margin + 8, width - margin - 8],
    size: form === 'phone' ? SIZES.note : SIZES.text,
  });

  const title = rows + (form === 'phone' ? 30 : 34);
  const scale = speak({ say: wider ? 'drawing.scaleWider' : 'drawing.scale' });
  plan.viewTitle([width / 2, title], speak({ say: 'drawing.stripTitle' }), scale);
  const notes = stripNotes(given, lettered, how);
  const height = Math.ceil(drawNotes(plan, notes, { form, width, margin, top: title + 40 }) + margin);
  const frame = frameOf(form, width, height);
  const zones = drawBalloons(plan, frame, form, balloons, targets);
  return { view: 'strip', width, height, frame, plan, zones, words: stripWords(given, left?.length, how) };
}

/**
 * Number in the bar, length beside it; what does not fit goes above the bar, where there is room.
 *
 * @returns whether every whole length is lettered
 */
function pieceLabels(
  plan: Plan,
  { leg, stock }: StripGiven,
  form: Form,
  x: (at: number) => number,
  bar: number,
  high: number,
): boolean {
  const big = form === 'phone' ? SIZES.text : SIZES.big;
  const fills = new Map(
    plan.shapes.flatMap((s) => (s.kind === 'rect' && s.part ? [[s.part, s.fill] as const] : [])),
  );
  const outside: Piece[] = [];
  for (const piece of leg.pieces) {
    // Splices cover the ends of the piece: lettering keeps to what is seen of it.
    const covered = LAYOUT[form].splice / 2;
    const [a, b] = piece.ends.map((e) => (/^S/.test(e.joint) ? covered : 1)) as [number, number];
    const [seenFrom, seenTo] = [x(piece.from) + a, x(piece.to) - b];
    const room = seenTo - seenFrom - 4;
    const middle = (seenFrom + seenTo) / 2;
    const part = `piece ${piece.number}`;
    const ground = fills.get(part);
    const name = String(piece.number);
    const length = shortLength(piece.cut);
    const [wn, wl] = [textWidth(name, big), textWidth(length, SIZES.text)];
    const base = bar + high / 2;
    if (wn + 16 + wl <= room) {
      const start = middle - (wn + 14 + wl) / 2;
      plan.text([start, base + big * 0.34], name, { size: big, weight: 700, anchor: 'start', ground, part });
      plan.text([start + wn + 14, base + 5.5], length, { anchor: 'start', ground, part });
      continue;
    }
    outside.push(piece);
    const small = wn > room ? SIZES.note : big;
    if (textWidth(name, small) <= room + 3) {
      plan.text([middle, base + small * 0.34], name, { size: small, weight: 700, part });
    }
  }
  // Whole lengths are all lettered or none; where they leave no room for a cut piece they give way to it.
  const cut = outside.filter((p) => p.cut !== stock);
  const whole = outside.filter((p) => p.cut === stock);
  const inOrder = lettersAbove([...whole, ...cut], form, x, bar);
  const fits = !inOrder.includes(undefined);
  const all = (fits ? inOrder : lettersAbove(cut, form, x, bar)).filter((t) => t !== undefined);
  for (const { at, text, part } of all) plan.text(at, text, { size: SIZES.note, ground: 'sheet', part });
  return fits || whole.length === 0;
}

type Above = { readonly at: Point; readonly text: string; readonly part: string; readonly box: Box };

/** Lengths over the bar, each where its piece is and clear of the others; `undefined` where there is no room. */
function lettersAbove(
  pieces: readonly Piece[],
  form: Form,
  x: (at: number) => number,
  bar: number,
): readonly (Above | undefined)[] {
  const [least, most] = [MARGIN[form] + 4, LAYOUT[form].width - MARGIN[form] - 4];
  const full: Box[] = [];
  return pieces.map(({ number, from, to, cut }) => {
    const text = shortLength(cut);
    const half = textWidth(text, SIZES.note) / 2;
    const middle = Math.min(Math.max((x(from) + x(to)) / 2, least + half), most - half);
    // Two rows over the bar, the lower one first.
    for (const y of [bar - 16, bar - 34]) {
      const at: Point = [middle, y];
      const box = boxOf({ at, text, size: SIZES.note, anchor: 'middle' });
      const air = { ...box, x: box.x - 6, w: box.w + 12 };
      if (full.some((b) => overlaps(b, air))) continue;
      full.push(box);
      return { at, text, part: `piece ${number}`, box };
    }
    return undefined;
  });
}

/** What the channel meets at a face, drawn beside it and not to scale. */
function drawFace(
  plan: Plan,
  face: Face,
  x: number,
  way: -1 | 1,
  bar: number,
  high: number,
  pxPerTick = 0,
): void {
  const part = way < 0 ? 'start' : 'end';
  const between = (a: number, b: number) => ({ x: Math.min(a, b), w: Math.abs(a - b) });
  if (face.joint === 'socketed') {
    plan.rect(
      { ...between(x, x + way * 18), y: bar - 5, h: high + 10 },
      { pen: 'thin', fill: 'sheet', part },
    );
    plan.line('hidden', [x, bar + 4], [x + way * 10, bar + 4]);
    plan.line('hidden', [x, bar + high - 4], [x + way * 10, bar + high - 4]);
    plan.line('hidden', [x + way * 10, bar + 4], [x + way * 10, bar + high - 4]);
  } else if (face.joint === 'butt') {
    const box = { ...between(x + way * 1.5, x + way * 12), y: bar - 12, h: high + 24 };
    plan.hatch(box, 'up');
    plan.line('edge', [x + way * 1.5, box.y], [x + way * 1.5, box.y + box.h], part);
  }
  if (face.kind === 'instrument') {
    const r = 12;
    const centre = x + face.open * pxPerTick + r + (face.joint === 'free' ? 1.5 : 18);
    plan.circle([centre, bar + high / 2], r, { pen: 'thin', fill: 'sheet', part: 'instrument' });
    if (face.joint === 'free') plan.line('hidden', [x + 2, bar + high / 2], [centre - r, bar + high / 2]);
  }
}

function stripNotes(
  { leg, stock, kerf }: StripGiven,
  lettered: boolean,
  { speak, form }: How,
): readonly string[] {
  const notes: string[] = [];
  const { joints } = leg;
  const note = (key: string, values: Record<string, string | number> = {}) =>
    notes.push(speak({ say: `drawing.${key}`, values }));
  const whole = leg.pieces.filter(({ cut }) => cut === stock).length;
  if (stock !== undefined && whole > 0 && !lettered) {
    note(whole === 1 ? 'oneWhole' : 'wholes', { count: whole, stock: shortLength(stock) });
  }
  if (joints.length > 0) note(joints.length === 1 ? 'oneSplice' : 'splices', { count: joints.length });
  const one = <T>(of: readonly T[]) => (new Set(of).size === 1 ? of[0] : undefined);
  const into = one(joints.flatMap(({ insertions }) => insertions));
  if (into !== undefined && into > 0) note('intoEach', { length: shortLength(into).replace('"', ' in') });
  const gap = one(joints.map(({ opening }) => opening));
  if (gap !== undefined) {
    if (gap === 0) note('endsMeet');
    else note(form === 'phone' ? 'gap' : 'gapBetween', { gap: shortLength(gap) });
  }
  if (leg.end.open > 0) note('open', { length: shortLength(leg.end.open) });
  const left = leftOver(leg, stock, kerf);
  if (left !== undefined) {
    if (kerf !== undefined && kerf > 0) note('saw', { kerf: shortLength(kerf) });
    note('left', { length: shortLength(left.length) });
  }
  return notes;
}
