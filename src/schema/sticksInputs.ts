/** What the cutting plan is given; the description of a field is its manual. */
import { z } from 'zod';
import { count } from './fields.ts';
import { lengthAbove0, lengthFrom0 } from './length.ts';

/** How many there are: whole, from 0. */
const held = z.int().gte(0);

export const sticksInput = z.strictObject({
  stock: z
    .array(z.strictObject({ length: lengthAbove0, count: held.optional() }))
    .min(1)
    .describe('at least one; length above 0; count from 0, as many as it takes when left out'),
  offcuts: z
    .array(z.strictObject({ length: lengthAbove0, count: held }))
    .optional()
    .describe('left over from earlier work, used first; length above 0, count from 0 (none)'),
  pieces: z
    .array(z.strictObject({ length: lengthAbove0, count, mark: z.string().optional() }))
    .min(1)
    .describe('at least one; length above 0, count from 1, mark any text'),
  kerf: lengthFrom0.describe('what one cut takes away, from 0'),
  minReusable: lengthFrom0.optional().describe('shortest remainder worth keeping, from 0 (12 in)'),
});
