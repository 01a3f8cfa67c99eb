/** Rows of cables as a person writes them on the fill sheet, and the fill that follows. Pure; the island shows it. */
import { type SectionGiven, sectionScale } from '../drawing/section.ts';
import type { Answered } from '../trade/answer.ts';
import { figures } from '../trade/figure.ts';
import { type FillCable, type FillGiven, type FillResult, fill, type Make } from '../trade/fill.ts';
import type { FillTables } from '../trade/fillTables.ts';
import { inches, tryLength } from '../trade/length.ts';
import type { SiteKey } from './speak.ts';

export interface CableRow {
  /** Stays with the row while others come and go. */
  readonly id: number;
  readonly make: Make;
  /** Outside diameter as written: inches as a decimal or with a fraction, or millimetres. */
  readonly od: string;
  readonly count: string;
}

export interface RowFaults {
  readonly od?: SiteKey;
  readonly count?: SiteKey;
}

/** Outside diameter in inches. A plain decimal is taken as it stands; other forms go through the reader of lengths. */
export function readDiameter(text: string): number | undefined {
  const plain = text.trim();
  if (/^\d*\.?\d+$/.test(plain)) return Number(plain) > 0 ? Number(plain) : undefined;
  const length = tryLength(plain);
  return typeof length === 'number' && length > 0 ? inches(length) : undefined;
}

const readCount = (text: string): number | undefined =>
  /^[1-9]\d{0,3}$/.test(text.trim()) ? Number(text.trim()) : undefined;

export function rowFaults({ od, count }: CableRow): RowFaults {
  return {
    ...(readDiameter(od) === undefined ? { od: 'fillSheet.odNot' as const } : {}),
    ...(readCount(count) === undefined ? { count: 'fillSheet.countNot' as const } : {}),
  };
}

/** The cables that all rows make, or undefined while one cannot be read. */
function cablesOf(rows: readonly CableRow[]): readonly FillCable[] | undefined {
  const cables: FillCable[] = [];
  for (const row of rows) {
    const odIn = readDiameter(row.od);
    const count = readCount(row.count);
    if (odIn === undefined || count === undefined) return undefined;
    cables.push({ make: row.make, odIn, count });
  }
  return cables;
}

/** Inside widths that any of the tables, or the rule for singles, speaks of. */
export function widthsOf({ multiconductor, singles }: FillTables): readonly number[] {
  const rows = Object.values(multiconductor).flatMap((table) => table.rows.map(({ widthIn }) => widthIn));
  return [...new Set([...rows, ...singles.widthsIn])].sort((a, b) => a - b);
}

export interface FillFields {
  readonly tray: FillGiven['tray'];
  readonly rows: readonly CableRow[];
  readonly qualifiedOnly: boolean;
  /** Hundredths kept free. */
  readonly spare: number;
  readonly edition: NonNullable<FillGiven['edition']>;
}

export interface FillSum {
  readonly answer: Answered<FillResult>;
  /** The cables for the figure; none where they cannot be drawn (one wider than the channel, or too many to see). */
  readonly drawn: readonly { readonly odIn: number; readonly count: number }[];
}

/** More cables than this are a grey heap in the figure. */
const mostDrawn = 60;

export function fillSum(
  { tray, rows, qualifiedOnly, spare, edition }: FillFields,
  tables: FillTables,
): FillSum | undefined {
  const cables = cablesOf(rows);
  if (cables === undefined || cables.length === 0) return undefined;
  const drawn = cables.map(({ count, ...cable }) => ({ count, odIn: 'odIn' in cable ? cable.odIn : 0 }));
  const fits =
    drawn.every(({ odIn }) => odIn <= tray.widthIn) &&
    drawn.reduce((all, { count }) => all + count, 0) <= mostDrawn;
  return {
    answer: fill({ tray, cables, qualifiedOnly, spare: spare / 100, edition }, tables),
    drawn: fits ? drawn : [],
  };
}

interface Said {
  readonly key: SiteKey;
  readonly values: Record<string, string>;
}

export interface FillLines {
  readonly verdict: Said;
  /** Whose number it is: table, row and column; and what the project keeps of it. */
  readonly more: readonly Said[];
  readonly share: Said | undefined;
}

