/** The bonding diagram: one line of metal down the sheet, a loop of jumper at every place that it cannot be relied on. */
import { GivenError } from '../../trade/given.ts';
import { directionWords, fittingWords } from '../direction.ts';
import { frameOf, MARGIN, zoneOf } from '../frame.ts';
import { fitText, textWidth } from '../glyphs.ts';
import { capsule } from '../isometric/setting.ts';
import { drawNotes } from '../notes.ts';
import { Plan, SIZES } from '../plan.ts';
import type { RunGiven } from '../runGiven.ts';
import { legMarks } from '../runNames.ts';
import type { Point } from '../shapes.ts';
import { heard, spoken, together } from '../spoken.ts';
import type { Sheet } from '../svg.ts';
import type { Form, How } from '../types.ts';
import { across, breakAcross, GAP, loop, METAL, metal, terminal } from './metal.ts';
import { jumperCount, type LegRow, type Row, rowsOf } from './rows.ts';

const LAYOUT: Readonly<Record<Form, { readonly width: number; readonly columns: number }>> = {
  phone: { width: 328, columns: 1 },
  desk: { width: 752, columns: 2 },
  paper: { width: 718, columns: 2 },
};

/** From a column's edge to the line of metal and to the lettering. */
const LINE = { x: 24, text: 52 };
/** From line to line of lettering; radius of balloons. */
const STEP = 18;
const R = 14;

/** @throws {GivenError} without tables and catalogue nothing can be said of bonding */
export function layBonding(given: RunGiven, how: How): Sheet {
  const { resolved, tables, catalogue } = given;
  const { form, speak } = how;
  if (tables === undefined || catalogue === undefined) {
    throw new GivenError([
      { field: 'tables', message: 'bonding is judged by tables and catalogue', todo: 'give both' },
    ]);
  }
  const { width, columns } = LAYOUT[form];
  const margin = MARGIN[form];
  const marks = legMarks(resolved);
  const wide = (width - 2 * margin - 16) / columns;
  const rows = rowsOf({ ...given, tables, catalogue }, speak);
  const sets = parted(
    rows.map((row) => wrapped(row, wide - LINE.text - 8, (leg) => marks.get(leg) ?? leg.leg)),
    columns,
  );
  const top = margin + 18;
  const plan = new Plan();
  const balloons = new Map<string, Point>();
  let foot = top;
  sets.forEach((column, i) => {
    const left = margin + 10 + i * wide;
    let y = top;
    column.forEach((row, k) => {
      const next = column[k + 1] ?? sets[i + 1]?.[0];
      const above = !begins(row) && (k > 0 || i > 0);
      const below = next !== undefined && !begins(next) && row.end !== 'end';
      drawRow(plan, { row, x: left + LINE.x, text: left + LINE.text, y, above, below });
      if (row.mark !== undefined) balloons.set(row.mark, [left + LINE.text + R, y + 5 + R]);
      if (above && k === 0) breakAcross(plan, left + LINE.x, y);
      if (below && k === column.length - 1) breakAcross(plan, left + LINE.x, y + row.high);
      y += row.high;
    });
    foot = Math.max(foot, y);
  });
  const title = foot + 26;
  plan.viewTitle(
    [width / 2, title],
    speak({ say: 'rundrawing.bonding' }),
    speak({ say: 'rundrawing.notToScale' }),
  );
  const count = jumperCount(rows);
  const notes = [
    speak({ say: `rundrawing.jumpers-${count === 1 ? 'one' : 'many'}`, values: { count } }),
    speak({ say: 'rundrawing.sizesBy', values: { table: tables.jumper.table } }),
    speak({ say: 'rundrawing.unbroken' }),
  ];
  const height = Math.ceil(drawNotes(plan, notes, { form, width, margin, top: title + 40 }) + margin);
  const frame = frameOf(form, width, height);
  return {
    view: 'bonding',
    width,
    height,
    frame,
    plan,
    zones: Object.fromEntries([...balloons].map(([name, at]) => [name, zoneOf(frame, at)])),
    words: bondingWords(rows, how),
  };
}

/** A row with its words wrapped to the column. */
interface Wrapped {
  readonly kind: Row['kind'];
  readonly end: Exclude<Row, LegRow>['end'];
  readonly place?: string | undefined;
  readonly mark?: string | undefined;
  readonly lines: readonly string[];
  readonly high: number;
}

const markWidth = (mark: string) => Math.max(2 * R, textWidth(mark, SIZES.text) + 14);
/** Room that a row takes over its lines of lettering. */
const OVER: Readonly<Record<Row['kind'], number>> = { leg: 20, plain: 8, jumper: 26 };

