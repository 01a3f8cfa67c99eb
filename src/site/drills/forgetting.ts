/** What of a person who was erased stands on a device outside the register. Pure. */
import type { Json } from '../../register/canonical.ts';
import { isObject } from '../../register/shapes.ts';
import { JsonError, readJson } from '../../register/strictJson.ts';

/**
 * A names file without the people who were erased: the text as it is when none of them is in it, `undefined` when it is
 * none that can be read, since nobody can say whom it names.
 */
export function namesWithout(text: string, erased: ReadonlySet<string>): string | undefined {
  const given = jsonOf(text);
  const list = isObject(given) ? given['people'] : undefined;
  if (!Array.isArray(list)) return undefined;
  const stays = (list as readonly Json[]).filter((row) => {
    const id = isObject(row) ? row['id'] : undefined;
    return typeof id !== 'string' || !erased.has(id);
  });
  return stays.length === list.length ? text : `${JSON.stringify({ people: stays }, null, 2)}\n`;
}

function jsonOf(text: string): Json {
  try {
    return readJson(text.replace(/^\uFEFF/, ''));
  } catch (cause) {
    if (cause instanceof JsonError) return null;
    throw cause;
  }
}
