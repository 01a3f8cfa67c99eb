/** What a view of one place of a run is told, and what it hands back. */
import type { Catalogue, Fastening } from '../../run/catalogue.ts';
import { GivenError } from '../../trade/given.ts';
import type { RunGiven } from '../runGiven.ts';
import type { Sheet } from '../svg.ts';
import type { How, View } from '../types.ts';

export interface DetailGiven extends Omit<RunGiven, 'findings' | 'tags' | 'leg'> {
  readonly catalogue: Catalogue;
  /** Which of its places; left out, the first. */
  readonly of?: string | undefined;
}

/** A sheet, and the parts that its balloons may point at. */
export interface Detail extends Sheet {
  readonly parts: readonly string[];
}

export interface DetailView {
  readonly view: View;
  /** Places of the run that it can show, by their names; none, and it is left out. */
  readonly places: (given: Pick<DetailGiven, 'resolved' | 'catalogue'>) => readonly string[];
  /** @throws {GivenError} `of` names no such place; `balloons` at a part that it does not show */
  readonly lay: (given: DetailGiven, how: How) => Detail;
}

/**
 * The one of that name, or the first.
 *
 * @throws {GivenError} there is none
 */
export function pick<T>(all: readonly T[], name: (one: T) => string, of: string | undefined): T {
  const found = of === undefined ? all[0] : all.find((one) => name(one) === of);
  if (found !== undefined) return found;
  throw new GivenError([
    {
      field: 'of',
      ...(of === undefined ? {} : { value: of }),
      message: 'the run has no such part',
      todo:
        all.length === 0 ? 'show another view, or another run' : `name one of ${all.map(name).join(', ')}`,
    },
  ]);
}

/** @throws {GivenError} the catalogue has no such fastening place */
export function fasteningOf(id: string, catalogue: Catalogue): Fastening {
  const found = catalogue.get(id);
  if (found?.kind === 'fastening') return found;
  throw new GivenError([
    { field: 'fastened', value: id, message: 'no such fastening', todo: 'mend the catalogue' },
  ]);
}
