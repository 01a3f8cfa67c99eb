/** Expansion spacing (T10): how far apart expansion splices stand, and into how many parts a run is divided. */

import { EXPANSION_METALS, type ExpansionMetal, expansion } from '../../../trade/expansion.ts';
import { HAIR } from '../../../trade/hair.ts';
import { type Drawn, model, type World } from '../../model.ts';
import { num, numberAsk, rows, word } from '../parts/asks.ts';

const IDS = ['steel', 'aluminium', 'stainless-304', 'stainless-316'] as const;
const wants = {
  metal: IDS,
  scale: ['f', 'c'],
  low: 'whole',
  swing: 'whole',
  movement: 'decimal',
  run: 'whole',
} as const;

interface Plan {
  readonly drawn: Drawn<typeof wants>;
  /** Whole degrees of the scale it is told in. */
  readonly low: number;
  readonly high: number;
  /** As the person takes it. */
  readonly rate: ExpansionMetal;
  readonly movementIn: number;
  readonly swing: 'swing' | 'other-scale' | 'hottest';
  readonly perFoot: boolean;
  readonly whole: (n: number) => number;
}

const metalOf = (id: Plan['drawn']['metal']): ExpansionMetal => EXPANSION_METALS[IDS.indexOf(id)] ?? 'steel';
const nine = (degreesC: number) => (degreesC * 9) / 5;

/** Degrees Fahrenheit between cold and hot, as the person takes them. */
function swingF({ drawn: { scale }, low, high, swing }: Plan): number {
  const degrees = swing === 'hottest' ? high : high - low;
  if (swing === 'other-scale') return scale === 'c' ? degrees : (degrees * 5) / 9;
  return scale === 'c' ? nine(degrees) : degrees;
}

const worked = (one: Plan, world: World) =>
  expansion(
    {
      metal: one.rate,
      lowF: 0,
      highF: swingF(one),
      installF: 0,
      movementIn: one.movementIn,
      lengthFt: one.drawn.run,
    },
    world.tables.expansion,
  );
const spacing = (one: Plan, world: World) =>
  (worked(one, world).result.maxSpacingFt ?? 0) * (one.perFoot ? 1 : 12);
const parts = (one: Plan, world: World) => one.whole(one.drawn.run / spacing(one, world) - HAIR);

function plan(drawn: Drawn<typeof wants>, world: World): Plan | null {
  const { scale, low, swing, movement, metal, run } = drawn;
  // Told in Celsius the same season is fewer degrees.
  const cold = scale === 'c' ? Math.round((low - 32) / 1.8) : low;
  const high = cold + (scale === 'c' ? Math.round(swing / 1.8) : swing);
  const made: Plan = {
    drawn,
    low: cold,
    high,
    rate: metalOf(metal),
    movementIn: movement,
    swing: 'swing',
    perFoot: true,
    whole: Math.ceil,
  };
  const left = (run / spacing(made, world)) % 1;
  return high <= 0 || left < 0.04 || left > 0.96 || parts(made, world) < 2 ? null : made;
}

export const expansionSpacing = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ drawn, low, high }, { tables }) => ({
    metal: word(drawn.metal),
    scale: word(drawn.scale),
    low: num(low),
    high: num(high),
    movement: num(drawn.movement),
    run: num(drawn.run),
    rates: rows(
      IDS.map((id) => ({
        metal: word(id),
        rate: num(Math.round(tables.expansion.metals[metalOf(id)].perF * 1e7) / 10, 1),
      })),
    ),
  }),
  asks: {
    spacing: numberAsk(spacing, (one, world) =>
      worked(one, world).steps.filter(({ say }) => say === 'expansion.spacing'),
    ),
    parts: numberAsk(
      parts,
      (one, world) => worked(one, world).steps.filter(({ say }) => say === 'expansion.segments'),
      {
        asks: ['spacing'],
        answer: ({ drawn }, _, { spacing: said }) =>
          (said as number) > 0 ? Math.ceil(drawn.run / (said as number) - HAIR) : null,
      },
    ),
  },
  slips: {
    otherMetal: (one) => ({ ...one, rate: one.rate === 'steel' ? 'aluminium' : 'steel' }),
    otherScale: (one) => ({ ...one, swing: 'other-scale' }),
    hottestAlone: (one) => (one.low === 0 ? null : { ...one, swing: 'hottest' }),
    inchesForFeet: (one) => ({ ...one, perFoot: false }),
    wholeInch: (one) => (one.movementIn === 1 ? null : { ...one, movementIn: 1 }),
    roundedDown: (one) => ({ ...one, whole: Math.floor }),
  },
  figures: () => [],
  figured: () => [],
  says: [],
});
