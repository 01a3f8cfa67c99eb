/** Round which bends the cables lie: what is too tight, and what cannot be judged. */
import type { Step } from '../../trade/answer.ts';
import { figures } from '../../trade/figure.ts';
import { atMost } from '../../trade/hair.ts';
import { inches, ticks } from '../../trade/length.ts';
import { goesByConductor, radius } from '../../trade/radius.ts';
import { editionOf } from '../edition.ts';
import type { ResolvedLeg } from '../resolved.ts';
import { nfpa } from '../sources.ts';
import type { RunCable } from '../types.ts';
import { type Found, overLegs, type Scope } from './finding.ts';

interface Need {
  readonly cable: RunCable;
  readonly radiusIn: number;
  readonly source: Pick<Found, 'source'>;
}

/** The worst cable of a leg's elbow. */
export const tooTight = overLegs(
  'radius-small',
  (scope) => tightestSource(scope),
  (leg, scope) => {
    const item = leg.fittingBefore?.item;
    if (item?.kind !== 'elbow') return null;
    const has = inches(item.insideRadius);
    const needs = scope.resolved.cablesOver(leg).flatMap((cable) => needOf(cable, scope) ?? []);
    const most = needs.reduce<Need | null>((a, b) => (a !== null && a.radiusIn >= b.radiusIn ? a : b), null);
    if (most === null || atMost(most.radiusIn, has)) return null;
    const [needed, radiusIn] = figures(most.radiusIn, has);
    return {
      at: ticks(0),
      measured: has,
      limit: most.radiusIn,
      unit: 'in',
      ...most.source,
      values: { cable: most.cable.id, needed, radius: radiusIn },
    };
  },
);

/** null: nothing that is known of a cable of a run tells its radius. */
function needOf(cable: RunCable, { resolved, tables }: Scope): Need | null {
  const { type, odIn, shielded } = cable;
  if (type === 'tube' || goesByConductor(tables.radius[type])) return null;
  const given = { cable: type, odIn, shielded, edition: editionOf(resolved, tables) };
  const { result, sources } = radius(given, tables.radius);
  const [source] = sources;
  return result.radiusIn === null
    ? null
    : { cable, radiusIn: result.radiusIn, source: source === undefined ? {} : { source } };
}

/** Any of the rules serves where none is broken. */
function tightestSource({ resolved, tables }: Scope) {
  const edition = editionOf(resolved, tables);
  return tables.radius.TC.sources?.[edition] ?? nfpa('336.24', edition);
}

/** Fittings that turn the cables and give no radius, then cables that go round an elbow unjudged, or by less than asked. */
export function unjudgedRadii(scope: Scope): readonly Step[] {
  const { resolved } = scope;
  const bent = resolved.legs.flatMap((leg) => {
    const item = leg.fittingBefore?.item;
    const over = resolved.cablesOver(leg);
    return item === undefined || leg.turn === 'none' || over.length === 0 ? [] : [{ leg, item, over }];
  });
  const elbows = bent.filter(({ item }) => item.kind === 'elbow');
  const cables = new Set(elbows.flatMap(({ over }) => over));
  return [
    ...bent
      .filter(({ item }) => item.kind !== 'elbow')
      .map(({ leg, item }) => ({ say: 'inspect.noRadius-fitting', values: values(leg, item.id) })),
    ...(resolved.run.cables ?? []).filter((c) => cables.has(c)).flatMap((c) => unjudged(c, scope) ?? []),
  ];
}

const values = ({ leg }: ResolvedLeg, item: string) => ({ leg, item });

/** Why the radius of a cable is not judged, or what is left out where it is; null: it is judged whole. */
function unjudged({ id, type, shielded = false }: RunCable, { resolved, tables }: Scope): Step | null {
  if (type === 'tube') return { say: 'inspect.noRadius-tube', values: { cable: id } };
  const rule = tables.radius[type];
  const said = { cable: id, type };
  if (goesByConductor(rule)) return { say: 'inspect.noRadius-conductor', values: said };
  if (rule.plain === null) {
    const section = rule.section?.[editionOf(resolved, tables)];
    return section === undefined
      ? { say: 'inspect.noRadius-silent', values: said }
      : { say: 'inspect.noRadius-figure', values: { ...said, section } };
  }
  return shielded && rule.shielded === null ? { say: 'inspect.plainRadius', values: said } : null;
}
