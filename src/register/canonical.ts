/** A JSON value as RFC 8785 takes it. */
export type Json = null | boolean | number | string | readonly Json[] | JsonObject;
export interface JsonObject {
  readonly [name: string]: Json;
}

/**
 * The one text of a JSON value: no white space, names sorted by UTF-16 code units, numbers and texts as ECMAScript
 * writes them. Its UTF-8 is what is hashed and signed.
 *
 * @throws {RangeError} a number that is not finite, or a text with a lone surrogate
 * Source: RFC 8785 §3.2.
 */
export function canonical(value: Json): string {
  if (value === null || typeof value === 'boolean') return String(value);
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new RangeError(`no JSON number: ${value}`);
    return JSON.stringify(value);
  }
  if (typeof value === 'string') {
    if (!value.isWellFormed()) throw new RangeError('a text with a lone surrogate');
    return JSON.stringify(value);
  }
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
  const object = value as JsonObject;
  // sort() without a comparison compares code units, which is what §3.2.3 asks for.
  const members = Object.keys(object)
    .sort()
    .map((name) => `${canonical(name)}:${canonical(object[name] as Json)}`);
  return `{${members.join(',')}}`;
}
