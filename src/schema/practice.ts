/** What the practice room takes from the library, and what must hold between families and tasks; of sheets: `sheetChecks.ts`. */
import type { AuthoredFamily } from '../practice/family.ts';
import type { WorldData } from '../practice/model.ts';
import { models } from '../practice/models/index.ts';
import type { Practice } from '../practice/sheet.ts';
import { missing } from './missing.ts';
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
export function worldDataOf(library: Pick<Library, 'catalogue' | 'rules' | 'sources'>): WorldData {
  const tables = tradeTablesOf(library.rules.values(), library.sources, NOTHING_ADOPTED);
  return { catalogue: library.catalogue, fillTables: tables.fill, tables };
}

/** Tasks that families name and that are not there; two families of a task under one number. */
export function practiceFaults(entries: Entries, lost: Lost): readonly FileFault[] {
  const { scenarios } = entries;
  const works = new Set([...idsOf('tasks', entries, lost), ...idsOf('tickets', entries, lost)]);
  return [
    ...scenarios.flatMap(({ file, data }) => missing(file, 'tasks', data.tasks, works, 'task')),
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
  ];
}
