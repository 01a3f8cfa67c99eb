import { describe, expect, test } from 'vitest';
import { trayhand } from './command.ts';

const call = (given: unknown, ...options: string[]) => trayhand(['calc', 'sticks', ...options], given);
const given = {
  stock: [{ length: `20'` }],
  pieces: [
    { length: '7-3 5/8', count: 5, mark: 'A' },
    { length: 40, count: 3 },
  ],
  kerf: '1/8',
};

describe('calc sticks', () => {
  test('answers with the fields of the manual, worked by hand', async () => {
    const { exit, one } = await call(given);
    expect(exit).toBe(0);
    // 87 5/8 twice and 40 leave 240 − 175 1/4 − 40 − 3/8; the fifth long piece and the third 40 leave 112 1/8.
    const full = { fromIn: 240, offcut: false, leftIn: 24.375 };
    const long = { in: 87.625, mark: 'A' };
    expect(one.result).toEqual({
      feasible: true,
      lengthsUsed: 3,
      newStockIn: 720,
      lowerBoundIn: 720,
      proven: true,
      provenLevels: 5,
      cutFromOffcutsIn: 0,
      longestReusableIn: 112.125,
      setups: 2,
      stopSettings: 4,
      lengths: [
        { ...full, pieces: [long, long, { in: 40 }] },
        { ...full, pieces: [long, long, { in: 40 }] },
        { ...full, pieces: [long, { in: 40 }], leftIn: 112.125 },
      ],
      certificate: {
        grid: 0.125,
        weights: [
          { length: 701, u: expect.any(Number) },
          { length: 320, u: expect.any(Number) },
        ],
        U: expect.any(Number),
        bound: 3,
      },
    });
    expect(one.steps.length).toBeGreaterThan(5);
    expect(one.sources).toEqual([expect.objectContaining({ where: 'a remainder of 12 in or more is kept' })]);
  });

  test('off-cuts first; several lengths prove inches of stock', async () => {
    const { one } = await call({
      ...given,
      stock: [{ length: 240 }, { length: 144, count: 2 }],
      offcuts: [{ length: 90, count: 2 }],
      minReusable: 6,
    });
    expect(one.result).toMatchObject({
      feasible: true,
      newStockIn: 480,
      proven: true,
      cutFromOffcutsIn: 175.25,
      certificate: { bound: 480, perStock: expect.any(Array) },
    });
    expect(one.sources).toEqual([]);
  });

  test('pieces that fill a bar to its end need no last cut', async () => {
    const exact = { stock: [{ length: 100 }], pieces: [{ length: 49.9375, count: 2 }], kerf: '1/8' };
    expect((await call(exact)).one.result).toMatchObject({ lengthsUsed: 1, lengths: [{ leftIn: 0 }] });
    const over = { ...exact, pieces: [{ length: '49 61/64', count: 2 }] };
    expect((await call(over)).one.result).toMatchObject({ lengthsUsed: 2 });
  });

  test('stock that runs out is an answer, with why', async () => {
    const { exit, one } = await call({
      stock: [{ length: 100, count: 2 }],
      pieces: [{ length: 60, count: 3 }],
      kerf: 0,
    });
    expect([exit, one.ok]).toEqual([0, true]);
    expect(one.result).toMatchObject({
      feasible: false,
      lengthsUsed: null,
      newStockIn: null,
      proven: false,
      provenLevels: 0,
      lengths: [],
      certificate: null,
      why: expect.stringContaining('not enough stock'),
    });
  });

  test('above 200 000 units a bar pieces and kerf are rounded up to 1/64 in, and why says so', async () => {
    // 20 ft and 3 mm have 4 ticks in common: 487 680 units. 2 × 119 15/16 and the cut fit: 239 7/8 + 3 mm < 240.
    const { one } = await call({
      stock: [{ length: 240 }],
      pieces: [{ length: '119 15/16', count: 2 }],
      kerf: '3 mm',
    });
    expect(one.result).toMatchObject({
      lengthsUsed: 1,
      proven: true,
      why: expect.stringContaining('rounded up to 1/64 in'),
      certificate: { grid: 1 / 64, weights: [{ length: 7676 }] },
    });
    // Seven pieces of a seventh of the bar just fit it; rounded up they seem to need two, and nothing may be claimed.
    const seventh = await call({
      stock: [{ length: 240 }],
      pieces: [{ length: 278_674 / 8128, count: 7 }],
      kerf: 0,
    });
    expect(seventh.one.result).toMatchObject({
      lengthsUsed: 2,
      lowerBoundIn: 240,
      proven: false,
      provenLevels: 0,
      certificate: null,
      why: expect.stringContaining('is not proven'),
    });
    expect(JSON.stringify(seventh.one.steps)).not.toContain('Proven');
    // 1/8 in in place of 3 mm has 508 ticks in common with them: 3 840 units, nothing is rounded.
    const plain = await call({
      stock: [{ length: 240 }],
      pieces: [{ length: '119 15/16', count: 2 }],
      kerf: '1/8',
    });
    expect(plain.one.result['why']).toBeUndefined();
    expect(plain.one.result).toMatchObject({ lengthsUsed: 1, certificate: { grid: 1 / 16 } });
  });

  test('--seconds', async () => {
    expect((await call(given, '--seconds', '0')).one.ok).toBe(true);
    expect((await call(given, '--seconds', '0.5')).one.result).toMatchObject({ proven: true });
    for (const bad of ['x', '-1', '1e3', '4000', '']) {
      const { exit, one } = await call([given, given], `--seconds=${bad}`);
      expect([bad, exit, one.ok, one.errors?.map((e) => e.field)]).toEqual([bad, 2, false, ['--seconds']]);
    }
  });

  test('1,000 jobs: each answered as one alone is', async () => {
    const { exit, many } = await call(Array(1000).fill(given));
    const { one } = await call(given);
    expect([exit, one.ok]).toEqual([0, true]);
    expect(many).toEqual(Array(1000).fill(one));
  });
});

