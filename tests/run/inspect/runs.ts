/**
 * Runs with nothing wrong, built so that one change breaks one rule; and what an inspection finds in them.
 * Figures are those of the practice catalogue (training values); limits are the rules' own.
 */
import { type Finding, inspect, type RuleId } from '../../../src/run/inspect/inspect.ts';
import { resolveRun } from '../../../src/run/resolve.ts';
import type { RunTables } from '../../../src/run/tables.ts';
import { TRADE_USUAL } from '../../../src/run/usual.ts';
import { runShape } from '../../../src/schema/run.ts';
import type { Answered } from '../../../src/trade/answer.ts';
import { inches } from '../../../src/trade/length.ts';
import { catalogue } from '../practice.ts';
import { tables } from '../tables.ts';

export type Given = Readonly<Record<string, unknown>>;
export const TICK = 1 / 8128;
export const SIXTEENTH = 1 / 16;

/** A finding as the tables of the tests write it: rule, leg, place in inches, measured, limit. */
export type Row = readonly [RuleId, string, number | null, number | string | null, number | string | null];

export function inspected(
  run: Given,
  by: RunTables = tables,
): Answered<{ readonly findings: readonly Finding[] }> {
  return inspect(resolveRun(runShape.parse(run), catalogue, TRADE_USUAL), catalogue, by);
}

export const found = (run: Given): readonly Row[] =>
  inspected(run).result.findings.map(({ rule, leg, at, measured, limit }) => [
    rule,
    leg,
    at === null ? null : inches(at),
    measured,
    limit,
  ]);

type Hold = 'clamp' | 'guide' | 'load';
/** Supports of a leg by their places. */
export const supports = (
  leg: string,
  places: readonly number[],
  hold: Hold | readonly Hold[] = 'clamp',
  way: 'horizontal' | 'vertical' = 'horizontal',
): readonly Given[] =>
  places.map((at, i) => ({ leg, at, way, hold: typeof hold === 'string' ? hold : (hold[i] ?? 'guide') }));

/** One leg of 40 ft, two sleeves, a support every 5 ft. */
export const WALL_PLACES = [12, 72, 132, 192, 252, 312, 372, 432, 468] as const;
export const WALL_SPLICES: readonly Given[] = [
  { leg: '1', at: 203.5, kind: 'socketed' },
  { leg: '1', at: 383, kind: 'socketed' },
];
const LEG: Given = { id: '1', from: 'start', fitting: null, dir: 'E', length: 480 };
export const wall = (over: Given = {}): Given => ({
  v: 1,
  tray: 'card-4',
  start: { kind: 'free', joint: 'free' },
  legs: [LEG],
  joints: WALL_SPLICES,
  supports: supports('1', WALL_PLACES),
  ...over,
});

/** The wall with its first sleeve changed. */
export const wallWith = (splice: Given, over: Given = {}): Given =>
  wall({ joints: [{ ...WALL_SPLICES[0], ...splice }, WALL_SPLICES[1]], ...over });

/** Two legs of 10 ft and a fitting between them; a cable that names a device. */
export const corner = (fitting = 'card-4-elbow-90', dir: unknown = 'N', over: Given = {}): Given => ({
  v: 1,
  tray: 'card-4',
  start: { kind: 'free', joint: 'free' },
  legs: [
    { id: 'a', from: 'start', fitting: null, dir: 'E', length: 120 },
    { id: 'b', from: 'a', fitting, dir, length: 120 },
  ],
  supports: [...supports('a', [12, 60, 100]), ...supports('b', [20, 60, 108])],
  ...over,
});

/** A cable over a run's last leg. */
export const cable = (to: string, over: Given = {}): Given => ({
  id: 'C1',
  type: 'TC',
  odIn: 0.5,
  lbPerFt: 0.2,
  count: 1,
  make: 'multiconductor',
  use: 'power',
  to,
  ...over,
});

/** Two sections of 20 ft with an expansion splice between, held near their middles, at 60 °F of 10 to 110: 1/2 in open. */
export const HELD = ['guide', 'guide', 'clamp', 'guide', 'guide'] as const;
export const FIRST_HALF = [12, 72, 132, 192, 228] as const;
export const SECOND_HALF = [252, 312, 372, 432, 468] as const;
export const outdoor = (
  over: Given = {},
  {
    splice = {},
    first = HELD,
    second = HELD,
  }: { splice?: Given; first?: readonly Hold[]; second?: readonly Hold[] } = {},
): Given =>
  wall({
    joints: [{ leg: '1', at: 240, kind: 'expansion', jumper: '8 AWG', ...splice }],
    supports: [...supports('1', FIRST_HALF, first), ...supports('1', SECOND_HALF, second)],
    temps: { lowF: 10, highF: 110, nowF: 60 },
    ...over,
  });

const bent = (type: string, over: Given = {}): Given =>
  corner('card-4-elbow-90', 'N', { cables: [cable('b', { type, ...over })] });
const drop = (dir: unknown, fitting: string): Given =>
  corner(fitting, dir, { supports: supports('a', [12, 60, 100]) });

/** A leg that leaves a tee to the left. */
export const branch = (over: Given = {}): Given =>
  corner('card-4-tee', 'N', {
    legs: [
      { ...LEG, id: 'a', length: 120 },
      { id: 'b', from: 'a:left', fitting: 'card-4-tee', dir: 'N', length: 120 },
    ],
    ...over,
  });

/** What an inspection must say that it does not judge, and a run of which it says so, once. */
export const UNJUDGED: readonly (readonly [string, Given])[] = [
  ['noRadius-conductor', bent('MC shielded', { shielded: true })],
  ['noRadius-figure', bent('ITC')],
  ['noRadius-silent', bent('PLTC')],
  ['noRadius-tube', bent('tube', { use: 'air' })],
  ['noRadius-fitting', branch({ cables: [cable('b')] })],
  ['plainRadius', bent('MC interlocked', { shielded: true })],
  ['plainRadius', bent('MC smooth', { shielded: true })],
  ['flatTable-edge', wall({ legs: [{ ...LEG, onEdge: true }] })],
  ['flatTable-slope', wall({ legs: [{ ...LEG, dir: { azimuthDeg: 90, slopeDeg: 30 } }] })],
  ['flatTable-plumb', drop('D', 'card-4-outside-90')],
  ['singles', wall({ cables: [cable('1', { make: 'single' })] })],
  ['noGap', outdoor({ temps: undefined }, { splice: { gap: 0.5 } })],
  ['noGap', outdoor({ temps: { lowF: 10, highF: 110, nowF: 111 } }, { splice: { gap: 0.5 } })],
  ['overStock', wall({ joints: [WALL_SPLICES[0]] })],
  [
    'noKeeps',
    {
      ...corner(),
      tray: 'card-6',
      legs: [
        { ...LEG, id: 'a', length: 120 },
        { id: 'b', from: 'a', fitting: 'card-6-4-reducer-left', dir: 'E', length: 120 },
      ],
    },
  ],
  [
    'noMiddle',
    outdoor({
      legs: [
        LEG,
        { id: '2', from: '1:left', fitting: 'card-4-tee', dir: 'N', length: 120 },
        { id: '3', from: '1:right', fitting: 'card-4-tee', dir: 'S', length: 120 },
      ],
    }),
  ],
];
