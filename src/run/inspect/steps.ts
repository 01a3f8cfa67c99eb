/** What the findings rest on, and what could not be judged. */
import type { Source, Step } from '../../trade/answer.ts';
import { shortLength } from '../../trade/shortLength.ts';
import { editionOf } from '../edition.ts';
import { limitsRest } from '../limitsRest.ts';
import { spanLimit } from '../spanLimit.ts';
import { wantedGap } from '../wantedGap.ts';
import { type Finding, RULE_IDS, type Scope } from './finding.ts';

export function inspectSteps(
  scope: Scope,
  findings: readonly Finding[],
): { readonly steps: readonly Step[]; readonly sources: readonly Source[] } {
  const { resolved, tables, jumpers, fills } = scope;
  const edition = editionOf(resolved, tables);
  const limits = resolved.legs.map((leg) => ({ leg: leg.leg, ...spanLimit(leg, resolved) }));
  const spans = limits.map(
    ({ leg, limit, by }): Step =>
      limit === null
        ? { say: 'inspect.noSpanLimit', values: { leg } }
        : { say: `inspect.spanLimit-${by}`, values: { leg }, value: shortLength(limit) },
  );
  const unsized = jumpers.filter(({ reason, size }) => reason !== null && size === null);
  const singles = resolved.legs.filter((leg) =>
    fills.get(leg)?.some(({ cables }) => cables.some(({ make }) => make === 'single')),
  );
  const expansions = resolved.legs.flatMap((leg) => leg.joints.filter(({ kind }) => kind === 'expansion'));
  const { temps } = resolved.run;
  const gapKnown = temps !== undefined && wantedGap(temps, tables.limits.movement.value) !== null;
  const steps: Step[] = [
    { say: 'inspect.tried', values: { rules: RULE_IDS.length, findings: findings.length } },
    ...spans,
    ...[...new Set(unsized.map(({ leg }) => leg.leg))].map(
      (leg): Step => ({ say: 'inspect.noSize', values: { leg } }),
    ),
    ...singles.map(({ leg }): Step => ({ say: 'inspect.singles', values: { leg } })),
    ...(expansions.length > 0 && !gapKnown ? [{ say: 'inspect.noGap' }] : []),
    ...(tables.limits.openGap[edition] === null ? [{ say: 'inspect.noOpenGap', values: { edition } }] : []),
    ...limitsRest(resolved, tables),
    { say: 'inspect.defer' },
  ];
  return { steps, sources: limits.flatMap(({ source }) => source ?? []) };
}
