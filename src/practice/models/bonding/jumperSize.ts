/**
 * Jumper size (T11): one jumper for all circuits in the tray goes by the largest device, NFPA 70, 2023, 250.102(D); a single
 * conductor laid in the tray as equipment ground does so too, 250.122(C), and is 4 AWG or larger, 392.10(B)(1)(c).
 */
import type { Step } from '../../../trade/answer.ts';
import { compareSizes, type JumperMetal, jumper, type Size } from '../../../trade/jumper.ts';
import { type Drawn, model, type World } from '../../model.ts';
import { choiceAsk, num, rows, word } from '../parts/asks.ts';
import { EDITION } from '../parts/fillRows.ts';

const SMALL = ['15', '20', '25', '30', '40', '50', '60'] as const;
/** The last is one that the table, as it is shown, does not reach. */
const LARGE = ['70', '90', '100', '125', '150', '175', '200', '225', '250', '300', '350', '1600'] as const;
const wants = {
  small: { rows: { amps: SMALL } },
  large: LARGE,
  place: 'whole',
  metal: ['copper', 'aluminium'],
  wire: ['jumper', 'laid'],
} as const;
/** The smallest single conductor that lies in tray as equipment ground: NFPA 70, 2023, 392.10(B)(1)(c). */
const IN_TRAY: Size = '4 AWG';

type By = 'largest' | 'sum' | 'smallest' | 'in-tray' | 'row-below';

interface Plan {
  readonly devicesA: readonly number[];
  readonly metal: JumperMetal;
  readonly wire: 'jumper' | 'laid';
  /** As the person takes it. */
  readonly by: By;
  readonly column: JumperMetal;
  /** Whether what is laid in the tray is held against the least that may lie there. */
  readonly least: boolean;
}

function ampsOf({ devicesA, by }: Plan, world: World): number {
  const largest = Math.max(...devicesA);
  if (by === 'sum') return devicesA.reduce((a, b) => a + b, 0);
  if (by === 'smallest') return Math.min(...devicesA);
  if (by !== 'row-below') return largest;
  return world.tables.jumper.rows.findLast((row) => row.deviceA <= largest)?.deviceA ?? largest;
}

const tableSize = (one: Plan, world: World): Size | null =>
  jumper({ devicesA: [ampsOf(one, world)], metal: one.column, edition: EDITION }, world.tables.jumper).result
    .size;

/** Whether the table gives less than may lie in the tray. */
function leastDecides(one: Plan, world: World): boolean {
  if (one.by === 'in-tray') return true;
  if (one.wire === 'jumper' || !one.least) return false;
  const size = tableSize(one, world);
  return size !== null && compareSizes(size, IN_TRAY) < 0;
}

/** `awg-8`, or `ask` above the table. */
const sizeOf = (one: Plan, world: World): string =>
  idOf(leastDecides(one, world) ? IN_TRAY : tableSize(one, world));
function decides(one: Plan, world: World): string {
  if (leastDecides(one, world)) return 'in-tray';
  return one.by === 'row-below' ? 'largest' : one.by;
}
const idOf = (size: Size | null) =>
  size === null ? 'ask' : `awg-${size.replace(' AWG', '').replace('/', '-').replace(' ', '-')}`;

function plan({ small, large, place, metal, wire }: Drawn<typeof wants>, world: World): Plan | null {
  const others = small.map(({ amps }) => Number(amps));
  if (new Set(others).size < others.length) return null;
  const devicesA = [...others.slice(0, place), Number(large), ...others.slice(place)];
  const made: Plan = { devicesA, metal, wire, by: 'largest', column: metal, least: true };
  // The table's own 4 AWG would leave open which of the two decides.
  return wire === 'laid' && tableSize(made, world) === IN_TRAY ? null : made;
}

const otherMetal = (one: Plan): Plan => ({
  ...one,
  column: one.metal === 'copper' ? 'aluminium' : 'copper',
});
const rowBelow = (one: Plan): Plan => ({ ...one, by: 'row-below' });
/**
 * Whether misreading the table leads to this size as well. Who adds the devices, or takes the other rule, says so where it
 * is asked what decides, and the size then follows from there; with that right, it is the table that was misread.
 */
const misreadToo = (taken: Plan, world: World, plan: Plan) =>
  (taken.by === 'sum' || taken.by === 'in-tray') &&
  [otherMetal(plan), rowBelow(plan)].some((one) => sizeOf(one, world) === sizeOf(taken, world));

/** The trade's steps speak of a jumper; what is laid in the tray goes by the same table. */
const tableSteps = ({ devicesA, metal, wire }: Plan, world: World): readonly Step[] =>
  jumper({ devicesA, metal, edition: EDITION }, world.tables.jumper).steps.map((step) =>
    step.say === 'jumper.largest' && wire === 'laid' ? { ...step, say: 'bonding.groundLargest' } : step,
  );

const sizeAsk = choiceAsk<Plan>(
  sizeOf,
  (one, world) => [
    ...tableSteps(one, world),
    ...(one.wire === 'laid'
      ? [{ say: leastDecides(one, world) ? 'bonding.leastDecides' : 'bonding.leastHolds' }]
      : []),
  ],
  {
    asks: ['decides'],
    answer: (one, world, { decides: said }) =>
      sizeOf({ ...one, by: said as By, least: said !== 'largest' }, world),
  },
);

export const jumperSize = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ devicesA, metal, wire }, { tables }) => ({
    metal: word(metal),
    wire: word(wire),
    devices: rows(devicesA.map((amps) => ({ amps: num(amps) }))),
    table: rows(
      tables.jumper.rows.map((row) => ({
        amps: num(row.deviceA),
        copper: word(row.copper),
        aluminium: word(row.aluminium),
      })),
    ),
  }),
  asks: {
    decides: choiceAsk(decides),
    size: {
      ...sizeAsk,
      touched: (taken, world, plan) =>
        sizeOf(taken, world) !== sizeOf(plan, world) && !misreadToo(taken, world, plan),
    },
  },
  slips: {
    devicesAdded: (one) => ({ ...one, by: 'sum' }),
    // Of what is laid in the tray the least decides then: that is told as leastForSize.
    smallest: (one) => (one.wire === 'laid' ? null : { ...one, by: 'smallest' }),
    inTray: (one) => (one.wire === 'laid' ? null : { ...one, by: 'in-tray' }),
    leastForSize: (one) => (one.wire === 'laid' ? { ...one, by: 'in-tray' } : null),
    leastForgotten: (one, world) =>
      one.wire === 'laid' && leastDecides(one, world) ? { ...one, least: false } : null,
    rowBelow,
    otherMetal,
  },
  figures: () => [],
  figured: () => [],
  says: ['bonding.leastDecides', 'bonding.leastHolds', 'bonding.groundLargest'],
});
