/** Tables and limits: content/rules/ID.yaml, each naming its source entry; and the tables that fill is judged by. */
import { z } from 'zod';
import {
  type Bottom,
  type ByEdition,
  EDITIONS,
  type Edition,
  type FillTable,
  type FillTables,
} from '../trade/fillTables.ts';
import type { Fault } from '../trade/given.ts';
import { above0 } from './fields.ts';
import { plainId } from './ids.ts';
import { type Cited, cite, citedShape, type SourceEntry } from './source.ts';

const bottom = z.enum(['ventilated', 'solid']);
/** Number of the table as it is cited in results. */
const table = z.string().min(1);

function rising<T>(of: (row: T) => number) {
  return (rows: readonly T[]) => rows.every((row, i) => i === 0 || of(row) > of(rows[i - 1] as T));
}

const channelFill = z.strictObject({
  id: plainId,
  kind: z.literal('channel fill'),
  bottom,
  table,
  source: citedShape,
  /** Inside width; the greatest area of one cable alone; the greatest sum of areas of several. */
  rows: z
    .array(z.strictObject({ widthIn: above0, oneIn2: above0, severalIn2: above0 }))
    .min(1)
    .refine(
      rising((r: { widthIn: number }) => r.widthIn),
      { error: 'widths must rise from row to row', params: { todo: 'put the rows in order' } },
    )
    .refine((rows) => rows.every((r) => r.severalIn2 <= r.oneIn2), {
      error: 'several cables are allowed more than one alone',
      params: { todo: 'look whether the two columns are exchanged' },
    }),
});

const channelSingles = z.strictObject({
  id: plainId,
  kind: z.literal('channel singles'),
  /** The one kind of bottom that may hold single conductors. */
  bottom,
  table,
  /** Inside widths that the rule names. */
  widthsIn: z
    .array(above0)
    .min(1)
    .refine(
      rising((w: number) => w),
      { error: 'widths must rise', params: { todo: 'put them in order' } },
    ),
  source: citedShape,
  /** Where the condition on who services the place stands. */
  qualified: citedShape,
  /** Where the adding of shares of both makes stands. */
  together: citedShape,
});

export const ruleShape = z.discriminatedUnion('kind', [channelFill, channelSingles]);
export type Rule = z.infer<typeof ruleShape>;
type RuleOf<K extends Rule['kind']> = Extract<Rule, { kind: K }>;

/** A fault of one rule, by its id. */
export interface RuleFault extends Fault {
  readonly rule: string;
}

/** Sources that a rule names, by field. */
export function citedBy(rule: Rule): readonly (readonly [field: string, cited: Cited])[] {
  const own = [['source', rule.source]] as const;
  return rule.kind === 'channel singles'
    ? [...own, ['qualified', rule.qualified], ['together', rule.together]]
    : own;
}

const MISSING = {
  entry: { message: 'content/sources has no such entry', todo: 'name an entry, or write its file' },
  where: {
    message: 'the entry lists no such place under took',
    todo: 'add the place to the entry, with what it says',
  },
  edition: {
    message: 'the entry lacks an edition that answers may name',
    todo: `list the editions ${EDITIONS.join(', ')}`,
  },
} as const;

/** Faults of the sources that rules name: every one must be there, in every edition that an answer may cite. */
export function citationFaults(
  rules: Iterable<Rule>,
  sources: ReadonlyMap<string, SourceEntry>,
): readonly RuleFault[] {
  return [...rules].flatMap((rule) =>
    citedBy(rule).flatMap(([field, cited]) => {
      const missing = EDITIONS.map((e) => cite(cited, String(e), sources)).find((s) => typeof s === 'string');
      return missing === undefined ? [] : [{ rule: rule.id, field, value: cited, ...MISSING[missing] }];
    }),
  );
}

/**
 * The tables for `fill`, with the source of each edition.
 * @throws {Error} when a table is missing or given twice, or a source is not there: content check finds it first
 */
export function fillTablesOf(rules: Iterable<Rule>, sources: ReadonlyMap<string, SourceEntry>): FillTables {
  const all = [...rules];
  const faults = citationFaults(all, sources);
  if (faults.length > 0)
    throw new Error(faults.map((f) => `rule ${f.rule}: ${f.field}: ${f.message}`).join('\n'));
  const singles = only(
    all.filter((r) => r.kind === 'channel singles'),
    'channel singles',
  );
  return {
    multiconductor: {
      ventilated: tableOf('ventilated', all, sources),
      solid: tableOf('solid', all, sources),
    },
    singles: {
      table: singles.table,
      bottom: singles.bottom,
      widthsIn: singles.widthsIn,
      sources: byEdition(singles.source, sources),
      qualified: byEdition(singles.qualified, sources),
    },
    together: byEdition(singles.together, sources),
  };
}

function tableOf(of: Bottom, rules: readonly Rule[], sources: ReadonlyMap<string, SourceEntry>): FillTable {
  const found = rules.filter(
    (r): r is RuleOf<'channel fill'> => r.kind === 'channel fill' && r.bottom === of,
  );
  const rule = only(found, `channel fill, ${of}`);
  return { table: rule.table, rows: rule.rows, sources: byEdition(rule.source, sources) };
}

function only<T extends Rule>(found: readonly T[], what: string): T {
  const [rule, second] = found;
  if (rule === undefined || second !== undefined)
    throw new Error(`content/rules holds ${found.length} rules for ${what}; one is wanted`);
  return rule;
}

function byEdition(cited: Cited, sources: ReadonlyMap<string, SourceEntry>): ByEdition {
  const rows = EDITIONS.map((edition) => [edition, cite(cited, String(edition), sources)] as const);
  return Object.fromEntries(rows) as Record<Edition, Exclude<ReturnType<typeof cite>, string>>;
}
