/** What each fitting does to a direction: flat ones turn about the open side, inside ones towards it. */
import type { Elbow } from './catalogue.ts';
import type { FittingItem, Frame, Turn, WayOut } from './resolved.ts';
import { type Lies, SAME_DEG, type Wrong } from './settle.ts';
import {
  angleDeg,
  cosDeg,
  directionText,
  dot,
  minus,
  plus,
  sinDeg,
  square,
  times,
  type Vec,
} from './vector.ts';

export interface Turned extends Lies {
  readonly turn: Turn;
  readonly turnDeg: number;
}

/**
 * A leg of direction `dir` behind a fitting.
 *
 * @param frame  of the leg before the fitting
 * @returns      how it comes to lie, its open side at right angles to `dir`; or what does not agree
 */
export function turnInto(frame: Frame, item: FittingItem, way: WayOut, dir: Vec): Turned | Wrong {
  if (item.kind === 'hinge') return hinged(frame, dir);
  const ways = waysOf(frame, item, way);
  const found = ways.find(({ along }) => angleDeg(along, dir) <= SAME_DEG);
  if (found !== undefined) return { ...found, along: dir, open: square(found.open, dir) };
  const names = ways.map(({ along }) => directionText(along)).join(' or ');
  return {
    part: 'dir',
    message: `${item.id} brings the leg to ${names}`,
    todo: `write ${names}, or use a fitting that turns as the leg goes`,
  };
}

/** The directions in which a fitting can send a leg. */
export function waysOf(
  { along, open, left }: Frame,
  item: Exclude<FittingItem, { kind: 'hinge' }>,
  way: WayOut,
): readonly Turned[] {
  if (item.kind === 'elbow') return elbowWays({ along, open, left }, item);
  if (item.kind === 'reducer') return [{ along, open, turn: 'none', turnDeg: 0 }];
  if (way === 'straight') return [{ along, open, turn: 'none', turnDeg: 90 }];
  return [{ along: way === 'left' ? left : minus(left), open, turn: way, turnDeg: 90 }];
}

function elbowWays({ along, open, left }: Frame, { turn, angleDeg: deg }: Elbow): readonly Turned[] {
  const [cos, sin] = [cosDeg(deg), sinDeg(deg)];
  const on = times(cos, along);
  if (turn === 'flat') {
    return [
      { along: plus(on, times(sin, left)), open, turn: 'left', turnDeg: deg },
      { along: plus(on, times(-sin, left)), open, turn: 'right', turnDeg: deg },
    ];
  }
  const way = turn === 'inside' ? 1 : -1;
  return [
    {
      along: plus(on, times(way * sin, open)),
      open: plus(times(cos, open), times(-way * sin, along)),
      turn,
      turnDeg: deg,
    },
  ];
}

/** A hinge turns by any angle, flat or up and down. */
function hinged({ along, open, left }: Frame, dir: Vec): Turned | Wrong {
  const turnDeg = angleDeg(along, dir);
  if (turnDeg > 180 - SAME_DEG) {
    return {
      part: 'dir',
      message: 'the hinge would fold the leg back on itself',
      todo: 'give a direction that goes on',
    };
  }
  const [ahead, aside, up] = [dot(dir, along), dot(dir, left), dot(dir, open)];
  const isFlat = offPlane(up) <= SAME_DEG;
  const isVertical = offPlane(aside) <= SAME_DEG;
  if (!isFlat && !isVertical) {
    return {
      part: 'dir',
      message: 'a hinge turns flat or up and down, not both at once',
      todo: 'use two hinges, or turn in one plane',
    };
  }
  if (turnDeg <= SAME_DEG) return { along: dir, open: square(open, dir), turn: 'none', turnDeg };
  if (isFlat) return { along: dir, open: square(open, dir), turn: aside > 0 ? 'left' : 'right', turnDeg };
  const turned = plus(times(ahead, open), times(-up, along));
  return { along: dir, open: square(turned, dir), turn: up > 0 ? 'inside' : 'outside', turnDeg };
}

/** Degrees between a unit vector and a plane, by its part at right angles to it. */
const offPlane = (part: number) => (Math.asin(Math.min(1, Math.abs(part))) * 180) / Math.PI;
