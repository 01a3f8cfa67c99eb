/** What one sheet of paper holds of a job card: how tightly it is set, and what goes on to a list behind it. */
import { textWidth } from '../../../drawing/glyphs.ts';
import type { CardRows } from './rows.ts';

/** How the card is set; the first that holds everything is taken. */
export interface Setting {
  /** The strip stands under the isometric. */
  readonly strip: boolean;
  /** The lists of cuts and splices stand side by side. */
  readonly wide: boolean;
  /** The order of the work stands in two columns. */
  readonly dense: boolean;
  /** What is wrong is named by its rule and place alone. */
  readonly short: boolean;
  /** Rows of cuts and splices stand closer. */
  readonly tight: boolean;
}
const LOOSE: Setting = { strip: true, wide: false, dense: false, short: false, tight: false };
const TIGHTEST: Setting = { strip: false, wide: true, dense: true, short: true, tight: true };
const SETTINGS: readonly Setting[] = [
  LOOSE,
  { ...LOOSE, wide: true },
  { ...LOOSE, dense: true },
  { ...LOOSE, wide: true, dense: true },
  { ...LOOSE, strip: false },
  { ...LOOSE, strip: false, wide: true },
  { ...TIGHTEST, dense: false, short: false },
  { ...TIGHTEST, dense: false },
  { ...TIGHTEST, short: false, tight: false },
  { ...TIGHTEST, tight: false },
  TIGHTEST,
];

/** What the parts of the card take, mm, as styles/run.css sets them; measured on paper, a little more than they take. */
const MM = {
  sheet: 256,
  width: 180,
  /** Head, warning, heading, lines under it, titles, hold point, signatures, title block, space between. */
  fixed: 92,
  line: 4.3,
  /** Frame of what is wrong, and how many things are. */
  wrong: 9,
  short: 3.85,
  step: 6.4,
  crew: 6.4,
  /** Title and head of a list beside the figure, and a row of it. */
  list: 10.5,
  row: 6.4,
  tight: 5.3,
  /** The figure is not smaller, and where rows stand closer never smaller than this. */
  figure: 48,
  least: 44,
} as const;
const POINT = 25.4 / 72;
/** The text face runs a tenth narrower than the lettering that was measured; half of it is kept as air. */
const wide = (text: string, points: number) => textWidth(text, points) * POINT * 0.95;

/** Lines of a text set solid. */
const lines = (text: string, points: number, room: number) => Math.ceil(wide(text, points) / (room * 0.98));

/** Lines of pieces of text that do not part, set one behind the other. */
function flowed(texts: readonly string[], points: number, room: number, before = 0): number {
  let count = 1;
  let x = before;
  for (const text of texts) {
    const w = wide(text, points) + 4.2;
    if (x > 0 && x + w > room) {
      count++;
      x = 0;
    }
    x += w;
  }
  return count;
}

export interface CardSize {
  readonly steps: number;
  /** Names of the tasks, as they are listed. */
  readonly tasks: readonly string[];
  /** What stands under the heading: where, size, crew, from and to. */
  readonly about: readonly string[];
  /** Height of the strip across the sheet, mm; null where there is none. */
  readonly strip: number | null;
}

/** What is shown of each list; what is not goes on to the list behind the card. */
export interface Held {
  readonly setting: Setting;
  readonly shown: CardRows;
  readonly rest: CardRows;
}

const EMPTY: CardRows = { findings: [], cuts: [], splices: [], supports: [], jumpers: [], crew: [] };
/** Most rows of the crew on the card itself. */
const CREW = 6;

export function hold(rows: CardRows, size: CardSize): Held {
  const settings = size.strip === null ? SETTINGS.filter(({ strip }) => !strip) : SETTINGS;
  const setting = settings.find((one) => rows.crew.length <= CREW && fits(rows, size, one));
  if (setting !== undefined) return { setting, shown: rows, rest: EMPTY };
  return { setting: TIGHTEST, ...parted(rows, size) };
}

function fits(rows: CardRows, size: CardSize, setting: Setting): boolean {
  const left = room(size, setting, rows.crew.length) - across(rows, setting);
  return left >= (setting.tight ? MM.least : MM.figure) && left >= beside(rows, setting);
}

/** What is left for findings, figure and lists. */
function room({ steps, tasks, about, strip }: CardSize, setting: Setting, crew: number): number {
  return (
    MM.sheet -
    MM.fixed -
    (flowed(about, 9.5, MM.width) - 1) * MM.line -
    (setting.dense ? Math.ceil(steps / 2) : steps) * MM.step -
    flowed(tasks, 8.5, MM.width) * 3.8 -
    crew * MM.crew -
    (setting.strip ? (strip ?? 0) + 1 : 0)
  );
}

/** The line over the supports that says where the tape is hooked, and the space before it. */
const HOOKED = 2 + MM.line;

