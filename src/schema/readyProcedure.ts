/** A procedure ready for a page: every place in its texts filled from the figure of its form. */
import type { Drawing, How } from '../drawing/types.ts';
import { usualOf } from '../run/usual.ts';
import { fillPlaces } from '../trade/say.ts';
import { drawShown, type Shown, shownBy } from './figure.ts';
import type { Figure, Form, Procedure } from './procedure.ts';
import type { Library } from './shelves.ts';
import { adoptedOf } from './site.ts';
import { runTablesOf } from './tradeTables.ts';

export interface ReadyForm extends Form {
  readonly shown: Shown;
  /** What the figures of `also` show, one for one. */
  readonly alsoShown: readonly Shown[];
}
export interface ReadyProcedure extends Omit<Procedure, 'forms'> {
  readonly forms: readonly ReadyForm[];
}

/**
 * @param id  task, as `T07`
 * @throws {Error} when the library has no such procedure; everything else has been found by readLibrary
 */
export function readyProcedure(
  library: Pick<Library, 'procedures' | 'runs' | 'catalogue' | 'rules' | 'sources' | 'site'>,
  lang: string,
  id: string,
): ReadyProcedure {
  const procedure = library.procedures.get(`${lang}/${id}`);
  if (procedure === undefined) throw new Error(`no procedure ${id} in ${lang}`);
  const tables = runTablesOf(library.rules.values(), library.sources, adoptedOf(library.site.values()));
  const shownIn = (figure: Figure): Shown => {
    const run = library.runs.get(figure.run);
    if (run === undefined) throw new Error(`${id}: no run ${figure.run}`);
    return shownBy(figure, run, library.catalogue, usualOf(tables), tables);
  };
  return {
    ...procedure,
    forms: procedure.forms.map((form) => {
      const shown = shownIn(form.figure);
      return { ...filled(form, shown.facts), shown, alsoShown: form.also.map(shownIn) };
    }),
  };
}

/** The figure of a form with a balloon for every step that it shows; `zones` of the drawing are by step number. */
export function drawFigure({ shown, steps }: ReadyForm, how: How): Drawing {
  const balloons = steps.flatMap(({ shows }, i) =>
    shows === undefined ? [] : [{ number: String(i + 1), at: shows }],
  );
  return drawShown(shown, balloons, how);
}

/** The same value with every text in it filled. */
function filled<T>(value: T, facts: Readonly<Record<string, string>>): T {
  if (typeof value === 'string') return fillPlaces(value, facts) as T;
  if (Array.isArray(value)) return value.map((v) => filled(v, facts)) as T;
  if (value !== null && typeof value === 'object') {
    return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, filled(v, facts)])) as T;
  }
  return value;
}
