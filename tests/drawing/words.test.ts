import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { drawingSays } from '../../src/drawing/says.ts';
import { layStrip } from '../../src/drawing/strip.ts';
import { GivenError } from '../../src/trade/given.ts';
import { english } from './english.ts';
import { drawn, every, how, straight, subjects } from './subjects.ts';

const words = (name: string) => {
  const lay = subjects[name];
  if (lay === undefined) throw new Error(name);
  return drawn(lay, 'phone').words;
};

describe('the words say the measures', () => {
  test.each([
    [
      'strip of four pieces',
      [
        'Straight run drawn to scale, 63 ft 7 1/2 in long.',
        'Piece 1 is 20 ft.',
        'Piece 4 is 3 ft 7 1/8 in.',
        'Splice S2 is centred at 40 ft 0 3/16 in: 5 in and 5 in go in, gap 1/8 in.',
        'The saw takes 1/8 in and 16 ft 4 3/4 in of the last length is left.',
      ],
    ],
    [
      'sleeve, one end short',
      ['The first goes in 5 in, the second 3 15/16 in.', 'ends stand 1 3/16 in apart'],
    ],
    ['sleeve, ends touching', ['Inside, the ends touch.']],
    ['plate, 4 in, a gap', ['a plate 6 in long and 3 in wide', 'at 3/4 in, 2 1/4 in from each channel end']],
    [
      'sticks of one plan',
      [
        'The saw takes 1/8 in.',
        'Remnant 1, 5 ft 1 1/2 in long: 1-1 5 ft. 1 3/8 in left.',
        'Stick 1, 20 ft long: north 10 ft, 9 ft 11 7/8 in. Nothing left.',
        'Sticks 2 to 4, each 20 ft long: 2 of 8 ft 4 in, 3 in. 3 ft 0 5/8 in left of each.',
      ],
    ],
    ['tape at 63 ft 7 1/2 in', ['Tape at 63 ft 7 1/2 in.']],
    ['section of nine cables', ['4 in wide inside and 1 3/4 in deep', 'Cables A: 8 of 0.60 in']],
    ['section heaped over its legs', ['The cables stand above the legs.']],
  ])('%s', (name, wanted) => {
    for (const w of wanted) expect(words(name)).toContain(w);
  });

  test('a section that holds its cables does not say that they stand above it', () => {
    expect(words('section of nine cables')).not.toContain('above the legs');
  });
});

describe('what is asked is not told', () => {
  test.each(every.filter(([name]) => /^tape (at 7|just past|at a six)/.test(name)))(
    '%s: no reading',
    (_, form, lay) => {
      const { svg, words: said } = drawn(lay, form);
      const lettered = [...svg.matchAll(/>([^<]+)</g)].map((m) => m[1]);
      for (const text of [...lettered, said]) expect(text).not.toMatch(/\d\/\d|87/);
    },
  );

  test('a piece to be cut shows what the tape shows, and not its cut', () => {
    const { svg, words: said } = drawn(subjects['piece between sleeves'] ?? (() => never()), 'desk');
    // Hand: 135 1/2 in between centres, less 5 1/16 at each: 125 3/8; with 5 and 5: 135 3/8.
    expect(said).toContain('10 ft 5 3/8 in');
    for (const text of [svg, said]) {
      expect(text).not.toMatch(/11(&apos;|'|&#39;| ft)-? ?3 3\/8/);
    }
    expect(svg).toContain('cut to ?');
  });

  test('insertions are left out where they are what one must know', () => {
    const said = words('piece from a sleeve to its free end');
    expect(said).not.toMatch(/goes in|5 in\b/);
    const lay = subjects['piece from a sleeve to its free end'] ?? (() => never());
    expect(lay(how('desk')).plan.texts.some((t) => t.part === 'insertion')).toBe(false);
  });
});

function never(): never {
  throw new Error('no such subject');
}

test('ends of a piece are told apart by word and by line', () => {
  const parts = (name: string) => {
    const lay = subjects[name] ?? (() => never());
    return new Set(lay(how('desk')).plan.shapes.map((s) => s.part));
  };
  expect(parts('piece between sleeves').has('sleeve')).toBe(true);
  expect(parts('piece from a socket to a plate').has('socket')).toBe(true);
  expect(parts('piece from a socket to a plate').has('plate')).toBe(true);
  expect(parts('piece from a wall to an instrument').has('wall')).toBe(true);
  expect(parts('piece from a sleeve to its free end').has('free end')).toBe(true);
  expect(words('piece from a socket to a plate')).toMatch(
    /First end: socket of ladder tray.*Second end: S1, butt on a plate/,
  );
});

test('every key that the room says is listed and in the words, and none besides', () => {
  expect([...english.keys()].sort()).toEqual([...drawingSays].sort());
  const folder = new URL('../../src/drawing/', import.meta.url);
  const source = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((f) => f.endsWith('.ts') && !/says\.ts$/i.test(f) && !f.startsWith('details'))
    .map((f) => readFileSync(new URL(f, folder), 'utf8'))
    .join('\n');
  const named = new Set(drawingSays.map((k) => k.split('.')[1]));
  for (const [, key] of source.matchAll(/'((?:run)?drawing\.[A-Za-z0-9-]+)'/g)) {
    expect(drawingSays).toContain(key);
  }
  for (const [, key] of source.matchAll(/\b(?:say|note)\('([A-Za-z0-9-]+)'/g))
    expect([...named]).toContain(key);
});

test('a balloon at a part that is not there is a fault with the parts there are', () => {
  const given = { ...straight(`30'`), balloons: [{ number: '1', at: 's7' }] };
  try {
    layStrip(given, how('phone'));
  } catch (error) {
    expect(error instanceof GivenError && error.faults).toEqual([
      {
        field: 'balloons[0].at',
        value: 's7',
        message: 'the view shows no such part',
        todo: 'point at one of left-over piece-1 piece-2 start end s1 whole',
      },
    ]);
    return;
  }
  throw new Error('taken');
});
