/** The calculators of tables as the command answers them: forms, faults, speed. */
import { describe, expect, test } from 'vitest';
import { trayhand } from './command.ts';

const good: Readonly<Record<string, object>> = {
  jumper: { devicesA: [20, 30, 100], metal: 'copper' },
  groundpath: {
    metal: 'aluminium',
    deviceA: 70,
    markedAreaIn2: 0.2,
    qualifiedService: true,
    identified: true,
  },
  expansion: { metal: 'aluminium', lowF: -20, highF: 130, installF: 75, lengthFt: 200 },
  radius: { cable: 'MC shielded', odIn: 1.5, conductorOdIn: 0.9 },
  transition: { gapFt: 6, secured: true, guarded: true },
  ampacity: { currentCarrying: 7, coverFt: 8 },
  marking: { volts: 4160 },
  separation: { volts: [480, 4160], mc: false },
};

describe('good answers: result, working, sources', () => {
  test.each([
    ['jumper', { size: '8 AWG', rowA: 100, table: '250.122', refer: false }],
    ['groundpath', { requiredIn2: 0.2, permitted: true, holds: true, refer: false, table: '392.60(B)' }],
    [
      'expansion',
      {
        maxSpacingFt: expect.closeTo(1e6 / (12 * 12.8 * 150), 9),
        tableFt: 43,
        segments: 5,
        gapIn: expect.closeTo(55 / 150, 12),
        movedIn: null,
        refer: false,
      },
    ],
    ['radius', { multiple: 12, radiusIn: expect.closeTo(10.8, 12), table: '330.24(C)', refer: false }],
    ['transition', { holds: true, limitFt: 6, refer: false }],
    ['ampacity', { percent: 66.5, tables: ['310.15(C)(1)', '392.80(A)(1)'] }],
    ['marking', { required: true, maxSpacingFt: 10 }],
    ['separation', { barrier: true, thresholdV: 1000 }],
  ])('%s', async (verb, result) => {
    const { exit, one } = await trayhand(['calc', verb], good[verb]);
    expect([exit, one.ok]).toEqual([0, true]);
    expect(one.result).toEqual(result);
    expect(one.steps.length).toBeGreaterThan(1);
    for (const source of one.sources)
      expect(Object.keys(source)).toEqual(['id', 'document', 'edition', 'where', 'seen']);
  });

  test('why is a text', async () => {
    const { one } = await trayhand(['calc', 'radius'], { cable: 'ITC', odIn: 0.4, edition: 2020 });
    expect(one.result).toEqual({
      multiple: null,
      radiusIn: null,
      table: '727.10',
      refer: true,
      why: expect.stringContaining('gives no figure'),
    });
  });
});

describe('faults: every one, with its path', () => {
  const rows: readonly (readonly [verb: string, given: unknown, fields: readonly string[]])[] = [
    ['jumper', {}, ['devicesA', 'metal']],
    ['jumper', { devicesA: [], metal: 'copper' }, ['devicesA']],
    [
      'jumper',
      { devicesA: [0, '20', null, -1, 20], metal: 'steel', edition: '2023', size: 1 },
      ['devicesA[0]', 'devicesA[1]', 'devicesA[2]', 'devicesA[3]', 'edition', 'metal', 'size'],
    ],
    ['groundpath', {}, ['deviceA', 'identified', 'markedAreaIn2', 'metal', 'qualifiedService']],
    [
      'groundpath',
      { metal: 'iron', deviceA: 0, markedAreaIn2: -0.1, qualifiedService: 'yes', identified: 1 },
      ['deviceA', 'identified', 'markedAreaIn2', 'metal', 'qualifiedService'],
    ],
    ['expansion', {}, ['highF', 'installF', 'lowF', 'metal']],
    ['expansion', { ...good['expansion'], edition: 2023 }, ['edition']],
    ['expansion', { ...good['expansion'], metal: 'stainless' }, ['metal']],
    [
      'expansion',
      {
        ...good['expansion'],
        highF: -21,
        movementIn: 0,
        lengthFt: 0,
        movementOf: { lengthFt: 0, dF: '5', of: 1 },
      },
      ['highF', 'lengthFt', 'movementIn', 'movementOf.dF', 'movementOf.lengthFt', 'movementOf.of'],
    ],
    ['radius', {}, ['cable', 'odIn']],
    ['radius', { cable: 'MC shielded', odIn: 1 }, ['conductorOdIn']],
    ['radius', { cable: 'MC shielded', odIn: 0 }, ['conductorOdIn', 'odIn']],
    ['radius', { cable: 'MC shielded', odIn: 1, conductorOdIn: 1.1 }, ['conductorOdIn']],
    ['radius', { cable: 'MC shielded', odIn: 1, conductorOdIn: 0 }, ['conductorOdIn']],
    ['radius', { cable: 'MC shielded', odIn: 1, conductorOdIn: null }, ['conductorOdIn']],
    ['radius', { cable: 'tube', odIn: '1', shielded: 'no' }, ['cable', 'odIn', 'shielded']],
    ['transition', {}, ['gapFt', 'guarded', 'secured']],
    ['transition', { gapFt: -1, secured: 1, guarded: null }, ['gapFt', 'guarded', 'secured']],
    ['ampacity', {}, ['currentCarrying']],
    ['ampacity', { currentCarrying: 2.5, coverFt: -1 }, ['coverFt', 'currentCarrying']],
    ['ampacity', { currentCarrying: 0 }, ['currentCarrying']],
    ['marking', {}, ['volts']],
    ['marking', { volts: [600] }, ['volts']],
    ['marking', { volts: -1 }, ['volts']],
    ['separation', {}, ['mc', 'volts']],
    ['separation', { volts: [], mc: true }, ['volts']],
    ['separation', { volts: 480, mc: 0 }, ['mc', 'volts']],
    ['separation', { volts: [-1, '5'], mc: true, edition: 2018 }, ['edition', 'volts[0]', 'volts[1]']],
  ];

  test.each(Object.keys(good))('calc %s', async (verb) => {
    const mine = rows.filter((row) => row[0] === verb);
    const { exit, many } = await trayhand(['calc', verb], [good[verb], ...mine.map(([, given]) => given)]);
    expect(exit).toBe(2);
    expect(many[0]?.ok).toBe(true);
    expect(many.slice(1).map((a) => a.errors.map((e) => e.field).sort())).toEqual(
      mine.map(([, , fields]) => fields),
    );
    for (const { message, todo } of many.slice(1).flatMap((a) => a.errors))
      expect([message, todo].every((text) => text.length > 5)).toBe(true);
  });
});

test('numbers too large to be worked with are a fault, not an answer', async () => {
  const { exit, one } = await trayhand(['calc', 'radius'], { cable: 'TC', odIn: 1e308 });
  expect([exit, one.errors[0]?.message]).toEqual([2, 'these numbers are too large to be worked with']);
});

test('1 000 small inputs of each in one call', async () => {
  for (const [verb, given] of Object.entries(good)) {
    const { exit, many } = await trayhand(
      ['calc', verb],
      Array.from({ length: 1000 }, () => given),
    );
    expect([verb, exit, many.length]).toEqual([verb, 0, 1000]);
  }
});
