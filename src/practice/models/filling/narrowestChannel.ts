/**
 * Narrowest channel (T13): two cables, each alone in a channel of its own. By the wrong road the first may end at the
 * right width; the second is drawn so that its squared diameter does not.
 */

import { figure } from '../../../trade/figure.ts';
import { fill } from '../../../trade/fill.ts';
import type { Bottom } from '../../../trade/fillTables.ts';
import { type Drawn, model, type Slip, type World } from '../../model.ts';
import { choiceAsk, num, numberAsk, word } from '../parts/asks.ts';
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

const wants = { bottom: ['ventilated', 'solid'], first: 'decimal', second: 'decimal' } as const;
/** Widths that the channel is kept in. */
const WIDTHS = [2, 4, 6] as const;
/** No area comes closer to a number of the tables. */
const CLEAR = 0.07;

interface Plan {
  readonly drawn: Drawn<typeof wants>;
  /** As the person takes it: the table, its column, the road to the area. */
  readonly table: Bottom;
  readonly column: Column;
  readonly by: AreaBy;
  /** The diameter is held against the width, and no table is looked into. */
  readonly acrossOnly: boolean;
}

const areaOf = ({ by }: Plan, od: number, world: World) => areaBy(by, od, 1, world);

/** `w4`: the narrowest that takes it; `none` where no row does. */
function narrowest(plan: Plan, od: number, world: World): string {
  const { table, column, acrossOnly } = plan;
  const takes = (widthIn: number) =>
    acrossOnly
      ? od <= widthIn
      : mayLie(areaOf(plan, od, world), { bottom: table, widthIn, column }, world) === 'yes';
  const width = WIDTHS.find(takes);
  return width === undefined ? 'none' : `w${width}`;
}

function plan(drawn: Drawn<typeof wants>, world: World): Plan | null {
  const made: Plan = { drawn, table: drawn.bottom, column: 'one', by: 'circle', acrossOnly: false };
  const { first, second } = drawn;
  const close = [first, second].some((od) => nearTable(areaOf(made, od, world), CLEAR, world));
  const squared = { ...made, by: 'square' } as const;
  const told = narrowest(squared, second, world) !== narrowest(made, second, world);
  return close || !told || Math.abs(first - second) < 0.1 ? null : made;
}

type Own = Slip<Plan>;
const by =
  (road: AreaBy): Own =>
  (one) => ({ ...one, by: road });
const otherTable: Own = (one) => ({ ...one, table: one.table === 'solid' ? 'ventilated' : 'solid' });

export const narrowestChannel = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ drawn: { bottom, first, second } }, world) => ({
    bottom: word(bottom),
    first: num(first, 2),
    second: num(second, 2),
    ...bothTables(world),
  }),
  asks: {
    area: numberAsk(
      (one, world) => areaOf(one, one.drawn.first, world),
      ({ drawn }, { fillTables }) =>
        fill(
          { tray: { bottom: drawn.bottom, widthIn: 6 }, cables: [cable(drawn.first)], edition: EDITION },
          fillTables,
        ).steps.slice(0, 2),
    ),
    first: choiceAsk((one, world) => narrowest(one, one.drawn.first, world), undefined, {
      asks: ['area'],
      answer: ({ drawn, table: bottom }, world, { area }) => {
        const fits = (widthIn: number) =>
          mayLie(area as number, { bottom, widthIn, column: 'one' }, world) === 'yes';
        const width = drawn.first > 0 && (area as number) > 0 ? WIDTHS.find(fits) : undefined;
        return width === undefined ? 'none' : `w${width}`;
      },
    }),
    second: choiceAsk(
      (one, world) => narrowest(one, one.drawn.second, world),
      (one, world) => [
        {
          say: 'filling.secondArea',
          values: { od: figure(one.drawn.second), area: figure(areaOf(one, one.drawn.second, world)) },
        },
      ],
    ),
  },
  slips: {
    squares: by('square'),
    asRadius: by('asRadius'),
    radius: by('radius'),
    severalColumn: (one) => ({ ...one, column: 'several' }),
    acrossOnly: (one) => ({ ...one, acrossOnly: true }),
    otherTable,
  },
  figures: () => [],
  figured: () => [],
  says: ['filling.secondArea'],
});
