/** What the practice room takes from the library, and what must hold between families, sheets and tasks. */
import type { AuthoredFamily } from '../practice/family.ts';
import type { WorldData } from '../practice/model.ts';
import { models } from '../practice/models/index.ts';
import { narrowFaults } from '../practice/narrow.ts';
import type { Practice } from '../practice/sheet.ts';
import { missing, missingOne } from './missing.ts';
import type { FileFault } from './shelf.ts';
import { type Entries, idsOf, type Library, type Lost } from './shelves.ts';
import { NOTHING_ADOPTED } from './site.ts';
import { tradeTablesOf } from './tradeTables.ts';

/** Practice with what authors hand in beside their families: what the proofs ask for. */
export interface AuthoredPractice extends Practice {
  readonly families: ReadonlyMap<string, AuthoredFamily>;
}

/**
 * Families, sheets and tables for drawing and grading.
 * @throws {Error} when the library lacks a table of fill; content check finds that first
 */
export function practiceOf(library: Library): AuthoredPractice {
  return {
    families: library.scenarios,
    sheets: library.sheets,
    world: { ...worldDataOf(library), models },
  };
}

/**
 * Catalogue and tables as draws take them: nothing that a site adopts changes a draw, which is fixed for ever.
 * @throws {Error} when the library lacks a table; content check finds that first
 */
export function worldDataOf(library: Library): WorldData {
  const tables = tradeTablesOf(library.rules.values(), library.sources, NOTHING_ADOPTED);
  return { catalogue: library.catalogue, fillTables: tables.fill, tables };
}

/** Tasks and families that are named and not there; two sheets under one number. */
export function practiceFaults(entries: Entries, lost: Lost): readonly FileFault[] {
  const { scenarios, sheets } = entries;
  const tasks = idsOf('tasks', entries, lost);
  const works = new Set([...tasks, ...idsOf('tickets', entries, lost)]);
  const families = idsOf('scenarios', entries, lost);
  return [
    ...scenarios.flatMap(({ file, data }) => missing(file, 'tasks', data.tasks, works, 'task')),
    ...sheets.flatMap(({ file, data }) => missing(file, 'tasks', data.tasks, tasks, 'task')),
    ...sheets.flatMap(({ file, data }) =>
      data.families.flatMap(({ family }, i) =>
        missingOne(file, `families[${i}].family`, family, families, 'family'),
      ),
    ),
    ...sheets.flatMap(({ file, data }) =>
      data.families.flatMap(({ family, narrow = {} }, i) => {
        const known = scenarios.find(({ id }) => id === family);
        return known === undefined
          ? []
          : narrowFaults(known.data, narrow).map((fault) => ({
              ...fault,
              file,
              field: `families[${i}].narrow.${fault.field}`,
            }));
      }),
    ),
    ...scenarios.flatMap(({ file, data: { number, tasks } }, i) =>
      scenarios.findIndex((s) => s.data.number === number && s.data.tasks[0] === tasks[0]) < i
        ? [
            {
              file,
              field: 'number',
              value: number,
              message: `another family of ${tasks[0]} has this number`,
              todo: 'give it the next that is free',
            },
          ]
        : [],
    ),
    ...sheets.flatMap(({ file, data }, i) =>
      sheets.findIndex((s) => s.data.number === data.number) < i
        ? [
            {
              file,
              field: 'number',
              value: data.number,
              message: 'another sheet has this number',
              todo: 'give it one that is free',
            },
          ]
        : [],
    ),
  ];
}
