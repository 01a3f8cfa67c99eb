/**
 * No row (T13): whether a table speaks for this bottom and width at all. Where none does, no arithmetic fills the hole
 * and the engineer is asked; where one does, it is read.
 */

import { figure } from '../../../trade/figure.ts';
import { fill } from '../../../trade/fill.ts';
import type { Bottom } from '../../../trade/fillTables.ts';
import { type Drawn, model, type World } from '../../model.ts';
import { choiceAsk, num, word } from '../parts/asks.ts';
import { bothTables, cable, EDITION, limitOf, mayLie, nearTable, type Yes } from '../parts/fillRows.ts';

const wants = {
  bottom: ['ventilated', 'solid'],
  width: ['2', '4', '5'],
  count: 'whole',
  share: 'decimal',
} as const;

/** The limit that is held to speak: a table's row, one scaled from the next row, half of the row for twice the width, none. */
type Speaks = Bottom | 'scaled' | 'half' | 'none';

interface Plan {
  readonly bottom: Bottom;
  readonly widthIn: number;
  readonly count: number;
  readonly od: number;
  /** As the person takes it. */
  readonly speaks: Speaks;
  readonly said: Yes | null;
}

const row = (bottom: Bottom, { widthIn }: Pick<Plan, 'widthIn'>, world: World) =>
  limitOf({ bottom, widthIn, column: 'several' }, world);

/** What someone makes up in proportion to the next row above. */
function scaled({ bottom, widthIn }: Pick<Plan, 'bottom' | 'widthIn'>, world: World): number {
  const next = world.fillTables.multiconductor[bottom].rows.find((r) => r.widthIn > widthIn);
  return next === undefined ? 0 : (next.severalIn2 * widthIn) / next.widthIn;
}

/** Half of what the row for twice the width allows; null where there is no such row. */
function halved({ bottom, widthIn }: Pick<Plan, 'bottom' | 'widthIn'>, world: World): number | null {
  const twice = row(bottom, { widthIn: 2 * widthIn }, world);
  return twice === null ? null : twice / 2;
}

const areaOf = ({ od, count }: Plan, world: World) =>
  fill(
    { tray: { bottom: 'solid', widthIn: 6 }, cables: [cable(od, count)], edition: EDITION },
    world.fillTables,
  ).result.areaIn2;

function may(one: Plan, world: World, speaks: Speaks = one.speaks): Yes {
  if (one.said !== null) return one.said;
  if (speaks === 'none') return 'ask';
  const area = areaOf(one, world);
  if (speaks === 'scaled') return area <= scaled(one, world) ? 'yes' : 'no';
  if (speaks === 'half') return area <= (halved(one, world) ?? 0) ? 'yes' : 'no';
  return mayLie(area, { bottom: speaks, widthIn: one.widthIn, column: 'several' }, world);
}

function plan({ bottom, width, count, share }: Drawn<typeof wants>, world: World): Plan | null {
  const widthIn = Number(width);
  const hole = row(bottom, { widthIn }, world) === null;
  const limit = row(bottom, { widthIn }, world) ?? scaled({ bottom, widthIn }, world);
  // As much as makes the wanted share of the limit, to a hundredth of an inch.
  const od = Math.round(Math.sqrt((share * limit) / (count * 0.7854)) * 100) / 100;
  const made: Plan = { bottom, widthIn, count, od, speaks: hole ? 'none' : bottom, said: null };
  const area = areaOf(made, world);
  const tight = Math.abs(area - limit) < 0.07 || nearTable(area, 0.03, world);
  return tight || od > 1.2 || od < 0.25 ? null : made;
}

const SPEAKS: readonly string[] = [
  'ventilated',
  'solid',
  'scaled',
  'half',
  'none',
] satisfies readonly Speaks[];

export const noRow = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ bottom, widthIn, count, od }, world) => ({
    bottom: word(bottom),
    width: num(widthIn),
    count: num(count),
    od: num(od, 2),
    ...bothTables(world),
  }),
  asks: {
    speaks: choiceAsk(
      ({ speaks }) => speaks,
      ({ bottom, widthIn, speaks }) => [
        {
          say: speaks === 'none' ? 'filling.noRow' : 'filling.aRow',
          values: { width: figure(widthIn), bottom },
        },
      ],
    ),
    may: choiceAsk(
      (one, world) => may(one, world),
      (one, world) => {
        const limit = row(one.bottom, one, world);
        const area = figure(areaOf(one, world));
        return limit === null
          ? [{ say: 'filling.areaOnly', values: { area } }]
          : [{ say: 'filling.against', values: { area, limit: figure(limit) } }];
      },
      {
        asks: ['speaks'],
        answer: (one, world, { speaks }) => {
          const said = speaks as Speaks;
          const there =
            said === 'none' ||
            said === 'scaled' ||
            (said === 'half' ? halved(one, world) : row(said, one, world)) !== null;
          return SPEAKS.includes(said) && there ? may(one, world, said) : null;
        },
      },
    ),
  },
  slips: {
    otherTable: (one, world) => {
      const other = one.bottom === 'solid' ? 'ventilated' : 'solid';
      return row(other, one, world) === null ? null : { ...one, speaks: other };
    },
    madeUp: (one) => (one.speaks === 'none' ? { ...one, speaks: 'scaled' } : null),
    halfOfDouble: (one, world) =>
      one.speaks === 'none' && halved(one, world) !== null ? { ...one, speaks: 'half' } : null,
    overlooked: (one) => (one.speaks === 'none' ? null : { ...one, speaks: 'none' }),
    readOff: (one) => (one.speaks === 'none' ? { ...one, speaks: one.bottom } : null),
    overButYes: (one, world) => (may(one, world) === 'no' ? { ...one, said: 'yes' } : null),
    withinButNo: (one, world) => (may(one, world) === 'yes' ? { ...one, said: 'no' } : null),
    refused: (one, world) => (may(one, world) === 'ask' ? { ...one, said: 'no' } : null),
  },
  figures: () => [],
  figured: () => [],
  says: ['noRow', 'aRow', 'areaOnly', 'against'].map((key) => `filling.${key}`),
});
