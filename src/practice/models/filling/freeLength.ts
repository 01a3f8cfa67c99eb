/** Free length (T12, T09): cables that leave the channel and cross to equipment with no tray under them. */
import { figure } from '../../../trade/figure.ts';
import { formatLength, inches, type Ticks } from '../../../trade/length.ts';
import { transition } from '../../../trade/transition.ts';
import { type Drawn, model, type World } from '../../model.ts';
import { choiceAsk, long, num, numberAsk, word } from '../parts/asks.ts';
import { EDITION } from '../parts/fillRows.ts';

const wants = {
  distance: 'length',
  slack: 'length',
  tied: ['both', 'both', 'channel'],
  guarded: ['guarded', 'guarded', 'open'],
} as const;
/** The limit that some remember for another thing. */
const FIVE_FEET_IN = 60;

interface Plan {
  readonly drawn: Drawn<typeof wants>;
  /** As the person takes it. */
  readonly along: Ticks;
  readonly limitIn: number;
  readonly tieCounts: boolean;
  readonly looks: 'all' | 'length';
  readonly always: boolean;
}

const held = (world: World) => inches(world.tables.transition.limit);
const over = ({ along, limitIn, tieCounts }: Plan) => (tieCounts ? 0 : Math.max(0, inches(along) - limitIn));

type State = 'stays' | 'extend' | 'fasten' | 'guard';
function stateOf(one: Plan, world: World, extension = over(one)): State {
  if (one.always || extension > 1e-9) return 'extend';
  const { tied, guarded } = one.looks === 'length' ? { tied: 'both', guarded: 'guarded' } : one.drawn;
  const { holds } = trade(one, world, tied === 'both', guarded === 'guarded').result;
  if (holds === true || one.tieCounts) return 'stays';
  return tied === 'both' ? 'guard' : 'fasten';
}
const trade = (one: Plan, world: World, secured: boolean, guarded: boolean) =>
  transition(
    { gapFt: Math.min(inches(one.along), held(world)) / 12, secured, guarded, edition: EDITION },
    world.tables.transition,
  );

function plan(drawn: Drawn<typeof wants>, world: World): Plan | null {
  const { distance, slack, tied, guarded } = drawn;
  const along = (distance + slack) as Ticks;
  const close = [distance, along].some((d) => Math.abs(inches(d) - held(world)) < 1.5);
  // One fault at a time: too long, not fastened, not guarded.
  const faults = [inches(distance) > held(world), tied !== 'both', guarded !== 'guarded'].filter(Boolean);
  if (close || faults.length > 1 || Math.abs(inches(distance) - FIVE_FEET_IN) < 1) return null;
  return { drawn, along: distance, limitIn: held(world), tieCounts: false, looks: 'all', always: false };
}

export const freeLength = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ drawn: { distance, slack, tied, guarded } }, world) => ({
    distance: long(distance),
    cable: long((distance + slack) as Ticks),
    tied: word(tied),
    guarded: word(guarded),
    limit: num(held(world) / 12),
  }),
  asks: {
    extension: numberAsk(over, (one, world) => [
      {
        say: over(one) > 0 ? 'filling.tooFree' : 'filling.freeEnough',
        values: {
          distance: formatLength(one.along),
          limit: figure(held(world) / 12),
          least: figure(over(one)),
        },
      },
    ]),
    state: choiceAsk(
      (one, world) => stateOf(one, world),
      ({ drawn: { tied, guarded } }) => [
        ...(tied === 'both' ? [] : [{ say: 'transition.loose' }]),
        ...(guarded === 'guarded' ? [] : [{ say: 'transition.open' }]),
      ],
      {
        asks: ['extension'],
        answer: (one, world, { extension }) => stateOf(one, world, extension as number),
      },
    ),
  },
  slips: {
    tieCounts: (one) => (over(one) === 0 ? null : { ...one, tieCounts: true }),
    fiveFeet: (one) => (inches(one.along) <= FIVE_FEET_IN ? null : { ...one, limitIn: FIVE_FEET_IN }),
    alongCable: (one) => {
      const along = (one.drawn.distance + one.drawn.slack) as Ticks;
      return inches(along) <= one.limitIn ? null : { ...one, along };
    },
    lengthOnly: (one) => ({ ...one, looks: 'length' }),
    extendedAnyway: (one) => ({ ...one, always: true }),
  },
  figures: () => [],
  figured: () => [],
  says: ['filling.tooFree', 'filling.freeEnough', 'transition.loose', 'transition.open'],
});
