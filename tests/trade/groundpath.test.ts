import { describe, expect, test } from 'vitest';
import { type GroundpathGiven, groundpath } from '../../src/trade/groundpath.ts';
import { tables } from './tables.ts';

const ask = (more: Partial<GroundpathGiven>) =>
  groundpath(
    {
      metal: 'steel',
      deviceA: 60,
      markedAreaIn2: 9,
      qualifiedService: true,
      identified: true,
      ...more,
    },
    tables.groundpath,
  );

/** NFPA 70-2020 and -2023, Table 392.60(B): device, steel, aluminium; null: not permitted. */
const rows = [
  [60, 0.2, 0.2],
  [100, 0.4, 0.2],
  [200, 0.7, 0.2],
  [400, 1.0, 0.4],
  [600, 1.5, 0.4],
  [1000, null, 0.6],
  [1200, null, 1.0],
  [1600, null, 1.5],
  [2000, null, 2.0],
] as const;
const cells = rows.flatMap(([deviceA, steel, aluminium], i) =>
  (
    [
      ['steel', steel],
      ['aluminium', aluminium],
    ] as const
  ).map(([metal, areaIn2]) => [metal, deviceA, areaIn2, rows[i - 1]?.[0] ?? 0] as const),
);

describe('Table 392.60(B) of NFPA 70-2020 and -2023', () => {
  test.each(cells)('%s at %d A: %s in²', (metal, deviceA, areaIn2, rowBelow) => {
    for (const device of [deviceA, deviceA + 1e-10, rowBelow + 0.01]) {
      const { result } = ask({ metal, deviceA: device });
      expect(result).toMatchObject(
        areaIn2 === null
          ? { requiredIn2: null, permitted: false, holds: false, refer: false }
          : { requiredIn2: areaIn2, permitted: true, holds: true, refer: false },
      );
    }
  });

  test.each(cells.filter(([, , areaIn2]) => areaIn2 !== null))(
    '%s at %d A: %d in² marked is enough, less is not',
    (metal, deviceA, areaIn2) => {
      const holds = (markedAreaIn2: number) => ask({ metal, deviceA, markedAreaIn2 }).result.holds;
      const enough = areaIn2 ?? 0;
      expect([holds(enough), holds(enough - 1e-10), holds(enough - 1e-8), holds(0)]).toEqual([
        true,
        true,
        false,
        false,
      ]);
    },
  );

  test('has these rows and no other', () => {
    expect(tables.groundpath.rows.map((r) => [r.deviceA, r.steel, r.aluminium])).toEqual(rows);
  });

  test.each([
    ['steel', 600],
    ['aluminium', 2000],
  ] as const)('%s is not permitted above %d A', (metal, last) => {
    expect(ask({ metal, deviceA: last }).result.permitted).toBe(true);
    expect(ask({ metal, deviceA: last + 0.01 }).result).toEqual({
      requiredIn2: null,
      permitted: false,
      holds: false,
      table: '392.60(B)',
      refer: false,
    });
  });
});

describe('what the table is not for', () => {
  const barred = { requiredIn2: null, permitted: false, holds: false, table: '392.60(B)', refer: false };

  test.each(['steel', 'aluminium', 'stainless'] as const)(
    '%s: not qualified or not identified is not permitted (392.60(A), (B))',
    (metal) => {
      expect(ask({ metal, qualifiedService: false }).result).toEqual(barred);
      expect(ask({ metal, identified: false }).result).toEqual(barred);
      expect(ask({ metal, qualifiedService: false, identified: false }).steps.map((s) => s.say)).toEqual([
        'groundpath.notQualified',
        'groundpath.notIdentified',
        'groundpath.wire',
      ]);
    },
  );

  test('stainless has no column: all three null, referred', () => {
    const { result } = ask({ metal: 'stainless' });
    expect(result).toEqual({
      requiredIn2: null,
      permitted: null,
      holds: null,
      table: '392.60(B)',
      refer: true,
      why: [{ say: 'groundpath.stainless', values: { table: '392.60(B)' } }, { say: 'groundpath.ask' }],
    });
  });
});

test.each([
  [2017, '392.60(A)', 'memory'],
  [2020, '392.60(B)', 'page'],
  [2023, '392.60(B)', 'page'],
] as const)('edition %d cites %s (%s)', (edition, table, seen) => {
  const { result, sources } = ask({ edition });
  expect(result).toMatchObject({ table, requiredIn2: 0.2 });
  expect(sources.map((s) => [s.edition, s.where, s.seen])).toEqual([
    [String(edition), '392.60(A)', seen],
    [String(edition), `Table ${table}`, seen],
  ]);
});

test('two numbers that four decimals would make alike are told apart in the working', () => {
  const { steps } = ask({ markedAreaIn2: 0.19999 });
  expect(steps).toContainEqual({
    say: 'groundpath.short',
    values: { marked: '0.19999', required: '0.2' },
  });
});
