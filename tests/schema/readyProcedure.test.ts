import { expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { paperPalette } from '../../src/drawing/palette.ts';
import { inspect } from '../../src/run/inspect/inspect.ts';
import { resolveRun } from '../../src/run/resolve.ts';
import type { Run } from '../../src/run/types.ts';
import { TRADE_USUAL } from '../../src/run/usual.ts';
import { drawShown, type Shown, shownBy } from '../../src/schema/figure.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { drawFigure, readyProcedure } from '../../src/schema/readyProcedure.ts';
import { NOTHING_ADOPTED } from '../../src/schema/site.ts';
import { textsIn } from '../../src/schema/texts.ts';
import { runTablesOf } from '../../src/schema/tradeTables.ts';
import { speaker } from '../../src/schema/words.ts';
import { GivenError } from '../../src/trade/given.ts';
import { readLength } from '../../src/trade/length.ts';
import { placesOf } from '../../src/trade/say.ts';

const { library } = readLibrary(contentFiles());
const tables = runTablesOf(library.rules.values(), library.sources, NOTHING_ADOPTED);
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
  expect(shownBy({ view, of }, run(name), library.catalogue, TRADE_USUAL).facts).toEqual(facts);
});

// By the load table and the cables: (1.2 + 3 × 0.1) lb/ft over the drop of 13'-6" = 20.25 lb, said to the first decimal.
test('what a support carries is told with it', () => {
  const tell = shownBy({ view: 'support', of: 'C' }, run('drop-support'), library.catalogue, TRADE_USUAL);
  expect(tell.facts).toEqual({ load: '20.3' });
  // A guide of the same drop carries nothing.
  expect(
    shownBy({ view: 'support', of: 'D' }, run('drop-support'), library.catalogue, TRADE_USUAL).facts,
  ).toEqual({
    load: '0',
  });
});

test('runs of figures of supports and bonding show work that holds', () => {
  for (const name of ['flat-support', 'drop-support', 'bonded-places']) {
    const { findings } = inspect(
      resolveRun(run(name), library.catalogue, TRADE_USUAL),
      library.catalogue,
      tables,
    ).result;
    expect([name, findings]).toEqual([name, []]);
  }
});

test('what a form shows besides is drawn on every form', () => {
  const more = procedures.flatMap(([lang, id]) =>
    readyProcedure(library, lang, id).forms.flatMap(({ also, alsoShown }) =>
      also.map(({ view }, i) => [view, alsoShown[i]] as const),
    ),
  );
  expect(more.map(([view]) => view).sort()).toEqual(['bonding', 'exploded']);
  for (const [view, shown] of more) {
    for (const form of ['phone', 'desk', 'paper'] as const) {
      const drawing = drawShown(shown as Shown, [], { form, palette: paperPalette, speak });
      expect(drawing.view).toBe(view);
      expect(drawing.words.length).toBeGreaterThan(20);
    }
  }
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
  expect(shownBy({ view: 'splice', of: 'S1' }, other, library.catalogue, TRADE_USUAL).facts).toEqual({
    insertion: '4',
    opening: '1 5/8',
    splice: '10 1/8',
  });
});

test('a part that the run does not have is refused with those it has', () => {
  expect(() =>
    shownBy({ view: 'piece', of: '1-9' }, run('sleeve-joint'), library.catalogue, TRADE_USUAL),
  ).toThrow(GivenError);
});

const procedures = [...library.procedures.keys()].map((key) => key.split('/') as [string, string]);

test('the six procedures are there in English', () => {
  expect([...procedures].sort()).toEqual([
    ['en', 'T03'],
    ['en', 'T04'],
    ['en', 'T05'],
    ['en', 'T06'],
    ['en', 'T07'],
    ['en', 'T11'],
  ]);
});

test.each(procedures)(
  '%s %s: no place is left open, every balloon has its zone on every form',
  (lang, id) => {
    for (const form of readyProcedure(library, lang, id).forms) {
      expect(
        textsIn({ ...form, shown: undefined, alsoShown: undefined }).flatMap(([, text]) => placesOf(text)),
      ).toEqual([]);
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
