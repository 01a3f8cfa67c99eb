/** How joints are put together: what goes in, what stays open, through which holes, and where the saw met one. */

import { HOLES } from '../../trade/habits.ts';
import { formatLength, type Ticks, ticks } from '../../trade/length.ts';
import { shortLength } from '../../trade/shortLength.ts';
import { type CutAtHole, cutAtHole } from '../clearPlaces.ts';
import { editionOf } from '../edition.ts';
import type { ResolvedLeg } from '../resolved.ts';
import { ENDS_APART, nfpa, SMALL_HOLES } from '../sources.ts';
import { stockOf } from '../stock.ts';
import type { ResolvedJoint } from '../straight.ts';
import { wantedGap } from '../wantedGap.ts';
import { type Found, lengths, type Rule, type RuleId, type Scope, text } from './finding.ts';

/** What a rule finds at each joint of the run. */
function atJoints(
  id: RuleId,
  source: Rule['source'],
  find: (joint: ResolvedJoint, scope: Scope) => Omit<Found, 'leg' | 'at'> | null,
): Rule {
  return {
    id,
    source,
    find: (scope) =>
      scope.resolved.legs.flatMap((leg) =>
        leg.joints.flatMap((joint): readonly Found[] => {
          const found = find(joint, scope);
          return found === null
            ? []
            : [{ leg: leg.leg, at: joint.at, ...found, values: { joint: joint.name, ...found.values } }];
        }),
      ),
  };
}

/** How far the catalogue lets channel into a joint; null where nothing goes in. */
function insertionOf({ item }: ResolvedJoint, { catalogue }: Scope): Ticks | null {
  const part = item === null ? undefined : catalogue.get(item);
  return part?.kind === 'sleeve' || part?.kind === 'hinge' ? part.insertion : null;
}

/** The insertion that is farthest out on one side of the catalogue's. */
const insertion = (id: 'insertion-short' | 'insertion-long', sign: 1 | -1): Rule =>
  atJoints(
    id,
    ({ tables }) => tables.limits.insertionOff.source,
    (joint, scope) => {
      const wanted = insertionOf(joint, scope);
      if (wanted === null) return null;
      const limit = wanted + sign * scope.tables.limits.insertionOff.value;
      const [a, b] = joint.insertions;
      const worst = sign > 0 ? Math.max(a, b) : Math.min(a, b);
      if (sign * (worst - limit) <= 0) return null;
      const values = { insertion: text(worst), wanted: shortLength(wanted), limit: text(Math.max(0, limit)) };
      return { ...lengths(worst, limit), values };
    },
  );

const butted = atJoints(
  'ends-butted',
  () => ENDS_APART,
  ({ kind, opening }) => (kind === 'socketed' && opening === 0 ? {} : null),
);

const hole = atJoints(
  'hole-wrong',
  () => SMALL_HOLES,
  ({ given }) => (given?.hole === 'large' ? {} : null),
);

const gap: Rule = atJoints(
  'gap-wrong',
  ({ tables }) => tables.limits.buttGap.source,
  ({ kind, opening }, { resolved, tables }) => {
    const { buttGap, expansionOff, movement } = tables.limits;
    if (kind === 'butt' && opening > buttGap.value) {
      return {
        ...lengths(opening, buttGap.value),
        variant: 'butt',
        todo: 'butt',
        values: { gap: shortLength(opening), limit: shortLength(buttGap.value) },
      };
    }
    const { temps } = resolved.run;
    if (kind !== 'expansion' || temps === undefined) return null;
    const wanted = wantedGap(temps, movement.value);
    if (wanted === null || Math.abs(opening - wanted) <= expansionOff.value) return null;
    return {
      ...lengths(opening, wanted),
      source: expansionOff.source,
      variant: 'expansion',
      todo: 'expansion',
      values: {
        gap: formatLength(opening).replace(/^0'-/, ''),
        limit: formatLength(wanted).replace(/^0'-/, ''),
        now: temps.nowF,
      },
    };
  },
);

/** Gaps between channels and, at ends, from the channel to what its cables go to. */
const openGap: Rule = {
  id: 'open-gap-long',
  source: ({ resolved, tables }) => {
    const edition = editionOf(resolved, tables);
    return tables.limits.openGap[edition]?.source ?? nfpa('392.30(B)(3)', edition);
  },
  find: ({ resolved, tables }) => {
    const limit = tables.limits.openGap[editionOf(resolved, tables)]?.value;
    if (limit === undefined) return [];
    const long = (leg: ResolvedLeg, at: Ticks, open: Ticks): readonly Found[] =>
      open <= limit
        ? []
        : [
            {
              leg: leg.leg,
              at,
              ...lengths(open, limit),
              values: { gap: shortLength(open), limit: shortLength(limit) },
            },
          ];
    return resolved.legs.flatMap((leg) => [
      ...leg.joints.flatMap(({ kind, at, opening }) => (kind === 'gap' ? long(leg, at, opening) : [])),
      ...long(leg, leg.length, leg.givenEnd?.open ?? ticks(0)),
    ]);
  },
};

/** The clear places nearest to a cut that falls on a hole: where the joint may go instead. */
function clearOf({ shorter, longer }: CutAtHole): Pick<Found, 'todo' | 'values'> {
  const clear = [shorter, longer].flatMap((place) => (place === null ? [] : [shortLength(place)]));
  const [first, second] = clear;
  if (first === undefined) return { todo: 'none' };
  return second === undefined
    ? { todo: 'one', values: { clear: first } }
    : { todo: 'both', values: { shorter: first, longer: second } };
}

const inHole: Rule = {
  id: 'cut-in-hole',
  source: () => HOLES,
  find: ({ resolved }) =>
    resolved.legs.flatMap((leg) =>
      leg.pieces.flatMap(({ id, cut, to }): readonly Found[] => {
        const met = cutAtHole(cut, leg.tray.webHoles, stockOf(leg, resolved));
        if (met?.falls !== 'on') return [];
        const { todo, values } = clearOf(met);
        return [{ leg: leg.leg, at: to, todo, values: { piece: id, cut: shortLength(cut), ...values } }];
      }),
    ),
};

export const jointRules: readonly Rule[] = [
  insertion('insertion-short', -1),
  insertion('insertion-long', 1),
  butted,
  hole,
  inHole,
  gap,
  openGap,
];
