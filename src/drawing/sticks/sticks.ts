/** A cutting plan as bars, all to one scale: pieces, the saw line at every cut, what is left. */
import { fromInches, inches, type Ticks } from '../../trade/length.ts';
import { shortLength } from '../../trade/shortLength.ts';
import type { CutLength, CutPiece } from '../../trade/sticks/types.ts';
import { textWidth } from '../glyphs.ts';
import { Plan, SIZES } from '../plan.ts';
import { render, type Sheet } from '../svg.ts';
import type { Drawing, Form, How } from '../types.ts';
import { alikeBars } from './alike.ts';
import { barLabel, namesLength, sticksWords } from './names.ts';

export interface SticksDrawn {
  readonly lengths: readonly CutLength[];
  /** What one cut takes, in ticks. */
  readonly kerf: Ticks;
}

export function drawSticks(given: SticksDrawn, how: How): Drawing {
  return render(laySticks(given, how), how);
}

const WIDTH: Readonly<Record<Form, number>> = { phone: 328, desk: 752, paper: 718 };
/** Room beside a bar for half of its edge. */
const EDGE = 1.5;
/** Height of a bar, how far a saw line stands out of it, a line of its label, air below it. */
const BAR = { high: 26, over: 4, line: 17, air: 12 };
/** Bars that are drawn at most; those alike count as one. */
const MOST = 40;
/** Air on both sides of a piece's lettering. */
const AIR = 8;

export function laySticks({ lengths, kerf }: SticksDrawn, { form, speak }: How): Sheet {
  const plan = new Plan();
  const width = WIDTH[form];
  const groups = alikeBars(lengths);
  const named = namesLength(lengths);
  const longest = Math.max(...lengths.map(({ fromIn }) => fromIn), 1);
  const scale = (width - 2 * EDGE) / longest;
  let foot = 0;
  const drawn = groups.slice(0, MOST);
  for (const alike of drawn) {
    for (const line of lines(barLabel(alike, named(alike.bar), speak), width)) {
      foot += BAR.line;
      plan.text([0, foot - 4], line, { size: SIZES.note, anchor: 'start' });
    }
    drawBar(plan, alike.bar, { top: foot + BAR.over, scale, saw: inches(kerf), form });
    foot += BAR.high + 2 * BAR.over + BAR.air;
  }
  const more = groups.slice(MOST).reduce((sum, { from, to }) => sum + to - from + 1, 0);
  if (more > 0) {
    foot += BAR.line;
    const text = speak({ say: 'drawing.barsMore', values: { count: more } });
    plan.text([0, foot - 4], text, { size: SIZES.note, anchor: 'start' });
  }
  return {
    view: 'sticks',
    width,
    height: Math.max(foot, 1),
    plan,
    words: sticksWords(drawn, more, kerf, speak),
    zones: {},
  };
}

/** The label on one line where it fits, else a line for each part. */
function lines([name, left]: readonly [string, string], width: number): readonly string[] {
  const one = `${name}: ${left}`;
  return textWidth(one, SIZES.note) <= width ? [one] : [name, left];
}

interface BarHow {
  readonly top: number;
  /** Px to the inch. */
  readonly scale: number;
  /** In. */
  readonly saw: number;
  readonly form: Form;
}

function drawBar(plan: Plan, { fromIn, pieces, leftIn }: CutLength, { top, scale, saw, form }: BarHow): void {
  const x = (inch: number) => EDGE + Math.min(inch, fromIn) * scale;
  const box = (from: number, to: number) => ({ x: x(from), y: top, w: x(to) - x(from), h: BAR.high });
  if (leftIn > 0) plan.rect(box(fromIn - leftIn, fromIn), { pen: 'phantom', part: 'left over' });
  const cuts: number[] = [];
  let at = 0;
  for (const piece of pieces) {
    const end = at + piece.in;
    const room = box(at, end);
    plan.rect(room, { pen: 'edge', fill: 'galv', part: `piece ${piece.mark ?? piece.in}` });
    const text = lettering(piece, room.w - AIR, form);
    if (text !== undefined)
      plan.text([room.x + room.w / 2, top + BAR.high / 2 + 5], text, { size: SIZES.note });
    // Where a piece ends with the bar there is nothing to cut.
    if (fromIn - end > 1e-9) cuts.push(end);
    at = end + saw;
  }
  for (const cut of cuts)
    plan.line('mark', [x(cut), top - BAR.over], [x(cut), top + BAR.high + BAR.over], 'cut');
}

/** What a piece has room for: its mark and length on a wide sheet, else the mark, else the length. */
function lettering({ in: long, mark = '' }: CutPiece, room: number, form: Form): string | undefined {
  const length = shortLength(fromInches(long));
  const both = mark === '' || form === 'phone' ? [] : [`${mark}  ${length}`];
  return [...both, mark === '' ? length : mark].find((text) => textWidth(text, SIZES.note) <= room);
}
