/** Joints put together wrongly: what goes in, what stays open, through which hole, and a cut that meets one. */
import type { RuleId } from '../../../run/inspect/inspect.ts';
import type { ResolvedLeg, ResolvedRun } from '../../../run/resolved.ts';
import type { ResolvedJoint } from '../../../run/straight.ts';
import type { Joint } from '../../../run/types.ts';
import { fromInches, type Ticks, ticks } from '../../../trade/length.ts';
import { type Damage, type Spoilt, withEnd, withJoint } from './damage.ts';

/** The joint changed in each of these ways; the finding stands at the joint. */
const atJoints =
  (
    rule: RuleId,
    ways: (joint: ResolvedJoint, leg: ResolvedLeg, resolved: ResolvedRun) => readonly Partial<Joint>[],
  ): Damage =>
  (resolved) =>
    resolved.legs.flatMap((leg) =>
      leg.joints.flatMap((joint) =>
        ways(joint, leg, resolved).map(
          (change): Spoilt => ({
            run: withJoint(resolved.run, joint.given, change),
            planted: { rule, leg: leg.leg, at: change.at ?? joint.at },
          }),
        ),
      ),
    );

const goesIn = ({ kind }: ResolvedJoint) => kind === 'socketed' || kind === 'hinged';
const off = (insertion: Ticks, by: number): Ticks => ticks(insertion + fromInches(by));

/** One end stops short. */
export const insertionShort = atJoints('insertion-short', (joint) => {
  const [a, b] = joint.insertions;
  if (!goesIn(joint)) return [];
  const by = joint.kind === 'hinged' ? [-0.5, -0.75] : [-1, -1.5, -2];
  return by.flatMap((less) => [
    { insertions: [off(a, less), b] as const },
    { insertions: [a, off(b, less)] as const },
  ]);
});

/** One end goes in past its mark, and the other not as far. */
export const insertionLong = atJoints('insertion-long', (joint) => {
  const [a, b] = joint.insertions;
  if (joint.kind !== 'socketed') return [];
  return [
    { insertions: [off(a, 1 / 8), off(b, -1 / 16)] as const },
    { insertions: [off(a, -1 / 16), off(b, 1 / 8)] as const },
  ];
});

/** The ends meet inside the sleeve. */
export const endsButted = atJoints('ends-butted', ({ kind, insertions: [a, b], length }) => {
  if (kind !== 'socketed') return [];
  const more = length - a - b;
  const half = Math.floor(more / 2);
  return [{ insertions: [ticks(a + half), ticks(b + more - half)] as const }];
});

/** Bolted through the large holes. */
export const holeLarge = atJoints('hole-wrong', ({ kind }) =>
  kind === 'socketed' || kind === 'butt' ? [{ hole: 'large' }] : [],
);

/** A short piece made up for by a wide butt. */
export const buttOpen = atJoints('gap-wrong', ({ kind }) =>
  kind === 'butt' ? [3 / 16, 1 / 4, 3 / 8, 1 / 2].map((gap) => ({ gap: fromInches(gap) })) : [],
);

/** Set at half, to the gap of the other way round, or wide open, whatever the metal's temperature. */
export const expansionOff = atJoints('gap-wrong', ({ kind, opening }) =>
  kind === 'expansion'
    ? [ticks(fromInches(1) - opening), fromInches(1 / 2), fromInches(1), fromInches(1 / 16)].map((gap) => ({
        gap,
      }))
    : [],
);

/** A splice moved until the piece before it ends in a hole of the floor. */
export const cutInHole: Damage = (resolved) =>
  resolved.legs.flatMap((leg) =>
    leg.joints.flatMap((joint, i): readonly Spoilt[] => {
      const piece = leg.pieces[i];
      if (piece === undefined || (joint.kind !== 'socketed' && joint.kind !== 'butt')) return [];
      const { first, pitch } = leg.tray.webHoles;
      const near = Math.round((piece.cut - first) / pitch);
      return [near, near - 1, near + 1].map((k): Spoilt => {
        const by = first + k * pitch - piece.cut;
        return {
          run: withJoint(resolved.run, joint.given, { at: ticks(joint.at + by) }),
          planted: { rule: 'cut-in-hole', leg: leg.leg, at: ticks(piece.to + by) },
        };
      });
    }),
  );

/** From the channel's end to the instrument it is farther than allowed. */
export const openGapLong: Damage = (resolved, { tables }) => {
  const limit = tables.limits.openGap[tables.edition]?.value;
  if (limit === undefined) return [];
  return resolved.legs.flatMap(({ leg, length, givenEnd }) =>
    givenEnd?.kind === 'instrument'
      ? [5, 14, 22].map(
          (out): Spoilt => ({
            run: withEnd(resolved.run, leg, { open: ticks(limit + fromInches(out)) }),
            planted: { rule: 'open-gap-long', leg, at: length },
          }),
        )
      : [],
  );
};
