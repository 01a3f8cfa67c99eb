import { describe, expect, test } from 'vitest';
import type { Fields, Written } from '../../../src/site/calculators/fields.ts';
import { formOf, readForm, restated } from '../../../src/site/calculators/form.ts';
import { usual } from '../../../src/site/settings.ts';
import { readLength } from '../../../src/trade/length.ts';

const fields = {
  run: { kind: 'length', scale: 'feet', from: 'above 0', label: 'sums.measure' },
  width: { kind: 'size', bounds: { above: 0 }, label: 'sums.measure' },
  angle: { kind: 'number', as: 'degrees', bounds: { above: 0, below: 90 }, label: 'sums.measure' },
  load: { kind: 'number', as: 'lbPerFt', bounds: { from: 0 }, label: 'sums.measure', optional: true },
  warm: { kind: 'temperature', label: 'expansionSum.low' },
  by: { kind: 'temperature', apart: true, label: 'expansionSum.movesBy', optional: true },
  count: { kind: 'count', from: 1, label: 'sums.measure' },
  kind: { kind: 'choice', label: 'sums.measure', options: [{ value: 'a' }, { value: 'b' }] },
  only: {
    kind: 'number',
    as: 'lb',
    bounds: { above: 0 },
    label: 'sums.measure',
    only: { field: 'kind', is: ['b'] },
  },
  rows: {
    kind: 'rows',
    label: 'sums.measure',
    row: 'sums.measure',
    add: 'sums.measure',
    takeOut: 'sums.measure',
    least: 0,
    fresh: {},
    fields: { volts: { kind: 'number', as: 'volts', bounds: { from: 0 }, label: 'sums.measure' } },
  },
} as const satisfies Fields;

const values = {
  run: readLength(`12'-3 1/2"`),
  width: 4.25,
  angle: 30,
  load: undefined,
  warm: -40,
  by: 18,
  count: 3,
  kind: 'a',
  only: undefined,
  rows: [{ volts: 480 }, { volts: 24 }],
};
const celsius = { ...usual, degrees: 'C' } as const;
const form = formOf(fields, values, usual);
const read = (part: Readonly<Record<string, Written>>, settings = usual) =>
  readForm(fields, { ...form, ...part }, settings);

test('a form reads the values it was made of; what is empty and may be is left out', () => {
  const { load: _, only: __, ...rest } = values;
  expect(readForm(fields, form, usual)).toEqual({ given: rest, messages: {} });
});

describe('what an entry reads', () => {
  test.each([
    ['width', '4 1/4', 4.25],
    ['width', '108 mm', 108 / 25.4],
    ['width', '.105', 0.105],
    ['load', '1 250.5', 1250.5],
    ['warm', '−40', -40],
    ['warm', '- 40', -40],
    ['count', '12', 12],
  ] as const)('%s %s', (name, text, want) => {
    expect(read({ [name]: text }).given?.[name]).toBeCloseTo(want, 4);
  });

  // 0 °C = 32 °F, 100 °C = 212 °F, −40 is the same in both; a difference of 10 °C is one of 18 °F (from memory).
  test.each([
    ['warm', '0', 32],
    ['warm', '100', 212],
    ['warm', '-40', -40],
    ['by', '10', 18],
  ] as const)('in °C, %s %s', (name, text, want) => {
    expect(read({ [name]: text }, celsius).given?.[name]).toBeCloseTo(want, 9);
  });
});

describe('what it refuses, and in which words', () => {
  test.each([
    ['width', '0', 'sums.above'],
    ['width', 'wide', 'sums.notSize'],
    ['width', '4,25', 'sums.comma'],
    ['angle', '0', 'sums.between'],
    ['angle', '90', 'sums.between'],
    ['angle', '45 degrees', 'sums.notNumber'],
    ['load', '-1', 'sums.from'],
    ['count', '1.5', 'sums.whole'],
    ['count', '0', 'sums.from'],
    ['warm', '', 'sums.blank'],
    ['angle', '1e3', 'sums.notNumber'],
  ] as const)('%s "%s": %s', (name, text, key) => {
    const { given, messages } = read({ [name]: text });
    expect(given).toBeUndefined();
    expect(Object.entries(messages).map(([field, message]) => [field, message.key])).toEqual([[name, key]]);
  });

  test('both sides of a limit', () => {
    expect(read({ angle: '89.999' }).given?.['angle']).toBe(89.999);
    expect(read({ load: '0' }).given?.['load']).toBe(0);
  });

  test('a length of nothing where there must be one', () => {
    const zero = { read: 'length', length: readLength('0') } as const;
    expect(read({ run: zero }).messages['run']?.key).toBe('sums.lengthAbove0');
  });

  test('a length that is missing stops the sum without a word: its own control says so', () => {
    expect(read({ run: { read: 'blank' } })).toEqual({ given: undefined, messages: {} });
  });

  test('in a row, by the number that the row keeps', () => {
    const rows = [{ id: 7, form: { volts: '24 V' } }];
    expect(Object.keys(read({ rows }).messages)).toEqual(['rows.7.volts']);
  });
});

test('what is not asked is not read, and refuses nothing', () => {
  expect(read({ only: 'nonsense' }).messages).toEqual({});
  expect(read({ kind: 'b', only: 'nonsense' }).messages['only']?.key).toBe('sums.notNumber');
});

test('a device of °C and another edition restates what stands, and nothing else', () => {
  const own = {
    ...fields,
    edition: {
      kind: 'choice',
      label: 'sums.edition',
      edition: true,
      options: [{ value: 2023 }, { value: 2017 }],
    },
  } as const satisfies Fields;
  const begun = formOf(own, { ...values, edition: 2023 }, usual);
  const to = { metric: 'none', degrees: 'C', edition: 2017 } as const;
  expect(restated(own, begun, usual, to)).toEqual({ ...begun, by: '10', edition: '2017' });
  expect(restated(own, { ...begun, warm: '212' }, usual, to)['warm']).toBe('100');
  expect(restated(own, { ...begun, warm: 'warm' }, usual, to)['warm']).toBe('warm');
  expect(restated(own, begun, usual, usual)).toEqual(begun);
});
