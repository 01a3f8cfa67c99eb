/** The tick and what it makes up. Source: 1 in = 25.4 mm exactly (international yard, 1959); 8128 = 64 × 127. */

export const TICKS_PER_INCH = 8128;
export const TICKS_PER_FOOT = 12 * TICKS_PER_INCH;
export const TICKS_PER_MILLIMETRE = 320;

/** The parts of an inch that a tape shows. */
export const DENOMINATORS = [2, 4, 8, 16, 32, 64] as const;
export type Denominator = (typeof DENOMINATORS)[number];

/** The longest length that is read, some 34 000 miles: sums and products of lengths stay exact far beyond it. */
export const LONGEST_TICKS = 2 ** 44;
