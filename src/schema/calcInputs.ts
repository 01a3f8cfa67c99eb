/**
 * What each calculator is given, as the command and the pages read it. The description of a field is its manual:
 * `calc VERB --help` prints it.
 */
import { z } from 'zod';
import type { FillCable } from '../trade/fill.ts';
import { DENOMINATORS } from '../trade/length.ts';
import { above0, count, edition } from './fields.ts';
import { lengthAbove0, lengthFrom0 } from './length.ts';

export const convertInput = z.strictObject({
  text: lengthFrom0.describe('the length'),
  toFraction: z
    .literal(DENOMINATORS)
    .optional()
    .describe('2, 4, 8, 16, 32 or 64: part of an inch that text and roundedIn are rounded to (16)'),
});

export const cutInput = z.strictObject({
  toSpliceEdge: lengthFrom0.describe(
    "clear length, from 0: from the beginning to the splice's edge, or from edge to edge",
  ),
  insertedEnds: z.literal([0, 1, 2]).describe('ends that go into a splice: 0, 1 or 2'),
  insertion: lengthFrom0.optional().describe('how far one end goes in, from 0 (5 in)'),
  stock: lengthAbove0.optional().describe('one length as it comes, above 0 (20 ft)'),
});

export const markInput = z.strictObject({
  at: lengthFrom0.describe('the mark, from 0, from the end that the holes are measured from'),
  firstHole: lengthFrom0.describe('centre of the first hole, from 0, from the same end'),
  pitch: lengthAbove0.describe('centre to centre of the holes, above 0'),
  holeWidth: lengthAbove0.describe('width of a hole along the tray, above 0'),
  clearance: lengthFrom0
    .optional()
    .describe('metal kept between mark and hole edge, from 0 (one hole width)'),
});

const cableShape = z.strictObject({
  odIn: above0.optional(),
  areaIn2: above0.optional(),
  count,
  make: z.enum(['multiconductor', 'single']).optional(),
});

/** Exactly one of diameter and area; a single conductor by its diameter. Said even when other fields are wrong. */
const cable = cableShape
  .superRefine(
    (given, ctx) => {
      const fault = sizeFault(given);
      if (fault !== undefined)
        ctx.addIssue({
          code: 'custom',
          path: [fault.at],
          message: fault.message,
          params: { todo: fault.todo },
        });
    },
    { when: ({ value }) => typeof value === 'object' && value !== null && !Array.isArray(value) },
  )
  .transform(
    ({ odIn, areaIn2, count, make = 'multiconductor' }): FillCable =>
      odIn !== undefined ? { make, odIn, count } : { make: 'multiconductor', areaIn2: areaIn2 ?? 0, count },
  );

function sizeFault({ odIn, areaIn2, make }: z.input<typeof cableShape>) {
  if (odIn !== undefined && areaIn2 !== undefined)
    return {
      at: 'areaIn2',
      message: 'the diameter is given too, and may not agree',
      todo: 'keep one of odIn and areaIn2',
    };
  if (odIn === undefined && make === 'single')
    return {
      at: 'odIn',
      message: 'a single conductor is judged by its diameter',
      todo: 'give odIn in place of areaIn2',
    };
  if (odIn === undefined && areaIn2 === undefined)
    return {
      at: 'odIn',
      message: 'neither diameter nor area is given',
      todo: 'give one of odIn and areaIn2',
    };
  return undefined;
}

export const fillInput = z.strictObject({
  tray: z
    .strictObject({ bottom: z.enum(['ventilated', 'solid']), widthIn: above0 })
    .describe('bottom: "ventilated" or "solid"; widthIn: inside width, above 0'),
  cables: z
    .array(cable)
    .min(1)
    .describe(
      'at least one; each odIn (outside diameter) or areaIn2, above 0; count from 1; make: "multiconductor" (left out) or "single" (odIn only)',
    ),
  qualifiedOnly: z.boolean().optional().describe('true: qualified persons alone service the place (false)'),
  spare: z.number().gte(0).lt(1).optional().describe('share of the limit to keep free, from 0, below 1 (0)'),
  edition: edition.describe('edition of NFPA 70: 2017, 2020 or 2023 (2023)'),
});
