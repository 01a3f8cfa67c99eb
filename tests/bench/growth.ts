/**
 * `npm run bench -- growth`: how time grows with the size of what is given. A ratio near that of the sizes is a time
 * that grows as the size does; one near its square is a fault. Wanted: runs 10 to 25 ×, beams about 10 ×.
 */
import { resolveRun } from '../../src/run/resolve.ts';
import { TRADE_USUAL } from '../../src/run/usual.ts';
import { beam } from '../../src/trade/beam/beam.ts';
import { GivenError } from '../../src/trade/given.ts';
import { catalogue } from '../run/practice.ts';
import { stairs } from '../run/stairs.ts';
import { compare } from './ratio.ts';

const [long, short] = [stairs(30_000), stairs(3000)];
const upwards = long.legs.map((leg, k) => (k % 2 === 1 ? { ...leg, dir: 'U' as const } : leg));
const refused = () => {
  try {
    resolveRun({ ...long, legs: upwards }, catalogue, TRADE_USUAL);
  } catch (cause) {
    if (cause instanceof GivenError) return;
    throw cause;
  }
  throw new Error('legs that cannot lie so were taken');
};
/** Of unlike spans: where all are alike the slope over a support is next to 0, and its place is sought longest. */
const beams = (spans: number) => () => {
  const spansIn = Array.from({ length: spans }, (_, k) => 60 + 12 * (k % 5));
  for (let i = 0; i < 20; i++) beam({ spansIn, loadLbPerFt: 20, ePsi: 29e6, iIn4: 0.05 });
};

await compare([
  {
    what: 'a run of 30,000 ft resolved',
    baseline: 'one of 3,000 ft',
    work: () => resolveRun(long, catalogue, TRADE_USUAL),
    against: () => resolveRun(short, catalogue, TRADE_USUAL),
  },
  {
    what: 'three thousand legs refused',
    baseline: 'as many taken',
    work: refused,
    against: () => resolveRun(long, catalogue, TRADE_USUAL),
  },
  { what: 'beams of 200 spans', baseline: 'of 20 spans', work: beams(200), against: beams(20) },
]);
