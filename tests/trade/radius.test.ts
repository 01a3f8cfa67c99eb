import { describe, expect, test } from 'vitest';
import { GivenError } from '../../src/trade/given.ts';
import { type RadiusCable, type RadiusGiven, radius } from '../../src/trade/radius.ts';
import { tables } from './tables.ts';

const ask = (cable: RadiusCable, odIn: number, more: Partial<RadiusGiven> = {}) =>
  radius({ cable, odIn, ...more }, tables.radius);

describe('multiples of the diameter, both sides of each limit', () => {
  test.each([
    // NFPA 70-2020, 336.24 (the copy of 2023 lacks the line to 1 in)
    ['TC', 0.3, 4, '336.24'],
    ['TC', 1, 4, '336.24'],
    ['TC', 1 + 1e-10, 4, '336.24'],
    ['TC', 1.0001, 5, '336.24'],
    ['TC', 2, 5, '336.24'],
    ['TC', 2.0001, 6, '336.24'],
    // NFPA 70-2020 and -2023, 330.24(B)
    ['MC interlocked', 0.2, 7, '330.24(B)'],
    ['MC interlocked', 4, 7, '330.24(B)'],
    // NFPA 70-2020 and -2023, 330.24(A)
    ['MC smooth', 0.75, 10, '330.24(A)'],
    ['MC smooth', 0.7501, 12, '330.24(A)'],
    ['MC smooth', 1.5, 12, '330.24(A)'],
    ['MC smooth', 1.5001, 15, '330.24(A)'],
    // NFPA 70-2023, 305.5
    ['over 1000 V', 1.2, 8, '305.5'],
  ] as const)('%s of %d in: %d times (%s)', (cable, odIn, multiple, table) => {
    expect(ask(cable, odIn).result).toEqual({ multiple, radiusIn: multiple * odIn, table, refer: false });
  });

  test.each([
    ['TC', '336.24'], // NFPA 70-2020 and -2023, 336.24
    ['over 1000 V', '305.5'], // NFPA 70-2023, 305.5
  ] as const)('%s under a metallic shield: 12 times (%s)', (cable, table) => {
    for (const odIn of [0.5, 1.5, 3])
      expect(ask(cable, odIn, { shielded: true }).result).toEqual({
        multiple: 12,
        radiusIn: 12 * odIn,
        table,
        refer: false,
      });
    expect(ask(cable, 0.5, { shielded: false }).result).toEqual(ask(cable, 0.5).result);
  });

  test('a shield beside another cable changes no number, and the working says where it is judged', () => {
    for (const cable of ['MC interlocked', 'MC smooth'] as const) {
      const shielded = ask(cable, 0.9, { shielded: true });
      expect(shielded.result).toEqual(ask(cable, 0.9).result);
      expect(shielded.steps.map((s) => s.say)).toContain('radius.shieldElsewhere');
      expect(ask(cable, 0.9).steps.map((s) => s.say)).not.toContain('radius.shieldElsewhere');
    }
  });
});

describe('conductors each under its own shield: the greater of 12 × conductor and 7 × cable', () => {
  test.each([
    ['MC shielded', '330.24(C)'], // NFPA 70, 330.24(C), from memory
    ['over 1000 V', '305.5'], // NFPA 70-2023, 305.5
  ] as const)('%s (%s)', (cable, table) => {
    expect(ask(cable, 2, { conductorOdIn: 0.9 }).result).toEqual({
      multiple: 7,
      radiusIn: 14,
      table,
      refer: false,
    });
    expect(ask(cable, 1.5, { conductorOdIn: 0.9 }).result).toMatchObject({
      multiple: 12,
      radiusIn: expect.closeTo(10.8, 9),
    });
    // 12 × 0.7 = 7 × 1.2
    expect(ask(cable, 1.2, { conductorOdIn: 0.7 }).result).toMatchObject({
      multiple: 12,
      radiusIn: expect.closeTo(8.4, 9),
    });
    expect(ask(cable, 1.2, { conductorOdIn: 1.2 }).result.radiusIn).toBeCloseTo(14.4, 9);
  });

  test('a shield over all of it too changes nothing', () => {
    expect(ask('over 1000 V', 2, { conductorOdIn: 0.9, shielded: true }).result.radiusIn).toBe(14);
  });

  test.each([
    ['MC shielded', 1, undefined, undefined],
    ['MC shielded', 1, 1.01, 1.01],
    ['over 1000 V', 1, 1.01, 1.01],
    ['TC', 1, 1.01, 1.01],
  ] as const)('%s of %d in with %s in: refused', (cable, odIn, conductorOdIn, value) => {
    const refused = (() => {
      try {
        return ask(cable, odIn, { conductorOdIn });
      } catch (cause) {
        return cause;
      }
    })();
    expect(refused).toBeInstanceOf(GivenError);
    expect((refused as GivenError).faults).toEqual([
      {
        field: 'conductorOdIn',
        ...(value === undefined ? {} : { value }),
        message: expect.any(String),
        todo: expect.any(String),
      },
    ]);
  });
});

describe('no figure in the code: referred', () => {
  test.each([
    // NFPA 70-2023, 335.10; in 2020 and 2017 Article 727, from memory
    ['ITC', 2023, '335.10'],
    ['ITC', 2020, '727.10'],
    ['ITC', 2017, '727.10'],
    ['PLTC', 2023, null],
    ['PLTC', 2020, null],
    ['PLTC', 2017, null],
  ] as const)('%s in %d', (cable, edition, table) => {
    for (const shielded of [false, true]) {
      const { result, sources } = ask(cable, 0.4, { edition, shielded });
      expect(result).toMatchObject({ multiple: null, radiusIn: null, table, refer: true });
      expect(result.why?.at(-1)).toEqual({ say: 'radius.ask' });
      expect(sources.map((s) => [s.edition, s.where, s.seen])).toEqual(
        table === null ? [] : [[String(edition), table, edition === 2023 ? 'page' : 'memory']],
      );
    }
  });
});

test.each([
  // NFPA 70-2020, 300.34, is 305.5 in 2023; 2017 from memory
  [2017, '300.34', 'memory'],
  [2020, '300.34', 'page'],
  [2023, '305.5', 'page'],
] as const)('over 1000 V in %d: %s (%s), the same multiples', (edition, table, seen) => {
  const { result, sources } = ask('over 1000 V', 2, { edition });
  expect(result).toEqual({ multiple: 8, radiusIn: 16, table, refer: false });
  expect(sources.map((s) => [s.where, s.seen])).toEqual([[table, seen]]);
});

test('330.24(C) is remembered in every edition', () => {
  for (const edition of [2017, 2020, 2023] as const)
    expect(ask('MC shielded', 2, { conductorOdIn: 1, edition }).sources.map((s) => s.seen)).toEqual([
      'memory',
    ]);
});
