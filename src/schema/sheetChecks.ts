/** What must hold between sheets, their families and tasks; and that what a sheet narrows can be drawn, each bench its own. */
import { models } from '../practice/models/index.ts';
import { narrowFaults } from '../practice/narrow.ts';
import { type NarrowTrouble, narrowTroubles } from '../practice/narrowTried.ts';
import type { Practice } from '../practice/sheet.ts';
import { narrowForm } from '../practice/sheetForm.ts';
import type { Fault } from '../trade/given.ts';
import { catalogueOf } from './catalogue.ts';
import { missing, missingOne } from './missing.ts';
import { worldDataOf } from './practice.ts';
import type { SheetFile } from './sheet.ts';
import type { Entry, FileFault } from './shelf.ts';
import { type Entries, idsOf, type Lost } from './shelves.ts';

type SheetEntry = Entry<SheetFile>;

/** Tasks and families that are named and not there; narrowings that are none, or leave too little; two sheets under one number. */
export function sheetFaults(entries: Entries, lost: Lost): readonly FileFault[] {
  const { sheets } = entries;
  const tasks = idsOf('tasks', entries, lost);
  const families = idsOf('scenarios', entries, lost);
  return [
    ...sheets.flatMap(({ file, data }) => missing(file, 'tasks', data.tasks, tasks, 'task')),
    ...sheets.flatMap(({ file, data }) =>
      data.families.flatMap(({ family }, i) =>
        missingOne(file, `families[${i}].family`, family, families, 'family'),
      ),
    ),
    ...narrowingFaults(entries, lost),
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

/** Sheets whose narrowings are no narrowings of their families; of the others, what is found by drawing them. */
function narrowingFaults(entries: Entries, lost: Lost): readonly FileFault[] {
  const families = new Map(entries.scenarios.map(({ id, data }) => [id, data]));
  const formal = entries.sheets.flatMap(({ file, data }) =>
    data.families.flatMap(({ family, narrow = {} }, i) => {
      const known = families.get(family);
      return known === undefined
        ? []
        : narrowFaults(known, narrow).map((fault) => ({
            ...fault,
            file,
            field: `families[${i}].narrow.${fault.field}`,
          }));
    }),
  );
  const wrong = new Set(formal.map(({ file }) => file));
  const toTry = entries.sheets.filter(
    ({ file, data }) => !wrong.has(file) && data.families.some(isTried(families)),
  );
  return [...formal, ...(toTry.length === 0 ? [] : triedFaults(toTry, families, entries, lost))];
}

const isTried =
  (families: Practice['families']) =>
  ({ family, narrow }: SheetFile['families'][number]): boolean =>
    narrow !== undefined && families.has(family);

function triedFaults(
  sheets: readonly SheetEntry[],
  families: Practice['families'],
  { catalogues, rules, sources }: Entries,
  lost: Lost,
): readonly FileFault[] {
  // What is not there for a file that could not be read is told at that file.
  if ([lost.rules, lost.sources, lost.catalogues].some(({ size }) => size > 0)) return [];
  const world = worldOrNot({
    catalogue: catalogueOf(catalogues.map(({ data }) => data)).catalogue,
    rules: new Map(rules.map(({ id, data }) => [id, data])),
    sources: new Map(sources.map(({ id, data }) => [id, data])),
  });
  return sheets.flatMap(({ file, data }) =>
    'lacks' in world
      ? [
          {
            file,
            field: 'families',
            message: `what this sheet narrows cannot be tried by drawing it: ${world.lacks}`,
            todo: 'put right what is missing there, then check again',
          },
        ]
      : narrowTroubles(data, { families, world: { ...world.data, models } }).map((found) => ({
          file,
          field: `families[${found.at}].narrow`,
          value: narrowForm(data.families[found.at]?.narrow ?? {}),
          ...saidOf(found),
        })),
  );
}

function worldOrNot(content: Parameters<typeof worldDataOf>[0]) {
  try {
    return { data: worldDataOf(content) } as const;
  } catch (cause) {
    return { lacks: cause instanceof Error ? cause.message : String(cause) } as const;
  }
}

function saidOf(found: NarrowTrouble): Pick<Fault, 'message' | 'todo'> {
  if (found.trouble === 'alike')
    return {
      message: `so narrow, benches ${found.benches.join(' and ')} get the same of ${found.family}`,
      todo: 'let it choose from more: a sheet that is evidence gives every bench its own',
    };
  return {
    message: `so narrow, ${found.family} has nothing to draw at bench ${found.bench}: ${found.why}`,
    todo:
      found.none === 'narrow'
        ? 'let it choose from more'
        : 'put right in the content what it cannot be drawn without',
  };
}
