/** Ranges of numbers that several inputs share, beside those of fields.ts. */
import { z } from 'zod';

export const from0 = z.number().gte(0);
/** An angle between two directions in degrees, neither 0 nor straight back. */
export const turn = z.number().gt(0).lt(180);
/** An angle between level and upright, in degrees, neither of the two. */
export const acute = z.number().gt(0).lt(90);

/**
 * A whole number from `least`. Unlike `z.int` a number with decimals does not keep the checks of the whole input from
 * being made, so that all faults still come at once.
 */
export function whole(least: number) {
  return z
    .number()
    .gte(least)
    .superRefine((n, ctx) => {
      if (!Number.isSafeInteger(n)) ctx.addIssue({ code: 'invalid_type', expected: 'int', input: n });
    });
}
