/** The column beside a leg: how far its supports stand apart, and the numbers of what was found. */
import type { ResolvedLeg } from '../../run/resolved.ts';
import { fromInches, inches } from '../../trade/length.ts';
import { shortLength } from '../../trade/shortLength.ts';
import { textWidth } from '../glyphs.ts';
import type { Plan } from '../plan.ts';
import type { Point } from '../shapes.ts';
import { drawTriangle, TRIANGLE } from '../triangle.ts';
import { samePlace, type TapChosen, type TapFound } from './given.ts';
import type { Across } from './sizes.ts';

/** A stretch between neighbours, inches along the leg. */
export interface Measure {
  readonly from: number;
  readonly to: number;
  /** Numbers of the notes on it. */
  readonly notes: readonly number[];
}

/** Something in the column: a measure, or a note that belongs to a place or to the whole leg. */
export interface Item {
  readonly at: number;
  readonly measure: Measure | null;
  readonly notes: readonly number[];
}

export interface Column {
  readonly items: readonly Item[];
  /** Those chosen places that a note is about. */
  readonly blamed: ReadonlySet<TapChosen>;
  /** Notes on the whole leg. */
  readonly whole: readonly number[];
}

/** Between what a span is measured from: supports, fittings' faces, what parts a line, the leg's ends. */
function bounds(leg: ResolvedLeg, chosen: readonly TapChosen[]): readonly number[] {
  const parting = leg.joints.filter(
    ({ kind }) => kind === 'hinged' || kind === 'expansion' || kind === 'gap',
  );
  const all = [
    inches(leg.start.takeOut),
    inches(leg.length) - inches(leg.end.takeOut),
    ...leg.supports.map(({ at }) => inches(at)),
    ...parting.map(({ at }) => inches(at)),
    ...chosen.flatMap(({ what, at }) => (what === 'support' && at !== null ? [at] : [])),
  ];
  return [...new Set(all)].sort((a, b) => a - b);
}

/** How near a finding must lie to be of a place: what rounding and an opening take. */
const NEAR = 1;

export function columnOf(leg: ResolvedLeg, chosen: readonly TapChosen[], found: readonly TapFound[]): Column {
  const places = bounds(leg, chosen);
  const stands = leg.supports.length > 0 || chosen.some(({ what }) => what === 'support');
  const measures = stands ? places.slice(1).map((to, i) => ({ from: places[i] ?? to, to })) : [];
  const blamed = new Set<TapChosen>();
  const notes = new Map<number, number[]>();
  const loose: Item[] = [];
  const whole: number[] = [];
  for (const { at, note, ...where } of found) {
    if (at === null) {
      whole.push(note);
      continue;
    }
    const own = chosen.filter((one) => samePlace(one, { ...where, at }));
    const i = own.length > 0 ? -1 : measureOf(measures, at);
    for (const one of own) blamed.add(one);
    if (i < 0) loose.push({ at, measure: null, notes: [note] });
    else notes.set(i, [...new Set([...(notes.get(i) ?? []), note])]);
  }
  const items = measures.map((measure, i): Item => {
    const its = notes.get(i) ?? [];
    return { at: (measure.from + measure.to) / 2, measure: { ...measure, notes: its }, notes: its };
  });
  // A measure takes one triangle; what else was found on it stands below.
  const more = items.flatMap(({ at, notes: its }) =>
    its.slice(1).map((note): Item => ({ at, measure: null, notes: [note] })),
  );
  return { items: [...items, ...more, ...loose].sort((a, b) => a.at - b.at), blamed, whole };
}

/** The measure that a finding lies on: one that begins or ends there (an end without support), else one around it. */
function measureOf(measures: readonly { from: number; to: number }[], at: number): number {
  const middle = measures.findIndex(({ from, to }) => Math.abs((from + to) / 2 - at) < 1 / 64);
  if (middle >= 0) return middle;
  const first = measures[0];
  const last = measures.at(-1);
  if (first !== undefined && at - first.from < NEAR) return 0;
  if (last !== undefined && last.to - at < NEAR) return measures.length - 1;
  return measures.findIndex(({ from, to }) => from - NEAR < at && at < to + NEAR);
}

