/** What the calculators need of the content: the tables, and the sentences of their working. */
import type { Catalogue } from '../run/catalogue.ts';
import { type ContentFile, readLibrary } from '../schema/library.ts';
import { adoptedOf } from '../schema/site.ts';
import { type TradeTables, tradeTablesOf } from '../schema/tradeTables.ts';
import { FIRST_LANGUAGE, speaker } from '../schema/words.ts';
import type { Speak } from '../trade/say.ts';
import { contentFiles } from './contentFiles.ts';

export interface CalcContent {
  readonly speak: Speak;
  readonly tables: TradeTables;
  /** Read when it is first asked for: few calculators need it. */
  readonly catalogue: () => Catalogue;
}

/** Only these files are read, so that a call answers at once; what other files say of them is for content check. */
const NEEDED = new RegExp(`^content/(?:rules/|sources/|site/|words/${FIRST_LANGUAGE}/[a-z]+\\.json$)`);

export function calcContent(files: readonly ContentFile[] = contentFiles()): CalcContent {
  const { library } = readLibrary(files.filter((f) => NEEDED.test(f.path)));
  let catalogue: Catalogue | undefined;
  return {
    speak: speaker(library.words.get(FIRST_LANGUAGE) ?? new Map()),
    tables: tradeTablesOf(library.rules.values(), library.sources, adoptedOf(library.site.values())),
    catalogue: () => {
      catalogue ??= readLibrary(files.filter((f) => /^content\/(?:catalogue|site)\//.test(f.path))).library
        .catalogue;
      return catalogue;
    },
  };
}
