/** Whether a run could stand as drawn, and each of its faults be named at one place alone. */
import type { ResolvedLeg, ResolvedRun } from '../../run/resolved.ts';
import { fromInches, type Ticks } from '../../trade/length.ts';
import type { Planted } from './damages/damage.ts';
import { nameable } from './nameable.ts';
import type { Bench } from './sound.ts';

/** Channel that shows between two joints, or between a joint and a fitting's face: less can be neither cut nor put together. */
export const LEAST_CHANNEL = fromInches(12);
/** Between two supports of a leg: less is one support set twice. */
export const LEAST_BETWEEN_SUPPORTS = fromInches(6);
/** Twice what a place may be off by: two places nearer than that could be named one for the other. */
export const LEAST_BETWEEN_PLACES = fromInches(12);

/** What stands along a leg, from edge to edge: its first face, its joints, its last face. */
const standing = ({ start, end, length, joints }: ResolvedLeg): readonly (readonly [number, number])[] => [
  [0, start.takeOut],
  ...joints.map(({ at, length: long, opening }): [number, number] => {
    const half = Math.max(long, opening) / 2;
    return [at - half, at + half];
  }),
  [length - end.takeOut, length],
];

/** Each thing ends so far before the next that channel shows between them. */
const channelBetween = (leg: ResolvedLeg): boolean =>
  standing(leg).every(([from], i, all) => {
    const before = all[i - 1];
    return before === undefined || from - before[1] >= LEAST_CHANNEL;
  });

const apart = (places: readonly Ticks[]): boolean =>
  places.every((at, i) => i === 0 || at - (places[i - 1] as Ticks) >= LEAST_BETWEEN_SUPPORTS);

/** No joint in another or in a fitting, no support on another. */
export const couldStand = ({ legs }: ResolvedRun): boolean =>
  legs.every((leg) => channelBetween(leg) && apart(leg.supports.map(({ at }) => at)));

/** Whether the place of a fault is the only one near it where its rule could be named. */
export function namedAlone({ rule, leg, at }: Planted, resolved: ResolvedRun, bench: Bench): boolean {
  const on = resolved.legs.find((one) => one.leg === leg);
  if (at === null || on === undefined) return true;
  const near = nameable(rule, on, resolved, bench).filter(
    (place) => Math.abs(place - at) < LEAST_BETWEEN_PLACES,
  );
  return near.length <= 1;
}
