/** Lengths as a drawing letters them: inches alone below a foot. */
import { type Denominator, formatLength, roundTo, type Ticks } from './length.ts';

/** The coarsest of sixteenths, thirty-seconds and sixty-fourths that holds the length exactly; else sixteenths. */
function grain(length: Ticks): Denominator {
  return ([16, 32, 64] as const).find((d) => roundTo(length, d) === length) ?? 16;
}

/**
 * `3'-7 1/8"`, and below a foot `5"`, `1/8"`.
 *
 * @param denominator  part of an inch it is rounded to; left out, the coarsest on the tape that holds it exactly
 */
export function shortLength(length: Ticks, denominator: Denominator = grain(length)): string {
  return formatLength(length, denominator)
    .replace(/^(-?)0'-/, '$1')
    .replace(/^(-?)0 (?=\d)/, '$1');
}

/** The number of inches alone, feet among them: `1/8`, `14 1/2`; for a text that names the unit itself. */
export function inchNumber(length: Ticks): string {
  const text = shortLength(length).replace('"', '');
  const [feet, rest] = text.split("'-");
  if (rest === undefined) return text;
  const [inch = '0', ...part] = rest.split(' ');
  return [Number(feet) * 12 + Number(inch), ...part].join(' ');
}
