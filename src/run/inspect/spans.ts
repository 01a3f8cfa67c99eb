/** Spans, and where in them the splices stand. */
import { atMost } from '../../trade/hair.ts';
import { middle } from '../../trade/length.ts';
import type { Line, ResolvedLeg, Span } from '../resolved.ts';
import { SPLICE_PLACES } from '../sources.ts';
import { spanLimit } from '../spanLimit.ts';
import type { ResolvedJoint } from '../straight.ts';
import { type Found, lengths, type Rule, type Scope, text } from './finding.ts';

type Splice = ResolvedJoint;

/** Where a splice stands among the supports of its line. */
type Stands =
  | { readonly in: 'end span' }
  | { readonly in: 'span'; readonly span: Span }
  /** Exactly on an inner support, between two spans. */
  | { readonly in: 'support' };

/**
 * What is beyond the first or last support is an end span too. A splice exactly on a support stands in an end span when
 * both sides of it are.
 */
function stands({ spans, supports }: Pick<Line, 'spans' | 'supports'>, { at }: Splice): Stands {
  const inside = spans.find(({ from, to }) => from < at && at < to);
  if (inside !== undefined) return inside.end ? { in: 'end span' } : { in: 'span', span: inside };
  const on = supports.findIndex((support) => support.at === at);
  const beside = [spans[on - 1], spans[on]];
  return on >= 0 && beside.some((span) => span?.end === false) ? { in: 'support' } : { in: 'end span' };
}

interface Placed {
  readonly leg: ResolvedLeg;
  readonly line: Line;
  readonly splice: Splice;
  readonly where: Stands;
}

function placed({ resolved }: Scope): readonly Placed[] {
  return resolved.legs.flatMap((leg) =>
    leg.lines.flatMap((line) =>
      line.splices.map((splice) => ({ leg, line, splice, where: stands(line, splice) })),
    ),
  );
}

/** Distance to the nearest support of the line, and which it is. */
export function nearestSupport(
  { supports }: Pick<Line, 'supports'>,
  place: number,
): { readonly name: string; readonly distance: number } | null {
  let nearest: { name: string; distance: number } | null = null;
  for (const { name, at } of supports) {
    const distance = Math.abs(at - place);
    if (nearest === null || distance < nearest.distance) nearest = { name, distance };
  }
  return nearest;
}

const tooLong: Rule = {
  id: 'span-too-long',
  source: () => SPLICE_PLACES,
  find: ({ resolved }) =>
    resolved.legs.flatMap((leg): readonly Found[] => {
      const { limit, by, source } = spanLimit(leg, resolved);
      if (limit === null) return [];
      return leg.lines.flatMap(({ spans, supports }) =>
        spans.flatMap(({ from, to, length }, i): readonly Found[] =>
          length <= limit
            ? []
            : [
                {
                  leg: leg.leg,
                  at: middle(from, to),
                  ...lengths(length, limit),
                  source,
                  variant: by,
                  values: {
                    span: text(length),
                    limit: text(limit),
                    from: supports[i]?.name ?? '',
                    to: supports[i + 1]?.name ?? '',
                  },
                },
              ],
        ),
      );
    }),
};

const pastQuarter: Rule = {
  id: 'splice-past-quarter',
  source: ({ tables }) => tables.limits.spliceShare.source,
  find: (scope) =>
    placed(scope).flatMap(({ leg, line, splice, where }): readonly Found[] => {
      if (where.in !== 'span') return [];
      const { span } = where;
      const most = scope.tables.limits.spliceShare.value * span.length;
      const nearest = nearestSupport(line, splice.at);
      if (nearest === null || atMost(nearest.distance, most)) return [];
      const half = splice.length / 2;
      return [
        {
          leg: leg.leg,
          at: splice.at,
          ...lengths(nearest.distance, most),
          values: {
            splice: splice.name,
            distance: text(nearest.distance),
            support: nearest.name,
            limit: text(most),
            span: text(span.length),
            a: text(span.from + half),
            b: text(span.from + most),
            c: text(span.to - most),
            d: text(span.to - half),
          },
          // Nearer to a support than half the splice it would stand over the strut.
          todo: half > most ? 'short' : 'move',
        },
      ];
    }),
};

const two: Rule = {
  id: 'two-splices-in-span',
  source: () => SPLICE_PLACES,
  find: ({ resolved }) =>
    resolved.legs.flatMap((leg) =>
      leg.lines.flatMap(({ spans, splices }) =>
        spans.flatMap(({ from, to, end }): readonly Found[] => {
          const inside = end ? [] : splices.filter(({ at }) => from < at && at < to);
          const [first, second] = inside;
          if (first === undefined || second === undefined) return [];
          const values = { first: first.name, second: second.name, count: inside.length };
          return [{ leg: leg.leg, at: second.at, values }];
        }),
      ),
    ),
};

const inEndSpan: Rule = {
  id: 'splice-in-end-span',
  source: () => SPLICE_PLACES,
  find: (scope) =>
    placed(scope)
      .filter(({ where }) => where.in === 'end span')
      .map(({ leg, splice }) => ({ leg: leg.leg, at: splice.at, values: { splice: splice.name } })),
};

const onSupport: Rule = {
  id: 'splice-on-support',
  source: () => SPLICE_PLACES,
  find: (scope) =>
    placed(scope).flatMap(({ leg, line, splice, where }): readonly Found[] => {
      const nearest = nearestSupport(line, splice.at);
      if (where.in === 'end span' || nearest === null || 2 * nearest.distance >= splice.length) return [];
      const half = splice.length / 2;
      return [
        {
          leg: leg.leg,
          at: splice.at,
          ...lengths(nearest.distance, half),
          values: {
            splice: splice.name,
            support: nearest.name,
            distance: text(nearest.distance),
            limit: text(half),
          },
        },
      ];
    }),
};

export const spanRules: readonly Rule[] = [tooLong, pastQuarter, two, inEndSpan, onSupport];
