/** Options of the verbs that ask how people stand. */
import type { Variant } from '../../register/bodies.ts';
import { readInstant } from '../../register/days.ts';
import { isHeading, type TaskMap, taskOf } from '../../register/taskMap.ts';
import type { Option } from '../verb.ts';
import type { Options } from './options.ts';

export const askedOptions = {
  'known-on': { value: 'DATE', line: 'only what was entered by the end of this day' },
  months: { value: 'T04=6', line: 'months in place of the map’s; several with commas', many: true },
} satisfies Record<string, Option>;

/** Months in place of the map's, by task. */
export function monthsAsked({ call, faults }: Options, tasks: TaskMap): Readonly<Record<string, number>> {
  const parts = call.all('months').flatMap((given) => given.split(','));
  return Object.fromEntries(
    parts.flatMap((part): readonly (readonly [string, number])[] => {
      const [, id = '', n = ''] = /^([^=]+)=([1-9]\d{0,3})$/.exec(part) ?? [];
      const task = taskOf(tasks, id);
      if (task !== undefined && !isHeading(task)) return [[id, Number(n)]];
      const message = id === '' ? 'no task with its months' : `${id} is no task that is shown itself`;
      faults.push({
        field: 'months',
        value: part,
        message,
        todo: 'write a task with a whole number from 1: T04=6',
      });
      return [];
    }),
  );
}

/** Pairs of a variant as `--variant` says them; `undefined` when left out, or at fault. */
export function variantAsked({ call, faults }: Options): Variant | undefined {
  const given = call.text('variant');
  if (given === undefined) return undefined;
  const pairs = given.split(',').map((part) => part.split('='));
  const names = pairs.map(([name]) => name);
  for (const [i, pair] of pairs.entries()) {
    const twice = names.indexOf(pair[0]) < i;
    if (pair.length === 2 && pair.every((side) => side !== '') && !twice) continue;
    faults.push({
      field: 'variant',
      value: given,
      message: twice ? `${pair[0]} stands twice` : 'no pair with its value',
      todo: 'write pairs with commas: width=6,metal=stainless',
    });
    return undefined;
  }
  return Object.fromEntries(pairs);
}

/** An instant that has to be there; `undefined` when it is at fault. */
export function instantAsked(options: Options, field: string): number | undefined {
  const todo = 'write it so: 2026-03-09T06:00:00Z, or with +01:00 in place of Z';
  const text = options.need(field, todo);
  if (text === '') return undefined;
  const at = readInstant(text);
  if (at === undefined) {
    options.faults.push({ field, value: text, message: 'no instant with seconds and an offset', todo });
  }
  return at;
}
