/** What a trainer has chosen, and the sheet that it comes to; what can be narrowed, and in which words. */
import { describe, expect, test } from 'vitest';
import type { Family } from '../../src/practice/family.ts';
import type { Narrowing } from '../../src/practice/narrow.ts';
import { narrowTroubles } from '../../src/practice/narrowTried.ts';
import { type Sheet, sheetDraws } from '../../src/practice/sheet.ts';
import { readSheetForm, sheetForm } from '../../src/practice/sheetForm.ts';
import {
  type Draft,
  drawsOf,
  familiesOf,
  newDraft,
  rulesFor,
  sheetOf,
  withPick,
  withTask,
} from '../../src/site/making/draft.ts';
import { draftOf, fitted } from '../../src/site/making/kept.ts';
import { hasNarrowables, type Narrowable, narrowables, withNarrow } from '../../src/site/making/narrowing.ts';
import { inches, readLength } from '../../src/trade/length.ts';
import { families, family, language, practice } from '../practice/means.ts';

const all = [...families.values()];
const title = { en: 'Sheet 7' };
const tasks = (draft: Draft, ...names: readonly string[]) =>
  names.reduce((now, task) => withTask(now, task, all), draft);
const picks = (draft: Draft, of: Readonly<Record<string, number>>) =>
  Object.entries(of).reduce((now, [id, draws]) => withPick(now, id, { draws }), draft);
const made = (draft: Draft) => {
  const one = sheetOf(draft, all, title);
  if (!('sheet' in one)) throw new Error(one.lacks);
  return one.sheet;
};
const undrawable = (sheet: Pick<Sheet, 'id' | 'families'>) =>
  narrowTroubles(sheet, practice).flatMap(({ trouble, family: id }) =>
    trouble === 'undrawable' ? [id] : [],
  );
const start = tasks(newDraft(7), 'T05', 'T13');

describe('the sheet of a draft', () => {
  test('its exercises stand in the order of the site, and every one of them counts', () => {
    const sheet = made(picks(start, { 'read-feet-inch': 2, 'fill-check': 3, 'cut-with-insertion': 4 }));
    const order = familiesOf(start, all).map(({ id }) => id);
    const ids = sheet.families.map(({ family: id }) => id);
    expect(ids).toEqual(order.filter((id) => ids.includes(id)));
    expect(sheet).toMatchObject({
      id: 'sheet-7',
      number: 7,
      tasks: ['T05', 'T13'],
      rule: { need: 9, of: 9 },
    });
    expect(drawsOf(sheet)).toBe(9);
    expect(readSheetForm(JSON.parse(JSON.stringify(sheetForm(sheet))), practice)).toEqual(sheet);
  });

  test('a task of which nothing is on it is not the sheet’s', () => {
    expect(made(picks(start, { 'fill-check': 1 })).tasks).toEqual(['T13']);
  });

  test('what it lacks', () => {
    expect(sheetOf(newDraft(7), all, title)).toEqual({ lacks: 'task' });
    expect(sheetOf(start, all, title)).toEqual({ lacks: 'exercise' });
    expect(sheetOf(picks(start, { 'fill-check': 0 }), all, title)).toEqual({ lacks: 'exercise' });
    // An exercise of a task that is not chosen, or that this release has not, is none.
    expect(sheetOf(picks(start, { 'hot-work': 2, 'welding-of-tray': 3 }), all, title)).toEqual({
      lacks: 'exercise',
    });
  });

  test('safe work is no task: its exercises come with a task, or are refused', () => {
    const only: Family = { ...family('fill-check'), id: 'gloves', tasks: ['W1'] };
    const both: Family = { ...family('fill-check'), id: 'saw', tasks: ['W1', 'T06'] };
    const chosen = withTask(newDraft(7), 'W1', [only, both]);
    expect(sheetOf(picks(chosen, { gloves: 1 }), [only, both], title)).toEqual({ lacks: 'work' });
    expect(sheetOf(picks(chosen, { gloves: 1, saw: 1 }), [only, both], title)).toMatchObject({
      sheet: { tasks: ['T06'] },
    });
  });

  test('a task taken off takes its exercises along, those of another task stay', () => {
    const draft = picks(start, { 'read-feet-inch': 2, 'fill-check': 3 });
    expect(Object.keys(withTask(draft, 'T13', all).picks)).toEqual(['read-feet-inch']);
  });

  test('a rule that says something statistical only from 14 draws on', () => {
    expect([rulesFor(13), rulesFor(14)].map((of) => of.length)).toEqual([1, 3]);
    const wald = { ...start, rule: 'sequential' as const };
    expect(made(picks(wald, { 'fill-check': 13 })).rule).toEqual({ need: 13, of: 13 });
    expect(made(picks(wald, { 'fill-check': 14 })).rule).toEqual({
      sequential: { ...start.wald, ceiling: 14 },
    });
    expect(made(picks({ ...start, rule: 'bound' }, { 'fill-check': 14 })).rule).toEqual({
      bound: start.bound,
    });
  });
});

