import { expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { paperPalette } from '../../src/drawing/palette.ts';
import type { Run } from '../../src/run/types.ts';
import { shownBy } from '../../src/schema/figure.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { drawFigure, readyProcedure } from '../../src/schema/readyProcedure.ts';
import { textsIn } from '../../src/schema/texts.ts';
import { speaker } from '../../src/schema/words.ts';
import { GivenError } from '../../src/trade/given.ts';
import { readLength } from '../../src/trade/length.ts';
import { placesOf } from '../../src/trade/say.ts';

const { library } = readLibrary(contentFiles());
const speak = speaker(library.words.get('en') ?? new Map());
const run = (name: string): Run => library.runs.get(name) as Run;

// Worked by hand from the runs: 10 1/8 in sleeve, 5 in into each side; channel ends 1/8 in apart.
test.each([
  ['sleeve-joint', 'splice', 'S1', { insertion: '5', opening: '1/8', splice: '10 1/8' }],
  ['plate-joint', 'splice', 'S1', { insertion: '0', opening: '0', splice: '6' }],
  // 16'-2 1/8" − 6'-0" − 10 1/8 in = 9'-4" from edge to edge; 5 in more at each end = 10'-2"
  ['between-two-sleeves', 'piece', '1-2', { insertion: '5', clear: `9'-4"`, cut: `10'-2"` }],
  // 30'-2 1/8" less a whole length and the 1/8 in opening = 10'-2"
  ['length-and-piece', 'strip', '1', { run: `30'-2 1/8"`, cut: `10'-2"` }],
] as const)('measures of %s as %s', (name, view, of, facts) => {
  expect(shownBy({ view, of }, run(name), library.catalogue).facts).toEqual(facts);
});

test('another run gives other measures: nothing is typed twice', () => {
  const joints = [
    {
      leg: '1',
      at: readLength(`13'`),
      kind: 'socketed',
      insertions: [readLength('4"'), readLength('4 1/2"')],
    },
  ] as const;
  const other: Run = { ...run('sleeve-joint'), joints };
  expect(shownBy({ view: 'splice', of: 'S1' }, other, library.catalogue).facts).toEqual({
    insertion: '4',
    opening: '1 5/8',
    splice: '10 1/8',
  });
});

test('a part that the run does not have is refused with those it has', () => {
  expect(() => shownBy({ view: 'piece', of: '1-9' }, run('sleeve-joint'), library.catalogue)).toThrow(
    GivenError,
  );
});

const procedures = [...library.procedures.keys()].map((key) => key.split('/') as [string, string]);

test('the three procedures are there in English', () => {
  expect(procedures).toEqual([
    ['en', 'T05'],
    ['en', 'T06'],
    ['en', 'T07'],
  ]);
});

test.each(procedures)(
  '%s %s: no place is left open, every balloon has its zone on every form',
  (lang, id) => {
    for (const form of readyProcedure(library, lang, id).forms) {
      expect(textsIn({ ...form, shown: undefined }).flatMap(([, text]) => placesOf(text))).toEqual([]);
      const numbers = form.steps.flatMap((s, i) => (s.shows === undefined ? [] : [String(i + 1)]));
      expect(numbers.length).toBeGreaterThan(2);
      for (const draft of ['phone', 'desk', 'paper'] as const) {
        const { zones } = drawFigure(form, { form: draft, palette: paperPalette, speak });
        expect(Object.keys(zones)).toEqual(numbers);
        for (const zone of Object.values(zones)) expect(zone).toMatch(/^[A-HJ-NP]\d+$/);
      }
    }
  },
);
