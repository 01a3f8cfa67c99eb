import { catalogueOf } from './catalogue.ts';
import { demoFiles, readDemo } from './demo.ts';
import { faultsOf } from './faults.ts';
import { crossFaults } from './references.ts';
import { type ContentFile, type Entry, type FileFault, placeOn, readEntry, type Shelf } from './shelf.ts';
import { type Entries, type Library, shelves } from './shelves.ts';
import { adoptedOf, withAdopted } from './site.ts';
import { wordTables } from './words.ts';

export type { ContentFile, FileFault } from './shelf.ts';
export type { Entries, Library } from './shelves.ts';

type Shelves = typeof shelves;

/**
 * Reads every content file into one typed library and finds every fault: form, unknown fields, ids, names of files,
 * references between files, words. Files outside every shelf are faults too, so that a misplaced file is not lost.
 *
 * @param files  all files below content/, in any order
 * @returns      the library of all entries that could be read, and all faults, sorted by file
 */
export function readLibrary(files: readonly ContentFile[]): {
  library: Library;
  faults: readonly FileFault[];
} {
  const faults: FileFault[] = [];
  const entries = Object.fromEntries(Object.keys(shelves).map((k) => [k, []])) as unknown as Record<
    keyof Shelves,
    Entry<never>[]
  >;
  const lost = Object.fromEntries(Object.keys(shelves).map((k) => [k, new Set()])) as unknown as Record<
    keyof Shelves,
    Set<string>
  >;
  for (const file of files) {
    const key = (Object.keys(shelves) as (keyof Shelves)[]).find((k) =>
      placeOn(shelves[k] as Shelf<unknown>, file.path),
    );
    if (key === undefined) {
      if (!aside(file.path) && !demoFiles.includes(file.path)) faults.push(misplaced(file.path));
      continue;
    }
    const { entry, faults: found } = readEntry(shelves[key] as Shelf<never>, file, faultsOf);
    faults.push(...found);
    if (entry !== undefined) entries[key].push(entry);
    else lost[key].add(placeOn(shelves[key] as Shelf<unknown>, file.path)?.id ?? '');
  }
  const read = entries as Entries;
  faults.push(...crossFaults(read, lost));
  const library = libraryOf(read);
  const { demo, faults: demoFaults } = readDemo(files, library.tasks);
  faults.push(...demoFaults);
  return {
    library: { ...library, demo },
    faults: faults.sort((a, b) => (a.file < b.file ? -1 : a.file > b.file ? 1 : 0)),
  };
}

function libraryOf(entries: Entries): Omit<Library, 'demo'> {
  const { catalogues, runs, words, ...others } = entries;
  const maps = Object.entries(others).map(([key, list]) => [key, byId(list as readonly Entry<unknown>[])]);
  return {
    ...(Object.fromEntries(maps) as Omit<Library, 'catalogue' | 'runs' | 'words' | 'bodies' | 'demo'>),
    catalogue: withAdopted(
      catalogueOf(catalogues.map((c) => c.data)).catalogue,
      adoptedOf(others.site.map((s) => s.data)),
    ),
    runs: new Map(runs.map((r) => [r.id, r.data.run])),
    words: wordTables(words),
    bodies: new Map(
      Object.values(others)
        .flat()
        .flatMap(({ file, body }) => (body === '' ? [] : [[file, body] as const])),
    ),
  };
}

function byId<T>(entries: readonly Entry<T>[]): ReadonlyMap<string, T> {
  return new Map(entries.map((e) => [e.lang === undefined ? e.id : `${e.lang}/${e.id}`, e.data]));
}

/** Files for the one who edits; the demo's signed register, which its own room reads; the record that `npm run prove` keeps. */
function aside(path: string): boolean {
  return (
    path.endsWith('/README.md') ||
    path.startsWith('content/demo/register/') ||
    path === 'content/scenarios/proofs.json'
  );
}

function misplaced(file: string): FileFault {
  const folders = Object.values(shelves).map((s) => `${s.folder}/${s.byLanguage ? 'LANG/' : ''}*${s.ending}`);
  return {
    file,
    field: '',
    message: 'no collection takes this file',
    todo: `put it where it belongs: ${folders.join(', ')}`,
  };
}
