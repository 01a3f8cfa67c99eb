/** What `section` is given, and `span` with it: a channel's measures and its holes. */
import { z } from 'zod';
import { HAIR } from '../trade/hair.ts';
import { above0 } from './fields.ts';
import { from0, whole } from './ranges.ts';
import { type Loose, numberIn, rowsOf, type TogetherFault, together } from './together.ts';

const hole = together(
  z.strictObject({
    diameterIn: above0,
    count: whole(1),
    in: z.enum(['web', 'legs']),
    heightIn: from0.optional(),
  }),
  ({ in: where, heightIn }) => {
    if (where === 'legs' && heightIn === undefined)
      return [
        {
          path: ['heightIn'],
          message: 'where in the leg the hole stands is missing',
          todo: "give its centre's height above the web's outer face, in inches",
        },
      ];
    if (where === 'web' && heightIn !== undefined)
      return [
        {
          path: ['heightIn'],
          message: 'a hole in the web has no height',
          todo: 'take it out, or say "in": "legs"',
        },
      ];
    return [];
  },
);

const measures = {
  widthIn: above0.describe('outside width, above 0'),
  depthIn: above0.describe('outside depth, above 0'),
  thicknessIn: above0.describe('of the metal, above 0'),
  lipIn: above0
    .optional()
    .describe("legs' edges turned inward, thickness included: above thicknessIn, at most half of widthIn"),
  holes: z
    .array(hole)
    .optional()
    .describe(
      'in one cross-section; each diameterIn above 0, count from 1, in: "web" or "legs" (both together), for legs heightIn: its centre above the web\'s outer face',
    ),
};

/** A channel's cross-section within another input. */
export const sectionShape = together(z.strictObject(measures), sectionFaults);

export const sectionInput = together(
  z.strictObject({
    ...measures,
    densityLbIn3: above0.optional().describe('of the metal, above 0 (0.2836, steel)'),
  }),
  sectionFaults,
);

const above = (n: number) => n > 0;
/** What cannot be a channel: walls that meet, lips that do not fit, holes that are not within the metal. */
function sectionFaults(given: Loose): readonly TogetherFault[] {
  const width = numberIn(given['widthIn'], above) ?? Number.POSITIVE_INFINITY;
  const depth = numberIn(given['depthIn'], above) ?? Number.POSITIVE_INFINITY;
  const thickness = numberIn(given['thicknessIn'], above);
  const lip = numberIn(given['lipIn'], above);
  return [
    ...(thickness === undefined ? [] : wallFaults(width, depth, thickness, lip)),
    ...(lip === undefined ? [] : lipFaults(width, thickness ?? 0, lip)),
    ...holeFaults(given['holes'], width, depth, thickness ?? 0),
  ];
}

function wallFaults(width: number, depth: number, thickness: number, lip?: number): readonly TogetherFault[] {
  const path = ['thicknessIn'];
  if (thickness >= depth)
    return [
      { path, message: 'the metal is as thick as the channel is deep', todo: 'write less than depthIn' },
    ];
  if (2 * thickness >= width)
    return [{ path, message: 'the two legs fill the width', todo: 'write less than half of widthIn' }];
  if (lip !== undefined && 2 * thickness >= depth)
    return [{ path, message: 'the lips lie on the web', todo: 'write less than half of depthIn' }];
  return [];
}

function lipFaults(width: number, thickness: number, lip: number): readonly TogetherFault[] {
  const path = ['lipIn'];
  if (lip <= thickness)
    return [
      {
        path,
        message: 'the thickness of the leg is counted in the lip, and no more than that is given',
        todo: 'write more than thicknessIn, or leave it out',
      },
    ];
  if (lip > width / 2 + HAIR)
    return [{ path, message: 'the two lips overlap', todo: 'write at most half of widthIn' }];
  return [];
}

function holeFaults(
  holes: unknown,
  width: number,
  depth: number,
  thickness: number,
): readonly TogetherFault[] {
  const faults: TogetherFault[] = [];
  const left = { web: width - 2 * thickness, legs: 2 * (depth - thickness) };
  for (const [i, { diameterIn, count: many, in: where, heightIn }] of rowsOf(holes)) {
    const diameter = numberIn(diameterIn, above);
    if (diameter === undefined || (where !== 'web' && where !== 'legs')) continue;
    const height = where === 'legs' ? numberIn(heightIn, (n) => n >= 0) : undefined;
    if (height !== undefined && (height < diameter / 2 - HAIR || height + diameter / 2 > depth + HAIR))
      faults.push({
        path: ['holes', i, 'heightIn'],
        message: 'the hole is not within the leg',
        todo: "write its centre's height above the web's outer face; the whole hole lies between 0 and depthIn",
      });
    left[where] -= diameter * (numberIn(many, (n) => n >= 1) ?? 1);
    if (left[where] <= HAIR)
      faults.push({
        path: ['holes', i, 'diameterIn'],
        message: `the holes leave nothing of the ${where}`,
        todo: 'give only the holes of one cross-section',
      });
  }
  return faults;
}
