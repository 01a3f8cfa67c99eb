/** What the calculators need of the content: the tables, and the sentences of their working. */
import type { Catalogue } from '../run/catalogue.ts';
import { type ContentFile, readLibrary } from '../schema/library.ts';
import { adoptedOf } from '../schema/site.ts';
import { type TradeTables, tradeTablesOf } from '../schema/tradeTables.ts';
import type { Speak } from '../trade/say.ts';
import { contentFiles } from './contentFiles.ts';
import { speechOf } from './speech.ts';

export interface CalcContent {
  readonly speak: Speak;
  readonly tables: TradeTables;
  /** Read when it is first asked for: few calculators need it. */
  readonly catalogue: () => Catalogue;
}

/** Only these files are read, so that a call answers at once; what other files say of them is for content check. */
const NEEDED = /^content\/(?:rules|sources|site)\//;

export function calcContent(files: readonly ContentFile[] = contentFiles()): CalcContent {
  const { library } = readLibrary(files.filter((f) => NEEDED.test(f.path)));
  let catalogue: Catalogue | undefined;
  return {
    speak: speechOf(files),
    tables: tradeTablesOf(library.rules.values(), library.sources, adoptedOf(library.site.values())),
    catalogue: () => {
      catalogue ??= readLibrary(files.filter((f) => /^content\/(?:catalogue|site)\//.test(f.path))).library
        .catalogue;
      return catalogue;
    },
  };
}
