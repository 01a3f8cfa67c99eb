/**
 * One more cable (T13): the list has changed, so the whole sum is done anew. A second cable beside one that lay alone
 * moves the channel to the other column.
 */

import { drawSection } from '../../../drawing/section.ts';
import { figure } from '../../../trade/figure.ts';
import type { Bottom } from '../../../trade/fillTables.ts';
import { inches } from '../../../trade/length.ts';
import { type Drawn, model, type World } from '../../model.ts';
import { choiceAsk, num, numberAsk, word } from '../parts/asks.ts';
import { areaBy, bothTables, type Column, limitOf, mayLie, nearTable } from '../parts/fillRows.ts';
import { read } from '../parts/reads.ts';

const wants = {
  bottom: ['ventilated', 'solid'],
  width: ['4', '6'],
  before: ['alone', 'several'],
  aloneShare: 'decimal',
  od: 'decimal',
  share: 'decimal',
  added: 'decimal',
} as const;

interface Plan {
  readonly bottom: Bottom;
  readonly widthIn: number;
  readonly count: number;
  readonly od: number;
  readonly added: number;
  /** As the person takes it. */
  readonly column: Column;
  readonly summed: 'all' | 'new' | 'old' | 'as-the-others';
  readonly next: 'after' | 'hold' | null;
}

function area({ count, od, added, summed }: Plan, world: World): number {
  const of = (d: number, n: number) => areaBy('circle', d, n, world);
  if (summed === 'new') return of(added, 1);
  if (summed === 'old') return of(od, count);
  return summed === 'all' ? of(od, count) + of(added, 1) : of(od, count + 1);
}

const lies = (of: number, { bottom, widthIn, column }: Plan, world: World) =>
  mayLie(of, { bottom, widthIn, column }, world) === 'yes';
const nextOf = (one: Plan, world: World) => one.next ?? (lies(area(one, world), one, world) ? 'lay' : 'hold');

function plan(drawn: Drawn<typeof wants>, world: World): Plan | null {
  const { bottom, width, before, aloneShare, od, share, added } = drawn;
  const widthIn = Number(width);
  const limit = (column: Column) => limitOf({ bottom, widthIn, column }, world) ?? 0;
  const alone = before === 'alone';
  // A cable that lies alone takes its share of the row, or of what the thickest takes that does not stand over the sides.
  const depth = inches(read(world, `card-${width}`, 'tray').depth);
  const most = Math.min(limit('one'), areaBy('circle', depth, 1, world));
  const lone =
    Math.round(depth * Math.sqrt((aloneShare * most) / areaBy('circle', depth, 1, world)) * 100) / 100;
  const count = alone ? 1 : Math.floor((share * limit('several')) / areaBy('circle', od, 1, world));
  const made: Plan = {
    bottom,
    widthIn,
    count,
    od: alone ? lone : od,
    added,
    column: 'several',
    summed: 'all',
    next: null,
  };
  if (!alone && count < 3) return null;
  // What lies there now is within its limit: the fault is not an old one.
  const old = area({ ...made, summed: 'old' }, world);
  const sound = lies(old, { ...made, column: alone ? 'one' : 'several' }, world);
  const close = nearTable(area(made, world), 0.05, world) || Math.abs(made.od - added) < 0.06;
  return !sound || close ? null : made;
}

export const oneMoreCable = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ bottom, widthIn, count, od, added }, world) => ({
    bottom: word(bottom),
    width: num(widthIn),
    count: num(count),
    od: num(od, 2),
    added: num(added, 2),
    ...bothTables(world),
  }),
  asks: {
    area: numberAsk(area, (one, world) => [
      {
        say: 'filling.withNew',
        values: {
          old: figure(area({ ...one, summed: 'old' }, world)),
          fresh: figure(area({ ...one, summed: 'new' }, world)),
          area: figure(area(one, world)),
        },
      },
    ]),
    next: choiceAsk(
      nextOf,
      (one, world) => [
        {
          say: 'filling.against',
          values: {
            area: figure(area(one, world)),
            limit: figure(
              limitOf({ bottom: one.bottom, widthIn: one.widthIn, column: 'several' }, world) ?? 0,
            ),
          },
        },
      ],
      {
        asks: ['area'],
        answer: (one, world, { area: said }) =>
          (said as number) > 0 ? (lies(said as number, one, world) ? 'lay' : 'hold') : null,
      },
    ),
  },
  slips: {
    newAlone: (one) => ({ ...one, summed: 'new' }),
    newLeftOut: (one) => ({ ...one, summed: 'old' }),
    asTheOthers: (one) => (one.count === 1 ? null : { ...one, summed: 'as-the-others' }),
    oneColumn: (one) => ({ ...one, column: 'one' }),
    askedAfter: (one, world) => (nextOf(one, world) === 'hold' ? { ...one, next: 'after' } : null),
    heldThough: (one, world) => (nextOf(one, world) === 'lay' ? { ...one, next: 'hold' } : null),
  },
  figures: ({ bottom, widthIn, count, od }, world, how) => [
    drawSection(
      { tray: { ...read(world, `card-${widthIn}`, 'tray'), bottom }, cables: [{ odIn: od, count }] },
      how,
    ),
  ],
  figured: ({ widthIn, count, od }) => [{ kind: 'cables', widthIn, cables: [{ odIn: od, count }] }],
  says: ['filling.withNew', 'filling.against'],
});
