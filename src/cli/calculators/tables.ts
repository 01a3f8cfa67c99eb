/** Jumpers, ground path, expansion, bend radius, transition, ampacity, marking, separation: each by its table. */
import type { z } from 'zod';
import {
  ampacityInput,
  expansionInput,
  groundpathInput,
  jumperInput,
  markingInput,
  radiusInput,
  separationInput,
  transitionInput,
} from '../../schema/tablesInputs.ts';
import type { TradeTables } from '../../schema/tradeTables.ts';
import { ampacity } from '../../trade/ampacity.ts';
import type { Answered } from '../../trade/answer.ts';
import type { Edition } from '../../trade/editions.ts';
import { expansion } from '../../trade/expansion.ts';
import { groundpath } from '../../trade/groundpath.ts';
import { inEdition } from '../../trade/inEdition.ts';
import { jumper } from '../../trade/jumper.ts';
import { marking } from '../../trade/marking.ts';
import { radius } from '../../trade/radius.ts';
import { separation } from '../../trade/separation.ts';
import { transition } from '../../trade/transition.ts';
import { type Calculator, calculator } from '../calculator.ts';

/** A calculator of the code: in the edition named, else in the site's. */
export function byEdition<Given extends { readonly edition?: Edition | undefined }>(
  name: string,
  line: string,
  fields: z.ZodObject & z.ZodType<Given>,
  work: (given: Given, tables: TradeTables) => Answered<object>,
  results: Calculator['results'],
): Calculator {
  return calculator<Given>(
    name,
    line,
    fields,
    (given, { tables }) => inEdition(given, tables.usual.edition, (g) => work(g, tables)),
    results,
  );
}

const REFER = ['refer, why', 'true: ask whom why names; numbers that depend on it are null'] as const;

export const tables: readonly Calculator[] = [
  byEdition(
    'jumper',
    'the size of a bonding jumper by the largest device',
    jumperInput,
    (given, { jumper: table }) => jumper(given, table),
    [['size, rowA, table', 'smallest wire, the row it stands in, the table; null above 1200 A'], REFER],
  ),
  byEdition(
    'groundpath',
    'whether tray may be the ground path, by the area of metal marked on it',
    groundpathInput,
    (given, { groundpath: table }) => groundpath(given, table),
    [
      ['requiredIn2', 'least area of metal; null where it is not permitted'],
      ['permitted, holds', 'whether tray may serve; whether what is marked is enough'],
      ['table', '392.60(B), in 2017 392.60(A)'],
      REFER,
    ],
  ),
  calculator(
    'expansion',
    'how far apart expansion joints may stand, and how wide one is set',
    expansionInput,
    (given, { tables: { expansion: table } }) => expansion(given, table),
    [
      ['maxSpacingFt', 'movement / (12 x rate x range)'],
      ['tableFt', 'as the guideline prints it, at a range that it lists and a movement of 1'],
      ['segments', 'parts of lengthFt'],
      ['gapIn', 'null outside the range'],
      ['movedIn', 'of movementOf, with the sign of dF'],
      REFER,
    ],
  ),
  byEdition(
    'radius',
    'the smallest radius that a cable is bent to, to the inner edge',
    radiusInput,
    (given, { radius: table }) => radius(given, table),
    [
      ['multiple, radiusIn', 'the multiple that governs; null for ITC and PLTC'],
      ['table', 'the section; null where none speaks of it'],
      REFER,
    ],
  ),
  byEdition(
    'transition',
    'cables over a gap without tray under them',
    transitionInput,
    (given, { transition: rule }) => transition(given, rule),
    [['holds, limitFt', 'not above the limit, secured and guarded; null in 2017'], REFER],
  ),
  byEdition(
    'ampacity',
    "what is left of a cable's ampacity in tray",
    ampacityInput,
    (given, { ampacity: table }) => ampacity(given, table),
    [
      ['percent', 'by the conductors inside the cable, and 95 % of that above 6 ft of solid cover'],
      ['tables', 'that it goes by'],
    ],
  ),
  byEdition(
    'marking',
    'whether conductors ask for a danger notice',
    markingInput,
    (given, { marking: rule }) => marking(given, rule),
    [
      ['required', 'above 600 V'],
      ['maxSpacingFt', 'from notice to notice; null where none is asked for'],
    ],
  ),
  byEdition(
    'separation',
    'whether cables that share a tray ask for a barrier',
    separationInput,
    (given, { separation: rule }) => separation(given, rule),
    [['barrier, thresholdV', 'some above the threshold, some not, and not Type MC']],
  ),
];
