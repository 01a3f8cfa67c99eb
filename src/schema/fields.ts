/** Fields that several inputs share. A number stays a number: text or a truth value in its place is a fault. */
import { z } from 'zod';
import { EDITIONS, type PerEdition } from '../trade/editions.ts';
import { whole } from './ranges.ts';

export const above0 = z.number().gt(0);
/** A part of a span, up to the half. */
export const share = z.number().gt(0).lte(0.5);
/** How many of a thing: whole, from 1. */
export const count = whole(1);
/** Edition of NFPA 70 that is in force where the work is; the default is the newest known here. */
export const edition = z.literal(EDITIONS).optional();

/** One value for each edition: `{2017: …, 2020: …, 2023: …}`. */
export const perEdition = <T extends z.ZodType>(value: T) =>
  z.strictObject({ 2017: value, 2020: value, 2023: value });

/** A value that stands in every edition, or each edition's own, as one for each. */
export function eachEdition<T extends string | number>(given: T | PerEdition<T>): PerEdition<T> {
  return typeof given === 'object' ? given : { 2017: given, 2020: given, 2023: given };
}