describe('a draft that was kept', () => {
  test('comes back as it was', () => {
    const draft = withPick(start, 'cut-with-insertion', {
      draws: 4,
      narrow: { width: { choice: ['card-4'] } },
    });
    expect(draftOf(JSON.parse(JSON.stringify(draft)), 99)).toEqual(draft);
  });
  test.each([
    ['nothing', null],
    ['a text', 'sheet'],
    [
      'another thing',
      { tasks: 3, picks: [], rule: 'mostly', wald: { p0: 0.5 }, number: -2, benches: 'many' },
    ],
  ])('%s is begun anew', (_, kept) => {
    expect(draftOf(kept, 99)).toEqual(newDraft(99));
  });
  test('an exercise without draws or narrowing is left out, the others stay', () => {
    const kept = { ...start, picks: { 'fill-check': { draws: 2, narrow: {} }, 'read-tape': 3 } };
    expect(Object.keys(draftOf(kept, 99).picks)).toEqual(['fill-check']);
  });
});

describe('what lay kept and narrows nothing', () => {
  const kept = (narrow: unknown) => ({ ...start, picks: { 'cut-with-insertion': { draws: 2, narrow } } });
  test.each([
    ['a number', { width: 5 }],
    ['no object', { width: null }],
    ['words that are none', { width: { choice: [4] } }],
    ['a range without a step', { distance: { length: { from: 1, to: 2 } } }],
    ['a field too many', { distance: { whole: { from: 1, to: 2, also: 3 } } }],
  ])('%s is dropped, the draws stay', (_, narrow) => {
    const draft = draftOf(JSON.parse(JSON.stringify(kept(narrow))), 99);
    expect(draft.picks).toEqual({ 'cut-with-insertion': { draws: 2, narrow: {} } });
    expect(() =>
      narrowables(family('cut-with-insertion'), draft.picks['cut-with-insertion']?.narrow ?? {}, means),
    ).not.toThrow();
  });
  test('what another release narrowed is dropped once the exercises are there', () => {
    const draft = draftOf(kept({ width: { choice: ['card-40'] } }), 99);
    expect(fitted(draft, families).picks).toEqual({ 'cut-with-insertion': { draws: 2, narrow: {} } });
    const sound = draftOf(kept({ width: { choice: ['card-4'] } }), 99);
    expect(fitted(sound, families)).toBe(sound);
    const gone = { ...sound, picks: { 'welding-of-tray': { draws: 2, narrow: {} } } };
    expect(fitted(gone, families)).toBe(gone);
  });
});

test('so many draws as a sheet may have, and one exercise more', () => {
  const ids = familiesOf(start, all).map(({ id }) => id);
  expect(ids.length).toBeGreaterThan(10);
  const ten = Object.fromEntries(ids.slice(0, 10).map((id) => [id, 20]));
  expect(drawsOf(made(picks(start, ten)))).toBe(200);
  expect(sheetOf(picks(start, { ...ten, [ids[10] ?? '']: 1 }), all, title)).toEqual({ lacks: 'fewer' });
});

