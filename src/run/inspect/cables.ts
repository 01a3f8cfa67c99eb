/** What lies in the channel: how much, and beside what; round which bends, in radius.ts. */
import { figure, figures } from '../../trade/figure.ts';
import { editionOf } from '../edition.ts';
import type { FillOver } from '../fillOver.ts';
import type { ResolvedLeg } from '../resolved.ts';
import { nfpa, POWER_APART } from '../sources.ts';
import type { RunCable } from '../types.ts';
import { type Found, overLegs, type Rule, type Scope } from './finding.ts';
import { tooTight } from './radius.ts';

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
