/** The size of a bonding jumper on the load side of the devices, by the largest of them; and sizes of wire by their texts. */
import type { Answered, Say, Step } from './answer.ts';
import { type ByEdition, type Edition, NEWEST } from './editions.ts';
import { figure } from './figure.ts';
import { atMost } from './hair.ts';

/** Every size that a jumper can have, smallest first. Order of wire sizes: NFPA 70, Chapter 9, Table 8 (from memory). */
export const SIZES = [
  '14 AWG',
  '12 AWG',
  '10 AWG',
  '8 AWG',
  '6 AWG',
  '4 AWG',
  '3 AWG',
  '2 AWG',
  '1 AWG',
  '1/0 AWG',
  '2/0 AWG',
  '3/0 AWG',
  '4/0 AWG',
  '250 kcmil',
] as const;
export type Size = (typeof SIZES)[number];

/** Whether a text is a size of wire as it is written here: `10 AWG`, `1/0 AWG`, `250 kcmil`. */
export function isSize(text: string): text is Size {
  return (SIZES as readonly string[]).includes(text);
}

/** Below 0: `a` is the smaller wire. */
export function compareSizes(a: Size, b: Size): number {
  return SIZES.indexOf(a) - SIZES.indexOf(b);
}

export type JumperMetal = 'copper' | 'aluminium';

export interface JumperTable {
  /** Number of the table, as it is cited. */
  readonly table: string;
  /** Rating or setting of the device, rising, and the smallest wire of either metal. */
  readonly rows: readonly ({ readonly deviceA: number } & Readonly<Record<JumperMetal, Size>>)[];
  readonly sources: ByEdition;
  /** That one jumper is sized for the largest device on its load side. */
  readonly largest: ByEdition;
}

export interface JumperGiven {
  /** Ratings of the devices that protect the circuits; at least one, each above 0. */
  readonly devicesA: readonly number[];
  readonly metal: JumperMetal;
  readonly edition?: Edition | undefined;
}

export interface JumperResult {
  /** Null above the table. */
  readonly size: Size | null;
  readonly rowA: number | null;
  readonly table: string;
  readonly refer: boolean;
  /** Why it is referred. */
  readonly why?: readonly Say[];
}

/** @throws {RangeError} without a device: what it is called with is checked before */
export function jumper(given: JumperGiven, table: JumperTable): Answered<JumperResult> {
  const { devicesA, metal, edition = NEWEST } = given;
  if (devicesA.length === 0) throw new RangeError('a jumper is sized by at least one device');
  const largest = Math.max(...devicesA);
  const row = table.rows.find((r) => atMost(largest, r.deviceA));
  const size = row?.[metal] ?? null;
  const device = figure(largest);
  const last = figure(table.rows.at(-1)?.deviceA ?? 0);
  const beyond: Say = { say: 'jumper.beyond', values: { table: table.table, last, device } };
  const steps: Step[] = [
    { say: devicesA.length === 1 ? 'jumper.one' : 'jumper.largest', value: largest, unit: 'A' },
    ...(row === undefined
      ? [beyond, { say: 'jumper.ask' }]
      : [
          { say: 'jumper.row', values: { table: table.table, row: figure(row.deviceA), device } },
          { say: `jumper.${metal}`, value: row[metal] },
          { say: 'jumper.loadSide' },
        ]),
  ];
  return {
    result: {
      size,
      rowA: row?.deviceA ?? null,
      table: table.table,
      refer: row === undefined,
      ...(row === undefined ? { why: [beyond, { say: 'jumper.ask' }] } : {}),
    },
    steps,
    sources: [table.sources[edition], table.largest[edition]],
  };
}
