/** Names of people: a file apart, by their ids. The register itself knows ids only. Pure. */
import { isObject, personId } from '../register/shapes.ts';
import { readJson } from '../register/strictJson.ts';

/** Names by id; an id without a name has none here. */
export type Names = ReadonlyMap<string, string>;

export interface People {
  readonly ids: readonly string[];
  readonly names: Names;
}

export const nobody: People = { ids: [], names: new Map() };

/** Reads `{"people":[{"id","name"?}]}`; `undefined` when it is not that. */
export function readPeople(text: string): People | undefined {
  try {
    const value = readJson(text);
    const list = isObject(value) ? value['people'] : undefined;
    if (!Array.isArray(list)) return undefined;
    const ids: string[] = [];
    const names = new Map<string, string>();
    for (const one of list) {
      const id = isObject(one) ? one['id'] : undefined;
      const name = isObject(one) ? one['name'] : undefined;
      if (typeof id !== 'string' || personId(id) !== undefined) return undefined;
      if (name !== undefined && typeof name !== 'string') return undefined;
      ids.push(id);
      if (name !== undefined && name.trim() !== '') names.set(id, name.trim());
    }
    return { ids, names };
  } catch {
    return undefined;
  }
}

/** Two or three letters for a box: a name's initials, or the beginning of the id. */
export function initialsOf(id: string, names: Names): string {
  const words = (names.get(id) ?? '').split(/[\s-]+/).filter((word) => /^\p{L}/u.test(word));
  if (words.length < 2) return [...id].slice(0, 3).join('');
  return words
    .slice(0, 3)
    .map((word) => [...word][0]?.toUpperCase() ?? '')
    .join('');
}

/** As a person is spoken of: the name where one is known. */
export const spokenName = (id: string, names: Names): string => names.get(id) ?? id;
