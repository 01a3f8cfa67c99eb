import type { FileFault } from './shelf.ts';

/** Names in a list that stand for nothing. */
export function missing(
  file: string,
  field: string,
  names: readonly string[],
  there: ReadonlySet<string>,
  what: string,
): FileFault[] {
  return names.flatMap((value, i) => missingOne(file, `${field}[${i}]`, value, there, what));
}

/** One name that stands for nothing; a near one is offered where there are too many to list. */
export function missingOne(
  file: string,
  field: string,
  value: string,
  there: ReadonlySet<string>,
  what: string,
): FileFault[] {
  if (there.has(value)) return [];
  const all = [...there].sort();
  const offer = all.length <= 30 ? all : all.filter((n) => n.startsWith(value.slice(0, 4))).slice(0, 30);
  const todo = offer.length === 0 ? `add the ${what}, or mend the name` : `name one of ${offer.join(', ')}`;
  return [{ file, field, value, message: `no ${what} ${value}`, todo }];
}
