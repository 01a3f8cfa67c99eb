/** Drop-out radius (T12): the radius a cable needs, and the drop-out that gives it; the engineer where none does. */

import { figure } from '../../../trade/figure.ts';
import { type Drawn, model, type World } from '../../model.ts';
import { choiceAsk, num, numberAsk, word } from '../parts/asks.ts';
import { bend, CABLES, type Cable, fromStep, liesIn, multipleOf, ruleFacts } from '../parts/bend.ts';

const wants = { cable: CABLES, od: 'decimal', kept: ['a', 'b', 'c'] } as const;
/** Radii of the drop-outs in the store, training values. */
const KEPT = { a: [3, 6, 12], b: [4, 6, 12], c: [4, 8, 12] } as const;

interface Plan {
  readonly cable: Cable;
  readonly od: number;
  readonly radii: readonly number[];
  /** As the person takes it. */
  readonly as: Cable;
  readonly of: 'diameter' | 'radius';
  readonly pick: 'enough' | 'nearest' | 'largest';
}

const needed = ({ as, od, of }: Plan, world: World) =>
  multipleOf(as, od, world) * (of === 'radius' ? od / 2 : od);

/** `r1` to `r3`, or `none`. */
function picked({ radii, pick }: Plan, radius: number): string {
  const away = (r: number) => Math.abs(r - radius);
  const nearest = radii.reduce((best, r) => (away(r) < away(best) ? r : best), Number.POSITIVE_INFINITY);
  const found = { enough: radii.find((r) => r >= radius - 1e-9), nearest, largest: radii.at(-1) }[pick];
  return found === undefined ? 'none' : `r${radii.indexOf(found) + 1}`;
}
const pickOf = (one: Plan, world: World) => picked(one, needed(one, world));

function plan({ cable, od, kept }: Drawn<typeof wants>, world: World): Plan | null {
  const made: Plan = { cable, od, radii: KEPT[kept], as: cable, of: 'diameter', pick: 'enough' };
  const radius = needed(made, world);
  // Neither a drop-out nor a step of the rule, which are shown.
  const close = [2, ...made.radii].some((r) => Math.abs(r - radius) < 0.1);
  return close || radius > 16 || fromStep(cable, od, world) < 0.03 ? null : made;
}

const as =
  (of: Readonly<Partial<Record<Cable, Cable>>>) =>
  (one: Plan): Plan | null => {
    const taken = of[one.cable];
    return taken === undefined ? null : { ...one, as: taken };
  };

export const dropOutRadius = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ cable, od, radii }, world) => ({
    cable: word(cable),
    od: num(od, 2),
    where: word(liesIn(od, world)),
    r1: num(radii[0] ?? 0),
    r2: num(radii[1] ?? 0),
    r3: num(radii[2] ?? 0),
    ...ruleFacts(world),
  }),
  asks: {
    radius: numberAsk(needed, ({ cable, od }, world) => bend(cable, od, world).steps),
    pick: choiceAsk(
      pickOf,
      (one, world) => [
        {
          say: pickOf(one, world) === 'none' ? 'filling.noDropOut' : 'filling.dropOut',
          values: { radius: figure(needed(one, world)), radii: one.radii.join(', ') },
        },
      ],
      { asks: ['radius'], answer: (one, _, { radius }) => picked(one, radius as number) },
    ),
  },
  slips: {
    trayCableFactor: as({ 'mc-interlocked': 'tc', 'mc-smooth': 'tc' }),
    smoothFactor: as({ 'mc-interlocked': 'mc-smooth' }),
    interlockedFactor: as({ 'mc-smooth': 'mc-interlocked' }),
    shieldedFactor: as({ tc: 'tc-shielded', 'mc-interlocked': 'tc-shielded' }),
    shieldForgotten: as({ 'tc-shielded': 'tc' }),
    onRadius: (one) => ({ ...one, of: 'radius' }),
    nearest: (one) => ({ ...one, pick: 'nearest' }),
  },
  figures: () => [],
  figured: () => [],
  says: ['filling.dropOut', 'filling.noDropOut'],
});
