import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { paperPalette } from '../../src/drawing/palette.ts';
import { drawTape } from '../../src/drawing/tape.ts';
import { FORMS } from '../../src/drawing/types.ts';
import { readSvg } from '../../src/practice/figures/shapes.ts';
import { tapeReading } from '../../src/practice/figures/tape.ts';
import { countsIn, lengthsIn, lengthsOn } from '../../src/practice/figures/texts.ts';
import { figureFaults } from '../../src/practice/prove.ts';
import { showDraw } from '../../src/practice/show.ts';
import { fromInches, inches, type Ticks } from '../../src/trade/length.ts';
import { draw, how, language, world } from './means.ts';

/** What the proof finds when a figure of this draw is drawn otherwise. */
function foundIn(id: string, seed: string, change: (svg: string) => string): readonly string[] {
  const one = draw(id, seed);
  const shown = showDraw(one, world, language, how);
  const figures = shown.figures.map(({ svg, words }) => ({ svg: change(svg), words }));
  return figureFaults(one, { ...shown, figures }, { world, speak: language.speak });
}

describe('the reading of a tape', () => {
  const read = (svg: string) => tapeReading(readSvg(svg));
  const tape = (reading: Ticks, form: (typeof FORMS)[number] = 'desk') =>
    drawTape({ reading, printed: false }, { form, palette: paperPalette, speak: language.speak }).svg;

  test('any sixteenth up to 30 ft, on any form', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 30 * 12 * 16 }),
        fc.constantFrom(...FORMS),
        (sixteenths, form) => {
          const reading = read(tape(fromInches(sixteenths / 16), form));
          expect(reading).not.toBeNull();
          expect(Math.abs((reading ?? 0) - sixteenths / 16)).toBeLessThan(1 / 128);
        },
      ),
      { numRuns: 300 },
    );
  });

  // Whole inches 153 and 154 (12'-9", 12'-10") at 135.05 and 297.45, the pointer at 267.
  const svg = tape(fromInches(153 + 13 / 16));
  test.each([
    ['the pointer a sixteenth farther', '267 22Z', '277.15 22Z', 153 + 14 / 16],
    ['another foot', '>12 ft<', '>11 ft<', 141 + 13 / 16],
    ['numerals that do not go on', '>10<', '>11<', null],
    ['a quarter as long as a half', 'M175.65 26L175.65 52', 'M175.65 26L175.65 60', null],
    ['a mark left out', 'M185.8 26L185.8 39', '', null],
    ['a mark out of its place', 'M195.95 26L195.95 45', 'M197 26L197 45', null],
    ['no pointer', '267 22Z', '267 22', null],
  ])('%s', (_, from, to, reading) => {
    expect(svg).toContain(from);
    const found = read(svg.replace(from, to));
    if (reading === null) expect(found).toBeNull();
    else expect(found).toBeCloseTo(reading, 3);
  });
});

