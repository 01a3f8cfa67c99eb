/** Limits of floating numbers hold with a hair to spare, for what a sum of decimals loses on its way. */
export const HAIR = 1e-9;

export const atMost = (value: number, limit: number): boolean => value <= limit + HAIR;
export const same = (a: number, b: number): boolean => Math.abs(a - b) <= HAIR;
