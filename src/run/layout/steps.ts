/** The working of a lay-out: line by line, then what holds, what it takes, and what it leaves to others. */
import type { Source, Step } from '../../trade/answer.ts';
import { type Ticks, ticks } from '../../trade/length.ts';
import { shortLength } from '../../trade/shortLength.ts';
import type { Catalogue } from '../catalogue.ts';
import { endsAtTray } from '../inspect/unsupported.ts';
import { jumpersNeeded } from '../jumpers.ts';
import { limitsRest } from '../limitsRest.ts';
import type { ResolvedRun } from '../resolved.ts';
import { ANCHORS, JUMPER_PLACES, SPLICE_PLACES } from '../sources.ts';
import { spanSources } from '../spanLimit.ts';
import type { RunTables } from '../tables.ts';
import { wantedGap } from '../wantedGap.ts';
import type { LeastStock } from './stock.ts';

interface Worked {
  readonly resolved: ResolvedRun;
  readonly catalogue: Catalogue;
  readonly tables: RunTables;
  readonly stock: LeastStock;
}

const text = (length: number): string => shortLength(ticks(length));

export function layoutSteps(of: Worked): {
  readonly steps: readonly Step[];
  readonly sources: readonly Source[];
} {
  const { resolved, tables, stock } = of;
  const { used, bound } = stock;
  return {
    steps: [
      ...lines(of),
      {
        say: 'layout.supports',
        value: resolved.legs.reduce((sum, { supports }) => sum + supports.length, 0),
      },
      used === bound
        ? { say: 'layout.stockProven', value: used }
        : { say: 'layout.stockBound', values: { bound }, value: used },
      ...holds(resolved),
      ...unknown(of),
      ...limitsRest(resolved, tables),
      { say: 'layout.holes' },
      { say: 'layout.defer' },
    ],
    sources: [
      ...spanSources(resolved, tables),
      tables.limits.supportWithin.source,
      tables.limits.spliceShare.source,
      SPLICE_PLACES,
      ANCHORS,
      JUMPER_PLACES,
    ],
  };
}

function lines({ resolved, stock: { laid } }: Worked): readonly Step[] {
  return laid.flatMap(({ job: { leg, problem }, layout }): readonly Step[] => {
    const [from, to] = problem.channel;
    const places = (resolved.run.places ?? []).some((given) => given.leg === leg.leg) ? 'given' : 'inches';
    return [
      {
        say: `layout.line-${places}`,
        values: { leg: leg.leg, from: text(from), to: text(to), limit: text(problem.maxSpan) },
        value: layout.supports.length,
      },
      ...layout.splices.map((at) => ({ say: 'layout.joint', values: { leg: leg.leg, at: text(at) } })),
    ];
  });
}

/** Supports that bear a leg, and those that hold a section which slides elsewhere. */
function holds({ legs, sections }: ResolvedRun): readonly Step[] {
  const place = (at: Ticks, leg: string) => ({ leg, at: shortLength(at) });
  const loads = legs.flatMap(({ leg, supports }) =>
    supports.flatMap(({ hold, at }) =>
      hold === 'load' ? [{ say: 'layout.load', values: place(at, leg) }] : [],
    ),
  );
  const anchors = sections.flatMap(({ expansions, supports }) =>
    expansions === 0
      ? []
      : supports.flatMap(({ hold, leg, at }) =>
          hold === 'guide' ? [] : [{ say: 'layout.anchor', values: place(at, leg) }],
        ),
  );
  return [...loads, ...anchors];
}

function unknown({ resolved, catalogue, tables, stock: { laid } }: Worked): readonly Step[] {
  const { temps } = resolved.run;
  const gap = temps === undefined ? null : wantedGap(temps, tables.limits.movement.value);
  const slides = resolved.legs.some(({ joints }) => joints.some(({ kind }) => kind === 'expansion'));
  const unsized = jumpersNeeded(resolved, catalogue, tables).filter(({ size }) => size === null);
  const hanging = laid.flatMap(({ job: { leg, line, faces }, layout: { supports } }) => {
    const over = faces[1] - (supports.at(-1) as number);
    return endsAtTray(leg, line.to) && over > tables.limits.supportWithin.value
      ? [{ say: 'layout.trayEnd', values: { leg: leg.leg, over: text(over) } }]
      : [];
  });
  return [
    ...hanging,
    ...(slides && gap === null ? [{ say: 'layout.noGap' }] : []),
    ...[...new Set(unsized.map(({ leg }) => leg.leg))].map((leg) => ({
      say: 'layout.noSize',
      values: { leg },
    })),
  ];
}
