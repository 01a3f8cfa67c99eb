/** `run` as it is called; the manual's part on it. Figures of the practice catalogue are training values. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { group } from '../../src/cli/run.ts';
import { RULE_IDS } from '../../src/run/inspect/finding.ts';
import { trayhand } from './command.ts';

const manual = readFileSync(new URL('../../src/cli/README.md', import.meta.url), 'utf8');
const section = manual.slice(manual.indexOf('\n## run\n'), manual.indexOf('\n## practice\n'));

const run = {
  v: 1,
  tray: 'card-4',
  start: { kind: 'ladder', joint: 'socketed', jumper: '12 AWG' },
  legs: [{ id: '1', from: 'start', fitting: null, dir: 'E', length: `10'-0 1/2"` }],
  supports: [18, 60, 110].map((at) => ({ leg: '1', at, way: 'horizontal', hold: 'clamp' })),
};

test('the manual has a row for every verb, and names every rule', () => {
  const rows = [...section.matchAll(/^\| `(\w+)/gm)].map((m) => m[1]);
  expect(rows).toEqual(group.verbs.map(({ name }) => name));
  for (const id of RULE_IDS) expect(section).toContain(id);
  for (const verb of group.verbs) {
    const row = section.split('\n').find((line) => line.startsWith(`| \`${verb.name}`)) ?? '';
    for (const option of Object.keys(verb.options ?? {})) expect(row).toContain(`--${option}`);
  }
});

test('the run of the manual is a whole one, and its ids are of the catalogue', async () => {
  const written = /^\$ echo '(?<json>.*)' \| npm run -s trayhand -- run takeoff$/m.exec(section)?.groups?.[
    'json'
  ];
  const { one, exit } = await trayhand(['run', 'takeoff'], JSON.parse(written ?? '') as unknown);
  expect(exit).toBe(0);
  // 180 + 1 1/2 - 5 1/16 + 5; 116 1/2 - 5 1/16 - 7 + 5 + 1 1/2; 120 - 7 + 1 1/2
  expect(one.result['pieces']).toMatchObject([{ cutIn: 181.4375 }, { cutIn: 110.9375 }, { cutIn: 114.5 }]);
});

test('takeoff: one run in, one answer out', async () => {
  const { one, exit } = await trayhand(['run', 'takeoff'], run);
  expect(exit).toBe(0);
  // 10'-0 1/2" and 1 1/2 in into the socket
  expect(one.result['pieces']).toMatchObject([{ id: '1-1', leg: '1', cutIn: 122 }]);
  expect(one.result).toMatchObject({
    cableLengthsIn: {},
    gaps: [],
    hardware: [{ item: 'strut', count: 3 }, {}, {}, {}, {}, {}, {}],
  });
  expect(Object.keys(one.result)).toEqual([
    ...'pieces sticks hardware fasteners jumpers fill gaps supportLoads rodLoads weights cableLengthsIn'.split(
      ' ',
    ),
  ]);
});

test('inspect: findings are answers, in words', async () => {
  const { one, exit } = await trayhand(['run', 'inspect'], {
    ...run,
    legs: [{ ...run.legs[0], barrier: false, length: 138.5 }],
  });
  expect(exit).toBe(0);
  expect(one.result['rules']).toEqual([...RULE_IDS]);
  expect(one.result['findings']).toEqual([
    {
      rule: 'end-unsupported',
      leg: '1',
      atIn: 138.5,
      measured: 28.5,
      limit: 24,
      unit: 'in',
      source: expect.objectContaining({ id: 'nema-ve-2', seen: 'memory' }),
      say: `The nearest support, C, is 2'-4 1/2" from this end of the channel; it may be 2'-0" away.`,
      todo: `Set a support within 2'-0" of this place.`,
    },
  ]);
});

test('a list: a bad run spoils no other, and says every fault', async () => {
  const bad = { ...run, tray: 'card-5', extra: 1, kerf: '4\' -3"' };
  const { many, exit } = await trayhand(['run', 'inspect'], [run, bad, { ...run, legs: [] }, run]);
  expect(exit).toBe(2);
  expect(many.map(({ ok }) => ok)).toEqual([true, false, false, true]);
  expect(many[1]?.errors.map(({ field }) => field).sort()).toEqual(['extra', 'kerf', 'tray']);
  expect(many[2]?.errors.map(({ field }) => field)).toEqual(['legs']);
});

test('a piece longer than its stock is an error of takeoff, and no finding', async () => {
  const long = { ...run, stock: 121 };
  const { one, exit } = await trayhand(['run', 'takeoff'], long);
  expect([exit, one.errors.map(({ field }) => field)]).toEqual([2, ['legs[0].length']]);
  const { one: looked } = await trayhand(['run', 'inspect'], long);
  expect(looked.result['findings']).toEqual([]);
});

test('1,000 small runs in one call: each answered as one alone is', async () => {
  const { many, exit } = await trayhand(['run', 'takeoff'], Array(1000).fill(run));
  const { one } = await trayhand(['run', 'takeoff'], run);
  expect([exit, one.ok]).toEqual([0, true]);
  expect(many).toEqual(Array(1000).fill(one));
});
