/** Jumper size (T11): one jumper for all circuits in the tray goes by the largest device, NFPA 70, 2023, 250.102(D). */
import { type JumperMetal, jumper, type Size } from '../../../trade/jumper.ts';
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
} as const;
/** The smallest bare conductor that lies in tray as equipment ground: NFPA 70, 2023, 392.10(B)(1)(c). */
const IN_TRAY: Size = '4 AWG';

type By = 'largest' | 'sum' | 'smallest' | 'in-tray' | 'row-below';

interface Plan {
  readonly devicesA: readonly number[];
  readonly metal: JumperMetal;
  /** As the person takes it. */
  readonly by: By;
  readonly column: JumperMetal;
}

function ampsOf({ devicesA, by }: Plan, world: World): number {
  const largest = Math.max(...devicesA);
  if (by === 'sum') return devicesA.reduce((a, b) => a + b, 0);
  if (by === 'smallest') return Math.min(...devicesA);
  if (by !== 'row-below') return largest;
  return world.tables.jumper.rows.findLast((row) => row.deviceA <= largest)?.deviceA ?? largest;
}

/** `awg-8`, or `ask` above the table. */
function sizeOf(one: Plan, world: World): string {
  const devicesA = [ampsOf(one, world)];
  const { size } = jumper({ devicesA, metal: one.column, edition: EDITION }, world.tables.jumper).result;
  return idOf(one.by === 'in-tray' ? IN_TRAY : size);
}
const idOf = (size: Size | null) =>
  size === null ? 'ask' : `awg-${size.replace(' AWG', '').replace('/', '-').replace(' ', '-')}`;

function plan({ small, large, place, metal }: Drawn<typeof wants>): Plan | null {
  const others = small.map(({ amps }) => Number(amps));
  if (new Set(others).size < others.length) return null;
  const devicesA = [...others.slice(0, place), Number(large), ...others.slice(place)];
  return { devicesA, metal, by: 'largest', column: metal };
}

export const jumperSize = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ devicesA, metal }, { tables }) => ({
    metal: word(metal),
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
    decides: choiceAsk(({ by }) => (by === 'row-below' ? 'largest' : by)),
    size: choiceAsk(
      sizeOf,
      ({ devicesA, metal }, { tables }) => jumper({ devicesA, metal, edition: EDITION }, tables.jumper).steps,
      {
        asks: ['decides'],
        answer: (one, world, { decides }) => sizeOf({ ...one, by: decides as By }, world),
      },
    ),
  },
  slips: {
    devicesAdded: (one) => ({ ...one, by: 'sum' }),
    smallest: (one) => ({ ...one, by: 'smallest' }),
    inTray: (one) => ({ ...one, by: 'in-tray' }),
    rowBelow: (one) => ({ ...one, by: 'row-below' }),
    otherMetal: (one) => ({ ...one, column: one.metal === 'copper' ? 'aluminium' : 'copper' }),
  },
  figures: () => [],
  figured: () => [],
  says: [],
});
