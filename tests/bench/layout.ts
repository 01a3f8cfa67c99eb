/**
 * `npm run bench -- layout`: lay-outs from 30 to 3,000 ft, fewest supports alone and with stock lengths, each against
 * 30 ft in the same run, and how time grows with length; and fewest supports of 60 ft against a mixed-integer programme.
 * Wanted: 300 ft with six fittings under 100 ms, with stock lengths under 1 s; time grows with length to the power of 1.3
 * at most.
 */
import { bareRun } from '../../src/run/layout/bare.ts';
import { jobsOf } from '../../src/run/layout/jobs.ts';
import { layLine } from '../../src/run/layout/layLine.ts';
import { layout } from '../../src/run/layout/layout.ts';
import { resolveRun } from '../../src/run/resolve.ts';
import { spanLimit } from '../../src/run/spanLimit.ts';
import type { Run } from '../../src/run/types.ts';
import { TRADE_USUAL } from '../../src/run/usual.ts';
import { runShape } from '../../src/schema/run.ts';
import { canStand } from '../run/layout/milp.ts';
import { catalogue } from '../run/practice.ts';
import { tables } from '../run/tables.ts';
import { compare } from './ratio.ts';

const FEET = [30, 100, 300, 1000, 3000];

/** Legs of odd lengths, a flat elbow between them. */
function run(feet: number, legs: number, maxSpan: number): Run {
  const ways = ['E', 'N', 'E', 'S', 'E', 'N'];
  const each = (feet * 12) / legs;
  return runShape.parse({
    v: 1,
    tray: 'card-4',
    start: { kind: 'ladder', joint: 'socketed' },
    legs: Array.from({ length: legs }, (_, i) => ({
      id: String(i + 1),
      from: i === 0 ? 'start' : String(i),
      fitting: i === 0 ? null : 'card-4-elbow-90',
      dir: ways[i % ways.length],
      length: Math.floor(each) + ((i * 7) % 5) / 16,
    })),
    limits: { maxSpan },
  }) as Run;
}

function fewestSupports(given: Run): number {
  const resolved = resolveRun(
    bareRun(resolveRun(given, catalogue, TRADE_USUAL), catalogue, tables),
    catalogue,
    TRADE_USUAL,
  );
  let count = 0;
  for (const leg of resolved.legs) {
    const { limit } = spanLimit(leg, resolved);
    if (limit === null) throw new Error('no span limit');
    for (const { problem } of jobsOf(leg, limit, { resolved, catalogue, tables })) {
      count += layLine(problem)?.supports.length ?? Number.NaN;
    }
  }
  return count;
}

/** Slope of log time over log length. */
function exponent(times: readonly number[]): number {
  const x = FEET.map(Math.log);
  const y = times.map(Math.log);
  const mean = (v: readonly number[]) => v.reduce((a, b) => a + b, 0) / v.length;
  const [mx, my] = [mean(x), mean(y)];
  const over = x.reduce((sum, xi, i) => sum + (xi - mx) * ((y[i] as number) - my), 0);
  return over / x.reduce((sum, xi) => sum + (xi - mx) ** 2, 0);
}

const kinds = [
  { what: 'straight, spans to 6 ft', of: (feet: number) => run(feet, 1, 72) },
  { what: 'straight, spans to 10 ft', of: (feet: number) => run(feet, 1, 120) },
  // 300 ft have six fittings.
  {
    what: 'an elbow every 43 ft, spans to 6 ft',
    of: (feet: number) => run(feet, Math.max(1, Math.round(feet / 43)), 72),
  },
];
const levels = [
  { level: 'fewest supports', work: fewestSupports },
  { level: 'with stock lengths', work: (given: Run) => layout(given, catalogue, tables) },
];

for (const { what, of } of kinds) {
  for (const { level, work } of levels) {
    const [first] = FEET.map(of) as [Run];
    const times = await compare(
      FEET.map((feet) => {
        const given = of(feet);
        return {
          what: `${feet} ft, ${what}, ${level}`,
          baseline: '30 ft',
          work: () => work(given),
          against: () => work(first),
        };
      }),
    );
    console.log(`  grows with length to the power of ${exponent(times).toFixed(2)}`);
  }
}

const sixty = { leg: '1', face: [0, 720], channel: [0, 720], places: null, maxSpan: 72 } as const;
const sixtyRun = { ...run(60, 1, 72), start: { kind: 'free', joint: 'free' } } as Run;
const supports = fewestSupports(sixtyRun);
await compare([
  {
    what: `60 ft, ${supports} supports, fewest`,
    baseline: 'HiGHS: so many can stand, one fewer cannot',
    work: () => fewestSupports(sixtyRun),
    against: () => {
      if (canStand(sixty, supports, 240) !== true || canStand(sixty, supports - 1, 240) !== false)
        throw new Error('the programme says otherwise');
    },
  },
]);
