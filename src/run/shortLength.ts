/** Lengths as a drawing letters them: inches alone below a foot, and never rounded away. */
import { type Denominator, formatLength, roundTo, type Ticks } from '../trade/length.ts';

/** The coarsest of sixteenths, thirty-seconds and sixty-fourths that holds the length exactly; else sixteenths. */
function grain(length: Ticks): Denominator {
  return ([16, 32, 64] as const).find((d) => roundTo(length, d) === length) ?? 16;
}

/** `3'-7 1/8"`, and below a foot `5"`, `1/8"`. */
export function shortLength(length: Ticks): string {
  return formatLength(length, grain(length))
    .replace(/^(-?)0'-/, '$1')
    .replace(/^(-?)0 (?=\d)/, '$1');
}