function wrapped(row: Row, room: number, markOf: (leg: LegRow['leg']) => string): Wrapped {
  const mark = row.kind === 'leg' ? markOf(row.leg) : undefined;
  const wide = mark === undefined ? room : room - markWidth(mark) - 9;
  const parts = row.parts.map((part) => fitText(part, SIZES.note, wide));
  const lines = Plan.lines(parts, wide, SIZES.note);
  return {
    kind: row.kind,
    end: row.kind === 'leg' ? null : row.end,
    place: row.kind === 'jumper' ? fitText(row.place, SIZES.note, wide) : undefined,
    mark,
    lines,
    high: OVER[row.kind] + lines.length * STEP,
  };
}

const begins = ({ end }: Pick<Wrapped, 'end'>) => end === 'start' || end === 'branch';

/** Rows in columns of about one height, a leg's name never alone at a foot. */
function parted(rows: readonly Wrapped[], columns: number): readonly (readonly Wrapped[])[] {
  const whole = rows.reduce((sum, r) => sum + r.high, 0);
  const sets: Wrapped[][] = [[]];
  let high = 0;
  rows.forEach((row, i) => {
    if (sets.length < columns && rows.length > 6 && high >= whole / columns && rows[i - 1]?.kind !== 'leg') {
      sets.push([]);
      high = 0;
    }
    sets.at(-1)?.push(row);
    high += row.high;
  });
  return sets;
}

interface Standing {
  readonly row: Wrapped;
  /** Middle of the metal, left edge of the lettering, top of the row. */
  readonly x: number;
  readonly text: number;
  readonly y: number;
  /** Whether metal comes in from above, and goes on below. */
  readonly above: boolean;
  readonly below: boolean;
}

function drawRow(plan: Plan, standing: Standing): void {
  const { row } = standing;
  const say = (text: string, x: number, y: number, weight: number) =>
    plan.text([x, y], text, { size: SIZES.note, anchor: 'start', weight, part: row.kind });
  draws[row.kind](plan, standing, say);
}

type Say = (text: string, x: number, y: number, weight: number) => void;

const draws: Readonly<Record<Row['kind'], (plan: Plan, standing: Standing, say: Say) => void>> = {
  leg: (plan, { row, x, text, y, above, below }, say) => {
    const mark = row.mark ?? '';
    const w = markWidth(mark);
    metal(plan, x, above ? y : y + R, below ? y + row.high : y + R);
    plan.line('dimension', [x + METAL / 2 + 2, y + 5 + R], [text, y + 5 + R]);
    if (w === 2 * R)
      plan.circle([text + R, y + 5 + R], R, { fill: 'sheet', pen: 'thin', part: `balloon ${mark}` });
    else
      plan.polygon(capsule({ x: text, y: y + 5, w, h: 2 * R }), {
        fill: 'sheet',
        pen: 'thin',
        part: `balloon ${mark}`,
      });
    plan.text([text + w / 2, y + 5 + R + 5.5], mark, { part: `balloon ${mark}` });
    row.lines.forEach((line, i) => {
      say(line, text + w + 9, y + 5 + R + 5 + i * STEP, 650);
    });
  },
  plain: (plan, { row, x, text, y, above, below }, say) => {
    const middle = y + 14;
    metal(plan, x, above ? y : middle, below ? y + row.high : middle);
    across(plan, above && below ? 'thin' : 'edge', x, middle);
    row.lines.forEach((line, i) => {
      say(line, text, y + 19 + i * STEP, 600);
    });
  },
  jumper: (plan, { row, x, text, y, above, below }, say) => {
    const middle = y + 17;
    if (row.end === 'start') terminal(plan, x, middle - GAP, -1);
    else {
      metal(plan, x, y, middle - GAP);
      across(plan, 'edge', x, middle - GAP);
      if (!above) breakAcross(plan, x, y);
    }
    if (!below) terminal(plan, x, middle + GAP, 1);
    else {
      metal(plan, x, middle + GAP, y + row.high);
      across(plan, 'edge', x, middle + GAP);
    }
    loop(plan, x, middle);
    say(row.place ?? '', text, y + 21, 700);
    row.lines.forEach((line, i) => {
      say(line, text, y + 21 + (i + 1) * STEP, 600);
    });
  },
};

function bondingWords(rows: readonly Row[], { speak }: How): string {
  const say = (key: string, values: Record<string, string | number> = {}) =>
    speak({ say: `rundrawing.${key}`, values });
  return heard(
    together([
      say('bondingWords', { count: jumperCount(rows) }),
      ...rows.map((row) => {
        if (row.kind === 'plain') return `${row.parts.join(', ')}.`;
        if (row.kind === 'jumper')
          return say('jumperWords', { place: row.place, what: row.parts.join('; ') });
        const by = fittingWords(row.leg, speak);
        const way = directionWords(row.leg, speak);
        const values = { leg: row.leg.leg, way, length: spoken(row.leg.length, speak) };
        return by === undefined ? say('unfoldedFirst', values) : say('unfoldedLeg', { ...values, by });
      }),
    ]),
  );
}
