/** The tables that fill is judged by. They are content (content/rules), read by src/schema/rules.ts. */
import type { ByEdition } from './editions.ts';

export { type ByEdition, EDITIONS, type Edition, NEWEST } from './editions.ts';

export type Bottom = 'ventilated' | 'solid';

export interface FillRow {
  /** Inside width of the channel. */
  readonly widthIn: number;
  /** Column 1: the greatest area of one cable alone. */
  readonly oneIn2: number;
  /** Column 2: the greatest sum of areas of more than one cable. */
  readonly severalIn2: number;
}

export interface FillTable {
  /** Number of the table, as it is cited. */
  readonly table: string;
  readonly rows: readonly FillRow[];
  readonly sources: ByEdition;
}

/** Single conductors: the sum of diameters may be the inside width, at the widths listed, in one kind of bottom. */
export interface SinglesRule {
  readonly table: string;
  readonly bottom: Bottom;
  readonly widthsIn: readonly number[];
  readonly sources: ByEdition;
  /** The condition on who services the place. */
  readonly qualified: ByEdition;
}

export interface FillTables {
  readonly multiconductor: Readonly<Record<Bottom, FillTable>>;
  readonly singles: SinglesRule;
  /** Both makes together: the shares used add up to no more than the whole. */
  readonly together: ByEdition;
}