/** Half the height of a ring. */
const RING = 13;

interface Stands {
  readonly plan: Plan;
  readonly across: Across;
  /** Left edge of the block, and px of a place along the leg. */
  readonly left: number;
  readonly y: (at: number) => number;
  readonly ringed: boolean;
  /** A measure had no room to be written out. */
  readonly onRounded: () => void;
}

/** One thing of the column about the height `at`, tied by a leader to where it belongs. */
export function drawItem(item: Item, at: number, stands: Stands): void {
  const { plan, across, left, y } = stands;
  const line = left + across.line;
  const x = left + across.texts;
  const { measure } = item;
  if (measure !== null) extend(measure, stands);
  plan.line('dimension', [line, y(item.at)], [x, at], measure === null ? 'note' : 'measure');
  const wide = measure === null ? 0 : drawMeasure(measure, [x, at], stands);
  const [first] = item.notes;
  if (first === undefined) return;
  drawTriangle(plan, { x: x + wide + 2, y: at - TRIANGLE.h / 2, ...TRIANGLE }, String(first));
}

/** The dimension line of a measure, ticks at both ends. */
function extend({ from, to }: Measure, { plan, across, left, y }: Stands): void {
  const line = left + across.line;
  plan.line('dimension', [line, y(from)], [line, y(to)], 'measure');
  for (const end of [from, to]) plan.line('thin', [line - 5, y(end) + 5], [line + 5, y(end) - 5], 'measure');
}

/** Grains that a measure is written to, in turn, until it has room; `null` is its own. */
const GRAINS = [null, 4, 1] as const;

/** The text of a measure no wider than `room`, at the smallest size. */
function measureText(length: number, room: number): { readonly text: string; readonly rounded: boolean } {
  const texts = GRAINS.map((grain) => {
    const to = grain === null ? length : Math.round(length * grain) / grain;
    return { text: shortLength(fromInches(to)), rounded: to !== length };
  });
  const fit = texts.find(({ text }) => textWidth(text, 13) <= room);
  return fit ?? (texts.at(-1) as (typeof texts)[number]);
}

/** Ringed where it holds, clouded where it does not, plain before it was taped. @returns the room it took */
function drawMeasure({ from, to, notes }: Measure, [x, y]: Point, stands: Stands): number {
  const { plan, ringed, across } = stands;
  const { text, rounded } = measureText(to - from, across.width - across.texts - TRIANGLE.w - 15);
  if (rounded) stands.onRounded();
  const size = textWidth(text, 16) <= 52 ? 16 : 13;
  const wide = textWidth(text, size) + (size === 16 ? 22 : 11);
  const box = { x, y: y - RING, w: wide, h: 2 * RING };
  if (notes.length > 0) {
    plan.cloud({ x: x + 4, y: y - RING + 2, w: wide - 8, h: 2 * RING - 4 }, 'clouded');
  } else if (ringed) plan.polygon(stadium(box), { pen: 'thin', fill: 'sheet', part: 'ringed' });
  else plan.rect(box, { fill: 'sheet', part: 'plain' });
  plan.text([x + wide / 2, y + size * 0.34], text, { size, part: 'measure' });
  return wide;
}

/** A box whose ends are half circles. */
function stadium({ x, y, w, h }: { x: number; y: number; w: number; h: number }): readonly Point[] {
  const r = h / 2;
  const end = (cx: number, from: number): Point[] =>
    Array.from({ length: 9 }, (_, i) => {
      const angle = ((from + i * 22.5) * Math.PI) / 180;
      return [cx + r * Math.cos(angle), y + r + r * Math.sin(angle)];
    });
  return [...end(x + w - r, -90), ...end(x + r, 90)];
}
