/** Ground path (T11): whether the channel itself may be the path back, by the area marked on it and the largest device. */
import { type GroundMetal, groundpath } from '../../../trade/groundpath.ts';
import { type Drawn, model, type World } from '../../model.ts';
import { choiceAsk, num, rows, word } from '../parts/asks.ts';
import { EDITION } from '../parts/fillRows.ts';

const wants = {
  metal: ['steel', 'aluminium', 'stainless'],
  device: ['60', '90', '100', '150', '200', '300', '400', '500', '600', '800', '1200'],
  marked: 'decimal',
  serviced: ['qualified', 'unsaid', 'others'],
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

/** Of the metal alone: who maintains the place is held by itself. */
const held = (one: Plan, world: World, device = Number(one.drawn.device)) =>
  groundpath(
    {
      metal: one.column,
      deviceA: rowDevice(one, device, world),
      markedAreaIn2: one.drawn.marked,
      qualifiedService: true,
      identified: true,
      edition: EDITION,
    },
    world.tables.groundpath,
  );

/** `d100`: the largest device of the table that this mark would serve; `none` where it serves none. */
function upTo(one: Plan, world: World): string {
  const row = world.tables.groundpath.rows.findLast(
    ({ deviceA }) => held(one, world, deviceA).result.holds === true,
  );
  return row === undefined ? 'none' : `d${row.deviceA}`;
}

/** `a070`: what the table wants; `not-permitted` above the metal's last row, `no-column` for a metal without one. */
function rowOf(one: Plan, world: World): string {
  const { requiredIn2, refer } = held(one, world).result;
  if (requiredIn2 !== null) return `a${String(Math.round(requiredIn2 * 100)).padStart(3, '0')}`;
  return refer ? 'no-column' : 'not-permitted';
}

/** Whether the place allows it: only where qualified persons alone maintain it, and where that is not said, it is asked. */
const place = ({ drawn, asksWho }: Plan): May =>
  asksWho ? ({ qualified: 'yes', unsaid: 'ask', others: 'no' } as const)[drawn.serviced] : 'yes';
/** Whether the metal does: too little is refused whoever maintains the place. */
function metal(one: Plan, world: World): May {
  const { holds } = held(one, world).result;
  return holds === null ? 'ask' : holds ? 'yes' : 'no';
}
function both(one: Plan, ofMetal: May): May {
  const all = [place(one), ofMetal];
  return all.includes('no') ? 'no' : all.includes('ask') ? 'ask' : 'yes';
}
const may = (one: Plan, world: World): May => one.said ?? both(one, metal(one, world));

function mayFrom(one: Plan, row: string): May {
  if (row === 'no-column') return both(one, 'ask');
  const enough = row !== 'not-permitted' && Number(row.slice(1)) / 100 <= one.drawn.marked;
  return both(one, enough ? 'yes' : 'no');
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
    may: choiceAsk(
      may,
      (one, world) => [
        ...held(one, world).steps,
        ...(place(one) === 'yes'
          ? []
          : [{ say: place(one) === 'ask' ? 'bonding.whoUnsaid' : 'bonding.others' }]),
      ],
      { asks: ['row'], answer: (one, _, { row }) => mayFrom(one, row as string) },
    ),
  },
  slips: {
    otherColumn: (one) => ({ ...one, column: COLUMN[one.drawn.metal] }),
    rowBelow: (one) => ({ ...one, rowBelow: true }),
    markIgnored: (one, world) =>
      place(one) === 'yes' && may(one, world) !== 'yes' ? { ...one, said: 'yes' } : null,
    whoOverlooked: (one) => (place(one) === 'yes' ? null : { ...one, asksWho: false }),
    placeRefused: (one, world) =>
      place(one) === 'ask' && metal(one, world) === 'yes' ? { ...one, said: 'no' } : null,
    wireThough: (one, world) => (may(one, world) === 'yes' ? { ...one, said: 'no' } : null),
    refusedThough: (one, world) =>
      metal(one, world) === 'ask' && may(one, world) === 'ask' ? { ...one, said: 'no' } : null,
  },
  figures: () => [],
  figured: () => [],
  says: ['bonding.serves', 'bonding.servesNone', 'bonding.whoUnsaid', 'bonding.others'],
});
