/** Jumpers that are not there, too small, or where none belongs. */
import type { RuleId } from '../../../run/inspect/inspect.ts';
import { type JumperPlace, jumperPlaces } from '../../../run/jumpers.ts';
import type { Jumper, Run } from '../../../run/types.ts';
import { compareSizes, SIZES, type Size } from '../../../trade/jumper.ts';
import type { Damage, Spoilt } from './damage.ts';

/** The run with this jumper at a place. */
function withJumper(run: Run, field: string, jumper: Jumper): Run {
  const at = (list: string, i: number) => field === `${list}[${i}]`;
  const fitted = <T extends object>(all: readonly T[] | undefined, list: string) =>
    (all ?? []).map((one, i) => (at(list, i) ? { ...one, jumper } : one));
  return {
    ...run,
    start: field === 'start' ? { ...run.start, jumper } : run.start,
    legs: fitted(run.legs, 'legs'),
    ends: fitted(run.ends, 'ends'),
    joints: fitted(run.joints, 'joints'),
  };
}

const atPlaces =
  (rule: RuleId, jumpers: (place: JumperPlace) => readonly Jumper[]): Damage =>
  (resolved, { catalogue, tables }) =>
    jumperPlaces(resolved, catalogue, tables).flatMap((place) =>
      jumpers(place).map(
        (jumper): Spoilt => ({
          run: withJumper(resolved.run, place.field, jumper),
          planted: { rule, leg: place.leg.leg, at: place.at },
        }),
      ),
    );

export const jumperMissing = atPlaces('jumper-missing', ({ reason, given }) =>
  reason !== null && given !== null ? [null] : [],
);

/** Where the part is identified for grounding and the faces are bare. */
export const jumperNeedless = atPlaces('jumper-needless', ({ reason, given, size, at, leg }) =>
  reason === null && given === null && size !== null && (at > 0 || leg.fittingBefore !== null) ? [size] : [],
);

const smaller = (size: Size): readonly Size[] => SIZES.filter((one) => compareSizes(one, size) < 0).slice(-2);

export const jumperSmall = atPlaces('jumper-small', ({ reason, given, size }) =>
  reason !== null && given !== null && size !== null ? smaller(size) : [],
);
