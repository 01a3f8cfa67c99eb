/** Straight splices where none may stand. */
import type { Line, ResolvedLeg, ResolvedRun, Span } from '../../../run/resolved.ts';
import type { ResolvedJoint } from '../../../run/straight.ts';
import { fromInches, type Ticks, ticks } from '../../../trade/length.ts';
import { type Damage, moreJoints, type Planted, type Spoilt, wholeInch, withJoint } from './damage.ts';

interface Inside {
  readonly leg: ResolvedLeg;
  readonly line: Line;
  readonly span: Span;
  /** Straight splices in this span. */
  readonly splices: readonly ResolvedJoint[];
}

const spansOf = ({ legs }: ResolvedRun): readonly Inside[] =>
  legs.flatMap((leg) =>
    leg.lines.flatMap((line) =>
      line.spans.map((span) => ({
        leg,
        line,
        span,
        splices: line.splices.filter(({ at }) => span.from < at && at < span.to),
      })),
    ),
  );

function moved(
  { run }: ResolvedRun,
  { given }: ResolvedJoint,
  at: Ticks,
  planted: Omit<Planted, 'at'>,
): Spoilt {
  return { run: withJoint(run, given, { at }), planted: { ...planted, at } };
}

/** A splice in the middle of its span, or near it. */
export const spliceMid: Damage = (resolved) =>
  spansOf(resolved).flatMap(({ leg, span, splices }) =>
    span.end
      ? []
      : splices.flatMap((splice) =>
          [1 / 2, 5 / 12, 7 / 12].map((share) =>
            moved(resolved, splice, wholeInch(span.from + share * span.length), {
              rule: 'splice-past-quarter',
              leg: leg.leg,
            }),
          ),
        ),
  );

/** A splice right over a strut. */
export const spliceOnSupport: Damage = (resolved) =>
  spansOf(resolved).flatMap(({ leg, line, splices }) =>
    splices.flatMap((splice) =>
      line.supports
        .slice(1, -1)
        .map(({ at }) => moved(resolved, splice, at, { rule: 'splice-on-support', leg: leg.leg })),
    ),
  );

/** A short piece was used up: two splices in one span. */
export const spliceTwice: Damage = (resolved) =>
  spansOf(resolved).flatMap(({ leg, span, splices: [first, ...more] }) => {
    if (span.end || first === undefined || more.length > 0) return [];
    return [span.from + span.length / 6, span.to - span.length / 6].map((place): Spoilt => {
      const at = wholeInch(place);
      const second = ticks(Math.max(at, first.at));
      return {
        run: moreJoints(resolved.run, { leg: leg.leg, at, kind: first.kind }),
        planted: { rule: 'two-splices-in-span', leg: leg.leg, at: second },
      };
    });
  });

/** A fifth of it is clear of half a sleeve, and rounded still within the quarter. */
const LEAST_FOR_ONE_RULE = fromInches(30);

/**
 * A splice in the first or last span of a line, moved there or put in to use up a short piece; within its quarter, that
 * no second rule is broken there.
 */
export const spliceInEndSpan: Damage = (resolved) =>
  spansOf(resolved).flatMap(({ leg, line, span, splices }) => {
    if (!span.end || splices.length > 0) return [];
    const kind = line.splices[0]?.kind ?? 'socketed';
    // Clear of the strut by more than half a sleeve as well.
    if (span.length < LEAST_FOR_ONE_RULE) return [];
    return [1 / 5, 4 / 5].flatMap((share): readonly Spoilt[] => {
      const at = wholeInch(span.from + share * span.length);
      const planted = { rule: 'splice-in-end-span', leg: leg.leg, at } as const;
      return [
        ...line.splices.map((splice) => ({ run: withJoint(resolved.run, splice.given, { at }), planted })),
        { run: moreJoints(resolved.run, { leg: leg.leg, at, kind }), planted },
      ];
    });
  });
