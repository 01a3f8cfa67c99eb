import { describe, expect, test } from 'vitest';
import { speaker } from '../../src/schema/words.ts';
import { CHANGE_TOPICS, changesBetween, EDITIONS } from '../../src/trade/editions.ts';
import { placesOf } from '../../src/trade/say.ts';
import { library, tables } from './tables.ts';

const { changes } = tables;
const rows = (...editions: [2017 | 2020 | 2023, 2017 | 2020 | 2023]) =>
  changesBetween(changes, editions).map((c) => [c.edition, c.topic, c.was, c.now]);

/** NFPA 70-2020 against -2017 (2017 from memory and question pages), as far as it bears on channel tray. */
const of2020 = [
  [2020, 'groundpath', '392.60(A)', '392.60(B)'],
  [2020, 'expansion', null, '392.44'],
  [2020, 'general', null, '392.30(B)(4)'],
  [2020, 'transition', '392.30(B)(3)', '392.30(B)(3)'],
  [2020, 'ampacity', '310.15(B)(3)(a)', '310.15(C)(1)'],
  [2020, 'general', null, '392.46'],
];
/** NFPA 70-2023 against -2020. */
const of2023 = [
  [2023, 'fill', '392.22(A)', '392.22(A)(1)'],
  [2023, 'radius', '300.34', '305.5'],
  [2023, 'radius', 'Article 727', 'Article 335'],
  [2023, 'groundpath', '250.118(11)', '250.118(A)(11)'],
  [2023, 'general', '392.2', 'Article 100'],
  [2023, 'general', '392.56', '392.56'],
  [2023, 'general', 'Article 725', 'Articles 722 and 725'],
];

describe('what changed from edition to edition', () => {
  test('from one to the next, over both, and the other way round', () => {
    expect(rows(2017, 2020)).toEqual(of2020);
    expect(rows(2020, 2023)).toEqual(of2023);
    expect(rows(2017, 2023)).toEqual([...of2020, ...of2023]);
    expect(rows(2023, 2017)).toEqual(rows(2017, 2023));
  });

  test('nothing within one edition', () => {
    for (const edition of EDITIONS) expect(rows(edition, edition)).toEqual([]);
  });

  test('one topic alone', () => {
    for (const topic of CHANGE_TOPICS)
      expect(changesBetween(changes, [2017, 2023], topic)).toEqual(
        changesBetween(changes, [2017, 2023]).filter((c) => c.topic === topic),
      );
    expect(changesBetween(changes, [2017, 2023], 'radius').map((c) => c.now)).toEqual([
      '305.5',
      'Article 335',
    ]);
    expect(changesBetween(changes, [2017, 2023], 'marking')).toEqual([]);
  });

  test('each is said in words, with every place filled, and cites the edition that brought it', () => {
    const words = library.words.get('en') ?? new Map<string, string>();
    for (const { what, edition, was, source } of changes) {
      const said = speaker(words)(what);
      expect(said).toContain(String(edition));
      expect(source.edition).toBe(String(edition));
      if (placesOf(words.get(what.say) ?? '').includes('was')) expect(was).not.toBeNull();
    }
  });

  test('no section that the calculators cite by edition changes without being told', () => {
    const told = changes.map((c) => [c.was, c.now].map((t) => t?.replace('Article ', '')));
    const moved = [
      tables.groundpath.table,
      tables.ampacity.table,
      ...Object.values(tables.radius).flatMap((r) => (r.section === null ? [] : [r.section])),
    ].flatMap((by) => [
      [by[2017], by[2020]],
      [by[2020], by[2023]],
    ]);
    for (const [was = '', now = ''] of moved.filter(([a, b]) => a !== b))
      expect(told.some(([from, to]) => was.startsWith(from ?? '-') && now.startsWith(to ?? '-'))).toBe(true);
  });
});