describe.concurrent('faults: every one, with path, value and what to do', () => {
  const rows: readonly (readonly [given: unknown, fields: readonly string[]])[] = [
    [{}, ['stock', 'pieces', 'kerf']],
    [{ ...given, stock: [], pieces: [] }, ['stock', 'pieces']],
    [{ ...given, stock: [{ length: 0 }], kerf: -1 }, ['stock[0].length', 'kerf']],
    [{ ...given, stock: [{ length: 240, count: 1.5 }] }, ['stock[0].count']],
    [{ ...given, stock: [{ length: 240, count: -1 }] }, ['stock[0].count']],
    [{ ...given, offcuts: [{ length: 30 }] }, ['offcuts[0].count']],
    [
      { ...given, offcuts: [{ length: 30, count: '2', from: 'rack' }] },
      ['offcuts[0].count', 'offcuts[0].from'],
    ],
    [{ ...given, pieces: [{ length: 30, count: 0 }] }, ['pieces[0].count']],
    [{ ...given, pieces: [{ length: true, count: 1, mark: 7 }] }, ['pieces[0].length', 'pieces[0].mark']],
    [{ ...given, minReusable: '-1', edition: 2023 }, ['edition', 'minReusable']],
    [
      {
        ...given,
        offcuts: [{ length: 250, count: 0 }],
        pieces: [
          { length: `21'`, count: 1 },
          { length: 240, count: 1 },
          { length: 251, count: 1 },
        ],
      },
      ['pieces[0].length', 'pieces[2].length'],
    ],
    [{ ...given, pieces: [{ length: 1, count: 100_001 }] }, ['pieces']],
  ];

  test('of a job alone, and of every job of a list', async () => {
    const alone = await call(rows[1]?.[0]);
    const { exit, many } = await call(rows.map(([wrong]) => wrong));
    expect([alone.exit, exit, many[1]]).toEqual([2, 2, alone.one]);
    expect(many).toHaveLength(rows.length);
    for (const [i, [wrong, fields]] of rows.entries()) {
      const told = many[i]?.errors ?? [];
      expect([wrong, many[i]?.ok, told.map((e) => e.field).sort()]).toEqual([
        wrong,
        false,
        [...fields].sort(),
      ]);
      for (const { message, todo } of told) expect([message === '', todo === '']).toEqual([false, false]);
    }
  });

  test('what may be left out or empty', async () => {
    const { exit, many } = await call([
      { ...given, offcuts: [] },
      { ...given, stock: [{ length: 240, count: 0 }, { length: 239 }], offcuts: [{ length: 30, count: 0 }] },
      { ...given, kerf: 0, minReusable: 0 },
    ]);
    expect([exit, many.map((a) => a.ok)]).toEqual([0, [true, true, true]]);
    expect(many[1]?.result).toMatchObject({ newStockIn: 717, proven: true });
  });
});
