/** Faces that a support must stand near: of fittings and hinges, of expansion splices, and the channel's ends. */
import { type Ticks, ticks } from '../../trade/length.ts';
import type { Line, LineEnd, ResolvedLeg } from '../resolved.ts';
import { type Found, lengths, type Rule, type RuleId, type Scope, text } from './finding.ts';
import { nearestSupport } from './spans.ts';

/** At a start or an end the place is the leg's own, whatever goes in there; else the face. */
export function placeOf({ kind, face, joint }: LineEnd, own: Ticks): Ticks {
  return joint === null && kind !== 'fitting' && kind !== 'hinged' ? own : face;
}

export function ruleOf({ kind, joint }: LineEnd): RuleId {
  if (kind === 'fitting' || kind === 'hinged') return 'fitting-unsupported';
  return kind === 'expansion' && joint !== null ? 'expansion-unsupported' : 'end-unsupported';
}

/** An end at another tray needs no support of its own: that tray brings it. */
export const endsAtTray = ({ givenEnd }: ResolvedLeg, { kind }: LineEnd): boolean =>
  kind === 'end' && givenEnd?.kind === 'tray';

function rule(id: RuleId): Rule {
  const find = ({ resolved, tables }: Scope): readonly Found[] => {
    const within = tables.limits.supportWithin.value;
    return resolved.legs.flatMap((leg) =>
      leg.lines.flatMap((line: Line) =>
        [[line.from, ticks(0)] as const, [line.to, leg.length] as const].flatMap(
          ([end, own]): readonly Found[] => {
            if (ruleOf(end) !== id || endsAtTray(leg, end)) return [];
            const at = placeOf(end, own);
            const nearest = nearestSupport(line, at);
            if (nearest !== null && nearest.distance <= within) return [];
            const values = { limit: text(within) };
            if (nearest === null) {
              return [
                {
                  leg: leg.leg,
                  at,
                  limit: lengths(0, within).limit ?? null,
                  unit: 'in',
                  variant: 'none',
                  values,
                },
              ];
            }
            return [
              {
                leg: leg.leg,
                at,
                ...lengths(nearest.distance, within),
                values: { ...values, support: nearest.name, distance: text(nearest.distance) },
              },
            ];
          },
        ),
      ),
    );
  };
  return { id, source: ({ tables }) => tables.limits.supportWithin.source, find };
}

export const unsupportedRules: readonly Rule[] = [
  rule('fitting-unsupported'),
  rule('expansion-unsupported'),
  rule('end-unsupported'),
];
