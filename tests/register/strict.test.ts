import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { canonical, type Json } from '../../src/register/canonical.ts';
import { readCanonical, readJson } from '../../src/register/strictJson.ts';

/** What the plain reader says: white space before a text keeps it from the quick one, and changes nothing else. */
const plainly = (text: string): unknown => {
  try {
    return { value: readJson(` ${text}`) };
  } catch {
    return 'refused';
  }
};

const unlike: readonly string[] = [
  '{"a":1,"a":1}',
  '{"b":1,"a":2}',
  '{"a":1, "b":2}',
  '"\\ud800"',
  '{"\\ud800":1}',
  '9007199254740992',
  '-9007199254740992',
  '1e400',
  '1.0',
  '-0',
  '0.10',
  '1E5',
  '"\\u0041"',
  '"\\/"',
  '{"10":1,"9":2}',
  '{"9":1,"10":2}',
  `${'['.repeat(66)}${']'.repeat(66)}`,
  `${'{"a":'.repeat(66)}1${'}'.repeat(66)}`,
  '',
  '{',
  '\uFEFF1',
];

describe('the quick reader', () => {
  test.each(unlike)('takes nothing that is not canonical, or that the plain one refuses: %s', (text) => {
    expect(readCanonical(text)).toBeUndefined();
  });
  test('takes the canonical text of every value within bounds, and reads the same', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 5 }), (given) => {
        const text = JSON.stringify(given);
        const plain = plainly(text);
        const quick = readCanonical(text);
        if (quick !== undefined) {
          expect({ value: quick }).toEqual(plain);
          expect(canonical(quick)).toBe(text);
        }
        if (plain !== 'refused') {
          const value = (plain as { value: Json }).value;
          const form = canonical(value);
          // Numbers from 1e21 and names that are numbers are left to the plain reader.
          const left = /\de\+|"\d+":|\d{16}/.test(form);
          if (!left) expect(readCanonical(form)).toEqual(value);
          expect(readJson(form)).toEqual(value);
        }
      }),
      { numRuns: 500 },
    );
  });
  test('of a text changed by a sign the reader says what the plain one says', () => {
    const text = '{"a":[1,-2.5,"x"],"b":{"c":null,"d":true},"e":"1e5"}';
    fc.assert(
      fc.property(fc.nat({ max: text.length - 1 }), fc.integer({ min: 0x20, max: 0x7e }), (at, code) => {
        const changed = text.slice(0, at) + String.fromCharCode(code) + text.slice(at + 1);
        let read: unknown;
        try {
          read = { value: readJson(changed) };
        } catch {
          read = 'refused';
        }
        expect(read).toEqual(plainly(changed));
      }),
      { numRuns: 1000 },
    );
  });
});
