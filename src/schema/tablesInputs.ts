/** What the calculators of tables are given. The description of a field is its manual. */
import { z } from 'zod';
import { EXPANSION_METALS, rangeFault } from '../trade/expansion.ts';
import type { Fault } from '../trade/given.ts';
import { conductorFault, RADIUS_CABLES } from '../trade/radius.ts';
import { above0, count, edition as ofCode } from './fields.ts';
import { from0 } from './ranges.ts';
import { type Loose, numberIn, together } from './together.ts';

const edition = ofCode.describe("edition of NFPA 70: 2017, 2020 or 2023 (the site's, else 2023)");
const positive = (n: number) => n > 0;
const asList = (fault: Fault | null) =>
  fault === null ? [] : [{ path: [fault.field], message: fault.message, todo: fault.todo }];

export const jumperInput = z.strictObject({
  devicesA: z
    .array(above0)
    .min(1)
    .describe('ratings or settings of the devices on whose load side it is, at least one, each above 0'),
  metal: z.enum(['copper', 'aluminium']).describe('"copper" or "aluminium"'),
  edition,
});

export const groundpathInput = z.strictObject({
  metal: z.enum(['steel', 'aluminium', 'stainless']).describe('"steel", "aluminium" or "stainless"'),
  deviceA: above0.describe('largest rating or setting of any device of the circuits in the tray, above 0'),
  markedAreaIn2: from0.describe('area of metal as it is marked on the tray, from 0'),
  qualifiedService: z.boolean().describe('qualified persons alone maintain and supervise the place'),
  identified: z.boolean().describe('sections and fittings are identified for the ground path'),
  edition,
});

export const expansionInput = together(
  z.strictObject({
    metal: z.enum(EXPANSION_METALS).describe('"steel", "aluminium", "stainless 304" or "stainless 316"'),
    lowF: z.number().describe('coldest the metal gets'),
    highF: z.number().describe('hottest the metal gets, not below lowF'),
    installF: z.number().describe('temperature of the metal when the gap is set'),
    movementIn: above0.optional().describe("what one joint takes up, above 0 (the site's, else 1)"),
    lengthFt: above0.optional().describe('the straight run, above 0: gives segments'),
    movementOf: z
      .strictObject({ lengthFt: above0, dF: z.number() })
      .optional()
      .describe('{lengthFt, dF}: a length and by how much it warms, below 0 where it cools; gives movedIn'),
  }),
  (given) => {
    const [lowF, highF] = [numberIn(given['lowF']), numberIn(given['highF'])];
    return lowF === undefined || highF === undefined ? [] : asList(rangeFault({ lowF, highF }));
  },
);

export const radiusInput = together(
  z.strictObject({
    cable: z
      .enum(RADIUS_CABLES)
      .describe('"TC", "MC interlocked", "MC smooth", "MC shielded", "ITC", "PLTC" or "over 1000 V"'),
    odIn: above0.describe('outside diameter, above 0'),
    shielded: z.boolean().optional().describe('a metallic shield: "TC" and "over 1000 V" (false)'),
    conductorOdIn: above0
      .optional()
      .describe(
        'over one shielded conductor, not above odIn; "MC shielded" needs it, "over 1000 V" may have it',
      ),
    edition,
  }),
  (given) => asList(conductorFaultOf(given)),
);

function conductorFaultOf(given: Loose): Fault | null {
  const cable = RADIUS_CABLES.find((c) => c === given['cable']);
  const conductorOdIn = numberIn(given['conductorOdIn'], positive);
  const odIn = numberIn(given['odIn'], positive);
  // One that is there but is no number is at fault already.
  // The rule asks for it in any edition (goesByConductor); tests/schema hold the two equal.
  const needed = cable === 'MC shielded' && given['conductorOdIn'] === undefined;
  return conductorFault(
    { cable: cable ?? 'TC', conductorOdIn, ...(odIn === undefined ? {} : { odIn }) },
    needed,
  );
}

export const transitionInput = z.strictObject({
  gapFt: from0.describe('from 0'),
  secured: z.boolean().describe('the cables are secured at the transition'),
  guarded: z.boolean().describe('they are guarded, or lie where nothing strikes them'),
  edition,
});

export const ampacityInput = z.strictObject({
  currentCarrying: count.describe('conductors of this one cable that carry current, from 1'),
  coverFt: from0.optional().describe('unbroken solid cover, from 0 (0)'),
  edition,
});

export const markingInput = z.strictObject({
  volts: from0.describe('highest of any conductor in the tray, from 0'),
  edition,
});

export const separationInput = z.strictObject({
  volts: z.array(from0).min(1).describe('of the cables that share the tray, at least one, each from 0'),
  mc: z.boolean().describe('the cables above the threshold are Type MC'),
  edition,
});
