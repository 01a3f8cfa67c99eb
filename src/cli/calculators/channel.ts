/** Lengths, cutting, marking, fill. */
import { convertInput, cutInput, fillInput, markInput } from '../../schema/calcInputs.ts';
import { convert } from '../../trade/convert.ts';
import { cut } from '../../trade/cut.ts';
import { fill } from '../../trade/fill.ts';
import { inEdition } from '../../trade/inEdition.ts';
import { mark } from '../../trade/mark.ts';
import { type Calculator, calculator } from '../calculator.ts';

export const channel: readonly Calculator[] = [
  calculator(
    'length',
    'reads a length and writes it in inches, millimetres and feet and inches',
    convertInput,
    convert,
    [
      ['in, mm', 'the length, not rounded'],
      ['text, roundedIn', 'rounded to toFraction, halves away from zero'],
    ],
  ),
  calculator(
    'cut',
    'the length to cut a piece to, from what was measured and what goes into its splices',
    cutInput,
    (given, { tables }) => cut(given, tables.usual.insertion),
    [
      ['cutIn, cutMm, text', 'the cut'],
      ['fitsStock', 'whether one stock length is long enough'],
    ],
  ),
  calculator(
    'mark',
    'whether a cutting mark is clear of the holes, and the nearest places that are',
    markInput,
    mark,
    [
      ['clear', 'whether it is'],
      ['shorterIn, longerIn', 'nearest clear places towards and away from the end; null: there is none'],
    ],
  ),
  calculator(
    'fill',
    'how full a channel is by the tables of NFPA 70',
    fillInput,
    (given, { tables }) => inEdition(given, tables.usual.edition, (g) => fill(g, tables.fill)),
    [
      ['areaIn2, column, table', 'of the multiconductor cables; column 1 one cable, 2 more'],
      ['allowedIn2, within, fraction', "the table's limit; whether it holds; share used of what may be used"],
      ['spareIn2', 'what may still go in; below 0 when over'],
      ['cables', 'how many in all'],
      ['sumOfDiametersIn, allowedIn', 'of single conductors, with the width they are held against'],
      ['refer, why', 'true: ask the authority or the engineer; numbers that depend on it are null'],
    ],
  ),
];
