/** What the calculators need of the content: the tables, and the sentences of their working. */
import { readLibrary } from '../schema/library.ts';
import { fillTablesOf } from '../schema/rules.ts';
import { FIRST_LANGUAGE, speaker } from '../schema/words.ts';
import type { FillTables } from '../trade/fill.ts';
import type { Speak } from '../trade/say.ts';
import { contentFiles } from './contentFiles.ts';

export interface CalcContent {
  readonly speak: Speak;
  readonly fillTables: FillTables;
}

/** Only these files are read, so that a call answers at once; what other files say of them is for content check. */
const NEEDED = new RegExp(`^content/(?:rules/|sources/|words/${FIRST_LANGUAGE}/[a-z]+\\.json$)`);

export function calcContent(): CalcContent {
  const { library } = readLibrary(contentFiles().filter((f) => NEEDED.test(f.path)));
  return {
    speak: speaker(library.words.get(FIRST_LANGUAGE) ?? new Map()),
    fillTables: fillTablesOf(library.rules.values(), library.sources),
  };
}
