/** Fill with spare (T13): the project keeps a share of the limit free; what is left, and how many cables go into it. */

import { figure } from '../../../trade/figure.ts';
import type { Bottom } from '../../../trade/fillTables.ts';
import { HAIR } from '../../../trade/hair.ts';
import { type Drawn, model, type World } from '../../model.ts';
import { num, numberAsk, word } from '../parts/asks.ts';
import { areaBy, bothTables, type Column, limitOf, nearTable } from '../parts/fillRows.ts';

const wants = {
  bottom: ['ventilated', 'solid'],
  width: ['4', '6'],
  spare: ['10', '15', '20', '25', '30'],
  od4: 'decimal',
  od6: 'decimal',
} as const;

interface Plan {
  readonly bottom: Bottom;
  readonly widthIn: number;
  /** Hundredths kept free. */
  readonly spare: number;
  readonly od: number;
  /** As the person takes it. */
  readonly table: Bottom;
  readonly column: Column;
  readonly kept: 'free' | 'divided' | 'ignored' | 'used';
}

function usable({ table, widthIn, column, spare, kept }: Plan, world: World): number {
  const limit = limitOf({ bottom: table, widthIn, column }, world) ?? 0;
  const share = spare / 100;
  return { free: limit * (1 - share), divided: limit / (1 + share), ignored: limit, used: limit * share }[
    kept
  ];
}
const oneArea = ({ od }: Plan, world: World) => areaBy('circle', od, 1, world);
const many = (area: number, one: Plan, world: World) => Math.floor(area / oneArea(one, world) + HAIR);

function plan({ bottom, width, spare, od4, od6 }: Drawn<typeof wants>, world: World): Plan | null {
  const od = width === '4' ? od4 : od6;
  const made: Plan = {
    bottom,
    widthIn: Number(width),
    spare: Number(spare),
    od,
    table: bottom,
    column: 'several',
    kept: 'free',
  };
  const area = usable(made, world);
  const left = (area / oneArea(made, world)) % 1;
  return nearTable(area, 0.025, world) || left < 0.05 || left > 0.95 ? null : made;
}

export const fillWithSpare = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ bottom, widthIn, spare, od }, world) => ({
    bottom: word(bottom),
    width: num(widthIn),
    spare: num(spare),
    od: num(od, 2),
    ...bothTables(world),
  }),
  asks: {
    usable: numberAsk(usable, (one, world) => [
      {
        say: 'filling.usable',
        values: {
          limit: figure(usable({ ...one, kept: 'ignored' }, world)),
          left: 100 - one.spare,
          usable: figure(usable(one, world)),
        },
      },
    ]),
    many: numberAsk(
      (one, world) => many(usable(one, world), one, world),
      (one, world) => [
        {
          say: 'filling.many',
          values: {
            limit: figure(usable(one, world)),
            area: figure(oneArea(one, world)),
            share: figure(usable(one, world) / oneArea(one, world), 2),
            many: many(usable(one, world), one, world),
          },
        },
      ],
      {
        asks: ['usable'],
        answer: (one, world, { usable: area }) => many(Math.max(0, area as number), one, world),
      },
    ),
  },
  slips: {
    divided: (one) => ({ ...one, kept: 'divided' }),
    ignored: (one) => ({ ...one, kept: 'ignored' }),
    usedForFree: (one) => ({ ...one, kept: 'used' }),
    oneColumn: (one) => ({ ...one, column: 'one' }),
    otherTable: (one) => ({ ...one, table: one.bottom === 'solid' ? 'ventilated' : 'solid' }),
  },
  figures: () => [],
  figured: () => [],
  says: ['filling.usable', 'filling.many'],
});
