/** Where a run needs a jumper, why, of what size, and whether the one that is there is large enough. */
import type { Source } from '../trade/answer.ts';
import { compareSizes, isSize, jumper, type Size } from '../trade/jumper.ts';
import { type Ticks, ticks } from '../trade/length.ts';
import type { Catalogue } from './catalogue.ts';
import { editionOf } from './edition.ts';
import type { ResolvedLeg, ResolvedRun } from './resolved.ts';
import type { RunTables } from './tables.ts';
import type { Jumper } from './types.ts';

/** Why a jumper is needed; where several fit, the first. */
export type JumperReason = 'start' | 'end' | 'hinged' | 'expansion' | 'gap' | 'not identified' | 'not bare';

/** A place where channel meets something, and a jumper may stand. */
export interface JumperPlace {
  readonly leg: ResolvedLeg;
  /** 0 at the start and at a fitting, the leg's length at an end, else the joint's. */
  readonly at: Ticks;
  /** Path of what is given there: `start`, `legs[2]`, `joints[0]`, `ends[1]`; of a last leg without an end, the leg's. */
  readonly field: string;
  readonly reason: JumperReason | null;
  /** Smallest size by the table; null where the leg's cables name no device, or one above the table. */
  readonly size: Size | null;
  readonly given: Jumper;
  /** Given, and not smaller than needed; null where no size is known. */
  readonly holds: boolean | null;
}

export interface NeededJumper extends JumperPlace {
  readonly reason: JumperReason;
}

export interface JumperSize {
  /** null: no device is named over the leg, or one above the table. */
  readonly size: Size | null;
  readonly sources: readonly Source[];
}

/** Smallest copper jumper for the circuits over a leg. */
export function jumperSize(leg: ResolvedLeg, resolved: ResolvedRun, tables: RunTables): JumperSize {
  const devicesA = resolved
    .cablesOver(leg)
    .flatMap(({ deviceA }) => (deviceA === undefined ? [] : [deviceA]));
  if (devicesA.length === 0) return { size: null, sources: [] };
  const edition = editionOf(resolved, tables);
  const { result, sources } = jumper({ devicesA, metal: 'copper', edition }, tables.jumper);
  return { size: result.size, sources };
}

type Bare = boolean | undefined;
/** First of the reasons that hold. */
const first = (...reasons: readonly (JumperReason | false | null)[]): JumperReason | null =>
  reasons.find((r): r is JumperReason => r !== false && r !== null) ?? null;
const notBare = (bare: Bare) => bare === false && 'not bare';

/** Every place where channel meets something, by legs in order of travel, then along the leg. */
export function jumperPlaces(
  resolved: ResolvedRun,
  catalogue: Catalogue,
  tables: RunTables,
): readonly JumperPlace[] {
  return resolved.legs.flatMap((leg) => {
    const { size } = jumperSize(leg, resolved, tables);
    return placesOf(leg, resolved, catalogue).map(({ given = null, ...place }): JumperPlace => {
      const holds = size === null ? null : given !== null && isAtLeast(given, size);
      return { leg, ...place, size, given, holds };
    });
  });
}

const isAtLeast = (given: string, size: Size): boolean => isSize(given) && compareSizes(given, size) >= 0;

/** Places that need a jumper, whether one is given or not. */
export function jumpersNeeded(
  resolved: ResolvedRun,
  catalogue: Catalogue,
  tables: RunTables,
): readonly NeededJumper[] {
  return jumperPlaces(resolved, catalogue, tables).filter(
    (place): place is NeededJumper => place.reason !== null,
  );
}

interface Place {
  readonly at: Ticks;
  readonly field: string;
  readonly reason: JumperReason | null;
  readonly given?: Jumper | undefined;
}

function placesOf(leg: ResolvedLeg, { start }: ResolvedRun, catalogue: Catalogue): readonly Place[] {
  const places: Place[] = [];
  const { fittingBefore: fitting, given, givenEnd: end } = leg;
  if (fitting === null) {
    const reason = first(
      start.kind !== 'free' && 'start',
      start.joint === 'expansion' && 'expansion',
      notBare(start.bare),
      notBare(given.bare),
    );
    // What the first leg says of its first working point, it says of the start.
    places.push({ at: ticks(0), field: 'start', reason, given: start.jumper ?? given.jumper });
  } else {
    const reason = first(
      fitting.item.kind === 'hinge' && 'hinged',
      !fitting.item.grounding && 'not identified',
      notBare(given.bare),
    );
    places.push({ at: ticks(0), field: leg.field, reason, given: given.jumper });
  }
  for (const joint of leg.joints) {
    const reason = first(
      joint.kind === 'hinged' && 'hinged',
      joint.kind === 'expansion' && 'expansion',
      joint.kind === 'gap' && 'gap',
      !identified(catalogue, joint.item) && 'not identified',
      notBare(joint.given?.bare),
    );
    places.push({ at: joint.at, field: joint.field ?? leg.field, reason, given: joint.given?.jumper });
  }
  if (leg.fittingAfter === null) {
    const reason = first(
      end !== null && end.kind !== 'free' && 'end',
      end?.joint === 'expansion' && 'expansion',
      notBare(end?.bare),
    );
    places.push({ at: leg.length, field: leg.endField, reason, given: end?.jumper });
  }
  return places;
}

/** Whether a part may be relied on as part of the ground path. */
function identified(catalogue: Catalogue, id: string | null): boolean {
  const item = id === null ? undefined : catalogue.get(id);
  return item === undefined || !('grounding' in item) || item.grounding;
}
