/**
 * What a family draws for a run: parts to be spread into a model's `wants`, and the values as they come. The words that a
 * parameter of the family's file may choose from are these lists; it may leave some out.
 */
import type { Drawn } from '../model.ts';

/** How a leg leaves the one before it. */
export const TURNS = [
  'left',
  'right',
  'half-left',
  'half-right',
  'up',
  'down',
  'hinge-left',
  'hinge-right',
  'reduce',
  'reduce-left',
  'reduce-right',
  'branch-left',
  'branch-right',
] as const;
export type Turn = (typeof TURNS)[number];

/** What parts a leg in two lines. */
export const PARTED = ['none', 'expansion', 'hinged', 'gap'] as const;

const CABLE_WORDS = [
  'control-12',
  'power-10',
  'power-6',
  'power-3',
  'armoured-3',
  'signal-2',
  'signal-8',
] as const;

/** Legs by working points, and what stands at the run's outer ends. `part`: where a leg is parted, in hundredths of it. */
export const ROUTE = {
  width: ['card-2', 'card-4', 'card-6'],
  heading: ['north', 'east', 'south', 'west'],
  start: ['ladder', 'tray', 'free'],
  end: ['instrument', 'tray', 'free'],
  legs: { rows: { length: 'length', turn: TURNS, parted: PARTED, part: 'whole' } },
} as const;

/** Cables from the start to the last leg; with a branch the first row's go there. */
export const CARRIES = { cables: { rows: { cable: CABLE_WORDS, count: 'whole' } } } as const;

/** Longest span that the run's drawing allows. */
export const SPANS = { maxSpan: 'length' } as const;

/** Metal temperatures, °F; wanted where a run may have an expansion splice. */
export const WARMTH = { lowF: 'whole', highF: 'whole', nowF: 'whole' } as const;

/** Splices of the straight parts: the tray's own sleeve, or its plate. */
export const SPLICES = { splice: ['sleeve', 'plate'] } as const;

/** Which leg begins at painted faces, counted from 1; beyond the last, none does. */
export const PAINTED = { painted: 'whole' } as const;

export type RouteValues = Drawn<typeof ROUTE> &
  Partial<
    Drawn<typeof CARRIES> &
      Drawn<typeof SPANS> &
      Drawn<typeof WARMTH> &
      Drawn<typeof SPLICES> &
      Drawn<typeof PAINTED>
  > & {
    /** A barrier the whole way, power left of it and signal right. */
    readonly barrier?: boolean;
  };
export type LegValues = RouteValues['legs'][number];