test('an exercise of which one reading alone is left cannot be drawn, whichever its place', () => {
  const at = readLength(`2'-0 1/16"`);
  const narrow = { reading: { length: { from: at, to: at, step: readLength('1/16') } } };
  const parts = [
    { family: 'fill-check', draws: 3 },
    { family: 'read-tape', draws: 2, narrow },
  ];
  expect(undrawable({ id: 'sheet-7', families: parts })).toEqual(['read-tape']);
});

describe('benches that get the same of a narrowed exercise', () => {
  // One distance, one width, two sleeves: nothing that is told differs any more.
  const sixteenth = readLength('1/16');
  const at = (from: string, to: string) => ({
    length: { from: readLength(from), to: readLength(to), step: sixteenth },
  });
  const sleeves = {
    width: { choice: ['card-4'] },
    measured: { choice: ['edges'] },
    first: { choice: ['sleeve'] },
    second: { choice: ['sleeve'] },
  };
  const sheetOfOne = (distance: object, draws: number) => ({
    id: 'sheet-7',
    families: [
      { family: 'fill-check', draws: 2 },
      { family: 'cut-with-insertion', draws, narrow: { ...sleeves, distance } as Narrowing },
    ],
  });
  const one = sheetOfOne(at(`6'`, `6'`), 2);

  test('are found, whichever the place of the exercise', () => {
    const told = [1, 2].map((bench) =>
      sheetDraws({ ...made(picks(start, { 'fill-check': 1 })), ...one }, bench, practice).map(
        ({ draw }) => draw.facts['distance'],
      ),
    );
    expect(told[0]).toEqual(told[1]);
    expect(narrowTroubles(one, practice)).toEqual([
      { at: 1, family: 'cut-with-insertion', trouble: 'alike', benches: [1, 2] },
    ]);
  });

  test('one bench is like no other, two are', () => {
    expect(narrowTroubles(one, practice, 1)).toEqual([]);
    expect(narrowTroubles(one, practice, 2)).toHaveLength(1);
  });

  test('six feet of sixteenths are enough', () => {
    expect(narrowTroubles(sheetOfOne(at(`6'`, `12'`), 1), practice)).toEqual([]);
  });

  test('benches are alike only when every place of the exercise is', () => {
    // Three distances: of five benches two get the same first draw, and each another row of eight.
    const [first, row] = [1, 8].map((draws) =>
      narrowTroubles(sheetOfOne(at(`6'`, `6'-0 1/8"`), draws), practice),
    );
    expect(first).toMatchObject([{ trouble: 'alike' }]);
    expect(row).toEqual([]);
  });

  test('an exercise as it is drawn is not tried', () => {
    const whole = { id: 'sheet-7', families: [{ family: 'splice-fasteners', draws: 1 }] };
    expect(narrowTroubles(whole, practice)).toEqual([]);
  });

  test('what the content lacks is told apart from what narrowing does', () => {
    const { width } = sleeves;
    const bare = { families, world: { ...practice.world, catalogue: new Map() } };
    const sheet = {
      id: 'sheet-7',
      families: [{ family: 'cut-with-insertion', draws: 1, narrow: { width } }],
    };
    expect(narrowTroubles(sheet, bare)).toMatchObject([{ trouble: 'undrawable', bench: 1, none: 'content' }]);
  });
});

const means = {
  lang: 'en',
  world: practice.world,
  width: 'Width',
  unitOf: (unit: string) => language.speak({ say: `unit.${unit}` }),
};
const of = (id: string, name: string, narrow = {}): Narrowable => {
  const one = narrowables(family(id), narrow, means).find((other) => other.name === name);
  if (one === undefined) throw new Error(`${id} does not narrow ${name}`);
  return one;
};

