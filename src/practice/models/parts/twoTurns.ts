/**
 * A run that turns twice by 90°, told in words: which elbow each turn takes by how the open side of the channel lies, and
 * the run drawn.
 */
import type { Drawing, How } from '../../../drawing/types.ts';
import { drawRun } from '../../../drawing/views.ts';
import type { Frame, ResolvedRun } from '../../../run/resolved.ts';
import { waysOf } from '../../../run/turns.ts';
import type { Direction, Leg } from '../../../run/types.ts';
import { cross, directionOf, dot, minus, NORTH, UP, type Vec } from '../../../run/vector.ts';
import { fromInches, type Ticks } from '../../../trade/length.ts';
import type { World } from '../../model.ts';
import { mustResolve } from './placing.ts';
import { read } from './reads.ts';

export const TURNS = ['left', 'right', 'up', 'down', 'on'] as const;
export type Turn = (typeof TURNS)[number];
export const KINDS = ['flat', 'inside', 'outside'] as const;
export type Kind = (typeof KINDS)[number];
const PART: Readonly<Record<Kind, string>> = { flat: 'elbow', inside: 'inside', outside: 'outside' };
/** The 90° elbow of the catalogue for this channel. */
export const elbowOf = (world: World, width: string, kind: Kind) =>
  read(world, `${width}-${PART[kind]}-90`, 'elbow');

export interface TwoTurns {
  readonly width: string;
  readonly turns: readonly [Turn, Turn];
  readonly kinds: readonly [Kind, Kind];
  /** From working point to working point. */
  readonly between: Ticks;
}

const START: Frame = { along: NORTH, open: UP, left: directionOf('W') };

/** Where a turn leads from a frame; null where the words make no sense there. `heading` is the level way it came. */
function direction(turn: Turn, { along, left }: Frame, heading: Vec): Vec | null {
  const plumb = along[2] !== 0;
  // Off a plumb leg it goes on as it was heading: turned back, the channel would lie upside down.
  if (turn === 'on') return plumb ? heading : null;
  if (plumb) return null;
  return { left, right: minus(left), up: UP, down: minus(UP) }[turn];
}
function step(
  turn: Turn,
  frame: Frame,
  heading: Vec,
  width: string,
  world: World,
): { kind: Kind; frame: Frame } | null {
  const to = direction(turn, frame, heading);
  if (to === null) return null;
  for (const kind of KINDS) {
    const way = waysOf(frame, elbowOf(world, width, kind), 'straight').find(
      ({ along }) => dot(along, to) > 0.999,
    );
    if (way !== undefined) return { kind, frame: { along: to, open: way.open, left: cross(way.open, to) } };
  }
  return null;
}

/** The elbows of two turns, of a run that sets out level; null where the words make no run. */
export function kindsOf(
  [first, second]: TwoTurns['turns'],
  width: string,
  world: World,
): TwoTurns['kinds'] | null {
  const one = step(first, START, NORTH, width, world);
  const two = one === null ? null : step(second, one.frame, NORTH, width, world);
  return one === null || two === null ? null : [one.kind, two.kind];
}

/** The legs before and behind: an eighth longer than any piece here, so that no answer stands at them. */
const BESIDE = fromInches(48 + 1 / 8);

/** The run as it goes: north, and turned twice. */
export function turnedTwice({ width, turns, kinds, between }: TwoTurns, world: World): ResolvedRun {
  const ways = wayOf(turns);
  const fitting = (i: 0 | 1) => elbowOf(world, width, kinds[i]).id;
  const legs: Leg[] = [
    { id: 'L1', from: 'start', fitting: null, dir: 'N', length: BESIDE },
    { id: 'L2', from: 'L1', fitting: fitting(0), dir: ways[0], length: between },
    { id: 'L3', from: 'L2', fitting: fitting(1), dir: ways[1], length: BESIDE },
  ];
  return mustResolve(
    {
      v: 1,
      tray: width,
      start: { kind: 'free', joint: 'free' },
      legs,
      ends: [{ leg: 'L3', kind: 'free', joint: 'free' }],
    },
    world,
  );
}

/** The run drawn; its words do not say which elbows it turns by. */
export function isometricOf(job: TwoTurns, world: World, how: How): readonly Drawing[] {
  const resolved = turnedTwice(job, world);
  const { tables, catalogue } = world;
  const speak: How['speak'] = (one) =>
    how.speak(
      one.say.startsWith('rundrawing.elbow-') && 'angle' in (one.values ?? {})
        ? { say: 'offsets.anElbow' }
        : one,
    );
  return drawRun(resolved, { tables, catalogue, views: ['isometric'] }, { ...how, speak });
}

/** Where the second and the third leg go; the first goes north. */
function wayOf([first, second]: TwoTurns['turns']): readonly [Direction, Direction] {
  const level = { left: 'W', right: 'E', up: 'U', down: 'D', on: 'N' } as const;
  const one = level[first];
  if (first === 'up' || first === 'down' || second === 'up' || second === 'down') return [one, level[second]];
  // Level and turned once: left and right are counted from there.
  return [one, (first === 'left') === (second === 'left') ? 'S' : 'N'];
}
