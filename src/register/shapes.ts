import { isHex } from './bytes.ts';
import type { Json, JsonObject } from './canonical.ts';
import { isDay, writeInstant } from './days.ts';

/** Says what is wrong with a value, in a few words for a message; `undefined` when nothing is. */
export type Shape = (value: Json) => string | undefined;

const says =
  (good: (value: Json) => boolean, wanted: string): Shape =>
  (value) =>
    good(value) ? undefined : `wants ${wanted}`;

export const text: Shape = says(
  (v) => typeof v === 'string' && v.length > 0 && v.length <= 2000,
  'a text of 1 to 2000 signs',
);
export const truth: Shape = says((v) => typeof v === 'boolean', 'true or false');
export const count = (from: number): Shape =>
  says((v) => typeof v === 'number' && Number.isSafeInteger(v) && v >= from, `a whole number from ${from}`);
export const day: Shape = says(isDay, 'a day of the calendar');
export const hex = (bytes: number): Shape =>
  says((v) => isHex(v, bytes), `${2 * bytes} small hexadecimal digits`);
export const oneOf = (...values: readonly Json[]): Shape =>
  says((v) => values.includes(v), values.map((v) => JSON.stringify(v)).join(' or '));
export const anything: Shape = () => undefined;

/** Whether a text is an instant in the one way that it is written: UTC with milliseconds, of the years 0 to 9999. */
export function isInstant(v: string): boolean {
  // The engine takes many other texts too, and writes every instant in one way.
  const at = v.length === 24 ? Date.parse(v) : Number.NaN;
  return !Number.isNaN(at) && writeInstant(at) === v;
}
export const instant: Shape = says(
  (v) => typeof v === 'string' && isInstant(v),
  'an instant in UTC with milliseconds',
);

const pattern = (p: RegExp, wanted: string): Shape => says((v) => typeof v === 'string' && p.test(v), wanted);
export const personId = pattern(/^[A-Za-z0-9._-]{1,64}$/, '1 to 64 letters, digits, or -_.');
export const deviceName = pattern(/^[A-Za-z0-9-]{1,32}$/, '1 to 32 letters, digits, or -');
export const taskId = pattern(/^[A-Za-z0-9._-]{1,64}$/, 'the id of a task');
export const kindName = pattern(/^[a-z][a-z-]{0,31}$/, 'a kind: small letters and hyphens');
export const ticketId = pattern(/^W[1-8]$/, 'W1 to W8');

export const orNull =
  (shape: Shape): Shape =>
  (v) =>
    v === null ? undefined : shape(v);
export const either =
  (a: Shape, b: Shape): Shape =>
  (v) => {
    const found = a(v);
    return found === undefined || b(v) === undefined ? undefined : found;
  };

export const isObject = (v: Json): v is JsonObject =>
  typeof v === 'object' && v !== null && !Array.isArray(v);

export const list =
  (of: Shape, most = 10_000): Shape =>
  (v) => {
    if (!Array.isArray(v)) return 'wants a list';
    if (v.length > most) return `wants at most ${most}`;
    for (const [i, item] of (v as readonly Json[]).entries()) {
      const found = of(item);
      if (found !== undefined) return `[${i}] ${found}`;
    }
    return undefined;
  };

export const sorted =
  (of: Shape, key: (item: Json) => string, most?: number): Shape =>
  (v) => {
    const found = list(of, most)(v);
    if (found !== undefined) return found;
    const keys = (v as readonly Json[]).map(key);
    return keys.every((k, i) => i === 0 || (keys[i - 1] as string) < k)
      ? undefined
      : 'wants sorted, none twice';
  };

/** An object with exactly these fields. */
export const record = (fields: Readonly<Record<string, Shape>>): Shape => {
  const wanted = Object.entries(fields);
  return (v) => {
    if (!isObject(v)) return 'wants an object';
    for (const name of Object.keys(v)) if (!Object.hasOwn(fields, name)) return `${name}: no such field`;
    for (const [name, shape] of wanted) {
      if (!Object.hasOwn(v, name)) return `${name}: missing`;
      const found = shape(v[name] as Json);
      if (found !== undefined) return `${name}: ${found}`;
    }
    return undefined;
  };
};

/** An object whose members all have one shape. */
export const table =
  (of: Shape): Shape =>
  (v) => {
    if (!isObject(v)) return 'wants an object';
    for (const [name, value] of Object.entries(v)) {
      const found = of(value);
      if (found !== undefined) return `${name}: ${found}`;
    }
    return undefined;
  };
