import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fieldsOf, readBack, readFields, readText, sixteenths } from '../../src/site/tape.ts';
import { formatLength, readLength, roundTo, type Ticks, ticks } from '../../src/trade/length.ts';

const fields = (feet: string, inches: string, part = '0') => ({ feet, inches, part });
const text = (reading: ReturnType<typeof readFields>) =>
  reading.read === 'length' ? formatLength(reading.length, 64) : reading.read;

describe('three fields read a length', () => {
  test.each([
    // feet  inches  part     reads            checked by
    ['63', '7', '1/2', `63'-7 1/2"`, 'hand: the fields as they stand'],
    ['', '7', '0', `0'-7"`, 'hand: no feet are none'],
    ['4', '', '0', `4'-0"`, 'hand: no inches are none'],
    ['', '', '1/16', `0'-0 1/16"`, 'hand: the smallest mark alone'],
    ['0', '11', '15/16', `0'-11 15/16"`, 'hand: the last mark before a foot'],
    ['', '', '0', 'blank', 'hand: nothing is written'],
    [' 5 ', ' 3 ', '0', `5'-3"`, 'hand: spaces count for nothing'],
  ])('%s ft, %s in, %s reads %s (%s)', (feet, inches, part, want) => {
    expect(text(readFields(fields(feet, inches, part)))).toBe(want);
  });

  test('the list holds every sixteenth once, reduced', () => {
    expect(sixteenths).toHaveLength(16);
    expect(sixteenths.map((part) => readLength(part === '0' ? '0"' : `${part}"`))).toEqual(
      Array.from({ length: 16 }, (_, k) => k * 508), // 8128 ticks to the inch / 16
    );
  });
});

describe('what cannot be read says what to write', () => {
  test('11 inches hold, 12 are offered as a foot', () => {
    expect(text(readFields(fields('3', '11')))).toBe(`3'-11"`);
    expect(readFields(fields('3', '12', '1/2'))).toEqual({
      read: 'not',
      message: {
        field: 'inches',
        key: 'entry.inchesOver',
        values: { given: '12', split: `4'-0 1/2"` },
        offer: readLength(`4'-0 1/2"`),
      },
    });
  });

  test('inches alone may be many', () => {
    expect(text(readFields(fields('', '120', '1/4'), 'inches'))).toBe(`10'-0 1/4"`);
    expect(fieldsOf(readLength(`10'-0 1/4"`), 'inches')).toEqual(fields('', '120', '1/4'));
  });

  test.each([
    ['3', '7.5', 'inches', 'entry.inchesWhole'],
    ['3', '-1', 'inches', 'entry.inchesWhole'],
    ['3.5', '1', 'feet', 'entry.feetWhole'],
    ['three', '', 'feet', 'entry.notRead'],
    ['4 -3', '', 'feet', 'entry.notRead'],
    ['7,5', '', 'feet', 'entry.comma'],
  ])('%s ft %s in', (feet, inches, field, key) => {
    expect(readFields(fields(feet, inches))).toMatchObject({ read: 'not', message: { field, key } });
  });
});

describe('a whole text', () => {
  test.each([
    ['63-7-8', `63'-7 1/2"`, 'hand: 8 sixteenths'],
    [`63' 7 1/2"`, `63'-7 1/2"`, 'hand'],
    ['763.5', `63'-7 1/2"`, 'hand: 763.5 / 12'],
    ['5/64', `0'-0 5/64"`, 'hand: finer than a sixteenth is kept'],
    ['2350 mm', `7'-8 1/2"`, 'hand: 92.5197 in, to the nearest 1/16'],
  ])('%s reads %s (%s)', (given, want) => {
    expect(text(readText(given))).toBe(want);
    expect(text(readFields(fields(given, '')))).toBe(want);
  });

  test('too many inches beside feet are offered split', () => {
    expect(readText(`4' 14"`)).toMatchObject({
      read: 'not',
      message: { key: 'entry.splitText', offer: readLength(`5'-2"`) },
    });
  });
});

describe('the answer to a draw is written in feet and inches alone', () => {
  test.each([
    ['63-7-8', `63'-7 1/2"`, 'hand: 8 sixteenths'],
    [`63' 7 1/2"`, `63'-7 1/2"`, 'hand'],
    ['7 ft 0 5/16', `7'-0 5/16"`, 'hand'],
    [`7'`, `7'-0"`, 'hand'],
  ])('%s reads %s (%s)', (given, want) => {
    expect(text(readText(given, 'own'))).toBe(want);
    expect(text(readFields(fields(given, ''), 'feet', 'own'))).toBe(want);
  });

  test.each(['2142 mm', '2.142 m', '214.2 cm', '763.5', '147 1/2', '7.03 ft', `7.03'`, '12 x'])(
    '%s is not turned into them',
    (given) => {
      const refused = { read: 'not', message: { key: 'entry.ownOnly', field: 'feet' } };
      expect(readText(given, 'own')).toMatchObject(refused);
      const shown = readFields(fields(given, ''), 'feet', 'own');
      expect(shown).toMatchObject(refused);
      expect(shown).not.toHaveProperty('message.offer');
    },
  );

  test('a comma is still named', () => {
    expect(readText(`7' 3,5"`, 'own')).toMatchObject({ read: 'not', message: { key: 'entry.comma' } });
  });
});

test('fields and length agree both ways', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 500 * 12 * 64 }), (sixtyFourths) => {
      const length = ticks(sixtyFourths * 127);
      expect(readFields(fieldsOf(length))).toEqual({ read: 'length', length });
    }),
  );
});

test('a text is never read finer than the fields can show', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 30_000 }), (mm) => {
      const reading = readText(`${mm} mm`);
      if (reading.read !== 'length') throw new Error('a metric length is read');
      expect(roundTo(reading.length, 64)).toBe(reading.length);
      expect(Math.abs(reading.length - mm * 320)).toBeLessThanOrEqual(254); // half of 1/16 in
    }),
  );
});

test('reads back in feet, inches and millimetres', () => {
  // 63'-7 1/2" = 763.5 in × 25.4 = 19392.9 mm
  expect(readBack(readLength(`63'-7 1/2"`) as Ticks)).toEqual({
    feet: '63',
    inches: '7 1/2',
    part: '1/2',
    allInches: '763 1/2',
    mm: '19\u00a0393',
  });
});
