/** Whether metal tray may serve as the ground path, by the area of metal marked on it and the largest device. */
import type { Answered, Say, Step } from './answer.ts';
import { type ByEdition, type Edition, NEWEST, type PerEdition } from './editions.ts';
import { figure, figures } from './figure.ts';
import { atMost } from './hair.ts';

export type GroundMetal = 'steel' | 'aluminium' | 'stainless';
/** Metals with a column of their own. */
export type ListedMetal = Exclude<GroundMetal, 'stainless'>;

export interface GroundpathTable {
  /** Number of the table, as each edition cites it. */
  readonly table: PerEdition<string>;
  /** Largest device, rising, and the area of metal; null: this metal is not permitted so high. */
  readonly rows: readonly ({ readonly deviceA: number } & Readonly<Record<ListedMetal, number | null>>)[];
  readonly sources: ByEdition;
  /** The condition on who services the place. */
  readonly qualified: ByEdition;
}

export interface GroundpathGiven {
  readonly metal: GroundMetal;
  /** Largest rating or setting of any circuit's device in the tray, above 0. */
  readonly deviceA: number;
  /** Area of metal as it is marked on the tray, from 0. */
  readonly markedAreaIn2: number;
  /** Qualified persons alone maintain and supervise the place. */
  readonly qualifiedService: boolean;
  /** Sections and fittings are identified for the ground path. */
  readonly identified: boolean;
  readonly edition?: Edition | undefined;
}

export interface GroundpathResult {
  readonly requiredIn2: number | null;
  readonly permitted: boolean | null;
  readonly holds: boolean | null;
  readonly table: string;
  readonly refer: boolean;
  /** Why it is referred. */
  readonly why?: readonly Say[];
}

export function groundpath(given: GroundpathGiven, table: GroundpathTable): Answered<GroundpathResult> {
  const { metal, deviceA, markedAreaIn2, qualifiedService, identified, edition = NEWEST } = given;
  const cited = table.table[edition];
  const answered = (
    result: Omit<GroundpathResult, 'table'>,
    steps: readonly Step[],
  ): Answered<GroundpathResult> => ({
    result: { ...result, table: cited },
    steps,
    sources: [table.qualified[edition], table.sources[edition]],
  });
  const no = { requiredIn2: null, permitted: false, holds: false, refer: false };

  const barred: Step[] = [
    ...(qualifiedService ? [] : [{ say: 'groundpath.notQualified' }]),
    ...(identified ? [] : [{ say: 'groundpath.notIdentified' }]),
  ];
  if (barred.length > 0) return answered(no, [...barred, { say: 'groundpath.wire' }]);

  if (metal === 'stainless') {
    const why: Say[] = [{ say: 'groundpath.stainless', values: { table: cited } }, { say: 'groundpath.ask' }];
    return answered({ requiredIn2: null, permitted: null, holds: null, refer: true, why }, why);
  }

  const device = figure(deviceA);
  const row = table.rows.find((r) => atMost(deviceA, r.deviceA));
  const requiredIn2 = row?.[metal] ?? null;
  if (row === undefined || requiredIn2 === null) {
    const last = figure(table.rows.findLast((r) => r[metal] !== null)?.deviceA ?? 0);
    return answered(no, [
      { say: `groundpath.${metal}Above`, values: { table: cited, last, device } },
      { say: 'groundpath.wire' },
    ]);
  }
  const holds = atMost(requiredIn2, markedAreaIn2);
  const [marked, required] = figures(markedAreaIn2, requiredIn2);
  return answered({ requiredIn2, permitted: true, holds, refer: false }, [
    {
      say: 'groundpath.row',
      values: { table: cited, row: figure(row.deviceA), device },
      value: requiredIn2,
      unit: 'in2',
    },
    { say: holds ? 'groundpath.holds' : 'groundpath.short', values: { marked, required } },
    { say: 'groundpath.bonded' },
  ]);
}
