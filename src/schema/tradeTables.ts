/** Every table and limit that the calculators and a run take, of the rules and of what the site has adopted. */
import type { InstallLimits, RunTables, Usual } from '../run/tables.ts';
import type { AmpacityTable } from '../trade/ampacity.ts';
import { type Change, EDITIONS, type Edition, NEWEST, type PerEdition } from '../trade/editions.ts';
import type { ExpansionTable } from '../trade/expansion.ts';
import type { GroundpathTable } from '../trade/groundpath.ts';
import { INSERTION, KERF, SOCKET } from '../trade/habits.ts';
import type { Ticks } from '../trade/length.ts';
import type { Limit } from '../trade/limit.ts';
import type { MarkingRule } from '../trade/marking.ts';
import type { SeparationRule } from '../trade/separation.ts';
import type { OpenGapRule } from '../trade/transition.ts';
import { ampacityTable } from './rules/ampacity.ts';
import { editionChanges } from './rules/changes.ts';
import { expansionTable } from './rules/expansion.ts';
import { groundPath } from './rules/groundpath.ts';
import { installLimits } from './rules/installLimits.ts';
import { jumperSize } from './rules/jumper.ts';
import { bendRadius } from './rules/radius.ts';
import { openGap } from './rules/transition.ts';
import { dangerNotice, sharedTray } from './rules/voltage.ts';
import { fillTablesIn, type Rule, type RuleBook, ruleBook } from './rules.ts';
import type { Adopted } from './site.ts';
import type { SourceEntry } from './source.ts';

export interface TradeTables extends RunTables {
  readonly groundpath: GroundpathTable;
  readonly expansion: ExpansionTable;
  readonly transition: OpenGapRule;
  readonly ampacity: AmpacityTable;
  readonly marking: MarkingRule;
  readonly separation: SeparationRule;
  readonly changes: readonly Change[];
}

/**
 * The tables and limits that a run is judged by.
 * @param adopted  what the site has adopted, which wins over training values
 * @throws {Error} when a rule is missing or given twice, or a source is not there: content check finds it first
 */
export function runTablesOf(
  rules: Iterable<Rule>,
  sources: ReadonlyMap<string, SourceEntry>,
  adopted: Adopted,
): RunTables {
  return runTablesIn(ruleBook(rules, sources), adopted);
}

/** As `runTablesOf`, with those that the calculators take besides. */
export function tradeTablesOf(
  rules: Iterable<Rule>,
  sources: ReadonlyMap<string, SourceEntry>,
  adopted: Adopted,
): TradeTables {
  const book = ruleBook(rules, sources);
  const run = runTablesIn(book, adopted);
  return {
    ...run,
    groundpath: groundPath.read(book.the('ground path'), book),
    expansion: {
      ...expansionTable.read(book.the('expansion'), book),
      movement: run.limits.movement,
    },
    transition: openGap.read(book.the('open gap'), book),
    ampacity: ampacityTable.read(book.the('ampacity'), book),
    marking: dangerNotice.read(book.the('danger notice'), book),
    separation: sharedTray.read(book.the('shared tray'), book),
    changes: editionChanges.read(book.the('edition changes'), book),
  };
}

function runTablesIn(book: RuleBook, adopted: Adopted): RunTables {
  return {
    fill: fillTablesIn(book),
    jumper: jumperSize.read(book.the('jumper size'), book),
    radius: bendRadius.read(book.the('bend radius'), book),
    limits: limitsIn(book, adopted),
    edition: adopted.edition?.value ?? NEWEST,
    usual: usualOf(adopted),
  };
}

function limitsIn(book: RuleBook, adopted: Adopted): InstallLimits {
  const training = installLimits.read(book.the('install limits'), book);
  return {
    supportWithin: adopted['support-within'] ?? training.supportWithin,
    spliceShare: adopted['splice-share'] ?? training.spliceShare,
    insertionOff: adopted['insertion-off'] ?? training.insertionOff,
    buttGap: adopted['butt-gap'] ?? training.buttGap,
    expansionOff: adopted['expansion-off'] ?? training.expansionOff,
    movement: adopted.movement ?? training.movement,
    openGap: openGaps(openGap.read(book.the('open gap'), book), adopted['open-gap']),
  };
}

/** A site's own is held in every edition: it is not above the code's (siteChecks.ts). */
function openGaps(
  { limit, judged, sources }: OpenGapRule,
  adopted: Limit<Ticks> | undefined,
): PerEdition<Limit<Ticks> | null> {
  const rows = EDITIONS.map((edition) => {
    const own: Limit<Ticks> | null = judged.includes(edition)
      ? { value: limit, source: sources[edition], rests: 'code' }
      : null;
    return [edition, adopted ?? own] as const;
  });
  return Object.fromEntries(rows) as Record<Edition, Limit<Ticks> | null>;
}

function usualOf(adopted: Adopted): Usual {
  const training = ({ length, source }: typeof INSERTION): Limit<Ticks> => ({
    value: length,
    source,
    rests: 'training',
  });
  return {
    insertion: adopted.insertion ?? training(INSERTION),
    socket: adopted['socket-insertion'] ?? training(SOCKET),
    kerf: adopted.kerf ?? training(KERF),
    edition: adopted.edition ?? null,
  };
}
