/** Faults put into a sound run, each where an inspection then finds it and nothing else. */

import { stockFaults } from '../../run/resolve.ts';
import type { ResolvedRun } from '../../run/resolved.ts';
import type { Run } from '../../run/types.ts';
import { couldStand, LEAST_BETWEEN_PLACES, namedAlone } from './clear.ts';
import * as anchors from './damages/anchors.ts';
import * as bonding from './damages/bonding.ts';
import * as cables from './damages/cables.ts';
import type { Damage, Planted, Spoilt } from './damages/damage.ts';
import * as joints from './damages/joints.ts';
import * as parts from './damages/parts.ts';
import * as splices from './damages/splices.ts';
import * as supports from './damages/supports.ts';
import { type Bench, findingsIn, resolvedOf, type SoundRun } from './sound.ts';

export type { Planted } from './damages/damage.ts';

/** Every damage, by what was done; several may break one rule. */
export const DAMAGES = {
  'span-long': supports.spanLong,
  'support-left-out': supports.supportLeftOut,
  'fitting-bare': supports.fittingBare,
  'expansion-bare': supports.expansionBare,
  'end-bare': supports.endBare,
  'splice-mid': splices.spliceMid,
  'splice-twice': splices.spliceTwice,
  'splice-end-span': splices.spliceInEndSpan,
  'splice-on-support': splices.spliceOnSupport,
  'insertion-short': joints.insertionShort,
  'insertion-long': joints.insertionLong,
  'ends-butted': joints.endsButted,
  'hole-large': joints.holeLarge,
  'butt-open': joints.buttOpen,
  'expansion-off': joints.expansionOff,
  'cut-in-hole': joints.cutInHole,
  'open-gap-long': joints.openGapLong,
  'jumper-missing': bonding.jumperMissing,
  'jumper-needless': bonding.jumperNeedless,
  'jumper-small': bonding.jumperSmall,
  'clamp-on-guide': anchors.clampOnGuide,
  'held-nowhere': anchors.heldNowhere,
  'held-off-middle': anchors.heldOffMiddle,
  overfilled: cables.overfilled,
  'barrier-no-row': cables.barrierNoRow,
  'barrier-missing': cables.barrierMissing,
  'signal-with-power': cables.signalWithPower,
  'air-tube': cables.airTube,
  'bend-tight': cables.bendTight,
  'stood-on': parts.stoodOn,
  'steel-sleeve': parts.steelSleeve,
  'other-hand': parts.otherHand,
} as const satisfies Readonly<Record<string, Damage>>;

export type DamageKind = keyof typeof DAMAGES;
export const DAMAGE_KINDS = Object.keys(DAMAGES) as readonly DamageKind[];

/** A damage wanted; `pick`, whole from 0, says at which of its places. */
export interface WantedDamage {
  readonly damage: DamageKind;
  readonly pick: number;
}

export interface Damaged {
  readonly run: Run;
  readonly resolved: ResolvedRun;
  /** In the order wanted; exactly what an inspection finds. */
  readonly planted: readonly Planted[];
}

/** Places tried for one damage before it is given up. */
const MOST_TRIED = 12;
/**
 * The run with every damage wanted in it, each at a place of its own.
 *
 * @returns null where one of them cannot be made beside the others
 */
export function damaged(sound: SoundRun, wanted: readonly WantedDamage[], bench: Bench): Damaged | null {
  const made = damagedSome(sound, wanted, wanted.length, bench);
  return made?.planted.length === wanted.length ? made : null;
}

/**
 * The run with so many damages in it: the first of those wanted that can be made beside each other.
 *
 * @param count  how many, whole from 0
 * @returns      null where fewer can be made
 */
export function damagedSome(
  sound: SoundRun,
  wanted: readonly WantedDamage[],
  count: number,
  bench: Bench,
): Damaged | null {
  let made: Damaged = { ...sound, planted: [] };
  for (const { damage, pick } of wanted) {
    if (made.planted.length === count) break;
    made = spoil(made, DAMAGES[damage](made.resolved, bench), pick, bench) ?? made;
  }
  return made.planted.length === count ? made : null;
}

function spoil(made: Damaged, spots: readonly Spoilt[], pick: number, bench: Bench): Damaged | null {
  for (let n = 0; n < Math.min(MOST_TRIED, spots.length); n++) {
    const { run, planted } = spots[(pick + n) % spots.length] as Spoilt;
    if (made.planted.some((other) => tooNear(other, planted))) continue;
    const resolved = resolvedOf(run, bench);
    if (resolved === null || stockFaults(resolved).length > 0 || !couldStand(resolved)) continue;
    const all = [...made.planted, planted];
    if (!all.every((one) => namedAlone(one, resolved, bench))) continue;
    if (sameFaults(all, findingsIn(resolved, bench))) return { run, resolved, planted: all };
  }
  return null;
}

function tooNear(one: Planted, other: Planted): boolean {
  if (one.leg !== other.leg) return false;
  if (one.at === null || other.at === null) return one.at === other.at && one.rule === other.rule;
  return Math.abs(one.at - other.at) < LEAST_BETWEEN_PLACES;
}

/** Whether two lists name the same faults, in any order. */
export function sameFaults(some: readonly Planted[], others: readonly Planted[]): boolean {
  const key = ({ rule, leg, at }: Planted) => `${rule} ${leg} ${at}`;
  const [a, b] = [some, others].map((list) => new Set(list.map(key))) as [Set<string>, Set<string>];
  return some.length === others.length && a.size === b.size && [...a].every((one) => b.has(one));
}
