/** What is wrong with a run: every rule over every place it speaks of. */
import type { Answered } from '../../trade/answer.ts';
import { distinctSources } from '../../trade/distinctSources.ts';
import type { Catalogue } from '../catalogue.ts';
import type { ResolvedRun } from '../resolved.ts';
import type { RunTables } from '../tables.ts';
import { anchorRules } from './anchors.ts';
import { bondingRules } from './bonding.ts';
import { cableRules } from './cables.ts';
import { type Finding, findingsOf, RULE_IDS, type Rule, type RuleId, scopeOf } from './finding.ts';
import { jointRules } from './joints.ts';
import { partRules } from './parts.ts';
import { spanRules } from './spans.ts';
import { inspectSteps } from './steps.ts';
import { unsupportedRules } from './unsupported.ts';

export type { Finding, RuleId } from './finding.ts';

export interface Inspected {
  /** By legs in order of travel, then along the leg, what concerns the whole leg last. */
  readonly findings: readonly Finding[];
  /** Ids of the rules tried. */
  readonly rules: readonly RuleId[];
}

export const RULES: readonly Rule[] = [
  ...spanRules,
  ...unsupportedRules,
  ...jointRules,
  ...bondingRules,
  ...anchorRules,
  ...cableRules,
  ...partRules,
].sort((a, b) => RULE_IDS.indexOf(a.id) - RULE_IDS.indexOf(b.id));

/** Findings of a run, one a rule and place; the steps say what could not be judged, and why. */
export function inspect(resolved: ResolvedRun, catalogue: Catalogue, tables: RunTables): Answered<Inspected> {
  const scope = scopeOf(resolved, catalogue, tables);
  const legs = new Map(resolved.legs.map(({ leg }, i) => [leg, i]));
  const place = ({ leg, at }: Finding) => [legs.get(leg) ?? 0, at ?? Number.POSITIVE_INFINITY] as const;
  const findings = RULES.flatMap((rule) => findingsOf(rule, scope))
    .map((finding) => ({ finding, by: place(finding) }))
    .sort((a, b) => a.by[0] - b.by[0] || (a.by[1] === b.by[1] ? 0 : a.by[1] - b.by[1]))
    .map(({ finding }) => finding);
  const { steps, sources } = inspectSteps(scope, findings);
  return {
    result: { findings, rules: RULES.map(({ id }) => id) },
    steps,
    sources: distinctSources([...findings.map(({ source }) => source), ...sources]),
  };
}
