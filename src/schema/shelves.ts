import { z } from 'zod';
import type { Catalogue } from '../run/catalogue.ts';
import type { Run } from '../run/types.ts';
import { catalogueShape } from './catalogue.ts';
import type { Demo } from './demo.ts';
import { demoRunShape } from './demoRun.ts';
import { plainId } from './ids.ts';
import { pageShape } from './page.ts';
import { procedureShape } from './procedure.ts';
import { ruleShape } from './rules.ts';
import { runShape } from './run.ts';
import { familyShape } from './scenario.ts';
import { sheetShape } from './sheet.ts';
import type { Entry, Shelf } from './shelf.ts';
import { siteShape } from './site.ts';
import { sourceShape } from './source.ts';
import { taskShape, ticketShape } from './task.ts';
import { type Words, wordsShape } from './words.ts';

function shelf<T>(
  folder: string,
  ending: Shelf<T>['ending'],
  shape: z.ZodType<T>,
  { byLanguage = false, named = true }: Partial<Pick<Shelf<T>, 'byLanguage' | 'named'>> = {},
): Shelf<T> {
  return { folder, ending, shape, byLanguage, named };
}

/** Every collection of content: a new one is a line here and a field of the library. */
export const shelves = {
  tasks: shelf('tasks', '.yaml', taskShape),
  tickets: shelf('tickets', '.yaml', ticketShape),
  sources: shelf('sources', '.yaml', sourceShape),
  rules: shelf('rules', '.yaml', ruleShape),
  site: shelf('site', '.yaml', siteShape),
  catalogues: shelf('catalogue', '.yaml', catalogueShape),
  runs: shelf('procedures/runs', '.yaml', z.strictObject({ id: plainId, run: runShape })),
  demoRuns: shelf('demo/runs', '.yaml', demoRunShape),
  scenarios: shelf('scenarios', '.yaml', familyShape),
  sheets: shelf('sheets', '.yaml', sheetShape),
  procedures: shelf('procedures', '.mdx', procedureShape, { byLanguage: true }),
  pages: shelf('pages', '.mdx', pageShape, { byLanguage: true }),
  words: shelf('words', '.json', wordsShape, { byLanguage: true, named: false }),
};
/** Shelves whose every text is read by a person. */
export const prose = ['procedures', 'pages', 'words', 'scenarios', 'sheets'] as const;

type Shelves = typeof shelves;
type Data<K extends keyof Shelves> = Shelves[K] extends Shelf<infer T> ? T : never;

/** All entries of each shelf as read, with their files. */
export type Entries = { readonly [K in keyof Shelves]: readonly Entry<Data<K>>[] };

/** Files that could not be read, by shelf: their ids are there all the same, and nothing can be said of what they hold. */
export type Lost = { readonly [K in keyof Shelves]: ReadonlySet<string> };

/** Ids of a shelf, those of files that could not be read among them. */
export function idsOf(shelf: keyof Shelves, entries: Entries, lost: Lost): ReadonlySet<string> {
  return new Set([...entries[shelf].map((e) => e.id), ...lost[shelf]]);
}

/**
 * The content of a works. Entries by id; where a shelf has languages, by `lang/id` (`en/T07`).
 * Catalogue files are one catalogue, by item; words are one table a language, by `group.key`.
 */
export type Library = {
  readonly [K in Exclude<keyof Shelves, 'words' | 'catalogues' | 'runs'>]: ReadonlyMap<string, Data<K>>;
} & {
  readonly catalogue: Catalogue;
  /** Runs of figures. */
  readonly runs: ReadonlyMap<string, Run>;
  readonly words: ReadonlyMap<string, Words>;
  /** Text of MDX files after their front matter, by file. */
  readonly bodies: ReadonlyMap<string, string>;
  /** The demo works, where its files were given and hold. */
  readonly demo: Demo | undefined;
};
