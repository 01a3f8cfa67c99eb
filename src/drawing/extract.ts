/**
 * Part of a drawing to be read: column lines with their distances, a channel over steel with its elevations, and the
 * corner of the title block with its table of revisions. Nothing of it is to scale, and it says so.
 */
import { type Ticks, ticks } from '../trade/length.ts';
import type { Speak } from '../trade/say.ts';
import { shortLength } from '../trade/shortLength.ts';
import { across } from './dimension.ts';
import { Plan, SIZES } from './plan.ts';
import { spoken, together } from './spoken.ts';
import { render, type Sheet } from './svg.ts';
import type { Drawing, Form, How } from './types.ts';

/** What a revision changed; a table has the words. */
export const CHANGES = ['first', 'stand', 'elbow', 'lowered', 'support', 'width'] as const;
export interface Revision {
  /** As it is lettered: `C`. */
  readonly id: string;
  readonly change: (typeof CHANGES)[number];
  readonly issued: boolean;
}

export const LEVELS = ['channel', 'steel', 'stand'] as const;
export type Level = (typeof LEVELS)[number];

export interface ExtractGiven {
  readonly sheet: number;
  /** From each column line to the next. */
  readonly bays: readonly Ticks[];
  /** As they are lettered: `112.50`. */
  readonly elevations: Readonly<Record<Level, string>>;
  /** From the top of the table down. */
  readonly revisions: readonly Revision[];
}

const WIDTH: Readonly<Record<Form, number>> = { phone: 328, desk: 480, paper: 480 };
const SIDE = 24;
/** Heights on the sheet: undersides and tops that have an elevation, and what lies between. */
const Y = {
  bubble: 20,
  columns: 34,
  channel: 88,
  steel: 142,
  stand: 198,
  foot: 222,
  bays: 256,
  all: 292,
} as const;
const TABLE = { top: 312, row: 24 } as const;

const SIGN: Readonly<Record<Level, string>> = {
  channel: 'drawing.levelChannel',
  steel: 'drawing.levelSteel',
  stand: 'drawing.levelStand',
};
const CHANGE: Readonly<Record<Revision['change'], string>> = {
  first: 'drawing.changeFirst',
  stand: 'drawing.changeStand',
  elbow: 'drawing.changeElbow',
  lowered: 'drawing.changeLowered',
  support: 'drawing.changeSupport',
  width: 'drawing.changeWidth',
};
const stateOf = ({ issued }: Revision) => (issued ? 'drawing.issued' : 'drawing.forComment');

export const drawExtract = (given: ExtractGiven, how: How): Drawing => render(layExtract(given, how), how);

export function layExtract(given: ExtractGiven, { form, speak }: How): Sheet {
  const width = WIDTH[form];
  const plan = new Plan();
  const wide = (width - 2 * SIDE) / given.bays.length;
  const columns = [0, ...given.bays].map((_, i) => SIDE + i * wide);
  const [first = 0, last = 0] = [columns[0], columns.at(-1)];

  for (const [i, x] of columns.entries()) {
    plan.line('centre', [x, Y.columns], [x, Y.foot]);
    plan.circle([x, Y.bubble], 13, { pen: 'thin' });
    plan.text([x, Y.bubble + 5.5], String(i + 1), { part: `column ${i + 1}` });
  }
  plan.rect(
    { x: first, y: Y.channel - 16, w: last - first, h: 16 },
    { pen: 'edge', fill: 'galv', part: 'channel' },
  );
  plan.rect({ x: first, y: Y.steel, w: last - first, h: 12 }, { pen: 'edge', fill: 'galv2', part: 'steel' });
  plan.rect(
    { x: last - 30, y: Y.stand, w: 30, h: Y.foot - Y.stand },
    { pen: 'edge', fill: 'galv', part: 'stand' },
  );
  mark(plan, first + 16, Y.channel, 'below', `${speak({ say: SIGN.channel })} ${given.elevations.channel}`);
  mark(plan, first + 16, Y.steel, 'above', `${speak({ say: SIGN.steel })} ${given.elevations.steel}`);
  plan.line('dimension', [first + 8, Y.stand], [last - 34, Y.stand]);
  mark(plan, first + 16, Y.stand, 'below', `${speak({ say: SIGN.stand })} ${given.elevations.stand}`);

  for (const [i, length] of given.bays.entries())
    dimension(plan, columns[i] ?? 0, columns[i + 1] ?? 0, Y.bays, length);
  dimension(plan, first, last, Y.all, total(given));
  for (const x of columns)
    plan.line('dimension', [x, Y.foot + 6], [x, (x === first || x === last ? Y.all : Y.bays) + 6]);

  const height = table(plan, given, width, speak);
  return { view: 'extract', width, height, plan, words: wordsOf(given, speak), zones: {} };
}

