/** What the findings rest on, and what could not be judged: each said, and whom to ask. */
import type { Source, Step } from '../../trade/answer.ts';
import { shortLength } from '../../trade/shortLength.ts';
import { editionOf } from '../edition.ts';
import { limitsRest } from '../limitsRest.ts';
import type { ResolvedLeg } from '../resolved.ts';
import { isLevel } from '../settle.ts';
import { spanLimit, spanSources } from '../spanLimit.ts';
import { stockOf } from '../stock.ts';
import { wantedGap } from '../wantedGap.ts';
import { type Finding, RULE_IDS, type Scope } from './finding.ts';
import { unjudgedRadii } from './radius.ts';

export function inspectSteps(
  scope: Scope,
  findings: readonly Finding[],
): { readonly steps: readonly Step[]; readonly sources: readonly Source[] } {
  const { resolved, tables } = scope;
  const steps: Step[] = [
    { say: 'inspect.tried', values: { rules: RULE_IDS.length, findings: findings.length } },
    ...resolved.legs.flatMap((leg) => spans(leg, scope)),
    ...stock(scope),
    ...bonding(scope),
    ...fill(scope),
    ...unjudgedRadii(scope),
    ...hands(scope),
    ...sections(scope),
    ...gaps(scope),
    ...limitsRest(resolved, tables),
    { say: 'inspect.defer' },
  ];
  return { steps, sources: spanSources(resolved, tables) };
}

/** A load table is of channel that lies flat and level; for want of another it serves every leg. */
function spans(leg: ResolvedLeg, { resolved }: Scope): readonly Step[] {
  const { limit, by } = spanLimit(leg, resolved);
  const values = { leg: leg.leg };
  if (limit === null) return [{ say: 'inspect.noSpanLimit', values }];
  const lies = leg.plumb
    ? 'plumb'
    : leg.given.onEdge === true
      ? 'edge'
      : isLevel(leg.frame.along)
        ? null
        : 'slope';
  return [
    { say: `inspect.spanLimit-${by}`, values, value: shortLength(limit) },
    ...(lies === null || by === 'run' ? [] : [{ say: `inspect.flatTable-${lies}`, values }]),
  ];
}

function stock({ resolved }: Scope): readonly Step[] {
  return resolved.legs.flatMap((leg) => {
    const stock = stockOf(leg, resolved);
    return leg.pieces
      .filter(({ cut }) => cut > stock)
      .map(({ id, cut }) => ({
        say: 'inspect.overStock',
        values: { leg: leg.leg, piece: id, cut: shortLength(cut), stock: shortLength(stock) },
      }));
  });
}

function bonding({ jumpers }: Scope): readonly Step[] {
  const unsized = jumpers.filter(({ reason, size }) => reason !== null && size === null);
  return [...new Set(unsized.map(({ leg }) => leg.leg))].map((leg) => ({
    say: 'inspect.noSize',
    values: { leg },
  }));
}

function fill({ resolved, fills }: Scope): readonly Step[] {
  const singles = resolved.legs.filter((leg) =>
    fills.get(leg)?.some(({ cables }) => cables.some(({ make }) => make === 'single')),
  );
  return singles.map(({ leg }) => ({ say: 'inspect.singles', values: { leg } }));
}

/** Reducers of which nothing says which wall is to run straight through. */
function hands({ resolved }: Scope): readonly Step[] {
  return resolved.legs.flatMap(({ leg, fittingBefore, given }) =>
    fittingBefore?.item.kind === 'reducer' && given.keeps === undefined
      ? [{ say: 'inspect.noKeeps', values: { leg, item: fittingBefore.item.id } }]
      : [],
  );
}

function sections({ resolved }: Scope): readonly Step[] {
  return resolved.sections.flatMap(({ expansions, branches, stretches: [first] }) =>
    expansions > 0 && branches && first !== undefined
      ? [{ say: 'inspect.noMiddle', values: { leg: first.leg.leg } }]
      : [],
  );
}

function gaps({ resolved, tables }: Scope): readonly Step[] {
  const { temps } = resolved.run;
  const known = temps !== undefined && wantedGap(temps, tables.limits.movement.value) !== null;
  const slides = resolved.legs.some(({ joints }) => joints.some(({ kind }) => kind === 'expansion'));
  const edition = editionOf(resolved, tables);
  return [
    ...(slides && !known ? [{ say: 'inspect.noGap' }] : []),
    ...(tables.limits.openGap[edition] === null ? [{ say: 'inspect.noOpenGap', values: { edition } }] : []),
  ];
}
