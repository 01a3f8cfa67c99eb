import { expect, test } from 'vitest';
import { readLength } from '../../src/trade/length.ts';
import { inchNumber, shortLength } from '../../src/trade/shortLength.ts';

// Arithmetic; no document needed.
test.each([
  [`5"`, `5"`, '5'],
  [`1/8"`, `1/8"`, '1/8'],
  [`10 1/8"`, `10 1/8"`, '10 1/8'],
  [`11 31/32"`, `11 31/32"`, '11 31/32'],
  [`1'-0"`, `1'-0"`, '12'],
  [`1'-2 1/2"`, `1'-2 1/2"`, '14 1/2'],
  [`3'-7 1/64"`, `3'-7 1/64"`, '43 1/64'],
])('%s is lettered %s, and %s inches', (given, short, inch) => {
  expect(shortLength(readLength(given))).toBe(short);
  expect(inchNumber(readLength(given))).toBe(inch);
});

test('what no mark of the tape holds goes to sixteenths, or to the part that is asked for', () => {
  const length = readLength(0.03);
  expect(shortLength(length)).toBe(`0"`);
  expect(shortLength(length, 64)).toBe(`1/32"`);
});
