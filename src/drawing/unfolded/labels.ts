/** Lettering of a bar: its name and length over it, supports and joints under it, measured from the leg's first working point. */
import type { ResolvedJoint } from '../../run/straight.ts';
import { inches, type Ticks } from '../../trade/length.ts';
import type { Speak } from '../../trade/say.ts';
import { shortLength } from '../../trade/shortLength.ts';
import { across } from '../dimension.ts';
import { directionWords, fittingWords } from '../direction.ts';
import { textWidth } from '../glyphs.ts';
import { capsule } from '../isometric/setting.ts';
import { boxOf, type Plan, SIZES } from '../plan.ts';
import type { Room } from '../room.ts';
import type { Form } from '../types.ts';
import type { Bar } from './flow.ts';

export interface Lettered {
  readonly plan: Plan;
  readonly room: Room;
  readonly form: Form;
  readonly speak: Speak;
  readonly bar: Bar;
  readonly top: number;
  readonly high: number;
  /** Balloon or number of the leg. */
  readonly mark: string;
  readonly names: ReadonlyMap<ResolvedJoint, string>;
}

const R = 14;
/** From the bar up to the dimension line and to the balloon's middle. */
export const OVER = { line: 22, name: 54 };

/**
 * Name, length and way of a leg over its bar.
 *
 * @returns the middle of the balloon, on the leg's first bar
 */
export function nameBar(lettered: Lettered, balloon: boolean): readonly [number, number] | undefined {
  const { plan, room, speak, bar, top, mark } = lettered;
  const { leg, first, last, cell } = bar;
  const y = top - OVER.name;
  const part = `leg ${leg.leg}`;
  const end = cell.x + cell.w;
  let cursor = cell.x + 1;
  const say = (text: string, size: number = SIZES.note): boolean => {
    const w = textWidth(text, size);
    if (cursor + w > end) return false;
    const made = plan.text([cursor, y + 5], text, { size, anchor: 'start', part });
    room.keep(boxOf(made));
    cursor += w + 9;
    return true;
  };
  let stood: readonly [number, number] | undefined;
  if (first && balloon) {
    const w = Math.max(2 * R, textWidth(mark, SIZES.text) + 14);
    const box = { x: cursor, y: y - R, w, h: 2 * R };
    stood = [cursor + w / 2, y];
    if (w === 2 * R) plan.circle(stood, R, { fill: 'sheet', pen: 'thin', part: `balloon ${mark}` });
    else plan.polygon(capsule(box), { fill: 'sheet', pen: 'thin', part: `balloon ${mark}` });
    plan.text([stood[0], y + 5.5], mark, { part: `balloon ${mark}` });
    plan.keep(box);
    room.keep(box);
    cursor += w + 7;
  } else if (first) say(speak({ say: 'rundrawing.legName', values: { leg: mark } }));
  else say(speak({ say: 'rundrawing.goesOn', values: { leg: mark, at: shortLength(ticksOf(bar.from)) } }));

  const length = shortLength(leg.length);
  const [x1, x2] = [bar.x(bar.from), bar.x(bar.to)];
  if (first && last && x2 - x1 >= textWidth(length, SIZES.text) + 32) {
    across(plan, x1, x2, top - OVER.line, length, { from: top, part });
    room.keep({ x: x1, y: top - OVER.line - 8, w: x2 - x1, h: 16 });
  } else if (first) {
    if (last) across(plan, x1, x2, top - OVER.line, '', { from: top, part });
    say(length, SIZES.text);
  }
  if (!first) return stood;
  const by = fittingWords(leg, speak);
  const way = directionWords(leg, speak);
  // As much as there is room for: which way it goes, and by what.
  if (say(way) && by !== undefined) say(by);
  return stood;
}

const ticksOf = (inch: number) => Math.round(inch * 8128) as Ticks;

interface Mark {
  readonly x: number;
  readonly name: string;
  readonly full: string;
  readonly part: string;
}

/** A row of marks: in full if all fit, else their names, else as many names as fit. */
function row(
  { plan, room }: Pick<Lettered, 'plan' | 'room'>,
  marks: readonly Mark[],
  y: number,
  bounds: readonly [number, number],
  full: boolean,
): number {
  const set = (text: (m: Mark) => string, air: number) => {
    let edge = Number.NEGATIVE_INFINITY;
    return marks.flatMap((mark) => {
      const w = textWidth(text(mark), SIZES.note);
      const x = Math.min(Math.max(mark.x, bounds[0] + w / 2), bounds[1] - w / 2);
      const box = boxOf({ at: [x, y], text: text(mark), size: SIZES.note, anchor: 'middle' });
      if (box.x < edge + air || Math.abs(x - mark.x) > w / 2 + 4 || !room.free(box, 2)) return [];
      edge = box.x + box.w;
      return [{ mark, x, box }];
    });
  };
  const long = full ? set((m) => m.full, 7) : [];
  const whole = full && long.length === marks.length;
  const chosen = whole ? long : set((m) => m.name, 4);
  for (const { mark, x, box } of chosen) {
    plan.text([x, y], whole ? mark.full : mark.name, { size: SIZES.note, part: mark.part });
    room.keep(box);
  }
  return chosen.length;
}

export interface Counted {
  readonly supports: number;
  readonly joints: number;
}

/** Struts with their letters, and joints on stems under them. */
export function letterBar(lettered: Lettered, bounds: readonly [number, number], drawEach: number): Counted {
  const { plan, bar, top, high, names } = lettered;
  const { leg, from, to } = bar;
  const inBar = (at: number) => inches(at as Ticks) >= from && (bar.last || inches(at as Ticks) < to);
  const supports = leg.supports.filter(({ at }, i) => inBar(at) && i % drawEach === 0);
  const foot = top + high;
  for (const { at, name, way, hold } of supports) {
    const x = bar.x(inches(at));
    const box = { x: x - 4.5, y: foot + 1.5, w: 9, h: 8 };
    plan.rect(box, { pen: 'thin', fill: hold === 'load' ? 'ink' : 'sheet', part: `support ${name}` });
    if (way === 'vertical') plan.line('thin', [x, foot + 1.5], [x, foot + 9.5], `support ${name}`);
  }
  const joints = leg.joints.filter(({ at }) => inBar(at));
  const marks = joints.map((joint): Mark => {
    const name = names.get(joint) ?? joint.name;
    return {
      x: bar.x(inches(joint.at)),
      name,
      full: `${name}  ${shortLength(joint.at)}`,
      part: `splice ${name}`,
    };
  });
  // Stems of joints come before the letters, which keep clear of them.
  const under = foot + 44;
  for (const { x } of marks) lettered.room.keep({ x: x - 2, y: foot + 11, w: 4, h: under - foot - 26 });
  const shown = row(
    lettered,
    supports.map(({ at, name }) => ({
      x: bar.x(inches(at)),
      name,
      full: `${name} ${shortLength(at)}`,
      part: `support ${name}`,
    })),
    foot + 24,
    bounds,
    true,
  );
  const before = plan.texts.length;
  const named = row(lettered, marks, under, bounds, true);
  const texts = plan.texts.slice(before);
  for (const { x, part } of marks) {
    if (!texts.some((t) => t.part === part)) continue;
    plan.line('dimension', [x, foot + 9], [x, under - 14], part);
    plan.arrow([x, under - 13], 90, 8);
  }
  return { supports: shown, joints: named };
}
