/** Names of people: a file apart, by their ids. The register itself knows ids only. */
import { type Fault, GivenError } from '../trade/given.ts';
import type { Json } from './canonical.ts';
import { isObject, personId } from './shapes.ts';
import { JsonError, readJson } from './strictJson.ts';

/** Names by id; an id without a name has none here. */
export type Names = ReadonlyMap<string, string>;

export interface People {
  readonly ids: readonly string[];
  readonly names: Names;
}

const todo = 'write {"people":[{"id":"p-17","name":"Ann Pell"}]}';

/**
 * Reads `{"people":[{"id","name"?}]}`.
 * @throws {GivenError} with every fault: no list, an id that is none or stands twice, a name that is no text, other fields
 */
export function readPeople(given: Json): People {
  const list = isObject(given) ? given['people'] : undefined;
  if (!isObject(given) || !Array.isArray(list)) {
    throw new GivenError([{ field: 'people', message: 'no list of people', todo }]);
  }
  const faults: Fault[] = [];
  for (const name of Object.keys(given)) {
    if (name !== 'people') faults.push({ field: name, message: 'no such field', todo: 'leave it out' });
  }
  const ids: string[] = [];
  const names = new Map<string, string>();
  for (const [i, row] of (list as readonly Json[]).entries()) {
    const field = `people[${i}]`;
    if (!isObject(row)) {
      faults.push({ field, value: row, message: 'no person', todo });
      continue;
    }
    const { id, name, ...others } = row;
    for (const [other, value] of Object.entries(others)) {
      faults.push({ field: `${field}.${other}`, value, message: 'no such field', todo: 'leave it out' });
    }
    if (name !== undefined && typeof name !== 'string') {
      faults.push({
        field: `${field}.name`,
        value: name,
        message: 'no text',
        todo: 'write the name as a text',
      });
    }
    const wrong = id === undefined ? 'is missing' : personId(id);
    if (wrong !== undefined) {
      faults.push({ field: `${field}.id`, ...(id === undefined ? {} : { value: id }), message: wrong, todo });
      continue;
    }
    if (ids.includes(id as string)) {
      faults.push({ field: `${field}.id`, value: id, message: 'stands twice', todo: 'keep one' });
      continue;
    }
    ids.push(id as string);
    if (typeof name === 'string' && name.trim() !== '') names.set(id as string, name.trim());
  }
  if (faults.length > 0) throw new GivenError(faults);
  return { ids, names };
}

/** The same from the text of a file. @throws {GivenError} text that is no JSON, and all of the above */
export function peopleOfText(text: string): People {
  let given: Json;
  try {
    given = readJson(text.replace(/^\uFEFF/, ''));
  } catch (cause) {
    if (!(cause instanceof JsonError)) throw cause;
    throw new GivenError([{ field: 'file', message: `no JSON: ${cause.message}`, todo }]);
  }
  return readPeople(given);
}
