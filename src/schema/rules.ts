/**
 * Tables and limits: content/rules/ID.yaml, each naming its source entry. A kind of rule is a file of rules/ and a line
 * here; what the core takes of all of them is made in tradeTables.ts.
 */
import { z } from 'zod';
import type { Source } from '../trade/answer.ts';
import { type ByEdition, EDITIONS, type Edition } from '../trade/editions.ts';
import type { Bottom, FillTables } from '../trade/fillTables.ts';
import type { Fault } from '../trade/given.ts';
import { ampacityTable } from './rules/ampacity.ts';
import { editionChanges } from './rules/changes.ts';
import { expansionTable } from './rules/expansion.ts';
import { channelFill, channelSingles } from './rules/fill.ts';
import { groundPath } from './rules/groundpath.ts';
import { installLimits } from './rules/installLimits.ts';
import { jumperSize } from './rules/jumper.ts';
import type { Cite } from './rules/kind.ts';
import { bendRadius } from './rules/radius.ts';
import { openGap } from './rules/transition.ts';
import { dangerNotice, sharedTray } from './rules/voltage.ts';
import { type Cited, type CitedOnce, cite, type Lacking, placesCited, type SourceEntry } from './source.ts';

export const ruleShape = z.discriminatedUnion('kind', [
  channelFill.shape,
  channelSingles.shape,
  jumperSize.shape,
  groundPath.shape,
  expansionTable.shape,
  bendRadius.shape,
  openGap.shape,
  ampacityTable.shape,
  dangerNotice.shape,
  sharedTray.shape,
  installLimits.shape,
  editionChanges.shape,
]);
export type Rule = z.infer<typeof ruleShape>;
export type RuleOf<K extends Rule['kind']> = Extract<Rule, { kind: K }>;

/** A fault of one rule, by its id. */
export interface RuleFault extends Fault {
  readonly rule: string;
}

/** Sources that a rule names, by field, wherever in it they stand. */
export function citedBy(value: unknown, field = ''): readonly (readonly [string, Cited | CitedOnce])[] {
  if (typeof value !== 'object' || value === null) return [];
  if ('id' in value && 'where' in value) return [[field, value as Cited | CitedOnce]];
  return Object.entries(value).flatMap(([key, inner]) =>
    citedBy(inner, Array.isArray(value) ? `${field}[${key}]` : field === '' ? key : `${field}.${key}`),
  );
}

const LACKING: Readonly<Record<Lacking, Pick<Fault, 'message' | 'todo'>>> = {
  entry: { message: 'content/sources has no such entry', todo: 'name an entry, or write its file' },
  where: {
    message: 'the entry lists no such place under took',
    todo: 'add the place to the entry, with what it says',
  },
  edition: {
    message: 'the entry lacks an edition that answers may name',
    todo: `list the editions ${EDITIONS.join(', ')}, or name under edition one that is listed`,
  },
};

/** Faults of the sources that rules name: every one must be there, in every edition that an answer may cite. */
export function citationFaults(
  rules: Iterable<Rule>,
  sources: ReadonlyMap<string, SourceEntry>,
): readonly RuleFault[] {
  return [...rules].flatMap((rule) =>
    citedBy(rule).flatMap(([field, cited]) => {
      const lacking = placesCited(cited)
        .map(({ where, edition }) => cite({ id: cited.id, where }, edition, sources))
        .find((s) => typeof s === 'string');
      return lacking === undefined ? [] : [{ rule: rule.id, field, value: cited, ...LACKING[lacking] }];
    }),
  );
}

/** Rules and their sources, to be read kind by kind. */
export interface RuleBook extends Cite {
  /** The one rule of a kind, or the one of several that a test picks. @throws {Error} when there is not exactly one */
  readonly the: <K extends Rule['kind']>(kind: K, picks?: (rule: RuleOf<K>) => boolean) => RuleOf<K>;
}

/** @throws {Error} when a source is not there: content check finds it first */
export function ruleBook(rules: Iterable<Rule>, sources: ReadonlyMap<string, SourceEntry>): RuleBook {
  const all = [...rules];
  const faults = citationFaults(all, sources);
  if (faults.length > 0)
    throw new Error(faults.map((f) => `rule ${f.rule}: ${f.field}: ${f.message}`).join('\n'));
  const source = (id: string, { where, edition }: { where: string; edition: string }): Source =>
    cite({ id, where }, edition, sources) as Source;
  return {
    each: (cited) => {
      const places = placesCited(cited).map((p) => [Number(p.edition), source(cited.id, p)] as const);
      return Object.fromEntries(places) as Record<Edition, Source> satisfies ByEdition;
    },
    one: (cited) => source(cited.id, cited),
    the: <K extends Rule['kind']>(kind: K, picks: (rule: RuleOf<K>) => boolean = () => true) => {
      const found = all.filter((r): r is RuleOf<K> => r.kind === kind && picks(r as RuleOf<K>));
      const [rule] = found;
      if (rule === undefined || found.length > 1)
        throw new Error(`content/rules holds ${found.length} rules of the kind ${kind}; one is wanted`);
      return rule;
    },
  };
}

/**
 * The tables for `fill`, with the source of each edition.
 * @throws {Error} when a table is missing or given twice, or a source is not there: content check finds it first
 */
export function fillTablesOf(rules: Iterable<Rule>, sources: ReadonlyMap<string, SourceEntry>): FillTables {
  return fillTablesIn(ruleBook(rules, sources));
}

/** As `fillTablesOf`, of rules that are read already. */
export function fillTablesIn(book: RuleBook): FillTables {
  const table = (bottom: Bottom) =>
    channelFill.read(
      book.the('channel fill', (r) => r.bottom === bottom),
      book,
    );
  return {
    multiconductor: { ventilated: table('ventilated'), solid: table('solid') },
    ...channelSingles.read(book.the('channel singles'), book),
  };
}
