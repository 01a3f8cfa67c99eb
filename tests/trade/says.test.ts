import type { Answered } from '../../src/trade/answer.ts';
import { convert } from '../../src/trade/convert.ts';
import { cut } from '../../src/trade/cut.ts';
import { fill } from '../../src/trade/fill.ts';
import { fromInches, ticks } from '../../src/trade/length.ts';
import { mark } from '../../src/trade/mark.ts';
import { channelSays } from '../../src/trade/says.ts';
import { holdSays } from './sayings.ts';
import { fillTables } from './tables.ts';

const holes = { firstHole: fromInches(6), pitch: fromInches(6), holeWidth: fromInches(1) };
const multi = { make: 'multiconductor', odIn: 1, count: 1 } as const;
const byArea = { make: 'multiconductor', areaIn2: 3, count: 2 } as const;
const single = { make: 'single', odIn: 1, count: 3 } as const;
const channel = (bottom: 'ventilated' | 'solid', widthIn: number) => ({ tray: { bottom, widthIn } });

/** One call or more for every sentence of these calculators. */
const answers: readonly Answered<object>[] = [
  convert({ text: fromInches(7) }),
  convert({ text: ticks(1) }),
  ...([0, 1, 2] as const).map((insertedEnds) => cut({ toSpliceEdge: fromInches(60), insertedEnds })),
  cut({ toSpliceEdge: fromInches(600), insertedEnds: 0 }),
  mark({ ...holes, at: fromInches(3) }),
  mark({ ...holes, at: fromInches(12), holeWidth: fromInches(9 / 16) }),
  mark({ ...holes, at: fromInches(12), pitch: fromInches(1) }),
  mark({ ...holes, at: fromInches(12), firstHole: fromInches(0), pitch: fromInches(1) }),
  fill({ ...channel('ventilated', 4), cables: [multi], spare: 0.1 }, fillTables),
  fill({ ...channel('ventilated', 4), cables: [multi, byArea] }, fillTables),
  fill({ ...channel('ventilated', 5), cables: [multi, single] }, fillTables),
  fill({ ...channel('solid', 4), cables: [single] }, fillTables),
  fill({ ...channel('ventilated', 4), cables: [single, single], qualifiedOnly: true }, fillTables),
  fill({ ...channel('ventilated', 4), cables: [single], qualifiedOnly: true }, fillTables),
  fill({ ...channel('ventilated', 4), cables: [single, multi], qualifiedOnly: true }, fillTables),
  fill({ ...channel('ventilated', 4), cables: [single, byArea], qualifiedOnly: true }, fillTables),
];

holdSays(channelSays, answers);
