/** Lengths and numbers in what is written or said: of a drawing, a text, a given. */
import { inches, tryLength } from '../../trade/length.ts';
import type { Unit } from '../family.ts';

/** What stands in SVG as XML holds it. */
export const lettersOf = (xml: string): string =>
  xml
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&');

/** The letters of a drawing, a line each. */
export const textIn = (svg: string): string => lettersOf(svg.replaceAll(/<[^>]*>/g, '\n'));

const LENGTHS =
  /\d+ ft \d+(?: \d+\/\d+)? in\b(?!²)|\d+'(?:-\d+(?: \d+\/\d+)?")?|(?:(?:\d+ )?\d+\/\d+|\d+(?:\.\d+)?)(?= in\b(?!²)|")/g;
/** In the words of a drawing whole feet are said without their inches. */
const ON_DRAWINGS = new RegExp(`${LENGTHS.source}|\\d+ ft\\b(?!²)`, 'g');
const NUMBERS: Partial<Record<Unit, RegExp>> = {
  in2: /\d+(?:\.\d+)?(?= in²)/g,
  lb: /\d+(?:\.\d+)?(?= lb\b(?!\/))/g,
  lbPerFt: /\d+(?:\.\d+)?(?= lb\/ft)/g,
  deg: /\d+(?:\.\d+)?(?=°(?![FC])| degrees)/g,
};

const found = (text: string, sign: RegExp): readonly number[] =>
  [...text.matchAll(sign)].flatMap(([written]) => {
    const length = tryLength(written);
    return typeof length === 'number' ? [inches(length)] : [];
  });

/** How finely an answer is wanted, `to the nearest 1/32 in`: no length of the job. */
const FINENESS: readonly number[] = [1 / 32, 1 / 64];

/** Lengths, inches, in their order; not how finely one is wanted. */
export const lengthsIn = (text: string): readonly number[] =>
  found(text, LENGTHS).filter((length) => !FINENESS.includes(length));
/** Lengths on a drawing or in its words, inches, in their order; `14 ft` is one. */
export const lengthsOn = (text: string): readonly number[] => found(text, ON_DRAWINGS);

/** Whole numbers in what is left of a text without its lengths. */
export const countsIn = (text: string): readonly number[] =>
  [...text.replaceAll(ON_DRAWINGS, ' ').matchAll(/\b\d+\b/g)].map(([written]) => Number(written));

/** Numbers of this unit; lengths in inches. A unit that has no sign of its own has none. */
export function numbersIn(text: string, unit: Unit): readonly number[] {
  if (unit === 'in') return lengthsIn(text);
  const sign = NUMBERS[unit];
  return sign === undefined ? [] : [...text.matchAll(sign)].map(([written]) => Number(written));
}
