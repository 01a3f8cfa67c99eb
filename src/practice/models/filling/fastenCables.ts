/**
 * Fasten cables (T12, T04): how many fastenings a drop takes, how far apart they come, and with what. Spaces counted for
 * fastenings and spaces rounded down give one count; only how far apart they come tells the two.
 */
import { HAIR } from '../../../trade/hair.ts';
import { formatLength, inches, type Ticks, ticks } from '../../../trade/length.ts';
import { type Drawn, model } from '../../model.ts';
import { choiceAsk, long, numberAsk, word } from '../parts/asks.ts';

const wants = {
  drop: 'length',
  upright: 'length',
  flat: 'length',
  stock: ['listed', 'bundling-clamps', 'bundling'],
} as const;

interface Plan {
  readonly drop: Ticks;
  readonly upright: Ticks;
  readonly flat: Ticks;
  readonly stock: Drawn<typeof wants>['stock'];
  /** As the person takes it. */
  readonly most: Ticks;
  readonly whole: (n: number) => number;
  readonly ends: number;
  readonly by: 'ties' | 'clamps' | 'ask' | null;
}

const RIGHT = { listed: 'ties', 'bundling-clamps': 'clamps', bundling: 'ask' } as const;

/** Spaces between fastenings, whole, none wider than it may be. */
const spaces = ({ drop, most, whole }: Plan) => Math.max(1, whole(drop / most - HAIR));
const count = (one: Plan) => spaces(one) + one.ends;
const apart = (one: Plan) => inches(ticks(Math.round(one.drop / spaces(one))));
const by = ({ by: said, stock }: Plan) => said ?? RIGHT[stock];

function plan({ drop, upright, flat, stock }: Drawn<typeof wants>): Plan | null {
  const made: Plan = { drop, upright, flat, stock, most: upright, whole: Math.ceil, ends: 1, by: null };
  const left = (drop / upright) % 1;
  return flat <= upright || left < 0.05 || left > 0.95 || spaces(made) < 3 ? null : made;
}

export const fastenCables = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ drop, upright, flat, stock }) => ({
    drop: long(drop),
    upright: long(upright),
    flat: long(flat),
    stock: word(stock),
  }),
  asks: {
    count: numberAsk(count, (one) => [
      {
        say: 'filling.fastenings',
        values: {
          drop: formatLength(one.drop),
          most: formatLength(one.most),
          spaces: spaces(one),
          count: count(one),
        },
      },
    ]),
    apart: numberAsk(
      apart,
      (one) => [
        {
          say: 'filling.apart',
          values: {
            drop: formatLength(one.drop),
            spaces: spaces(one),
            apart: formatLength(ticks(Math.round(one.drop / spaces(one)))),
          },
        },
      ],
      {
        asks: ['count'],
        answer: ({ drop }, _, { count: said }) =>
          Number.isInteger(said) && (said as number) > 1
            ? inches(ticks(Math.round(drop / ((said as number) - 1))))
            : null,
      },
    ),
    by: choiceAsk(by),
  },
  slips: {
    oneShort: (one) => ({ ...one, ends: 0 }),
    oneOver: (one) => ({ ...one, ends: 2 }),
    roundedDown: (one) => ({ ...one, whole: Math.floor }),
    flatSpacing: (one) => ({ ...one, most: one.flat }),
    tiesThough: (one) => ({ ...one, by: 'ties' }),
    askedThough: (one) => ({ ...one, by: 'ask' }),
  },
  figures: () => [],
  figured: () => [],
  says: ['filling.fastenings', 'filling.apart'],
});
