/**
 * Ladder transition (T09): a channel leaves a ladder tray. Drawings measure from the middle of the ladder; the channel
 * begins at its rail, or across an open gap from it.
 */

import { formatLength, fromInches, inches, type Ticks } from '../../../trade/length.ts';
import { transition } from '../../../trade/transition.ts';
import { type Drawn, model, type World } from '../../model.ts';
import { choiceAsk, long, num, numberAsk, word } from '../parts/asks.ts';
import { EDITION } from '../parts/fillRows.ts';

const wants = {
  distance: 'length',
  inside: ['12', '18', '24', '30', '36'],
  rail: 'length',
  start: ['butt', 'open'],
  gap: 'length',
  state: ['ready', 'no-jumper', 'hung'],
} as const;
type Missing = 'nothing' | 'jumper' | 'support' | 'closer';

interface Plan {
  readonly drawn: Drawn<typeof wants>;
  readonly insideIn: number;
  /** Over both side rails. */
  readonly outsideIn: number;
  /** 0 at a butt. */
  readonly gapIn: number;
  /** As the person takes it: middle of the ladder to where the channel is thought to begin. */
  readonly half: 'outside' | 'inside' | 'none' | 'whole';
  readonly gapCounts: boolean;
  readonly missing: Missing | null;
}

const halfOf = ({ half, outsideIn, insideIn }: Plan) =>
  ({ outside: outsideIn / 2, inside: insideIn / 2, none: 0, whole: outsideIn })[half];
/** From the middle of the ladder to the near end of the channel. */
const begin = (one: Plan) => halfOf(one) + (one.gapCounts ? one.gapIn : 0);
const length = (one: Plan) => inches(one.drawn.distance) - begin(one);
const withinIn = (world: World) => inches(world.tables.limits.supportWithin.value);
const farthest = (one: Plan, world: World) => begin(one) + withinIn(world);

function short(one: Plan, world: World): boolean {
  const given = { gapFt: one.gapIn / 12, secured: true, guarded: true, edition: EDITION };
  return transition(given, world.tables.transition).result.holds === true;
}
function missing(one: Plan, world: World): Missing {
  if (one.missing !== null) return one.missing;
  if (!short(one, world)) return 'closer';
  return ({ ready: 'nothing', 'no-jumper': 'jumper', hung: 'support' } as const)[one.drawn.state];
}

function plan(drawn: Drawn<typeof wants>, world: World): Plan | null {
  const insideIn = Number(drawn.inside);
  const gapIn = drawn.start === 'butt' ? 0 : inches(drawn.gap);
  const outsideIn = insideIn + 2 * inches(drawn.rail);
  const made: Plan = { drawn, insideIn, outsideIn, gapIn, half: 'outside', gapCounts: true, missing: null };
  const tooFar = !short(made, world);
  // One fault at a time, and none that hangs on an inch.
  if ((tooFar && drawn.state !== 'ready') || Math.abs(gapIn - inches(world.tables.transition.limit)) < 2)
    return null;
  return length(made) < 40 ? null : made;
}

const text = (inch: number) => formatLength(fromInches(inch));

export const ladderTransition = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ drawn, outsideIn, insideIn, gapIn }, { tables }) => ({
    distance: long(drawn.distance),
    outside: long(fromInches(outsideIn)),
    inside: long(fromInches(insideIn)),
    gap: long(fromInches(gapIn)),
    start: word(drawn.start),
    state: word(drawn.state),
    within: long(tables.limits.supportWithin.value),
    limit: num(inches(tables.transition.limit as Ticks) / 12),
  }),
  asks: {
    length: numberAsk(length, (one) => [
      {
        say: 'bonding.fromRail',
        values: {
          distance: formatLength(one.drawn.distance),
          half: text(halfOf(one)),
          gap: text(one.gapIn),
          length: text(length(one)),
        },
      },
    ]),
    support: numberAsk(farthest, (one, world) => [
      {
        say: 'bonding.firstSupport',
        values: { begin: text(begin(one)), within: text(withinIn(world)), place: text(farthest(one, world)) },
      },
    ]),
    missing: choiceAsk(missing),
  },
  slips: {
    fromCentre: (one) => ({ ...one, half: 'none' }),
    wholeWidth: (one) => ({ ...one, half: 'whole' }),
    insideWidth: (one) => ({ ...one, half: 'inside' }),
    gapForgotten: (one) => (one.gapIn === 0 ? null : { ...one, gapCounts: false }),
    nothingSeen: (one) => ({ ...one, missing: 'nothing' }),
    gapFeared: (one, world) => (one.gapIn > 0 && short(one, world) ? { ...one, missing: 'closer' } : null),
  },
  figures: () => [],
  figured: () => [],
  says: ['bonding.fromRail', 'bonding.firstSupport'],
});
