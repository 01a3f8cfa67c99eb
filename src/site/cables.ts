/** Rows of cables as a person writes them on the fill sheet, and the fill that follows. Pure; the island shows it. */
import type { Answered } from '../trade/answer.ts';
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

/** The verdict in one line: which words, and their values. */
export function fillVerdict(
  result: FillResult,
  spare: number,
): { readonly key: SiteKey; readonly values: Record<string, string> } {
  const share = result.fraction === null ? '' : String(Math.round(result.fraction * 1000) / 10);
  const over = result.spareIn2 === null ? '' : hundredths(Math.abs(result.spareIn2));
  if (result.refer) return { key: 'fillSheet.refer', values: {} };
  if (result.within === true) {
    return { key: spare > 0 ? 'fillSheet.withinSpare' : 'fillSheet.within', values: { share } };
  }
  return result.spareIn2 === null
    ? { key: 'fillSheet.tooWide', values: {} }
    : { key: 'fillSheet.over', values: { over } };
}

/** An area as a page shows it, to hundredths. */
export const hundredths = (area: number): string => String(Number(area.toFixed(2)));
