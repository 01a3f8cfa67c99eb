import type { z } from 'zod';
import type { Fault } from '../trade/given.ts';

/** Issues of a shape as faults. */
export function plainFaults(issues: readonly z.core.$ZodIssue[], given: unknown): readonly Fault[] {
  return issues.flatMap((issue) => {
    const field = pathText(issue.path);
    if (issue.code === 'unrecognized_keys') {
      return issue.keys.map((key) => ({
        field: field === '' ? key : `${field}.${key}`,
        message: 'unknown field',
        todo: 'take it out, or mend its spelling',
      }));
    }
    const value = valueAt(given, issue.path);
    const todo = issue.code === 'custom' ? issue.params?.['todo'] : undefined;
    return [
      {
        field,
        ...(value === undefined ? {} : { value }),
        message: value === undefined ? 'missing' : issue.message,
        todo: typeof todo === 'string' ? todo : 'write a value of the kind asked for',
      },
    ];
  });
}

function pathText(path: readonly PropertyKey[]): string {
  return path
    .map((p) => (typeof p === 'number' ? `[${p}]` : `.${String(p)}`))
    .join('')
    .replace(/^\./, '');
}

function valueAt(given: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (v, p) => (v === null || v === undefined ? undefined : (v as Record<PropertyKey, unknown>)[p]),
    given,
  );
}
