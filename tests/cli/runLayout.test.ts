/** `run layout` as it is called. Figures of the practice catalogue are training values. */
import { expect, test } from 'vitest';
import { trayhand } from './command.ts';

const run = {
  v: 1,
  tray: 'card-4',
  start: { kind: 'ladder', joint: 'socketed' },
  legs: [
    { id: 'a', from: 'start', fitting: null, dir: 'E', length: '45 ft' },
    { id: 'b', from: 'a', fitting: 'card-4-elbow-90', dir: 'N', length: `6'-3 1/16"` },
  ],
  ends: [{ leg: 'b', kind: 'instrument', joint: 'butt' }],
  supports: [{ leg: 'a', at: 1, way: 'horizontal', hold: 'guide' }],
  cables: [
    {
      id: 'p',
      type: 'TC',
      odIn: 0.5,
      lbPerFt: 0.2,
      count: 2,
      make: 'multiconductor',
      use: 'power',
      deviceA: 60,
      to: 'b',
    },
  ],
};

test('what comes back reads again, and inspected is without a finding that the lay-out answers for', async () => {
  const { one, exit } = await trayhand(['run', 'layout'], run);
  expect(exit).toBe(0);
  expect(Object.keys(one.result)).toEqual(['run', 'proven', 'bound']);
  // Leg a: 533 in to the face, 10 ft at most between supports: 24 + 4 · 120 leave 29, so six. Leg b: 68 in, two.
  expect(one.result).toMatchObject({
    proven: { supports: true, stock: true },
    bound: { supports: 8, stock: 3 },
  });
  const laid = one.result['run'] as { supports: unknown[] };
  expect(laid.supports).toHaveLength(8);
  expect(laid).toMatchObject({
    start: { jumper: '10 AWG' },
    ends: [{ leg: 'b', jumper: '10 AWG' }],
    legs: [{ length: 540 }, { length: 75.0625 }],
  });
  const inspected = await trayhand(['run', 'inspect'], laid);
  const rules = (inspected.one.result['findings'] as { rule: string }[]).map(({ rule }) => rule);
  expect(rules.filter((rule) => rule !== 'cut-in-hole')).toEqual([]);
  const again = await trayhand(['run', 'layout'], laid);
  expect(again.one.result['run']).toEqual(laid);
});

test('refused: the rule, the leg, the place, in words; an answer all the same', async () => {
  const { one, exit } = await trayhand(['run', 'layout'], {
    ...run,
    places: [{ leg: 'b', at: [40, 60] }],
  });
  expect(exit).toBe(0);
  expect(one.result).toEqual({
    run: null,
    refused: {
      rule: 'fitting-unsupported',
      leg: 'b',
      atIn: 7,
      say: expect.stringMatching(/^Leg b: no support can stand within 2'-0" /),
    },
  });
});

test('a list; a bad run says its faults', async () => {
  const { many, exit } = await trayhand(['run', 'layout'], [run, { ...run, tray: 'none' }]);
  expect(exit).toBe(2);
  expect(many).toMatchObject([{ ok: true }, { ok: false, errors: [{ field: 'tray' }] }]);
});