describe('what can be narrowed', () => {
  test('words with the numbers that go with them', () => {
    // The practice catalogue's sleeve: 10 1/8 in long, 5 in from each side (training values).
    const first = of('cut-with-insertion', 'first');
    expect(first.kind === 'words' && first.words.map(({ text }) => text)).toEqual([
      'a sleeve splice 10 1/8" long, made for 5" from each side',
      'a plate splice 6" long; the channel ends butt, and the tape goes to the end of the channel before it',
      'a socket on the ladder tray; 1 1/2" goes in, and the tape goes to its face',
      'it butts against the ladder tray, and the tape goes to that face',
    ]);
  });

  test('a width that its text alone tells has a name all the same', () => {
    const width = of('cut-with-insertion', 'width');
    expect(width.label).toBe('Width');
    expect(width.kind === 'words' && width.words.map(({ text }) => text)).toEqual(['2 in', '4 in', '6 in']);
  });

  test('a number that differs from draw to draw stays open', () => {
    const sheet = of('drop-load', 'sheet');
    expect(sheet.kind === 'words' && sheet.words[0]?.text).toBe('may carry … lb');
  });

  test('a range in whole feet with both ends of the family', () => {
    const distance = of('cut-with-insertion', 'distance');
    if (distance.kind !== 'range') throw new Error('no range');
    const texts = distance.stops.map(({ text }) => text);
    expect([texts[0], texts[1], texts.at(-1)]).toEqual([`2'-6"`, `3'-0"`, `17'-6"`]);
    expect(distance.stops.map(({ value }) => inches(value as never))).toContain(144);
    // 15 ft of sixteenths, both ends.
    expect(distance.left).toBe(15 * 12 * 16 + 1);
  });

  test('a share out of which a temperature is worked is none that is told', () => {
    expect(narrowables(family('gap-twice'), {}, means).map(({ name }) => name)).not.toContain('morning');
  });

  test('of every exercise: no id, no hole, and stops inside what it draws', () => {
    for (const one of all) {
      if (!hasNarrowables(one)) continue;
      for (const found of narrowables(one, {}, means)) {
        expect(found.label, `${one.id} ${found.name}`).not.toMatch(/[{}]/);
        if (found.kind === 'words')
          for (const { text } of found.words)
            expect(text, `${one.id} ${found.name}`).not.toMatch(/[{}]|card-/);
        else {
          const from = found.stops[0]?.value ?? 0;
          const next = withNarrow(one, {}, found.name, { from, to: from });
          expect(Object.keys(next), `${one.id} ${found.name}`).toEqual([found.name]);
        }
      }
    }
  });
});

describe('narrowing', () => {
  const cut = family('cut-with-insertion');
  const feet = (from: string, to: string) => ({ from: readLength(from), to: readLength(to) });

  test('less is kept, the whole of it is no narrowing, nothing at all is refused', () => {
    const narrow = withNarrow(cut, {}, 'distance', feet(`6'`, `12'`));
    expect(of('cut-with-insertion', 'distance', narrow)).toMatchObject({ left: 72 * 16 + 1 });
    expect(withNarrow(cut, narrow, 'distance', feet(`2'-6"`, `17'-6"`))).toEqual({});
    expect(withNarrow(cut, narrow, 'width', { choice: [] })).toEqual(narrow);
    expect(withNarrow(cut, narrow, 'width', { choice: ['card-4'] })).toEqual({
      ...narrow,
      width: { choice: ['card-4'] },
    });
  });

  test('every draw of the sheet keeps to it', () => {
    const narrow = withNarrow(cut, {}, 'distance', feet(`6'`, `7'`));
    const sheet = made(withPick(start, cut.id, { draws: 3, narrow }));
    expect(undrawable(sheet)).toEqual([]);
    for (let bench = 1; bench <= 10; bench++)
      for (const { draw } of sheetDraws(sheet, bench, practice)) {
        const fact = draw.facts['distance'];
        const at = fact?.kind === 'length' ? inches(fact.ticks) : Number.NaN;
        expect(at).toBeGreaterThanOrEqual(72);
        expect(at).toBeLessThanOrEqual(84);
      }
  });

  test('so narrow that nothing can be drawn of it is found', () => {
    // Both ends meet nothing that goes in, and the tape is held to the middle of sleeves that are not there.
    const narrow = {
      measured: { choice: ['middles'] },
      first: { choice: ['butt'] },
      second: { choice: ['free'] },
    };
    const sheet = made(withPick(start, cut.id, { draws: 1, narrow }));
    expect(undrawable(sheet)).toEqual([cut.id]);
  });
});
