/**
 * Narrowest channel (T13): a cable alone, and a few of one size together, each in a channel of its own. A cable thicker
 * than the channels are deep goes into none of them, whatever its area. By the wrong road the first may end at the right
 * width; the others are drawn so that their squared diameters do not.
 */

import { figure } from '../../../trade/figure.ts';
import { fill } from '../../../trade/fill.ts';
import type { Bottom } from '../../../trade/fillTables.ts';
import { inches, type Ticks, ticks } from '../../../trade/length.ts';
import { type Drawn, model, type Slip, type World } from '../../model.ts';
import { choiceAsk, long, num, numberAsk, word } from '../parts/asks.ts';
import {
  type AreaBy,
  areaBy,
  bothTables,
  type Column,
  cable,
  EDITION,
  mayLie,
  nearTable,
} from '../parts/fillRows.ts';
import { read } from '../parts/reads.ts';

const wants = {
  bottom: ['ventilated', 'solid'],
  /** Whether the cable that lies alone stands over the sides. */
  alone: ['within', 'over'],
  within: 'decimal',
  over: 'decimal',
  count: 'whole',
  second: 'decimal',
} as const;
/** Widths that the channel is kept in. */
const WIDTHS = [2, 4, 6] as const;
/** No area comes closer to a number of the tables. */
const CLEAR = 0.07;
/** Nor a diameter to the depth. */
const CLEAR_OF_DEPTH = 0.05;

interface Lot {
  readonly od: number;
  readonly count: number;
}
interface Plan {
  readonly bottom: Bottom;
  readonly first: Lot;
  readonly second: Lot;
  /** Of the shallowest of the channels. */
  readonly depth: Ticks;
  /** As the person takes it: the table, the column of either lot, the road to the area. */
  readonly table: Bottom;
  readonly columns: { readonly first: Column; readonly second: Column };
  readonly by: AreaBy;
  /** What the cables are held against beside the table: their width against the channel's, and nothing of the table. */
  readonly acrossOnly: boolean;
  /** The diameter is held against the depth. */
  readonly deepEnough: boolean;
}
type Which = 'first' | 'second';

const areaOf = ({ by }: Plan, { od, count }: Lot, world: World) => areaBy(by, od, count, world);

/** `w4`: the narrowest that takes this area of one lot; `none` where no row does or the cable stands over the sides. */
function narrowestFor(plan: Plan, which: Which, area: number, world: World): string {
  const { table: bottom, columns, acrossOnly, deepEnough, depth } = plan;
  const { od, count } = plan[which];
  if (deepEnough && od > inches(depth)) return 'none';
  const takes = (widthIn: number) =>
    acrossOnly
      ? od * count <= widthIn
      : mayLie(area, { bottom, widthIn, column: columns[which] }, world) === 'yes';
  const width = WIDTHS.find(takes);
  return width === undefined ? 'none' : `w${width}`;
}
const narrowest = (plan: Plan, which: Which, world: World) =>
  narrowestFor(plan, which, areaOf(plan, plan[which], world), world);

function plan(drawn: Drawn<typeof wants>, world: World): Plan | null {
  const { bottom, alone, count, second } = drawn;
  const depths = WIDTHS.map((width) => read(world, `card-${width}`, 'tray').depth);
  const made: Plan = {
    bottom,
    first: { od: drawn[alone], count: 1 },
    second: { od: second, count },
    depth: ticks(Math.min(...depths)),
    table: bottom,
    columns: { first: 'one', second: 'several' },
    by: 'circle',
    acrossOnly: false,
    deepEnough: true,
  };
  const lots = [made.first, made.second];
  const close = lots.some((lot) => nearTable(areaOf(made, lot, world), CLEAR, world));
  const atDepth = lots.some(({ od }) => Math.abs(od - inches(made.depth)) < CLEAR_OF_DEPTH);
  const squared: Plan = { ...made, by: 'square' };
  const told = narrowest(squared, 'second', world) !== narrowest(made, 'second', world);
  return close || atDepth || !told ? null : made;
}

type Own = Slip<Plan>;
const taken =
  (as: Partial<Plan>): Own =>
  (one) => ({ ...one, ...as });

const severalColumn = taken({ columns: { first: 'several', second: 'several' } });
/** Where the other column of the right table leads to the same width, nobody can say which it was: the column is likelier. */
const otherTable: Own = (one, world, told) => {
  const other: Plan = { ...one, table: one.table === 'solid' ? 'ventilated' : 'solid' };
  const several = severalColumn(one, world, told) ?? one;
  return narrowest(other, 'first', world) === narrowest(several, 'first', world) ? null : other;
};

export const narrowestChannel = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ bottom, first, second, depth }, world) => ({
    bottom: word(bottom),
    first: num(first.od, 2),
    count: num(second.count),
    second: num(second.od, 2),
    depth: long(depth),
    ...bothTables(world),
  }),
  asks: {
    area: numberAsk(
      (one, world) => areaOf(one, one.first, world),
      ({ bottom, first }, { fillTables }) =>
        fill(
          { tray: { bottom, widthIn: 6 }, cables: [cable(first.od)], edition: EDITION },
          fillTables,
        ).steps.slice(0, 2),
    ),
    first: choiceAsk(
      (one, world) => narrowest(one, 'first', world),
      ({ first, depth }) => [
        {
          say: first.od > inches(depth) ? 'filling.overTheSides' : 'filling.belowTheSides',
          values: { od: figure(first.od), depth: figure(inches(depth)) },
        },
      ],
      {
        asks: ['area'],
        answer: (one, world, { area }) =>
          (area as number) > 0 ? narrowestFor(one, 'first', area as number, world) : 'none',
      },
    ),
    second: choiceAsk(
      (one, world) => narrowest(one, 'second', world),
      (one, world) => [
        {
          say: 'filling.secondArea',
          values: {
            count: one.second.count,
            od: figure(one.second.od),
            area: figure(areaOf(one, one.second, world)),
          },
        },
      ],
    ),
  },
  slips: {
    squares: taken({ by: 'square' }),
    asRadius: taken({ by: 'asRadius' }),
    radius: taken({ by: 'radius' }),
    severalColumn,
    oneColumn: taken({ columns: { first: 'one', second: 'one' } }),
    acrossOnly: taken({ acrossOnly: true }),
    depthForgotten: (one) => (one.first.od > inches(one.depth) ? { ...one, deepEnough: false } : null),
    otherTable,
  },
  figures: () => [],
  figured: () => [],
  says: ['filling.secondArea', 'filling.overTheSides', 'filling.belowTheSides'],
});
