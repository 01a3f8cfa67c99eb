import { fromInches, ticks } from '../../../src/trade/length.ts';
import { sticksSays } from '../../../src/trade/sticks/says.ts';
import { sticks } from '../../../src/trade/sticks/sticks.ts';
import { holdSays } from '../sayings.ts';
import { published, units } from './jobs.ts';

const inch = fromInches;
const kerf = inch(1 / 8);
const piece = (length: number, count: number) => ({ length: inch(length), count });
const sleeper = published.find(({ id }) => id === 'Hard28_BPP14')?.given ?? { stock: [], pieces: [], kerf };

holdSays(sticksSays, [
  sticks({ stock: [{ length: inch(240) }], pieces: [piece(87, 3)], kerf }),
  sticks({
    stock: [{ length: inch(240) }],
    offcuts: [piece(90, 1)],
    pieces: [piece(87, 3)],
    kerf,
  }),
  sticks({ stock: [{ length: inch(240) }], offcuts: [piece(90, 1)], pieces: [piece(87, 1)], kerf }),
  sticks({ stock: [{ length: inch(240) }], pieces: [piece(87.5, 3)], kerf: units(2 / 127) }),
  // Seven that just fit one bar: rounded up they do not.
  sticks({ stock: [{ length: inch(240) }], pieces: [{ length: ticks(278_674), count: 7 }], kerf: inch(0) }),
  // All of it is tried, and nothing but trying shows that 8 sticks do not do.
  sticks({
    stock: [{ length: units(3840) }],
    pieces: [
      [896, 3],
      [1075, 2],
      [1184, 3],
      [1316, 5],
      [1903, 3],
      [2018, 2],
      [2026, 2],
    ].map(([length = 0, count = 0]) => ({ length: units(length), count })),
    kerf: units(2),
  }),
  sticks(sleeper, { stop: () => true }),
  // Too little stock: tried, shown by weights, neither.
  sticks({ stock: [{ ...piece(100, 2) }], pieces: [piece(60, 3)], kerf }),
  sticks({
    stock: [{ ...piece(240, 20) }],
    pieces: Array.from({ length: 30 }, (_, i) => piece(100 + i, 2)),
    kerf,
  }),
  sticks(
    { ...sleeper, stock: sleeper.stock.map(({ length }) => ({ length, count: 61 })) },
    { stop: () => true },
  ),
]);
