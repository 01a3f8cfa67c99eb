import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { check } from '../../src/schema/faults.ts';
import { above0, count } from '../../src/schema/fields.ts';
import { lengthAbove0, lengthFrom0 } from '../../src/schema/length.ts';

const shape = z.strictObject({
  name: z.string().min(1),
  width: lengthAbove0,
  gap: lengthFrom0.optional(),
  shift: lengthFrom0.optional(),
  areaIn2: above0.optional(),
  load: z.number().optional(),
  pieces: z.array(z.strictObject({ n: count, kind: z.enum(['long', 'short']) })).min(1),
  day: z.iso.date({ error: 'a day is written 2026-01-12' }).optional(),
  way: z
    .discriminatedUnion('to', [
      z.strictObject({ to: z.literal('left') }),
      z.strictObject({ to: z.literal('right'), by: above0 }),
    ])
    .optional(),
});
const good = { name: 'a', width: 4, pieces: [{ n: 1, kind: 'long' }] };
const faults = (given: unknown) => {
  const read = check(shape, given);
  return 'faults' in read ? read.faults : [];
};

describe('faults of a shape', () => {
  test('a good value has none, and its lengths are ticks', () => {
    expect(check(shape, { ...good, gap: '25.4 mm', shift: 0 })).toEqual({
      data: { ...good, width: 32_512, gap: 8128, shift: 0 },
    });
  });

  test('all at once, each with its path and what to write', () => {
    expect(
      faults({
        name: '',
        width: true,
        gap: -1,
        shift: `4' 14"`,
        areaIn2: 0,
        load: '3',
        pieces: [{ n: 1.5, kind: 'odd' }, 7],
        extra: [1],
      }),
    ).toEqual([
      { field: 'name', value: '', message: 'nothing is written here', todo: 'write a text' },
      {
        field: 'width',
        value: true,
        message: 'a length is a number of inches or a text',
        todo: expect.stringContaining('147.5'),
      },
      {
        field: 'gap',
        value: -1,
        message: 'a length below zero has no meaning here',
        todo: 'write it without the minus sign',
      },
      {
        field: 'shift',
        value: `4' 14"`,
        message: 'beside feet the inches stay below 12',
        todo: `write 5'-2"`,
      },
      { field: 'areaIn2', value: 0, message: 'this number is too small', todo: 'write a number above 0' },
      {
        field: 'load',
        value: '3',
        message: 'text stands where something else belongs',
        todo: 'write a number without quotation marks',
      },
      {
        field: 'pieces[0].n',
        value: 1.5,
        message: 'a number with decimals stands where something else belongs',
        todo: 'write a whole number',
      },
      {
        field: 'pieces[0].kind',
        value: 'odd',
        message: 'this is none of the values known here',
        todo: 'write one of "long", "short"',
      },
      {
        field: 'pieces[1]',
        value: 7,
        message: 'a number stands where something else belongs',
        todo: 'write an object { … }',
      },
      {
        field: 'extra',
        value: [1],
        message: 'there is no such field here',
        todo: 'take it out, or mend its spelling',
      },
    ]);
  });

  test.each([
    ['missing', { ...good, name: undefined }, 'name', 'this field is missing'],
    ['a missing length', { ...good, width: undefined }, 'width', 'this field is missing'],
    ['null', { ...good, gap: null }, 'gap', 'a length is a number of inches or a text'],
    ['an empty list', { ...good, pieces: [] }, 'pieces', 'this list is too short'],
    [
      'a number beyond all numbers',
      { ...good, areaIn2: JSON.parse('1e999') },
      'areaIn2',
      'this number is too large to be kept',
    ],
    [
      'a length beyond all lengths',
      { ...good, width: JSON.parse('1e999') },
      'width',
      'no length on a job is so long',
    ],
    ['a format with its own words', { ...good, day: 'today' }, 'day', 'a day is written 2026-01-12'],
    [
      'a kind that is not known',
      { ...good, way: { to: 'up' } },
      'way.to',
      'this is none of the kinds known here',
    ],
    [
      'a field of a known kind',
      { ...good, way: { to: 'right', by: 0 } },
      'way.by',
      'this number is too small',
    ],
    [
      'a name that objects have of their own',
      JSON.parse('{"name":"a","width":4,"pieces":[{"n":1,"kind":"long"}],"__proto__":1}'),
      '__proto__',
      'there is no such field here',
    ],
    ['not an object', 'text', '', 'text stands where something else belongs'],
  ])('%s', (_, given, field, message) => {
    expect(faults(given)).toEqual([
      { field, message, todo: expect.stringMatching(/^\w/), ...givenAt(given, field) },
    ]);
  });
});

/** The value a fault must repeat: none where the field was not given. */
function givenAt(given: unknown, field: string): { value?: unknown } {
  const value =
    field === ''
      ? given
      : field.split('.').reduce<unknown>((v, k) => (v as Record<string, unknown>)[k], given);
  return value === undefined ? {} : { value };
}
