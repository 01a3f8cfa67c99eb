/** The beginning of a key or an id: enough to tell two apart across a table. Apart, so that signing loads no more. */
export const shortKey = (hex: string): string => hex.slice(0, 8);
