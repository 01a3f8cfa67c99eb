/** Ranges of numbers that several inputs share, beside those of fields.ts. */
import { z } from 'zod';

export const from0 = z.number().gte(0);
/** An angle between two directions in degrees, neither 0 nor straight back. */
export const turn = z.number().gt(0).lt(180);
/** An angle between level and upright, in degrees, neither of the two. */
export const acute = z.number().gt(0).lt(90);
