/**
 * Expansion gap (T10): how far a splice stands open at the temperature of the metal; and what to do when the metal is
 * outside the range that the specification gives.
 */

import { figure } from '../../../trade/figure.ts';
import { gapAt } from '../../../trade/gapAt.ts';
import { type Drawn, model } from '../../model.ts';
import { choiceAsk, num, numberAsk, word } from '../parts/asks.ts';

const wants = {
  low: 'whole',
  high: 'whole',
  share: 'decimal',
  warmer: ['metal', 'air'],
  differ: 'whole',
  movement: 'decimal',
  later: 'whole',
} as const;

interface Plan {
  readonly low: number;
  readonly high: number;
  readonly metal: number;
  readonly air: number;
  readonly movement: number;
  readonly later: number;
  /** As the person takes it. */
  readonly now: number;
  readonly by: 'range' | 'reversed' | 'half' | 'full' | 'closed';
  readonly next: 'closed' | 'worked' | 'asked' | null;
}

/** Outside the range no gap can be worked out: a plan with such a metal is drawn again. */
function gap({ low, high, now, movement, by }: Plan): number {
  const right = gapAt(low, high, now, movement) ?? Number.NaN;
  const made = { range: right, reversed: movement - right, half: movement / 2, full: movement, closed: 0 };
  return made[by];
}
const outside = ({ low, high, later }: Plan) => later < low || later > high;
const laterOf = (one: Plan) => one.next ?? (outside(one) ? 'asked' : 'worked');

function plan({ low, high, share, warmer, differ, movement, later }: Drawn<typeof wants>): Plan | null {
  const metal = Math.round(low + share * (high - low));
  const air = metal + (warmer === 'air' ? differ : -differ);
  const made: Plan = {
    low,
    high,
    metal,
    air,
    movement,
    later,
    now: metal,
    by: 'range',
    next: null,
  };
  const near = [low, high].some((end) => Math.abs(later - end) < 4);
  return air <= low || air >= high || near || Math.abs(later - metal) < 5 ? null : made;
}

export const expansionGap = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ low, high, metal, air, movement, later }) => ({
    low: num(low),
    high: num(high),
    metal: num(metal),
    air: num(air),
    movement: num(movement),
    later: num(later),
    sun: word(metal > air ? 'sun' : 'shade'),
  }),
  asks: {
    gap: numberAsk(gap, ({ low, high, now, movement, ...one }) => [
      {
        say: 'expansion.gap',
        values: {
          movement: figure(movement),
          high: figure(high),
          now: figure(now),
          range: figure(high - low),
        },
        value: gap({ low, high, now, movement, ...one }),
        unit: 'in',
      },
    ]),
    later: choiceAsk(laterOf, (one) => [
      outside(one)
        ? {
            say: 'expansion.outside',
            values: { low: figure(one.low), high: figure(one.high), now: figure(one.later) },
          }
        : { say: 'bonding.inRange', values: { later: figure(one.later) } },
    ]),
  },
  slips: {
    reversed: (one) => ({ ...one, by: 'reversed' }),
    air: (one) => ({ ...one, now: one.air }),
    half: (one) => ({ ...one, by: 'half' }),
    full: (one) => ({ ...one, by: 'full' }),
    closed: (one) => ({ ...one, by: 'closed' }),
    stretched: (one) => (outside(one) ? { ...one, next: 'worked' } : null),
    shutThere: (one) => ({ ...one, next: 'closed' }),
    askedThough: (one) => (outside(one) ? null : { ...one, next: 'asked' }),
  },
  figures: () => [],
  figured: () => [],
  says: ['bonding.inRange'],
});
