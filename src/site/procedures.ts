/** Procedures as pages show them: order, title block, figures in every form, what to lay out, what holds and by whose word. */
import { pagePalette, paperPalette } from '../drawing/palette.ts';
import type { Form as Draft, Drawing } from '../drawing/types.ts';
import type { Item } from '../run/catalogue.ts';
import { drawShown, type Shown } from '../schema/figure.ts';
import type { Library } from '../schema/library.ts';
import { drawFigure, type ReadyForm, type ReadyProcedure, readyProcedure } from '../schema/readyProcedure.ts';
import { shortLength } from '../trade/shortLength.ts';
import type { Block } from './block.ts';
import { type SumId, sumIds } from './calculators/sum.ts';
import type { Speak, Tell } from './speak.ts';

/** Procedures of a language, in the order of the job. */
export function proceduresOf(library: Library, lang: string): readonly ReadyProcedure[] {
  return [...library.procedures.keys()]
    .filter((key) => key.startsWith(`${lang}/`))
    .map((key) => readyProcedure(library, lang, key.slice(lang.length + 1)))
    .sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** A value that no works has adopted stands in it: in its figures' catalogue, its hardware or its limits. */
export function carriesTraining(library: Library, procedure: ReadyProcedure): boolean {
  return procedure.forms.some(
    ({ shown, hardware, limits }) =>
      shown.tray.origin === 'training value' ||
      hardware.some(({ item }) => library.catalogue.get(item)?.origin === 'training value') ||
      limits.some(({ source }) => library.sources.get(source)?.editions.at(-1)?.seen === 'training value'),
  );
}

/** The title block of a procedure: its number carries the task, its date is that of the task's revision. */
export function procedureSheet(library: Library, procedure: ReadyProcedure, tell: Tell): Block {
  const last = library.tasks.get(procedure.id)?.revisions.at(-1);
  if (last === undefined) throw new Error(`${procedure.id}: no revision in the task map`);
  return {
    number: `TH-${procedure.id}`,
    revision: procedure.revision,
    dated: last.on,
    works: tell('sheet.ofWorks'),
    status: tell(carriesTraining(library, procedure) ? 'sheet.training' : 'sheet.sample'),
  };
}

const drafts: readonly Draft[] = ['phone', 'desk', 'paper'];

/** The form's figure redrawn for phone, desk and paper, its balloons the numbers of the steps that it shows. */
export const figureForms = (form: ReadyForm, speak: Speak): readonly Drawing[] =>
  drafts.map((draft) =>
    drawFigure(form, { form: draft, palette: draft === 'paper' ? paperPalette : pagePalette, speak }),
  );

/** The same of what a form shows besides, without balloons, each with its caption. */
export const alsoForms = (
  form: ReadyForm,
  speak: Speak,
): readonly { readonly caption: string; readonly drawings: readonly Drawing[] }[] =>
  form.also.map(({ caption }, i) => ({
    caption,
    drawings: drafts.map((draft) =>
      drawShown(form.alsoShown[i] as Shown, [], {
        form: draft,
        palette: draft === 'paper' ? paperPalette : pagePalette,
        speak,
      }),
    ),
  }));

/** Calculators that a procedure sends to; the one for cuts where it names none. @throws {Error} a name that is none */
export function sumsOf({ id, sums }: ReadyProcedure): readonly (SumId | 'cut')[] {
  if (sums.length === 0) return ['cut'];
  return sums.map((sum) => {
    const found = sumIds.find((known) => known === sum);
    if (found === undefined) throw new Error(`${id}: no calculator ${sum}; name one of ${sumIds.join(', ')}`);
    return found;
  });
}

/** An item as a person asks for it at the counter. */
export function itemName(item: Item, tell: Tell): string {
  const width = 'width' in item ? shortLength(item.width) : '';
  switch (item.kind) {
    case 'sleeve':
    case 'plate':
    case 'expansion':
      return tell(`item.${item.kind}`, { width, length: shortLength(item.length) });
    case 'fastening':
      return tell(`item.${item.bolt.head}`, {
        diameter: shortLength(item.bolt.diameter),
        length: shortLength(item.bolt.length),
        hole: shortLength(item.hole.width),
      });
    default:
      return tell(`item.${item.kind}`, { width });
  }
}

export interface HardwareRow {
  readonly name: string;
  readonly count: number;
}

export function hardwareRows(library: Library, form: ReadyForm, tell: Tell): readonly HardwareRow[] {
  return form.hardware.map(({ item: id, count }) => {
    const item = library.catalogue.get(id);
    if (item === undefined) throw new Error(`${form.id}: the catalogue has no ${id}`);
    return { name: itemName(item, tell), count };
  });
}

export interface LimitRow {
  readonly what: string;
  readonly holds: string;
  /** What the source says of itself. */
  readonly tag: string;
}

export function limitRows(library: Library, form: ReadyForm, tell: Tell): readonly LimitRow[] {
  return form.limits.map(({ what, holds, source }) => {
    const entry = library.sources.get(source);
    const last = entry?.editions.at(-1);
    if (entry === undefined || last === undefined) throw new Error(`${form.id}: no source ${source}`);
    if (last.seen === 'common practice') return { what, holds, tag: tell('seen.practice') };
    if (last.seen === 'training value') return { what, holds, tag: tell('seen.training') };
    const values = { document: entry.document, edition: last.edition };
    return { what, holds, tag: tell(last.seen === 'page' ? 'seen.citedPage' : 'seen.citedMemory', values) };
  });
}
