/** What the calculators need of the content: the tables, and the sentences of their working. */
import { readLibrary } from '../schema/library.ts';
import { fillTablesOf } from '../schema/rules.ts';
import { speaker } from '../schema/words.ts';
import type { FillTables } from '../trade/fill.ts';
import type { Speak } from '../trade/say.ts';
import { contentFiles } from './contentFiles.ts';

export interface CalcContent {
  readonly speak: Speak;
  readonly fillTables: FillTables;
}

/** Only these files are read, so that a call answers at once; what other files say of them is for content check. */
const NEEDED = /^content\/(?:rules\/|sources\/|words\/en\/steps\.json$)/;

export function calcContent(): CalcContent {
  const { library } = readLibrary(contentFiles().filter((f) => NEEDED.test(f.path)));
  return {
    speak: speaker(library.words.get('en') ?? new Map()),
    fillTables: fillTablesOf(library.rules.values(), library.sources),
  };
}
