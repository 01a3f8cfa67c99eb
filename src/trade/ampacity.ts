/** What is left of a cable's ampacity in tray: by the current-carrying conductors inside it, and under a solid cover. */
import type { Answered, Step } from './answer.ts';
import { type ByEdition, type Edition, NEWEST, type PerEdition } from './editions.ts';
import { figure } from './figure.ts';
import { atMost } from './hair.ts';

export interface AmpacityTable {
  /** Table of the adjustment, as each edition cites it. */
  readonly table: PerEdition<string>;
  /** Conductors, rising, up to and with `to` (null: no end), and the percentage of the ampacity. */
  readonly rows: readonly { readonly to: number | null; readonly percent: number }[];
  readonly sources: ByEdition;
  /** Above this length of solid cover the ampacity is taken at `percent`. */
  readonly cover: { readonly section: string; readonly aboveFt: number; readonly percent: number };
  /** Of the cover, and that only the conductors inside one cable count. */
  readonly coverSources: ByEdition;
}

export interface AmpacityGiven {
  /** Conductors of this one cable that carry current; from 1. */
  readonly currentCarrying: number;
  /** Unbroken solid cover, from 0. */
  readonly coverFt?: number | undefined;
  readonly edition?: Edition | undefined;
}

export interface AmpacityResult {
  readonly percent: number;
  /** Tables and sections, as they are cited. */
  readonly tables: readonly string[];
}

export function ampacity(given: AmpacityGiven, table: AmpacityTable): Answered<AmpacityResult> {
  const { currentCarrying, coverFt = 0, edition = NEWEST } = given;
  const { cover } = table;
  const row = table.rows.find((r) => r.to === null || currentCarrying <= r.to);
  const adjusted = row?.percent ?? 0;
  const covered = !atMost(coverFt, cover.aboveFt);
  const percent = covered ? (adjusted * cover.percent) / 100 : adjusted;
  const values = { cover: figure(coverFt), limit: figure(cover.aboveFt), percent: cover.percent };
  const steps: Step[] = [
    { say: 'ampacity.inCable', values: { section: cover.section } },
    {
      say: 'ampacity.row',
      values: { count: currentCarrying, table: table.table[edition] },
      value: adjusted,
      unit: '%',
    },
    ...(coverFt === 0 ? [] : [{ say: covered ? 'ampacity.covered' : 'ampacity.shortCover', values }]),
    { say: 'ampacity.percent', value: percent, unit: '%' },
    { say: 'ampacity.engineer' },
  ];
  return {
    result: { percent, tables: [table.table[edition], cover.section] },
    steps,
    sources: [table.sources[edition], table.coverSources[edition]],
  };
}
