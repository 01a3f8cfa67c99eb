import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toHex, utf8 } from '../../src/register/bytes.ts';
import { canonical, type Json } from '../../src/register/canonical.ts';
import { addMonths, isDay, nextDay, readInstant, writeInstant } from '../../src/register/days.ts';
import { readJson } from '../../src/register/strictJson.ts';
import instants from '../references/register/rfc3339.json' with { type: 'json' };
import cases from '../references/register/rfc8785.json' with { type: 'json' };

interface Case {
  id: string;
  source: string;
  given: { op: string; json?: string; a?: string; b?: string; ieee754?: string };
  expect: unknown;
}

const ofOp = (...ops: string[]): Case[] => (cases as Case[]).filter((c) => ops.includes(c.given.op));
const read = (text: string | undefined): string => canonical(readJson(text ?? ''));

describe('canonical form', () => {
  test.each(ofOp('jcs'))('$id: $source', ({ given, expect: want }) => {
    expect(read(given.json)).toBe(want);
  });
  test.each(ofOp('jcsHex'))('$id: $source', ({ given, expect: want }) => {
    expect(toHex(utf8(read(given.json)))).toBe(want);
  });
  test.each(ofOp('jcsSame'))('$id: $source', ({ given, expect: want }) => {
    expect(read(given.a) === read(given.b)).toBe(want);
  });
  test.each(ofOp('jcsNumber'))('$id: $source', ({ given, expect: want }) => {
    const bits = new DataView(new ArrayBuffer(8));
    bits.setBigUint64(0, BigInt(`0x${given.ieee754}`));
    expect(canonical(bits.getFloat64(0))).toBe(want);
  });
  test.each(ofOp('jcsReject'))('$id: $given.json is $expect ($source)', ({ given, expect: want }) => {
    if (want === 'reject') expect(() => readJson(given.json ?? '')).toThrow();
    else expect(() => readJson(given.json ?? '')).not.toThrow();
  });
  test('no case of the references is left out', () => {
    expect(ofOp('jcs', 'jcsHex', 'jcsSame', 'jcsNumber', 'jcsReject')).toHaveLength(cases.length);
  });
  test.each([Number.NaN, Number.POSITIVE_INFINITY, '\ud800', { a: ['\udc00'] }])('refuses %j', (value) => {
    expect(() => canonical(value as Json)).toThrow(RangeError);
  });
});

describe('strict reader', () => {
  test.each([
    '',
    ' ',
    'nul',
    '[1,]',
    '{"a":1,}',
    '{a:1}',
    "{'a':1}",
    '[1 2]',
    '01',
    '+1',
    '.5',
    '1.',
    '1e',
    '"\u0001"',
    '"\\x"',
    '"\\u12"',
    '"a',
    '[',
    '{"a"}',
    '1 2',
    '\u00a01',
    '// x\n1',
    '-9007199254740992',
  ])('refuses %j', (text) => {
    expect(() => readJson(text)).toThrow();
  });
  test('deeper than 64 levels is refused, 64 are read', () => {
    const nest = (n: number) => '['.repeat(n) + ']'.repeat(n);
    expect(() => readJson(nest(65))).not.toThrow();
    expect(() => readJson(nest(66))).toThrow(/levels/);
    expect(() => readJson('['.repeat(200_000))).toThrow();
  });
  test('a name that means something to the engine is a name like any other', () => {
    const read = readJson('{"__proto__":1,"constructor":2}');
    expect(Object.keys(read as object)).toEqual(['__proto__', 'constructor']);
    expect(canonical(read)).toBe('{"__proto__":1,"constructor":2}');
  });
  test('reads back all that the canonical form writes, and writes it again alike', () => {
    fc.assert(
      fc.property(fc.jsonValue({ noUnicodeString: false }), (value) => {
        const written = tryCanonical(value as Json);
        fc.pre(written !== undefined && !/\d{16}/.test(written));
        expect(canonical(readJson(written as string))).toBe(written);
      }),
    );
  });
  test('agrees with the engine on what both read', () => {
    fc.assert(
      fc.property(fc.json(), (text) => {
        fc.pre(!/\d{16}/.test(text));
        let mine: Json | undefined;
        try {
          mine = readJson(text);
        } catch {
          return;
        }
        expect(JSON.stringify(mine)).toBe(JSON.stringify(JSON.parse(text)));
      }),
    );
  });
});

function tryCanonical(value: Json): string | undefined {
  try {
    return canonical(value);
  } catch {
    return undefined;
  }
}

describe('days and instants', () => {
  test.each(instants)('$id: $given.value ($source)', ({ given, expect: want }) => {
    const found = readInstant(given.value);
    expect(found === undefined ? 'reject' : writeInstant(found)).toBe(want);
  });
  test.each([
    // by hand; the second column from the calendar
    ['2026-01-31', 1, '2026-02-28'],
    ['2024-01-31', 1, '2024-02-29'],
    ['2026-03-31', 1, '2026-04-30'],
    ['2026-03-09', 12, '2027-03-09'],
    ['2024-02-29', 12, '2025-02-28'],
    ['2024-02-29', 48, '2028-02-29'],
    ['2026-12-31', 2, '2027-02-28'],
    ['2026-03-09', 0, '2026-03-09'],
    ['2026-11-30', 1, '2026-12-30'],
  ])('%s and %i months is %s', (day, months, want) => {
    expect(addMonths(day, months)).toBe(want);
  });
  test.each([
    ['2026-02-28', '2026-03-01'],
    ['2024-02-28', '2024-02-29'],
    ['2026-12-31', '2027-01-01'],
    ['2026-04-30', '2026-05-01'],
  ])('after %s comes %s', (day, want) => expect(nextDay(day)).toBe(want));
  test.each([
    '2026-02-29',
    '2100-02-29',
    '2026-13-01',
    '2026-00-10',
    '2026-4-1',
    '2026-04-31',
    '26-04-30',
    '',
  ])('%j is no day', (text) => expect(isDay(text)).toBe(false));
  test.each(['2024-02-29', '2000-02-29', '2026-12-31'])('%s is a day', (text) =>
    expect(isDay(text)).toBe(true),
  );
  test.each([
    '2026-03-09T12:00:60Z',
    '2026-03-09T12:00:00',
    '2026-03-09T12:00Z',
    '2026-03-09T25:00:00Z',
    '2026-03-09T12:00:00+24:00',
    '2026-03-09T12:00:00+0100',
    '2026-03-09 12:00:00Z',
    '2026-03-09T12:00:00.Z',
    '0000-01-01T00:00:00+00:01',
  ])('%j is no instant', (text) => expect(readInstant(text)).toBeUndefined());
});
