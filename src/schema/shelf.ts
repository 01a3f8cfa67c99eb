import type { z } from 'zod';
import type { Fault } from '../trade/given.ts';
import { readYaml, splitFrontMatter } from './yaml.ts';

/** A content file as read from disk; the path begins with `content/` and uses `/` on every system. */
export interface ContentFile {
  readonly path: string;
  readonly text: string;
}

/** A fault and the file it is in. */
export interface FileFault extends Fault {
  readonly file: string;
}

/** One entry of a shelf: what the file says, where it stands, and (MDX) the text after its front matter. */
export interface Entry<T> {
  readonly id: string;
  readonly file: string;
  /** Language by the folder it is in (`procedures/en/T05.mdx`), or undefined where the shelf has none. */
  readonly lang: string | undefined;
  readonly data: T;
  readonly body: string;
}

/**
 * One collection of content: a folder whose files all have one form.
 * - `folder`: under content/; every file in it that ends in `ending` belongs to it, at the depth that `byLanguage` gives
 * - `named`: the file is named for its `id` field (words have no id: the file name is a subject)
 */
export interface Shelf<T> {
  readonly folder: string;
  readonly ending: '.yaml' | '.json' | '.mdx';
  readonly byLanguage: boolean;
  readonly named: boolean;
  readonly shape: z.ZodType<T>;
}

/** Turns the issues of a shape into faults; passed in so that every fault of the project is worded in one place. */
export type FaultsOf = (issues: readonly z.core.$ZodIssue[], given: unknown) => readonly Fault[];

/** Whether a file belongs to a shelf, and under which name and language. */
export function placeOn(
  shelf: Shelf<unknown>,
  path: string,
): { id: string; lang: string | undefined } | undefined {
  const parts = path.split('/');
  const depth = shelf.folder.split('/').length;
  const inFolder = parts[0] === 'content' && parts.slice(1, 1 + depth).join('/') === shelf.folder;
  const rest = parts.slice(1 + depth);
  const name = rest.at(-1);
  if (!inFolder || name === undefined || !name.endsWith(shelf.ending)) return undefined;
  if (rest.length !== (shelf.byLanguage ? 2 : 1)) return undefined;
  return { id: name.slice(0, -shelf.ending.length), lang: shelf.byLanguage ? rest[0] : undefined };
}

/** Reads one file into an entry of its shelf, or says everything that is wrong with it. */
export function readEntry<T>(
  shelf: Shelf<T>,
  file: ContentFile,
  faultsOf: FaultsOf,
): { entry?: Entry<T>; faults: readonly FileFault[] } {
  const place = placeOn(shelf, file.path);
  if (place === undefined) throw new Error(`${file.path} is not on the shelf ${shelf.folder}`);
  const inFile = (faults: readonly Fault[]) => faults.map((f) => ({ file: file.path, ...f }));

  const parts =
    shelf.ending === '.mdx' ? splitFrontMatter(file.text) : { matter: file.text, body: '', bodyLine: 1 };
  if (parts === undefined) {
    return {
      faults: inFile([
        { field: '', message: 'no front matter', todo: 'begin the file with --- , its fields, and ---' },
      ]),
    };
  }
  const parsed = readYaml(parts.matter, shelf.ending === '.mdx' ? 2 : 1);
  const form = [...parsed.faults, ...(shelf.ending === '.json' ? jsonFaults(file.text) : [])];
  if (form.length > 0) return { faults: inFile(form) };

  const checked = shelf.shape.safeParse(parsed.data);
  const faults: Fault[] = checked.success ? [] : [...faultsOf(checked.error.issues, parsed.data)];
  const id = (parsed.data as { id?: unknown } | null)?.id;
  if (shelf.named && typeof id === 'string' && id !== place.id) {
    faults.push({
      field: 'id',
      value: id,
      message: 'the file is not named for its id',
      todo: `name the file ${id}${shelf.ending}, or write ${place.id} here`,
    });
  }
  if (!checked.success || faults.length > 0) return { faults: inFile(faults) };
  const entry = { ...place, file: file.path, data: checked.data, body: parts.body };
  return { entry, faults: [] };
}

/** JSON is read as YAML for its lines; what YAML forgives (a comma too many, a comment) JSON does not. */
function jsonFaults(text: string): readonly Fault[] {
  try {
    JSON.parse(text);
    return [];
  } catch (cause) {
    const why = cause instanceof Error ? cause.message : String(cause);
    return [
      {
        field: '',
        message: `this is no JSON: ${why}`,
        todo: 'mend it; no comma stands before a closing bracket',
      },
    ];
  }
}
