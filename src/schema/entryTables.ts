/** What runs of the content are judged by, where all of it could be read. */
import type { Catalogue } from '../run/catalogue.ts';
import type { RunTables } from '../run/tables.ts';
import { type RunUsual, TRADE_USUAL } from '../run/usual.ts';
import { catalogueOf } from './catalogue.ts';
import { ruleFaults } from './ruleChecks.ts';
import type { Entries, Lost } from './shelves.ts';
import { adoptedOf, withAdopted } from './site.ts';
import { runTablesOf } from './tradeTables.ts';

export interface Judged {
  readonly catalogue: Catalogue;
  readonly tables: RunTables;
}

/** Catalogue and tables with what the site has adopted; null while a file of either is at fault, or there are none. */
export function judgedBy(entries: Entries, lost: Lost): Judged | null {
  const { catalogues, rules, sources, site } = entries;
  const without = [catalogues, rules, sources].some((shelf) => shelf.length === 0);
  const broken = [lost.catalogues, lost.rules, lost.sources, lost.site].some((shelf) => shelf.size > 0);
  if (without || broken || ruleFaults(entries, lost).length > 0) return null;
  const adopted = adoptedOf(site.map((s) => s.data));
  return {
    catalogue: withAdopted(catalogueOf(catalogues.map((c) => c.data)).catalogue, adopted),
    tables: runTablesOf(
      rules.map((r) => r.data),
      new Map(sources.map((s) => [s.id, s.data])),
      adopted,
    ),
  };
}

/** What a run takes where it gives none, as far as papers of the site could be read: no rule has a part in it. */
export function usualBy({ site }: Pick<Entries, 'site'>): RunUsual {
  const { kerf, movement, 'socket-insertion': socket } = adoptedOf(site.map((s) => s.data));
  return {
    kerf: kerf?.value ?? TRADE_USUAL.kerf,
    socket: socket?.value ?? TRADE_USUAL.socket,
    movement: movement?.value ?? TRADE_USUAL.movement,
  };
}
