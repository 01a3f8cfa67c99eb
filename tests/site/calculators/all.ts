/** Every calculator with what its page hands it, and the words of the pages. */

import { contentFiles } from '../../../src/cli/contentFiles.ts';
import { paperPalette } from '../../../src/drawing/palette.ts';
import type { Form } from '../../../src/drawing/types.ts';
import { readLibrary } from '../../../src/schema/library.ts';
import { adoptedOf } from '../../../src/schema/site.ts';
import { tradeTablesOf } from '../../../src/schema/tradeTables.ts';
import { ampacity } from '../../../src/site/calculators/ampacity.ts';
import { arc } from '../../../src/site/calculators/arc.ts';
import { beam } from '../../../src/site/calculators/beam.ts';
import { equivalent } from '../../../src/site/calculators/equivalent.ts';
import { expansion } from '../../../src/site/calculators/expansion.ts';
import { groundpath } from '../../../src/site/calculators/groundpath.ts';
import { jumper } from '../../../src/site/calculators/jumper.ts';
import { length } from '../../../src/site/calculators/length.ts';
import { mark } from '../../../src/site/calculators/mark.ts';
import { marking } from '../../../src/site/calculators/marking.ts';
import { lettered, type Measure } from '../../../src/site/calculators/measure.ts';
import { mitre } from '../../../src/site/calculators/mitre.ts';
import { notch } from '../../../src/site/calculators/notch.ts';
import { offset } from '../../../src/site/calculators/offset.ts';
import { sumPages } from '../../../src/site/calculators/pages.ts';
import { radius } from '../../../src/site/calculators/radius.ts';
import { section } from '../../../src/site/calculators/section.ts';
import { separation } from '../../../src/site/calculators/separation.ts';
import { span } from '../../../src/site/calculators/span.ts';
import type { FigureHow, Sum, SumId } from '../../../src/site/calculators/sum.ts';
import { transition } from '../../../src/site/calculators/transition.ts';
import { vertical } from '../../../src/site/calculators/vertical.ts';
import { usual } from '../../../src/site/settings.ts';
import { speaker, type Tell, teller } from '../../../src/site/speak.ts';
import { table } from '../wordTable.ts';

export const words = table('en');
export const tell: Tell = teller(words);
export const speak = speaker(words);
export const { library } = readLibrary(contentFiles());
const tables = tradeTablesOf(library.rules.values(), library.sources, adoptedOf(library.site.values()));

/** A sum with its data, whatever its types: tests ask it as the sheet does. */
export type AnySum = Sum<unknown>;
export const sums = {
  length,
  offset,
  arc,
  mark,
  mitre,
  notch,
  span,
  equivalent,
  vertical,
  beam,
  section,
  expansion,
  transition,
  jumper,
  groundpath,
  radius,
  ampacity,
  separation,
  marking,
} as unknown as Readonly<Record<SumId, AnySum>>;
export const dataOf = (id: SumId): unknown => sumPages[id].data?.(library, tables, tell);

export const figureHow = (form: Form): FigureHow => ({
  form,
  palette: paperPalette,
  speak,
  tell,
  letter: (measure: Measure) => lettered(measure, usual, tell),
});
