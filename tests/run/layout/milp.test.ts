/**
 * What a lay-out claims, against a mixed-integer programme that shares none of its code: fewest supports on whole inches
 * and on places, and stock lengths. `LAYOUT_ROUTES=2000` tries more.
 */
import { expect, it } from 'vitest';
import { layout } from '../../../src/run/layout/layout.ts';
import { resolveRun } from '../../../src/run/resolve.ts';
import { takeoff } from '../../../src/run/takeoff.ts';
import type { Run } from '../../../src/run/types.ts';
import { TRADE_USUAL } from '../../../src/run/usual.ts';
import { runShape } from '../../../src/schema/run.ts';
import { inches } from '../../../src/trade/length.ts';
import { catalogue } from '../practice.ts';
import { tables } from '../tables.ts';
import { canCut, canStand } from './milp.ts';
import { type PlainLine, type PlainRoute, randomRoute } from './routes.ts';

const ROUTES = Number(process.env['LAYOUT_ROUTES'] ?? 220);
const TIMEOUT = 2000 * ROUTES;
const seeds = Array.from({ length: ROUTES }, (_, seed) => seed);

const layOut = (run: PlainRoute['run']) => layout(runShape.parse(run) as Run, catalogue, tables).result;

/** Fewest supports of a line, one more after another; null when there is no lay-out with up to eight more. */
function fewest(line: PlainLine, stock: number): number | null {
  const least = Math.max(1, Math.ceil((line.face[1] - line.face[0] - 48) / line.maxSpan));
  for (let count = least; count < least + 9; count++) {
    const can = canStand(line, count, stock);
    if (can === null) throw new Error('the programme was not solved in time');
    if (can) return count;
  }
  return null;
}

it(`${ROUTES} routes up to 60 ft: so many supports, and no fewer, line by line; or no lay-out at all`, {
  timeout: TIMEOUT,
}, () => {
  let laid = 0;
  let refused = 0;
  let spliced = 0;
  for (const seed of seeds) {
    const { run, lines, stock } = randomRoute(seed, {
      legs: 3,
      inches: 720,
      places: 0.3,
      parted: 0.3,
      stocks: [240, 240, 120, 96],
      spans: [36, 48, 60, 72, 96, 120],
    });
    const result = layOut(run);
    if (result.run === null) {
      refused++;
      const { leg } = result.refused;
      const own = lines.filter((line) => line.leg === leg).map((line) => fewest(line, stock));
      expect([seed, own.includes(null)]).toEqual([seed, true]);
      continue;
    }
    laid++;
    if ((result.run.joints ?? []).some(({ kind }) => kind === 'socketed')) spliced++;
    for (const line of lines) {
      const own = supportsOn(result.run, line);
      expect([seed, line.leg, own]).toEqual([seed, line.leg, fewest(line, stock)]);
    }
  }
  expect(Math.min(refused, spliced)).toBeGreaterThan(ROUTES / 20);
  expect(laid).toBeGreaterThan(ROUTES / 2);
});

const supportsOn = ({ supports = [] }: Run, { leg, face }: PlainLine): number =>
  supports.filter((s) => s.leg === leg && inches(s.at) >= face[0] && inches(s.at) <= face[1]).length;

it(`${ROUTES} routes of up to 12 pieces: no fewer stock lengths where that is proven, and proven nearly always`, {
  timeout: TIMEOUT,
}, () => {
  let asked = 0;
  let open = 0;
  for (const seed of seeds) {
    const route = randomRoute(seed, {
      legs: 4,
      inches: 720,
      places: 0,
      parted: 0.15,
      full: 0.9,
      stocks: [240, 240, 240, 120],
      spans: [48, 60, 72, 96, 120],
    });
    const result = layOut(route.run);
    if (result.run === null) continue;
    const { run, proven, bound } = result;
    const { pieces, sticks } = takeoff(resolveRun(run, catalogue, TRADE_USUAL), catalogue, tables).result;
    const used = sticks.reduce((sum, { lengthsUsed }) => sum + (lengthsUsed ?? Number.NaN), 0);
    if (pieces.length > 12) continue;
    expect([seed, proven.stock]).toEqual([seed, used === bound.stock]);
    if (!proven.stock) open++;
    if (tooLittle(route, used - 1, pieces.length)) continue;
    asked++;
    const counts = route.lines.map((line) => supportsOn(run, line));
    // Not proven: a better one may be there. Null: the programme was not solved in time, and says nothing.
    if (proven.stock) expect([seed, canCut(route.lines, counts, route, used - 1)]).not.toEqual([seed, true]);
    else expect([seed, canCut(route.lines, counts, route, bound.stock - 1)]).not.toEqual([seed, true]);
  }
  expect(asked).toBeGreaterThan(ROUTES / 20);
  expect(open).toBeLessThan(ROUTES / 20);
});

/** Whether so many stock lengths are shorter together than the channel, however it is spliced; then none need be asked. */
function tooLittle({ lines, stock }: PlainRoute, sticks: number, pieces: number): boolean {
  const channel = lines.reduce((sum, line) => sum + line.channel[1] - line.channel[0], 0);
  return channel - (2 * pieces) / 8 > sticks * stock;
}
