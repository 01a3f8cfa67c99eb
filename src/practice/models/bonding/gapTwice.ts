/** Gap twice (T10): two splices of one run, one set in the morning and one after noon; the metal has warmed between. */

import { figure } from '../../../trade/figure.ts';
import { gapAt } from '../../../trade/gapAt.ts';
import { type Drawn, model } from '../../model.ts';
import { num, numberAsk } from '../parts/asks.ts';

const wants = {
  low: 'whole',
  high: 'whole',
  morning: 'decimal',
  noon: 'decimal',
  movement: 'decimal',
} as const;
type Time = 'morning' | 'noon';

interface Plan {
  readonly low: number;
  readonly high: number;
  readonly movement: number;
  readonly metal: Readonly<Record<Time, number>>;
  /** As the person takes it. */
  readonly read: Readonly<Record<Time, number>>;
  readonly by: 'range' | 'reversed' | 'half';
}

function gap({ low, high, movement, read, by }: Plan, time: Time): number {
  const right = gapAt(low, high, read[time], movement) ?? Number.NaN;
  return { range: right, reversed: movement - right, half: movement / 2 }[by];
}

function plan({ low, high, morning, noon, movement }: Drawn<typeof wants>): Plan {
  const at = (share: number) => Math.round(low + share * (high - low));
  const metal = { morning: at(morning), noon: at(noon) };
  return { low, high, movement, metal, read: metal, by: 'range' };
}

const ask = (time: Time) =>
  numberAsk<Plan>(
    (one) => gap(one, time),
    (one) => [
      {
        say: 'expansion.gap',
        values: {
          movement: figure(one.movement),
          high: figure(one.high),
          now: figure(one.read[time]),
          range: figure(one.high - one.low),
        },
        value: gap(one, time),
        unit: 'in',
      },
    ],
  );

export const gapTwice = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ low, high, movement, metal }) => ({
    low: num(low),
    high: num(high),
    movement: num(movement),
    morning: num(metal.morning),
    noon: num(metal.noon),
  }),
  asks: { morning: ask('morning'), noon: ask('noon') },
  slips: {
    morningKept: (one) => ({ ...one, read: { ...one.read, noon: one.read.morning } }),
    reversed: (one) => ({ ...one, by: 'reversed' }),
    half: (one) => ({ ...one, by: 'half' }),
    exchanged: (one) => ({ ...one, read: { morning: one.read.noon, noon: one.read.morning } }),
  },
  figures: () => [],
  figured: () => [],
  says: [],
});
