/** What must hold between fields. It is looked at even when other fields are wrong, so that all faults come at once. */
import type { z } from 'zod';

/** A fault of one field in the light of others. */
export interface TogetherFault {
  readonly path: readonly (string | number)[];
  readonly message: string;
  readonly todo: string;
}

/** An object as it was given: any field may be missing or of the wrong kind. */
export type Loose = Readonly<Record<string, unknown>>;

/** A shape with a check over several of its fields. */
export function together<Shape extends z.ZodType>(
  shape: Shape,
  faultsOf: (given: Loose) => readonly TogetherFault[],
): Shape {
  return shape.superRefine(
    (given, ctx) => {
      for (const { path, message, todo } of faultsOf(given as Loose))
        ctx.addIssue({ code: 'custom', path: [...path], message, params: { todo } });
    },
    { when: ({ value }) => isObject(value) },
  );
}

export function isObject(value: unknown): value is Loose {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** A field's number when it is one within its own range, else undefined: its own fault is said elsewhere. */
export function numberIn(given: unknown, within: (n: number) => boolean = () => true): number | undefined {
  return typeof given === 'number' && Number.isFinite(given) && within(given) ? given : undefined;
}

/** Objects of a list, each with its place; what is no object is left to its own fault. */
export function rowsOf(given: unknown): readonly (readonly [place: number, row: Loose])[] {
  return Array.isArray(given) ? given.flatMap((row, i) => (isObject(row) ? [[i, row] as const] : [])) : [];
}
