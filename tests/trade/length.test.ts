import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { GivenError } from '../../src/trade/given.ts';
import {
  DENOMINATORS,
  type Denominator,
  formatLength,
  fromInches,
  inches,
  lengthRefusal,
  millimetres,
  readLength,
  roundTo,
  ticks,
  tryLength,
} from '../../src/trade/length.ts';
import { LENGTH_REFUSALS } from '../../src/trade/lengthWords.ts';
import cases from '../references/length.json' with { type: 'json' };
import refused from '../references/length-refused.json' with { type: 'json' };
import written from '../references/length-written.json' with { type: 'json' };

describe('reading', () => {
  test.each(written.rows)('$text is $in in', ({ text, in: value }) => {
    expect(inches(readLength(text))).toBeCloseTo(value, 9);
  });

  test.each(refused.rows)('$text is refused: $refused', ({ text, refused, todo }) => {
    const answer = tryLength(text);
    expect(answer).toMatchObject({ refused });
    if (typeof answer === 'number') return;
    const words = lengthRefusal(answer);
    expect(words.message).not.toContain('{');
    expect(words.todo).toContain(todo ?? '');
    expect(words.todo).not.toContain('{');
  });

  test('what is offered in place of a refused text is read', () => {
    const offers = refused.rows.flatMap(({ text }) => {
      const answer = tryLength(text);
      return typeof answer === 'number'
        ? []
        : [...lengthRefusal(answer).todo.matchAll(/\d+'-\d+(?: \d+\/\d+)?"/g)];
    });
    expect(offers.length).toBeGreaterThan(20);
    for (const [offer] of offers) expect(tryLength(offer)).toBeTypeOf('number');
  });

  test('a number is inches, to the nearest tick', () => {
    expect(readLength(147.5)).toBe(1_198_880);
    expect(readLength(0)).toBe(0);
    expect(Object.is(readLength(-0), 0)).toBe(true);
    expect(readLength(0.0001)).toBe(1);
    expect(readLength(1 / 16_256)).toBe(1); // half a tick goes away from zero
    expect(readLength(0.999 / 16_256)).toBe(0);
  });

  test.each([-1, -0.00001, Number.NaN, Number.POSITIVE_INFINITY, 1e21, 2e9 * 1.5])(
    'the number %d is refused',
    (n) => {
      expect(() => readLength(n)).toThrow(GivenError);
    },
  );

  test('a text finer than a tick goes to the nearest one, halves away from zero', () => {
    expect(readLength('0.01 mm')).toBe(3); // 3.2 ticks
    expect(readLength('0.0140625 mm')).toBe(5); // 4.5 ticks
    expect(readLength('0.0140624 mm')).toBe(4);
    expect(readLength('-0.0140625 mm', { signed: true })).toBe(-5);
  });

  test('the refusal is a fault with what was given and what to write', () => {
    const fault = (() => {
      try {
        readLength(`4' 14"`);
      } catch (cause) {
        return cause instanceof GivenError ? cause.faults : [];
      }
      return [];
    })();
    expect(fault).toEqual([
      { field: '', value: `4' 14"`, message: 'beside feet the inches stay below 12', todo: `write 5'-2"` },
    ]);
  });

  test('below zero only where it is asked for', () => {
    expect(readLength(`-4'-3 1/2"`, { signed: true })).toBe(-readLength(`4'-3 1/2"`));
    expect(readLength(-2, { signed: true })).toBe(-16_256);
    expect(tryLength(`4' -3"`, { signed: true })).toMatchObject({ refused: 'minus' });
  });

  test('a very long text is refused at once', () => {
    expect(tryLength('1'.repeat(100_000))).toMatchObject({ refused: 'tooLong' });
    expect(tryLength(' '.repeat(100_000))).toMatchObject({ refused: 'empty' });
  });
});

describe('writing and rounding', () => {
  test.each(cases.filter((c) => c.topic === 'feet_inch_fraction'))(
    '$id: $source',
    ({ given, expect: want }) => {
      const length = fromInches(given.length_in ?? Number.NaN);
      const part = given.round_to_denominator as Denominator;
      expect(inches(roundTo(length, part))).toBe(want.rounded_in);
      const fraction = want.numerator === 0 ? '' : ` ${want.numerator}/${want.denominator}`;
      expect(formatLength(length, part)).toBe(`${want.feet}'-${want.inches}${fraction}"`);
    },
  );

  test.each(cases.filter((c) => c.topic === 'feet_inch_parse'))('$id: $source', ({ given, expect: want }) => {
    const length = readLength(`${given.feet}'-${given.inches} ${given.numerator}/${given.denominator}"`);
    expect(inches(length)).toBe(want.length_in);
    expect(millimetres(length)).toBeCloseTo(want.length_mm ?? Number.NaN, 9);
  });

  test.each([
    // in, part, text: by hand
    [147.5, 16, `12'-3 1/2"`],
    [6, 16, `0'-6"`],
    [0, 16, `0'-0"`],
    [11.96875, 16, `1'-0"`], // 31/32 carries through inch and foot
    [11.96875, 32, `0'-11 31/32"`],
    [11.9375, 16, `0'-11 15/16"`],
    [0.03125, 16, `0'-0 1/16"`], // 1/32 is half of 1/16: away from zero
    [0.0311, 16, `0'-0"`],
    [-0.03125, 16, `-0'-0 1/16"`],
    [-0.0311, 16, `0'-0"`],
    [-51.5, 16, `-4'-3 1/2"`],
    [0.25, 2, `0'-0 1/2"`],
    [0.2499, 2, `0'-0"`],
    [5.328125, 64, `0'-5 21/64"`],
  ] as const)('%d in to 1/%d is %s', (value, part, text) => {
    expect(formatLength(fromInches(value), part)).toBe(text);
  });
});

const lengthIn = (denominator: Denominator) =>
  fc.nat({ max: 500 * 12 * denominator }).map((n) => ticks((n * 8128) / denominator));
const anyLength = fc.nat({ max: 2 ** 40 }).map(ticks);

describe('laws', () => {
  test.each([16, 64] as const)('reading what was written gives the length back (1/%d in)', (part) => {
    fc.assert(
      fc.property(lengthIn(part), (length) => {
        expect(readLength(formatLength(length, part))).toBe(length);
        expect(readLength(formatLength(ticks(-length), part), { signed: true })).toBe(
          length === 0 ? 0 : -length,
        );
      }),
    );
  });

  test('every written form of a length reads as that length', () => {
    fc.assert(
      fc.property(fc.nat(400), fc.nat(11), fc.nat(63), (feet, inch, n) => {
        const length = ticks((feet * 12 + inch) * 8128 + n * 127);
        const frac = n === 0 ? '' : `${n}/64`;
        const beside = n === 0 ? '' : ` ${frac}`;
        const forms = [
          `${feet}'-${inch}${beside}"`,
          `${feet}' ${inch}${beside}"`,
          `${feet}'${inch}${beside}`,
          `${feet} ft ${inch}${beside} in`,
          `${feet}feet ${inch}${beside.replace(' ', '-')}inches`,
          `${feet}′ ${inch}${beside}″`,
          `${feet}-${inch}${beside}`,
          `${feet * 12 + inch}${beside}`,
          `${feet * 12 + inch}${beside.replace(' ', '-')}"`,
          `${(feet * 12 + inch + n / 64).toFixed(6)}`,
          `${(feet * 12 + inch + n / 64) * 25.4} mm`,
          ...(n % 4 === 0 ? [`${feet}-${inch}-${n / 4}`] : []),
        ];
        for (const form of forms) expect([form, tryLength(form)]).toEqual([form, length]);
      }),
    );
  });

  test('adding is exact, and taking away undoes it', () => {
    fc.assert(
      fc.property(fc.array(lengthIn(64), { minLength: 1, maxLength: 40 }), (lengths) => {
        const sum = lengths.reduce((a, b) => ticks(a + b));
        const sixtyFourths = lengths.reduce((a, b) => a + b / 127, 0);
        expect(sum).toBe(sixtyFourths * 127);
        expect(lengths.reduce((left, b) => ticks(left - b), sum)).toBe(0);
      }),
    );
  });

  test('feet and metric agree: whole millimetres and inches are both exact', () => {
    fc.assert(
      fc.property(fc.nat(10_000_000), (mm) => {
        expect(millimetres(readLength(`${mm} mm`))).toBe(mm);
        expect(readLength(`${mm * 127} mm`)).toBe(readLength(`${mm * 5}`));
        expect(readLength(`${mm} mm`)).toBe(readLength(`${mm / 1000} m`));
        expect(readLength(`${mm} mm`)).toBe(readLength(`${mm / 10} cm`));
      }),
    );
  });

  test('rounding is nearest, and keeps what is on the grid', () => {
    fc.assert(
      fc.property(anyLength, fc.constantFrom(...DENOMINATORS), (length, part) => {
        const rounded = roundTo(length, part);
        const grain = 8128 / part;
        expect(rounded % grain).toBe(0);
        expect(Math.abs(rounded - length) * 2).toBeLessThanOrEqual(grain);
        expect(roundTo(rounded, part)).toBe(rounded);
        expect(roundTo(ticks(-length), part)).toBe(rounded === 0 ? 0 : -rounded);
      }),
    );
  });

  test('inches below 12 and the fraction below 1, reduced, in whatever is written', () => {
    fc.assert(
      fc.property(anyLength, fc.constantFrom(...DENOMINATORS), (length, part) => {
        const [, inch, top = 0, bottom = 1] =
          /^\d+'-(\d+)(?: (\d+)\/(\d+))?"$/.exec(formatLength(length, part)) ?? [];
        expect(Number(inch)).toBeLessThan(12);
        expect(Number(top)).toBeLessThan(Number(bottom));
        expect(top === 0 || Number(top) % 2 === 1).toBe(true);
        expect(part % Number(bottom)).toBe(0);
      }),
    );
  });

  test('any text is read or refused, never thrown', () => {
    const signs = fc.constantFrom(...`0123456789 '"-/.½,−ftinm`.split(''));
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.string({ unit: signs })), (text) => {
        const answer = tryLength(text);
        expect(
          typeof answer === 'number'
            ? Number.isSafeInteger(answer) && answer >= 0
            : answer.refused in LENGTH_REFUSALS,
        ).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });
});

test('no other kind of number passes for ticks', () => {
  // @ts-expect-error a plain number has no brand
  expect(inches(8128)).toBe(1);
  expect(() => ticks(0.5)).toThrow(RangeError);
});
