/** The search for lay-outs that take few stock lengths, for the lines of one channel. The same run, the same search. */
import { Search, type SearchLine } from './best.ts';
import type { LineLayout } from './line.ts';
import type { Stock } from './pack.ts';
import { WAYS } from './ways.ts';

export interface Searched {
  /** One a line. */
  readonly layouts: readonly LineLayout[];
  readonly used: number;
  /** Stock lengths that every lay-out with so few supports takes. */
  readonly bound: number;
}

/** Tries one way after another, until what is found takes no more than the bound, or the work allowed is done. */
export function stockSearch(lines: readonly SearchLine[], stock: Stock): Searched {
  const search = new Search(lines, stock);
  for (const way of WAYS) if (!search.done) way(search);
  return { layouts: search.chosen, used: search.fit.used, bound: search.bound };
}
