/**
 * Lengths, exactly. A length is a whole number of ticks: 1 in = 8128 ticks, so 1/64 in (127 ticks) and 1 mm
 * (320 ticks) are both whole, and feet, sixteenths and millimetres add up without a rounding in between.
 * Texts are read in lengthText.ts; here are the unit, its edges and the way a length is written.
 */
import { GivenError } from './given.ts';
import { readLengthText } from './lengthText.ts';
import { LENGTH_REFUSALS, type Refusal } from './lengthWords.ts';
import { fillPlaces } from './say.ts';
import { type Denominator, LONGEST_TICKS, TICKS_PER_INCH, TICKS_PER_MILLIMETRE } from './units.ts';

export {
  DENOMINATORS,
  type Denominator,
  TICKS_PER_FOOT,
  TICKS_PER_INCH,
  TICKS_PER_MILLIMETRE,
} from './units.ts';

declare const halves: unique symbol;
declare const brand: unique symbol;
/** A whole number of half ticks, counted in ticks: what the middle of two places is. Every length in ticks is one. */
export type HalfTicks = number & { readonly [halves]: true };
/** A whole number of ticks; only `ticks` and the readers make one. */
export type Ticks = HalfTicks & { readonly [brand]: 'Ticks' };

/** Takes a whole number as ticks. @throws RangeError when it is none (a slip of the program, not of a person). */
export function ticks(n: number): Ticks {
  if (!Number.isSafeInteger(n)) throw new RangeError(`${n} is not a whole number of ticks`);
  return (n === 0 ? 0 : n) as Ticks;
}

/** Nearest whole number, halves away from zero; never -0. */
export function nearest(n: number): number {
  const whole = Math.floor(Math.abs(n) + 0.5);
  return n < 0 && whole !== 0 ? -whole : whole;
}

/** The place half way between two. */
export function middle(a: Ticks, b: Ticks): HalfTicks {
  return ((a + b) / 2) as HalfTicks;
}

/** The tick nearest to a number of inches, halves away from zero. @throws RangeError beyond what is exact. */
export function fromInches(n: number): Ticks {
  return ticks(nearest(n * TICKS_PER_INCH));
}

/** The length in inches, as near as a number can hold it. */
export function inches(length: HalfTicks): number {
  return length / TICKS_PER_INCH;
}

/** The length in millimetres, as near as a number can hold it. */
export function millimetres(length: Ticks): number {
  return length / TICKS_PER_MILLIMETRE;
}

/** Rounds to whole 1/denominator in, halves away from zero. */
export function roundTo(length: Ticks, denominator: Denominator): Ticks {
  const grain = TICKS_PER_INCH / denominator;
  return ticks(nearest(length / grain) * grain);
}

/**
 * Writes a length as the trade does: always feet, inches below 12, the fraction reduced: `12'-3 1/2"`, `0'-6"`,
 * `-0'-0 1/16"`. Rounded to 1/denominator in first, so 11 31/32 in to 1/16 carries into 1'-0".
 */
export function formatLength(length: Ticks, denominator: Denominator = 16): string {
  const rounded = roundTo(length, denominator);
  const parts = nearest(Math.abs(rounded) / (TICKS_PER_INCH / denominator));
  const whole = Math.floor(parts / denominator);
  let top = parts % denominator;
  let bottom: number = denominator;
  while (top !== 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  const fraction = top === 0 ? '' : ` ${top}/${bottom}`;
  return `${rounded < 0 ? '-' : ''}${Math.floor(whole / 12)}'-${whole % 12}${fraction}"`;
}

export interface LengthOptions {
  /** A length below zero is taken only where this is set. */
  readonly signed?: boolean;
}

/** As `readLength`, but hands the refusal back instead of throwing it. */
export function tryLength(given: string | number, options: LengthOptions = {}): Ticks | Refusal {
  const signed = options.signed === true;
  const count = typeof given === 'number' ? numberToTicks(given, signed) : readLengthText(given, signed);
  return typeof count === 'number' ? ticks(count) : count;
}

function numberToTicks(given: number, signed: boolean): number | Refusal {
  if (Number.isNaN(given)) return { refused: 'noNumber', values: {} };
  if (given < 0 && !signed) return { refused: 'negative', values: {} };
  const count = nearest(given * TICKS_PER_INCH);
  return Math.abs(count) <= LONGEST_TICKS ? count : { refused: 'tooLong', values: {} };
}

/**
 * Reads a length as a person writes it, or a number of inches. What is no whole number of ticks goes to the
 * nearest one, halves away from zero. The forms are listed in src/cli/README.md, "Lengths".
 *
 * @throws {GivenError} one fault without a field: what is wrong and what to write instead
 */
export function readLength(given: string | number, options: LengthOptions = {}): Ticks {
  const answer = tryLength(given, options);
  if (typeof answer === 'number') return answer;
  throw new GivenError([{ field: '', value: given, ...lengthRefusal(answer) }]);
}

/** The two sentences of a refused length. */
export function lengthRefusal({ refused, values }: Refusal): { message: string; todo: string } {
  const { message, todo } = LENGTH_REFUSALS[refused];
  return { message: fillPlaces(message, values), todo: fillPlaces(todo, values) };
}