describe('a drawing that shows something else is found', () => {
  /** Family, what is drawn otherwise, from what to what; seed 1. */
  const changes: readonly (readonly [string, string, string | RegExp, string])[] = [
    ['read-tape', 'the pointer', '267 22Z', '277.15 22Z'],
    ['read-tape', 'its words', 'inch mark 9', 'inch mark 8'],
    ['find-faults', 'a support, by 3 in', '<rect x="246.12" y="127.5"', '<rect x="251.46" y="127.5"'],
    [
      'find-faults',
      'a support too few',
      '<rect x="246.12" y="127.5" width="9"',
      '<rect x="246.12" y="127.5" width="19"',
    ],
    ['find-faults', 'a splice, by 3 in', 'M525.64 87L525.64 135', 'M530.98 87L530.98 135'],
    ['find-faults', 'the place lettered at a support', `>A 1'-5&quot;<`, `>A 1'-6&quot;<`],
    ['find-faults', 'the place lettered at a splice', `>S1  4'-1&quot;<`, `>S1  4'-2&quot;<`],
    ['find-faults', 'the place that is said', 'B at 8 ft 2 in', 'B at 8 ft 3 in'],
    ['find-faults', 'the length lettered on a leg', `>15'-8 3/4&quot;<`, `>15'-8 1/2&quot;<`],
    ['find-faults', 'the length of a leg, by 2 in', 'translate(412.33 74)', 'translate(415.89 74)'],
    ['fill-check', 'a thicker cable', 'r="24.07"', 'r="27.56"'],
    ['fill-check', 'a cable too few', /<circle cx="98.27"[^>]*>/, ''],
    ['fill-check', 'a wider channel', '>4&quot;<', '>6&quot;<'],
    ['fill-check', 'another legend', 'C: 2 of 0.62 in<', 'C: 3 of 0.62 in<'],
    ['fill-check', 'other words', 'Cables B: 2 of 0.41', 'Cables B: 2 of 0.44'],
    [
      'job-wall-run',
      'a leg that goes another way',
      /(111\.4) 50\.03\) rotate\(210\)(.*?)(301\.35) 159\.69\) rotate\(30\)/,
      '$1 159.69) rotate(150)$2$3 50.03) rotate(-30)',
    ],
    ['job-wall-run', 'a leg as long as another', 'translate(301.35 159.69)', 'translate(219.57 112.49)'],
    ['job-wall-run', 'the length lettered on a leg', `>3'-2 1/2&quot;<`, `>3'-2 3/8&quot;<`],
    [
      'job-wall-run',
      'legs told in another order',
      '10 ft 5 3/4 in from the ladder',
      '14 ft 4 1/4 in from the ladder',
    ],
    ['offset-straight', 'a flatter slope', 'M144 152L256 40', 'M144 152L256 88'],
    ['offset-straight', 'another angle lettered', '>45°<', '>30°<'],
    ['holes-from-end', 'holes at the other end', /cx="(?:45.6|108)"/g, 'cx="400"'],
    ['holes-from-end', 'another hole in its words', '3/4&quot; and', '1&quot; and'],
    ['waste-side', 'the X on the piece', /M307\.6 (\d+)L335\.6 (\d+)/g, 'M144.4 $1L172.4 $2'],
    [
      'waste-side',
      'the blade beside the mark',
      /M227 47L227 113(.*?)M253 47L253 113/,
      'M240 47L240 113$1M266 47L266 113',
    ],
    ['pack-remnants', 'a shorter bar', 'width="319.89"', 'width="310"'],
    [
      'pack-remnants',
      'another length',
      `>Remnant 2, 8'-6 1/2&quot;: 8'-6 1/2&quot; left<`,
      `>Remnant 2, 8'-6&quot;: 8'-6&quot; left<`,
    ],
    ['cut-with-insertion', 'another insertion', '>5&quot;<', '>4&quot;<'],
    ['cut-with-insertion', 'another end', '>socket of tray<', '>butt to tray<'],
    ['reference-points', 'another end', '>free end<', '>socket of tray<'],
    ['splice-fasteners', 'more fasteners', '4 fasteners', '6 fasteners'],
    ['splice-fasteners', 'a wider channel', '>2&quot;<', '>4&quot;<'],
  ];
  // Seed 8 has a leg of 28'-10 1/2" broken over two rows, its last support behind the break; seed 104 one leg, broken.
  test.each([
    ['find-faults', '8', '<rect x="112.3"', '<rect x="119.3"'],
    ['find-faults', '8', '<rect x="161.9"', '<rect x="168.9"'],
    ['place-anchor', '104', '<rect x="246.83"', '<rect x="250.83"'],
  ])('%s %s, broken over two rows', (id, seed, from, to) => {
    expect(foundIn(id, seed, (svg) => svg)).toEqual([]);
    expect(foundIn(id, seed, (svg) => svg.replace(from, to))).toContainEqual(
      expect.stringMatching(/^no figure shows a leg of /),
    );
  });

  test.each(changes)('%s: %s', (id, _, from, to) => {
    expect(foundIn(id, '1', (svg) => svg)).toEqual([]);
    const changed = foundIn(id, '1', (svg) => {
      const other = svg.replace(from, to);
      expect(other).not.toBe(svg);
      return other;
    });
    expect(changed).toContainEqual(expect.stringMatching(/^no figure shows /));
  });
});

describe('lengths and numbers in a text', () => {
  test('each way of writing one', () => {
    expect(lengthsIn(`6 ft 5 1/2 in, 8'-7", 3', 2 1/4", 3/4", 0.71 in, 12 in; not 5 in² nor 4 ft`)).toEqual(
      [77.5, 103, 36, 2.25, 0.75, 0.71, 12].map((one) => inches(fromInches(one))),
    );
    expect(lengthsIn('to the nearest 1/32 in; 2 1/32 in')).toEqual([2 + 1 / 32]);
    expect(lengthsOn('14 ft, 1 ft 2 in')).toEqual([168, 14]);
    expect(countsIn(`4 fasteners in holes of 9/16 in, 2 1/2 in apart, S1`)).toEqual([4]);
  });
});
