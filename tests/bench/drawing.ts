/**
 * `npm run bench -- drawing`: every view of a run of 3,000 ft against the same view of 30 ft, and how time grows with
 * length. Wanted: 3,000 ft under 100 ms a view.
 */
import { pagePalette } from '../../src/drawing/palette.ts';
import { render } from '../../src/drawing/svg.ts';
import { runViews } from '../../src/drawing/views.ts';
import { resolveRun } from '../../src/run/resolve.ts';
import { TRADE_USUAL } from '../../src/run/usual.ts';
import { runShape } from '../../src/schema/run.ts';
import { catalogue } from '../run/practice.ts';
import { speak, tables } from '../run/tables.ts';
import { compare } from './ratio.ts';

/** Legs of one length, a flat elbow between them, a splice every 20 ft, a support every 5 ft 6 in. */
function run(feet: number, legs: number) {
  const length = Math.floor((feet * 12) / legs);
  const ways = ['E', 'N', 'E', 'S', 'E', 'N'];
  const places = (from: number, to: number, step: number) =>
    Array.from({ length: Math.max(0, Math.ceil((to - from) / step)) }, (_, i) => from + i * step);
  const ids = Array.from({ length: legs }, (_, i) => String(i + 1));
  return resolveRun(
    runShape.parse({
      v: 1,
      tray: 'card-4',
      start: { kind: 'ladder', joint: 'socketed' },
      legs: ids.map((id, i) => ({
        id,
        from: i === 0 ? 'start' : String(i),
        fitting: i === 0 ? null : 'card-4-elbow-90',
        dir: ways[i % ways.length],
        length,
      })),
      joints: ids.flatMap((leg) =>
        places(240, length - 30, 240).map((at) => ({ leg, at, kind: 'socketed' })),
      ),
      supports: ids.flatMap((leg) =>
        places(20, length - 8, 66).map((at) => ({ leg, at, way: 'horizontal', hold: 'clamp' })),
      ),
      cables: [
        {
          id: 'P-1',
          type: 'TC',
          odIn: 0.6,
          lbPerFt: 0.2,
          count: 3,
          make: 'multiconductor',
          use: 'power',
          deviceA: 30,
          to: String(legs),
        },
      ],
    }),
    catalogue,
    TRADE_USUAL,
  );
}

const sizes = [
  { what: '3,000 ft straight', long: run(3000, 1), short: run(30, 1), small: '30 ft straight' },
  { what: '3,000 ft, 60 elbows', long: run(3000, 61), short: run(30, 3), small: '30 ft, 2 elbows' },
];

for (const form of ['desk', 'phone'] as const) {
  const how = { form, palette: pagePalette, speak };
  await compare(
    sizes.flatMap(({ what, long, short, small }) =>
      runViews.map(({ view, lay }) => {
        const draw = (resolved: typeof long) => () => render(lay({ resolved, tables, catalogue }, how), how);
        return { what: `${view}, ${form}, ${what}`, baseline: small, work: draw(long), against: draw(short) };
      }),
    ),
  );
}
