/** What lies in the channel: how much, beside what, and round which bends. */
import { figure, figures } from '../../trade/figure.ts';
import { inches, ticks } from '../../trade/length.ts';
import { RADIUS_CABLES, type RadiusCable, radius } from '../../trade/radius.ts';
import { editionOf } from '../edition.ts';
import type { FillOver } from '../fillOver.ts';
import type { ResolvedLeg } from '../resolved.ts';
import { nfpa, POWER_APART } from '../sources.ts';
import type { RunCable } from '../types.ts';
import type { Found, Rule, RuleId, Scope } from './finding.ts';

/** At most one finding a leg. */
function overLegs(
  id: RuleId,
  source: Rule['source'],
  find: (leg: ResolvedLeg, scope: Scope) => Omit<Found, 'leg'> | null,
): Rule {
  return {
    id,
    source,
    find: (scope) =>
      scope.resolved.legs.flatMap((leg) => {
        const found = find(leg, scope);
        return found === null ? [] : [{ leg: leg.leg, ...found }];
      }),
  };
}

/** Of the two sides of a barrier the one that is out, of both the fuller. */
function worst(rows: readonly FillOver[], out: (row: FillOver) => boolean): FillOver | null {
  const used = ({ answer }: FillOver) => answer?.result.fraction ?? answer?.result.areaIn2 ?? 0;
  return rows.filter(out).reduce<FillOver | null>((a, b) => (a !== null && used(a) >= used(b) ? a : b), null);
}

/** The table of the bottom, whether or not anything is over it. */
const fillSource: Rule['source'] = (scope) =>
  scope.tables.fill.multiconductor[scope.resolved.tray.bottom].sources[
    editionOf(scope.resolved, scope.tables)
  ];

const over = overLegs('fill-over', fillSource, (leg, { fills }) => {
  const row = worst(fills.get(leg) ?? [], ({ answer }) => answer?.result.within === false);
  const result = row?.answer?.result;
  if (row === null || result === undefined || result.allowedIn2 === null) return null;
  const [area, allowed] = figures(result.areaIn2, result.allowedIn2);
  return {
    at: null,
    measured: result.areaIn2,
    limit: result.allowedIn2,
    unit: 'in2',
    ...sourceOf(row),
    variant: row.side ?? 'whole',
    values: { area, allowed, table: result.table, width: figure(row.widthIn) },
  };
});

const noRow = overLegs('fill-no-row', fillSource, (leg, { fills }) => {
  const row = worst(
    fills.get(leg) ?? [],
    ({ answer, cables }) =>
      cables.every(({ make }) => make !== 'single') &&
      answer?.result.why?.some(({ say }) => say === 'fill.noRow') === true,
  );
  const result = row?.answer?.result;
  if (row === null || result === undefined) return null;
  return {
    at: null,
    measured: result.areaIn2,
    unit: 'in2',
    ...sourceOf(row),
    values: { table: result.table, width: figure(row.widthIn) },
  };
});

function sourceOf({ answer }: FillOver): Pick<Found, 'source'> {
  const [source] = answer?.sources ?? [];
  return source === undefined ? {} : { source };
}

/** Kinds of cable whose radius needs no more than is known of a cable of a run. */
const JUDGED: readonly RadiusCable[] = RADIUS_CABLES.filter((cable) => cable !== 'MC shielded');

const tooTight = overLegs(
  'radius-small',
  (scope) => tightestSource(scope),
  (leg, scope) => {
    const item = leg.fittingBefore?.item;
    if (item?.kind !== 'elbow') return null;
    const has = inches(item.insideRadius);
    const needs = scope.resolved.cablesOver(leg).flatMap((cable) => needOf(cable, scope) ?? []);
    const most = needs.reduce<Need | null>((a, b) => (a !== null && a.radiusIn >= b.radiusIn ? a : b), null);
    if (most === null || most.radiusIn <= has + 1e-9) return null;
    const [needed, radiusIn] = figures(most.radiusIn, has);
    return {
      at: ticks(0),
      measured: has,
      limit: most.radiusIn,
      unit: 'in',
      ...most.source,
      values: { item: item.id, cable: most.cable.id, needed, radius: radiusIn },
    };
  },
);

interface Need {
  readonly cable: RunCable;
  readonly radiusIn: number;
  readonly source: Pick<Found, 'source'>;
}

function needOf(cable: RunCable, scope: Scope): Need | null {
  const kind = JUDGED.find((known) => known === cable.type);
  if (kind === undefined) return null;
  const { odIn, shielded } = cable;
  const { result, sources } = radius(
    { cable: kind, odIn, shielded, edition: editionOf(scope.resolved, scope.tables) },
    scope.tables.radius,
  );
  const [source] = sources;
  return result.radiusIn === null
    ? null
    : { cable, radiusIn: result.radiusIn, source: source === undefined ? {} : { source } };
}

/** Any of the rules serves where none is broken. */
function tightestSource(scope: Scope) {
  return (
    scope.tables.radius.TC.sources?.[editionOf(scope.resolved, scope.tables)] ??
    nfpa('336.24', editionOf(scope.resolved, scope.tables))
  );
}

/** What lies together: all of a leg, or what is on one side of its barrier. */
function together(leg: ResolvedLeg, { resolved }: Scope): readonly (readonly RunCable[])[] {
  const cables = resolved.cablesOver(leg);
  return leg.given.barrier === true
    ? ['left', 'right'].map((side) => cables.filter((cable) => cable.side === side))
    : [cables];
}

const mixed = overLegs(
  'power-with-signal',
  () => POWER_APART,
  (leg, scope) => {
    for (const cables of together(leg, scope)) {
      const [power, signal] = [cables.find((c) => c.use === 'power'), cables.find((c) => c.use === 'signal')];
      if (power !== undefined && signal !== undefined)
        return { at: null, values: { power: power.id, signal: signal.id } };
    }
    return null;
  },
);

/** A barrier does not make it right. */
const air = overLegs(
  'air-with-cables',
  (scope) => nfpa('300.8', editionOf(scope.resolved, scope.tables)),
  (leg, { resolved }) => {
    const cables = resolved.cablesOver(leg);
    const [tube, other] = [cables.find((c) => c.use === 'air'), cables.find((c) => c.use !== 'air')];
    return tube === undefined || other === undefined
      ? null
      : { at: null, values: { tube: tube.id, cable: other.id } };
  },
);

export const cableRules: readonly Rule[] = [over, noRow, tooTight, mixed, air];
