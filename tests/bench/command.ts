/**
 * `npm run bench -- command`: 1,000 small inputs in one call against a call with one, which is what starting costs.
 * Wanted on a quiet machine: under 2 s a thousand.
 */
import { spawnSync } from 'node:child_process';
import { compare } from './ratio.ts';

const run = {
  v: 1,
  tray: 'card-4',
  start: { kind: 'ladder', joint: 'socketed', jumper: '12 AWG' },
  legs: [{ id: '1', from: 'start', fitting: null, dir: 'E', length: `10'-0 1/2"` }],
  supports: [18, 60, 110].map((at) => ({ leg: '1', at, way: 'horizontal', hold: 'clamp' })),
};
const inputs: readonly (readonly [words: string, given: object])[] = [
  ['calc length', { text: `12'-3 1/2"` }],
  ['calc cut', { toSpliceEdge: '7-3 5/8', insertedEnds: 1 }],
  ['calc mark', { at: 12, firstHole: 6, pitch: 6, holeWidth: '9/16' }],
  ['calc fill', { tray: { bottom: 'ventilated', widthIn: 4 }, cables: [{ odIn: 0.6, count: 8 }] }],
  ['calc span', { tray: 'card-4', loadLbPerFt: 6.4 }],
  ['calc sticks', { stock: [{ length: 240 }], pieces: [{ length: 87.625, count: 5 }], kerf: '1/8' }],
  ['run takeoff', run],
  ['run inspect', run],
];

const call = (words: string, given: unknown) => () => {
  const child = spawnSync(process.execPath, ['src/cli/bin.ts', ...words.split(' ')], {
    input: JSON.stringify(given),
    maxBuffer: 1 << 28,
  });
  if (child.status !== 0) throw new Error(`${words} was refused`);
};

await compare(
  inputs.map(([words, given]) => ({
    what: `${words}, 1,000 inputs`,
    baseline: 'one',
    work: call(words, Array(1000).fill(given)),
    against: call(words, given),
  })),
);
