/** The working of a take-off: piece by piece, then what each list was worked out from. */
import type { Answered, Source, Step } from '../trade/answer.ts';
import { figure } from '../trade/figure.ts';
import { inches, type Ticks, ticks } from '../trade/length.ts';
import { restsOn } from '../trade/limit.ts';
import { shortLength } from '../trade/shortLength.ts';
import type { SticksResult } from '../trade/sticks/types.ts';
import type { CableLength } from './cableLengths.ts';
import type { FillOver } from './fillOver.ts';
import { jumperSize, type NeededJumper } from './jumpers.ts';
import { unborne } from './loads.ts';
import { pieceSteps } from './pieceSteps.ts';
import type { ResolvedRun } from './resolved.ts';
import { HALF_SPANS, HARDWARE, JUMPER_PLACES } from './sources.ts';
import type { RunTables } from './tables.ts';
import type { Takeoff } from './takeoffTypes.ts';

export interface Worked {
  readonly resolved: ResolvedRun;
  readonly tables: RunTables;
  readonly result: Takeoff;
  readonly jumpers: readonly NeededJumper[];
  readonly fills: readonly FillOver[];
  readonly cables: readonly CableLength[];
  readonly plans: readonly { readonly tray: string; readonly plan: Answered<SticksResult> }[];
}

interface Part {
  readonly steps: readonly Step[];
  readonly sources: readonly Source[];
}

export function takeoffSteps(of: Worked): Part {
  const parts = [
    pieceSteps(of.resolved),
    cutting(of),
    jumpers(of),
    fill(of),
    gaps(of),
    loads(of),
    lengths(of),
    HARD,
  ];
  return { steps: parts.flatMap(({ steps }) => steps), sources: parts.flatMap(({ sources }) => sources) };
}

const HARD: Part = { steps: [{ say: 'takeoff.hardware' }, { say: 'takeoff.defer' }], sources: [HARDWARE] };

function cutting({ plans }: Worked): Part {
  return {
    steps: plans.flatMap(({ tray, plan }) => [{ say: 'takeoff.sticks', values: { tray } }, ...plan.steps]),
    sources: plans.flatMap(({ plan }) => plan.sources),
  };
}

function jumpers({ resolved, tables, jumpers: needed }: Worked): Part {
  if (needed.length === 0) return { steps: [{ say: 'takeoff.noJumper' }], sources: [JUMPER_PLACES] };
  const steps = needed.map(({ leg, at, reason, size }): Step => {
    const key = `takeoff.jumper-${reason.replace(' ', '-')}`;
    const values = { leg: leg.leg, at: shortLength(at) };
    return { say: key, values, ...(size === null ? {} : { value: size }) };
  });
  const legs = new Set(needed.map(({ leg }) => leg));
  const unsized = new Set(needed.flatMap(({ leg, size }) => (size === null ? [leg] : [])));
  return {
    steps: [
      ...steps,
      ...[...unsized].map(({ leg }): Step => ({ say: 'takeoff.noSize', values: { leg } })),
      ...(unsized.size < legs.size ? [{ say: 'takeoff.size' }] : []),
    ],
    sources: [JUMPER_PLACES, ...[...legs].flatMap((leg) => jumperSize(leg, resolved, tables).sources)],
  };
}

function fill({ fills }: Worked): Part {
  const some = fills.flatMap(({ answer, ...row }) => (answer === null ? [] : [{ ...row, answer }]));
  return {
    steps: some.flatMap(({ leg, side, widthIn, answer }) => [
      {
        say: side === undefined ? 'takeoff.fill' : `takeoff.fill-${side}`,
        values: { leg: leg.leg, width: figure(widthIn) },
      },
      ...answer.steps,
    ]),
    sources: some.flatMap(({ answer }) => answer.sources),
  };
}

function gaps({ resolved, tables, result }: Worked): Part {
  const [first] = result.gaps;
  if (first === undefined) return { steps: [], sources: [] };
  const { movement } = tables.limits;
  const { temps } = resolved.run;
  if (temps === undefined) return { steps: [{ say: 'takeoff.noTemps' }], sources: [] };
  const values = { low: temps.lowF, high: temps.highF, now: temps.nowF };
  if (first.gapIn === null) return { steps: [{ say: 'takeoff.outside', values }], sources: [] };
  return {
    steps: [
      {
        say: 'takeoff.gap',
        values: { ...values, movement: shortLength(movement.value) },
        value: first.gapIn,
        unit: 'in',
      },
      ...restsOn(movement),
    ],
    sources: [movement.source],
  };
}

function loads({ resolved, result }: Worked): Part {
  const weights = result.weights.map(({ leg, lb, trayLb, cablesLb }, i): Step => {
    const length = resolved.legs[i]?.length ?? ticks(0);
    const values = {
      leg,
      length: shortLength(length),
      tray: figure(trayLb, 2),
      cables: figure(cablesLb, 2),
    };
    return { say: 'takeoff.weight', values, value: lb, unit: 'lb' };
  });
  const held = new Set(resolved.legs.filter(({ supports }) => supports.length > 0));
  const plumb = [...held].filter((leg) => leg.plumb);
  return {
    steps: [
      ...weights,
      ...(held.size > plumb.length ? [{ say: 'takeoff.load' }, { say: 'takeoff.continuous' }] : []),
      ...(result.rodLoads.length > 0 ? [{ say: 'takeoff.rods' }] : []),
      ...plumb.map(({ leg, supports }): Step => {
        const bearing = supports.filter(({ hold }) => hold === 'load').length;
        return bearing === 0
          ? { say: 'takeoff.noBearing', values: { leg } }
          : { say: 'takeoff.bearing', values: { leg, count: bearing } };
      }),
      ...unborne(resolved).map(
        ({ leg, lb }): Step => ({ say: 'takeoff.unborne', values: { leg: leg.leg, lb: figure(lb, 2) } }),
      ),
    ],
    sources: held.size > 0 ? [HALF_SPANS] : [],
  };
}

function lengths({ cables }: Worked): Part {
  return {
    steps: [
      ...cables.map(
        ({ id, each, count, all }): Step => ({
          say: 'takeoff.cable',
          values: { cable: id, each: length(each), count },
          value: inches(all),
          unit: 'in',
        }),
      ),
      ...cables
        .filter(({ open }) => open > 0)
        .map(({ id, open }): Step => ({ say: 'takeoff.open', values: { cable: id, open: length(open) } })),
      ...(cables.length > 0 ? [{ say: 'takeoff.slack' }] : []),
    ],
    sources: [],
  };
}

const length = (of: Ticks) => shortLength(of);