/** The answer in words: the number against the table's number first, the share in hundredths last. */
export function fillLines(result: FillResult, { tray, spare }: FillFields): FillLines {
  const { areaIn2, allowedIn2, sumOfDiametersIn = 0, allowedIn = null, column, table } = result;
  const free = 1 - spare / 100;
  const held: Said[] = [
    ...(allowedIn2 === null ? [] : [against(areaIn2, allowedIn2 * free, 'fillSheet.usedArea')]),
    ...(allowedIn === null ? [] : [against(sumOfDiametersIn, allowedIn * free, 'fillSheet.usedWidth')]),
  ];
  const width = String(tray.widthIn);
  const speaks: Said =
    column === null
      ? { key: 'fillSheet.speaksWidth', values: { table, width } }
      : { key: `fillSheet.speaks${column}`, values: { table, width } };
  const less = { spare: String(spare), limit: String(column === null ? allowedIn : allowedIn2) };
  const referred = result.refer
    ? held.length > 0
      ? held
      : column === null
        ? []
        : [{ key: 'fillSheet.areaOnly', values: { area: hundredths(areaIn2) } } as const]
    : [];
  return {
    verdict: result.refer ? { key: 'fillSheet.refer', values: {} } : verdictOf(held, result.within === true),
    more: [
      ...referred,
      ...(held.length === 0 ? [] : [speaks]),
      ...(spare > 0 && held.length === 1
        ? [{ key: `fillSheet.${column === null ? 'lessWidth' : 'lessArea'}`, values: less } as const]
        : []),
    ],
    share:
      result.fraction === null
        ? undefined
        : { key: 'fillSheet.share', values: { share: String(Math.round(result.fraction * 1000) / 10) } },
  };
}

function verdictOf([held]: readonly Said[], within: boolean): Said {
  if (held === undefined) throw new Error('a fill that is not referred is held against a limit');
  const over = held.key === 'fillSheet.usedArea' ? 'fillSheet.overArea' : 'fillSheet.overWidth';
  const holds = held.key === 'fillSheet.usedArea' ? 'fillSheet.withinArea' : 'fillSheet.withinWidth';
  return { key: within ? holds : over, values: held.values };
}

/** Two numbers to hundredths, or finer where hundredths would make them look the same. */
function against(a: number, b: number, key: SiteKey): Said {
  const [used, usable] = hundredths(a) === hundredths(b) ? figures(a, b) : [hundredths(a), hundredths(b)];
  return { key, values: { used, usable } };
}

/** An area as a page shows it, to hundredths. */
export const hundredths = (area: number): string => String(Number(area.toFixed(2)));

export interface RowShown {
  readonly widthIn: number;
  /** Limits of the columns; null where the table has no row: ask. */
  readonly limits: readonly [number, number] | null;
  /** Column that speaks in this row, if it is the row of the channel. */
  readonly speaks: 1 | 2 | null;
}

/** The table of the bottom with the row in use; the channel's width without a row has one that asks. None for singles. */
export function rowsShown(
  { column }: Pick<FillResult, 'column'>,
  { bottom, widthIn }: FillGiven['tray'],
  { multiconductor }: FillTables,
): readonly RowShown[] {
  if (column === null) return [];
  const rows = multiconductor[bottom].rows.map(
    (row): RowShown => ({
      widthIn: row.widthIn,
      limits: [row.oneIn2, row.severalIn2],
      speaks: row.widthIn === widthIn ? column : null,
    }),
  );
  const asks: RowShown[] = rows.some(({ speaks }) => speaks !== null)
    ? []
    : [{ widthIn, limits: null, speaks: column }];
  return [...rows, ...asks].sort((a, b) => a.widthIn - b.widthIn);
}

/** Whether the pile of cables stands above the legs of the channel in the figure. */
export function standsAbove(given: SectionGiven): boolean {
  const { tray } = given;
  return sectionScale(given, 'desk').pile > inches(tray.depth) - inches(tray.thickness);
}

/** Whether a cable of the figure is too small, in either form, to carry its letter (see drawing/section.ts). */
export const unlettered = (given: SectionGiven): boolean =>
  (['phone', 'desk'] as const).some((form) => {
    const { px, laid } = sectionScale(given, form);
    return laid.some(({ r }) => r * px < leastLettered);
  });
/** Radius in px under which the section writes no letter into a cable. */
const leastLettered = 9;