const across = ({ findings, supports, jumpers }: CardRows, setting: Setting): number =>
  findingsHigh(findings, setting) +
  supports.reduce((sum, row) => sum + supportHigh(row), supports.length > 0 ? HOOKED : 0) +
  jumpersHigh(jumpers);

function findingsHigh(findings: CardRows['findings'], { short }: Setting): number {
  if (findings.length === 0) return 0;
  const count = short
    ? flowed(
        findings.map((row) => `${row.number}. ${row.short}`),
        8.5,
        MM.width - 6,
      )
    : findings.reduce((sum, row) => sum + lines(`${row.number}. ${row.text}`, 9, MM.width - 6), 0);
  return MM.wrong + count * (short ? MM.short : MM.line);
}

const supportHigh = ({ title, supports }: CardRows['supports'][number]): number =>
  1 +
  MM.line *
    flowed(
      supports.map(({ name, text }) => `${name} ${text}`),
      9.5,
      MM.width - wide(title, 9.5) - 4,
    );

const jumpersHigh = (jumpers: CardRows['jumpers']): number =>
  jumpers.length === 0
    ? 0
    : 3 +
      MM.line *
        flowed(
          jumpers.map(({ title, text }) => `${title} ${text}`),
          9.5,
          MM.width,
          20,
        );

/** Cuts and splices beside the figure. */
function beside({ cuts, splices }: CardRows, setting: Setting): number {
  const heads = splices.length > 0 ? 2 : 1;
  const row = setting.tight ? MM.tight : MM.row;
  return setting.wide
    ? MM.list + row * Math.max(cuts.length, splices.length)
    : MM.list * heads + row * (cuts.length + splices.length);
}

/** As much as one sheet holds, and the rest; what is cut and spliced keeps the figure's height. */
function parted(rows: CardRows, size: CardSize): Pick<Held, 'shown' | 'rest'> {
  const crew = rows.crew.slice(0, CREW);
  // The line that says where it goes on.
  let left = room(size, TIGHTEST, crew.length) - MM.line - 1 - (rows.findings.length > 0 ? MM.wrong : 0);
  const take = <Row>(all: readonly Row[], high: (some: readonly Row[]) => number): readonly Row[] => {
    let count = 0;
    while (count < all.length && high(all.slice(0, count + 1)) <= left - MM.figure) count++;
    const some = all.slice(0, count);
    left -= some.length === 0 ? 0 : high(some);
    return some;
  };
  const jumpers = take(rows.jumpers, jumpersHigh);
  const supports = take(rows.supports, (some) => some.reduce((sum, row) => sum + supportHigh(row), HOOKED));
  const findings = take(rows.findings, (some) => findingsHigh(some, TIGHTEST) - MM.wrong);
  const each = Math.floor((left - MM.list) / MM.tight);
  const shown = {
    findings,
    supports,
    jumpers,
    crew,
    cuts: rows.cuts.slice(0, each),
    splices: rows.splices.slice(0, each),
  };
  const rest = {
    findings: rows.findings.slice(shown.findings.length),
    supports: rows.supports.slice(shown.supports.length),
    jumpers: rows.jumpers.slice(shown.jumpers.length),
    crew: rows.crew.slice(shown.crew.length),
    cuts: rows.cuts.slice(shown.cuts.length),
    splices: rows.splices.slice(shown.splices.length),
  };
  return { shown, rest };
}

export type ListPart = keyof CardRows;
/** In the order of the sheets behind the card. */
export const PARTS: readonly ListPart[] = ['findings', 'cuts', 'splices', 'supports', 'jumpers', 'crew'];

/** The rest, on as many sheets as it takes. */
export function listSheets(rest: CardRows): readonly CardRows[] {
  const room = MM.sheet - 36;
  const sheets: CardRows[] = [];
  let left = 0;
  let own: CardRows = EMPTY;
  const begin = () => {
    left = room;
    own = EMPTY;
    sheets.push(own);
  };
  for (const part of PARTS) {
    let headed = false;
    for (const row of rest[part]) {
      const high = rowHigh(part, row);
      if (left < high + (headed ? 0 : MM.list)) {
        begin();
        headed = false;
      }
      left -= high + (headed ? 0 : MM.list);
      headed = true;
      own = { ...own, [part]: [...own[part], row] };
      sheets[sheets.length - 1] = own;
    }
  }
  return sheets;
}

function rowHigh(part: ListPart, row: CardRows[ListPart][number]): number {
  if (part === 'supports') return supportHigh(row as CardRows['supports'][number]) + 1;
  if (part === 'findings') {
    const { number, text } = row as CardRows['findings'][number];
    return MM.line * lines(`${number}. ${text}`, 9.5, MM.width) + 1.4;
  }
  return MM.row;
}
