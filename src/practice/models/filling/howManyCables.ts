/**
 * How many cables of one size (T13): the limit of the row over the area of one, whole cables only. One more than may
 * lie there is what the outside width leads to as well, so rounding up has no mistake of its own.
 */

import { figure } from '../../../trade/figure.ts';
import type { Bottom } from '../../../trade/fillTables.ts';
import { HAIR } from '../../../trade/hair.ts';
import { inches, type Ticks } from '../../../trade/length.ts';
import { type Drawn, model, type Slip, type World } from '../../model.ts';
import { long, num, numberAsk, word } from '../parts/asks.ts';
import { type AreaBy, areaBy, bothTables, type Column, limitOf, nearTable } from '../parts/fillRows.ts';
import { read } from '../parts/reads.ts';

const wants = { bottom: ['ventilated', 'solid'], width: ['4', '6'], od4: 'decimal', od6: 'decimal' } as const;
/** The share of a cable that is left over lies in here: no count hangs on a digit. */
const LEFT = [0.04, 0.96] as const;

interface Plan {
  readonly bottom: Bottom;
  readonly width: '4' | '6';
  readonly od: number;
  readonly outside: Ticks;
  readonly depth: Ticks;
  /** As the person takes it. */
  readonly table: Bottom;
  readonly column: Column;
  readonly by: AreaBy;
  /** What the cables are counted into: the row, the row as if the channel were as wide as outside, half the space. */
  readonly into: 'row' | 'outside' | 'half';
}

const oneArea = ({ by, od }: Plan, world: World) => areaBy(by, od, 1, world);

function limit({ table, column, width, into, outside, depth }: Plan, world: World): number {
  const widthIn = Number(width);
  const at = (w: number) => limitOf({ bottom: table, widthIn: w, column }, world) ?? 0;
  if (into === 'half') return (widthIn * inches(depth)) / 2;
  // Nobody reads between rows; one who goes by the outside width does.
  const perInch = (at(6) - at(4)) / 2;
  return at(widthIn) + (into === 'outside' ? (inches(outside) - widthIn) * perInch : 0);
}

const share = (one: Plan, world: World, area = oneArea(one, world)) => limit(one, world) / area;
const many = (one: Plan, world: World, area?: number) => Math.floor(share(one, world, area) + HAIR);

function plan({ bottom, width, od4, od6 }: Drawn<typeof wants>, world: World): Plan | null {
  const tray = read(world, `card-${width}`, 'tray');
  const made: Plan = {
    bottom,
    width,
    od: width === '4' ? od4 : od6,
    outside: tray.outsideWidth,
    depth: tray.depth,
    table: bottom,
    column: 'several',
    by: 'circle',
    into: 'row',
  };
  const left = share(made, world) % 1;
  return left < LEFT[0] || left > LEFT[1] || nearTable(oneArea(made, world), 0.01, world) ? null : made;
}

type Own = Slip<Plan>;
const taken =
  (as: Partial<Plan>): Own =>
  (one) => ({ ...one, ...as });

export const howManyCables = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ bottom, width, od, outside, depth }, world) => ({
    bottom: word(bottom),
    width: num(Number(width)),
    od: num(od, 3),
    outside: long(outside),
    depth: long(depth),
    ...bothTables(world),
  }),
  asks: {
    one: numberAsk(oneArea, (one, world) => [
      { say: 'filling.oneArea', values: { od: figure(one.od), area: figure(oneArea(one, world)) } },
    ]),
    many: numberAsk(
      (one, world) => many(one, world),
      (one, world) => [
        {
          say: 'filling.many',
          values: {
            limit: figure(limit(one, world)),
            area: figure(oneArea(one, world)),
            share: figure(share(one, world), 2),
            many: many(one, world),
          },
        },
      ],
      {
        asks: ['one'],
        answer: (one, world, { one: area }) =>
          (area as number) > 0 ? many(one, world, area as number) : null,
      },
    ),
  },
  slips: {
    squares: taken({ by: 'square' }),
    asRadius: taken({ by: 'asRadius' }),
    radius: taken({ by: 'radius' }),
    oneColumn: taken({ column: 'one' }),
    otherTable: (one) => ({ ...one, table: one.bottom === 'solid' ? 'ventilated' : 'solid' }),
    outsideWidth: taken({ into: 'outside' }),
    halfOfSpace: taken({ into: 'half' }),
  },
  figures: () => [],
  figured: () => [],
  says: ['filling.oneArea', 'filling.many'],
});
