/** A length as the trade reads it, feet and inches apart, and what people who mix the two up make of it. */
import {
  formatLength,
  fromInches,
  inches,
  TICKS_PER_FOOT,
  type Ticks,
  ticks,
} from '../../../trade/length.ts';

export interface FeetInch {
  readonly feet: number;
  /** With its part, below 12. */
  readonly inch: number;
}

export function feetInch(length: Ticks): FeetInch {
  const feet = Math.floor(length / TICKS_PER_FOOT);
  return { feet, inch: inches(ticks(length - feet * TICKS_PER_FOOT)) };
}

/** 7'-3" written as 7.3 ft; from ten inches on people write 7.10, 7.11. In feet. */
export const asDecimals = ({ feet, inch }: FeetInch): number => feet + inch / (inch < 10 ? 10 : 100);

/** Inches as a text, to sixty-fourths. */
export const lengthText = (inch: number): string => formatLength(fromInches(inch), 64);
