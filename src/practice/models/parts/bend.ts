/** Bending cable: which multiple of its diameter a person takes, and the radius that comes of it. */
import { inches } from '../../../trade/length.ts';
import { type RadiusCable, radius } from '../../../trade/radius.ts';
import type { Facts, World } from '../../model.ts';
import { num } from './asks.ts';
import { EDITION } from './fillRows.ts';
import { read } from './reads.ts';

export const CABLES = ['tc', 'tc-shielded', 'mc-interlocked', 'mc-smooth'] as const;
export type Cable = (typeof CABLES)[number];

const TRADE: Readonly<Record<Cable, { readonly cable: RadiusCable; readonly shielded: boolean }>> = {
  tc: { cable: 'TC', shielded: false },
  'tc-shielded': { cable: 'TC', shielded: true },
  'mc-interlocked': { cable: 'MC interlocked', shielded: false },
  'mc-smooth': { cable: 'MC smooth', shielded: false },
};

export const bend = (cable: Cable, odIn: number, world: World) =>
  radius({ ...TRADE[cable], odIn, edition: EDITION }, world.tables.radius);

export const multipleOf = (cable: Cable, odIn: number, world: World): number =>
  bend(cable, odIn, world).result.multiple ?? 0;

/** Steps of diameter where a kind of cable has several; the last has no end. */
const stepsOf = (cable: Cable, world: World) =>
  TRADE[cable].shielded ? [] : (world.tables.radius[TRADE[cable].cable].plain ?? []);

/** The multiple of the step of diameter beside the right one; null where there is one for all. */
export function neighbour(cable: Cable, odIn: number, world: World): number | null {
  const steps = stepsOf(cable, world);
  const at = steps.findIndex(({ upToIn }) => upToIn === null || odIn <= upToIn);
  return (steps[at - 1] ?? steps[at + 1])?.multiple ?? null;
}

/** How far a diameter is from the next step: what decides is not to hang on a digit. */
export const fromStep = (cable: Cable, odIn: number, world: World): number =>
  Math.min(9, ...stepsOf(cable, world).map(({ upToIn }) => Math.abs((upToIn ?? 9) - odIn)));

/** A cable thicker than every channel is deep lies in the ladder tray and goes no further. */
export const liesIn = (odIn: number, world: World): 'channel' | 'ladder' =>
  CHANNELS.some((id) => odIn <= inches(read(world, id, 'tray').depth)) ? 'channel' : 'ladder';
const CHANNELS = ['card-2', 'card-4', 'card-6'];

/** The rules as the person is shown them. */
export function ruleFacts(world: World): Facts {
  const of = (cable: Cable, odIn: number) => num(multipleOf(cable, odIn, world));
  return {
    tcSmall: of('tc', 1),
    tcMiddle: of('tc', 2),
    tcLarge: of('tc', 3),
    tcShield: of('tc-shielded', 1),
    interlocked: of('mc-interlocked', 1),
    smoothSmall: of('mc-smooth', 0.75),
    smoothMiddle: of('mc-smooth', 1.5),
    smoothLarge: of('mc-smooth', 2),
  };
}
