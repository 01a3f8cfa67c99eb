/** Ground path (T11): whether the channel itself may be the path back, by the area marked on it and the largest device. */
import { type GroundMetal, groundpath } from '../../../trade/groundpath.ts';
import { type Drawn, model, type World } from '../../model.ts';
import { choiceAsk, num, rows, word } from '../parts/asks.ts';
import { EDITION } from '../parts/fillRows.ts';

const wants = {
  metal: ['steel', 'aluminium', 'stainless'],
  device: ['60', '90', '100', '150', '200', '300', '400', '500', '600', '800', '1200'],
  marked: 'decimal',
  serviced: ['qualified', 'unsaid'],
} as const;
type May = 'yes' | 'no' | 'ask';

interface Plan {
  readonly drawn: Drawn<typeof wants>;
  /** As the person takes it. */
  readonly column: GroundMetal;
  readonly rowBelow: boolean;
  readonly said: May | null;
  readonly asksWho: boolean;
}

/** The device whose row is read: its own, or that of the row below. */
function rowDevice({ rowBelow }: Plan, device: number, world: World): number {
  const below = world.tables.groundpath.rows.findLast((row) => row.deviceA < device);
  return rowBelow ? (below?.deviceA ?? device) : device;
}

const held = (one: Plan, world: World, serviced = true, device = Number(one.drawn.device)) =>
  groundpath(
    {
      metal: one.column,
      deviceA: rowDevice(one, device, world),
      markedAreaIn2: one.drawn.marked,
      qualifiedService: serviced,
      identified: true,
      edition: EDITION,
    },
    world.tables.groundpath,
  );

/** `d100`: the largest device of the table that this mark would serve; `none` where it serves none. */
function upTo(one: Plan, world: World): string {
  const row = world.tables.groundpath.rows.findLast(
    ({ deviceA }) => held(one, world, true, deviceA).result.holds === true,
  );
  return row === undefined ? 'none' : `d${row.deviceA}`;
}

/** `a070`: what the table wants; `not-permitted` above the metal's last row, `no-column` for a metal without one. */
function rowOf(one: Plan, world: World): string {
  const { requiredIn2, refer } = held(one, world).result;
  if (requiredIn2 !== null) return `a${String(Math.round(requiredIn2 * 100)).padStart(3, '0')}`;
  return refer ? 'no-column' : 'not-permitted';
}

const qualified = ({ drawn, asksWho }: Plan) => !asksWho || drawn.serviced === 'qualified';
function may(one: Plan, world: World): May {
  if (one.said !== null) return one.said;
  const { holds } = held(one, world, qualified(one)).result;
  return holds === null ? 'ask' : holds ? 'yes' : 'no';
}

function mayFrom(one: Plan, world: World, row: string): May {
  if (!qualified(one)) return may(one, world);
  if (row === 'no-column') return 'ask';
  return row === 'not-permitted' ? 'no' : Number(row.slice(1)) / 100 <= one.drawn.marked ? 'yes' : 'no';
}

function plan(drawn: Drawn<typeof wants>): Plan {
  return { drawn, column: drawn.metal, rowBelow: false, said: null, asksWho: true };
}

const COLUMN = { steel: 'aluminium', aluminium: 'steel', stainless: 'steel' } as const;

export const groundPath = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ drawn }, { tables }) => ({
    metal: word(drawn.metal),
    device: num(Number(drawn.device)),
    marked: num(drawn.marked, 2),
    serviced: word(drawn.serviced),
    table: rows(
      tables.groundpath.rows.map(({ deviceA, steel, aluminium }) => ({
        amps: num(deviceA),
        steel: steel === null ? word('none', 'area') : num(steel, 2),
        aluminium: aluminium === null ? word('none', 'area') : num(aluminium, 2),
      })),
    ),
  }),
  asks: {
    row: choiceAsk(rowOf),
    'up-to': choiceAsk(upTo, (one, world) => {
      const up = upTo(one, world);
      return [
        up === 'none'
          ? { say: 'bonding.servesNone' }
          : { say: 'bonding.serves', values: { device: up.slice(1) } },
      ];
    }),
    may: choiceAsk(may, (one, world) => held(one, world, qualified(one)).steps, {
      asks: ['row'],
      answer: (one, world, { row }) => mayFrom(one, world, row as string),
    }),
  },
  slips: {
    otherColumn: (one) => ({ ...one, column: COLUMN[one.drawn.metal] }),
    rowBelow: (one) => ({ ...one, rowBelow: true }),
    markIgnored: (one, world) =>
      qualified(one) && may(one, world) !== 'yes' ? { ...one, said: 'yes' } : null,
    whoOverlooked: (one) => (qualified(one) ? null : { ...one, asksWho: false }),
    wireThough: (one, world) => (may(one, world) === 'yes' ? { ...one, said: 'no' } : null),
    refusedThough: (one, world) => (may(one, world) === 'ask' ? { ...one, said: 'no' } : null),
  },
  figures: () => [],
  figured: () => [],
  says: ['bonding.serves', 'bonding.servesNone'],
});
