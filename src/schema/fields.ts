/** Fields that several inputs share. A number stays a number: text or a truth value in its place is a fault. */
import { z } from 'zod';
import { EDITIONS } from '../trade/fillTables.ts';

export const above0 = z.number().gt(0);
/** How many of a thing: whole, from 1. */
export const count = z.int().gte(1);
/** Edition of NFPA 70 that is in force where the work is; the default is the newest known here. */
export const edition = z.literal(EDITIONS).optional();