const total = ({ bays }: ExtractGiven) => ticks(bays.reduce((sum, one) => sum + one, 0));

/** An arrow at a level, its elevation beside it. */
function mark(plan: Plan, x: number, y: number, side: 'above' | 'below', text: string): void {
  const way = side === 'below' ? 1 : -1;
  plan.polygon(
    [
      [x, y],
      [x - 6, y + way * 11],
      [x + 6, y + way * 11],
    ],
    { pen: 'thin', fill: 'ink' },
  );
  plan.text([x + 12, side === 'below' ? y + 17 : y - 7], text, {
    size: SIZES.note,
    anchor: 'start',
    ground: 'sheet',
  });
}

/** Between two column lines; its length over the line, which is too short on a phone to break for it. */
function dimension(plan: Plan, x1: number, x2: number, y: number, length: Ticks): void {
  across(plan, x1, x2, y, '');
  plan.text([(x1 + x2) / 2, y - 5], shortLength(length), { size: SIZES.note });
}

/** The corner of the title block; gives the height of the sheet. */
function table(plan: Plan, { revisions, sheet }: ExtractGiven, width: number, speak: Speak): number {
  const [left, right] = [8, width - 8];
  const [change, state] = [left + 52, left + (right - left) * 0.58];
  const rows = [
    ['drawing.revision', 'drawing.change', 'drawing.state'].map((say) => speak({ say })),
    ...revisions.map((one) => [one.id, speak({ say: CHANGE[one.change] }), speak({ say: stateOf(one) })]),
  ];
  for (const [i, cells] of rows.entries()) {
    const top = TABLE.top + i * TABLE.row;
    plan.line(i === 1 ? 'thin' : 'dimension', [left, top], [right, top]);
    const at = [left + 6, change + 6, state + 6];
    for (const [k, text] of cells.entries())
      plan.text([at[k] ?? 0, top + 17], text, {
        size: SIZES.note,
        anchor: 'start',
        weight: i === 0 ? 600 : 650,
        part: `row ${i}`,
      });
  }
  const under = TABLE.top + rows.length * TABLE.row;
  for (const x of [change, state]) plan.line('dimension', [x, TABLE.top], [x, under]);
  const notes = [
    speak({ say: 'drawing.sheetNumber', values: { sheet } }),
    speak({ say: 'drawing.unitsLengths' }),
    speak({ say: 'drawing.unitsElevations' }),
    speak({ say: 'drawing.doNotScale' }),
  ];
  const lines = Plan.lines(notes, right - left - 12, SIZES.note);
  const bottom = under + lines.length * 20 + 8;
  for (const [i, line] of lines.entries())
    plan.text([left + 6, under + 18 + i * 20], line, { size: SIZES.note, anchor: 'start', weight: 600 });
  plan.rect({ x: left, y: TABLE.top, w: right - left, h: bottom - TABLE.top }, { pen: 'thin' });
  plan.line('thin', [left, under], [right, under]);
  return bottom + 8;
}

function wordsOf(given: ExtractGiven, speak: Speak): string {
  const between = (from: number, to: number, length: Ticks) =>
    speak({ say: 'drawing.betweenColumns', values: { from, to, length: spoken(length, speak) } });
  return together([
    speak({ say: 'drawing.extractWords', values: { sheet: given.sheet } }),
    ...given.bays.map((length, i) => between(i + 1, i + 2, length)),
    between(1, given.bays.length + 1, total(given)),
    ...LEVELS.map((level) => `${speak({ say: SIGN[level] })} ${given.elevations[level]}.`),
    speak({ say: 'drawing.revisionsWords' }),
    ...given.revisions.map((one) =>
      speak({
        say: 'drawing.revisionWords',
        values: {
          id: one.id,
          change: speak({ say: CHANGE[one.change] }),
          state: speak({ say: stateOf(one) }),
        },
      }),
    ),
    speak({ say: 'drawing.extractNotes' }),
  ]);
}
