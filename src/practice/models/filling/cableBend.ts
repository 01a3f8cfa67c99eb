/** Cable bend (T12): the multiple for this cable and diameter, and the smallest radius to the inside of the bend. */
import { type Drawn, model, type World } from '../../model.ts';
import { choiceAsk, num, numberAsk, word } from '../parts/asks.ts';
import {
  bend,
  CABLES,
  type Cable,
  fromStep,
  liesIn,
  multipleOf,
  neighbour,
  ruleFacts,
} from '../parts/bend.ts';

const wants = { cable: CABLES, od: 'decimal' } as const;

interface Plan {
  readonly cable: Cable;
  readonly od: number;
  /** As the person takes it. */
  readonly as: Cable;
  readonly beside: boolean;
  readonly of: 'diameter' | 'radius';
  readonly to: 'inside' | 'centre';
}

const times = ({ as, od, beside }: Plan, world: World) =>
  (beside ? neighbour(as, od, world) : null) ?? multipleOf(as, od, world);
/** A radius to the centre line leaves half the cable less inside. */
const inside = (multiple: number, { od, of, to }: Plan) =>
  multiple * (of === 'radius' ? od / 2 : od) - (to === 'centre' ? od / 2 : 0);

function plan({ cable, od }: Drawn<typeof wants>, world: World): Plan | null {
  const made: Plan = { cable, od, as: cable, beside: false, of: 'diameter', to: 'inside' };
  // Nor is the radius to look like a step of the rule, which is shown.
  const shown = Math.abs(inside(times(made, world), made) - 2) < 0.05;
  return shown || fromStep(cable, od, world) < 0.03 ? null : made;
}

const taken =
  (as: (one: Plan) => Partial<Plan> | null) =>
  (one: Plan): Plan | null => {
    const made = as(one);
    return made === null ? null : { ...one, ...made };
  };
const SHIELD: Partial<Record<Cable, Cable>> = { tc: 'tc-shielded', 'tc-shielded': 'tc' };
const SHEATH: Partial<Record<Cable, Cable>> = {
  'mc-interlocked': 'mc-smooth',
  'mc-smooth': 'mc-interlocked',
};
const from = (table: Partial<Record<Cable, Cable>>, { cable }: Plan) => {
  const as = table[cable];
  return as === undefined ? null : { as };
};

export const cableBend = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ cable, od }, world) => ({
    cable: word(cable),
    od: num(od, 2),
    where: word(liesIn(od, world)),
    ...ruleFacts(world),
  }),
  asks: {
    times: choiceAsk((one, world) => `m${times(one, world)}`),
    radius: numberAsk(
      (one, world) => inside(times(one, world), one),
      ({ cable, od }, world) => bend(cable, od, world).steps,
      {
        asks: ['times'],
        answer: (one, _, { times: said }) => inside(Number((said as string).slice(1)), one),
      },
    ),
  },
  slips: {
    onRadius: taken(() => ({ of: 'radius' })),
    toCentre: taken(() => ({ to: 'centre' })),
    otherShield: taken((one) => from(SHIELD, one)),
    otherSheath: taken((one) => from(SHEATH, one)),
    trayCableFactor: taken(({ cable }) => (cable.startsWith('mc') ? { as: 'tc' } : null)),
    otherStep: (one, world) =>
      neighbour(one.cable, one.od, world) === null ? null : { ...one, beside: true },
  },
  figures: () => [],
  figured: () => [],
  says: [],
});
