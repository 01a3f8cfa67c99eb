/** What the practice room takes from the library, and what must hold between families, sheets and tasks. */
import type { Practice } from '../practice/sheet.ts';
import { fillTablesOf } from './rules.ts';
import type { FileFault } from './shelf.ts';
import type { Entries, Library } from './shelves.ts';

/**
 * Families, sheets and tables for drawing and grading.
 * @throws {Error} when the library lacks a table of fill; content check finds that first
 */
export function practiceOf(library: Library): Practice {
  return {
    families: library.scenarios,
    sheets: library.sheets,
    world: {
      catalogue: library.catalogue,
      fillTables: fillTablesOf(library.rules.values(), library.sources),
    },
  };
}

/** Tasks and families that are named and not there; two sheets under one number. */
export function practiceFaults({ scenarios, sheets, tasks }: Entries): readonly FileFault[] {
  const taskIds = tasks.map((t) => t.id);
  const familyIds = scenarios.map((s) => s.id);
  const missing = (file: string, field: string, value: string, there: readonly string[], what: string) =>
    there.includes(value)
      ? []
      : [
          {
            file,
            field,
            value,
            message: `there is no ${what} of this id`,
            todo: `name one of ${there.join(', ')}`,
          },
        ];
  return [
    ...[...scenarios, ...sheets].flatMap(({ file, data }) =>
      data.tasks.flatMap((task, i) => missing(file, `tasks[${i}]`, task, taskIds, 'task')),
    ),
    ...sheets.flatMap(({ file, data }) =>
      data.families.flatMap(({ family }, i) =>
        missing(file, `families[${i}].family`, family, familyIds, 'family'),
      ),
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
