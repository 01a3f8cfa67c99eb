/** Tables and limits of the works' content, with what the site has adopted, read once at build time. */
import { adoptedOf } from '../schema/site.ts';
import { type TradeTables, tradeTablesOf } from '../schema/tradeTables.ts';
import { type Edition, NEWEST } from '../trade/editions.ts';
import { library } from './library.ts';

export const tables: TradeTables = tradeTablesOf(
  library.rules.values(),
  library.sources,
  adoptedOf(library.site.values()),
);

/** Edition of the code that the works has adopted, else the newest known here. */
export const worksEdition: Edition = tables.usual.edition?.value ?? NEWEST;
