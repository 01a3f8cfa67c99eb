import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { firstWords, GENERATOR, Generator, seedFault } from '../../src/practice/generator.ts';
import { drawValue, drawValues } from '../../src/practice/parameters.ts';
import { type Ticks, ticks } from '../../src/trade/length.ts';

const page = readFileSync(new URL('../../src/practice/SEED.md', import.meta.url), 'utf8');
const take = (count: number, next: () => number) => Array.from({ length: count }, next).join(' ');

/** How often each of 0 … kinds − 1 came up. */
function tally(kinds: number, times: number, draw: (i: number) => number): readonly number[] {
  const counts = new Array<number>(kinds).fill(0);
  for (let i = 0; i < times; i++) {
    const drawn = draw(i);
    counts[drawn] = (counts[drawn] ?? 0) + 1;
  }
  return counts;
}

describe('SEED.md', () => {
  /** The rows of SEED.md §6 are the vectors; they are read from the page, so the two cannot part. */
  const lines = page.split('\n').map((line) => line.split('|').map((cell) => cell.trim()));
  const numbers = lines
    .filter((cells) => cells.length === 4 && /^\d+$/.test(cells[1] ?? ''))
    .map(([, at, value]) => [Number(at), Number(value)] as const);
  const rows = lines
    .filter((cells) => cells.length === 9 && /^`.+`$/.test(cells[1] ?? ''))
    .map(([, ...cells]) => cells.map((cell) => cell.replaceAll('`', ''))) as readonly string[][];

  test('has its vectors', () => {
    expect(numbers).toHaveLength(11);
    expect(rows.length).toBeGreaterThanOrEqual(5);
    expect(page).toContain(GENERATOR);
  });

  /**
   * Numbers 1 to 10: test values of xoshiro128++ for the words 1 2 3 4 (from memory); number 102401: php-src,
   * ext/random/tests/02_engine/user_xoshiro128plusplus.phpt (seen).
   */
  test('the stream of the words 1 2 3 4', () => {
    const generator = new Generator([1, 2, 3, 4]);
    const wanted = new Map(numbers);
    for (let n = 1; n <= 102_401; n++) {
      const drawn = generator.next();
      if (wanted.has(n)) expect([n, drawn]).toEqual([n, wanted.get(n)]);
    }
  });

  /** Worked a second time by a program in another language that followed the page. */
  test.each(rows)('%s, seed %s', (family = '', seed = '', words, first, tens, big, shuffled) => {
    const hex = (word: number) => word.toString(16).padStart(8, '0');
    expect(firstWords(family, seed).map(hex).join(' ')).toBe(words);
    const stream = () => Generator.of(family, seed);
    const [a, b, c] = [stream(), stream(), stream()];
    expect(take(4, () => a.next())).toBe(first);
    expect(take(8, () => b.below(10))).toBe(tens);
    expect(take(4, () => c.below(3_000_000_000))).toBe(big);
    expect(
      stream()
        .shuffle([...'ABCDEFGH'])
        .join(''),
    ).toBe(shuffled);
  });
});

describe('numbers without bias', () => {
  test('a number beyond the last whole multiple is drawn again', () => {
    // Half of 2³² and one more: nearly half of all numbers lie beyond its one whole multiple.
    const n = 2 ** 31 + 1;
    const [plain, held] = [Generator.of('f', 's'), Generator.of('f', 's')];
    const kept = Array.from({ length: 400 }, () => plain.next()).filter((v) => v < n);
    expect(kept.length).toBeGreaterThan(150);
    expect(kept.length).toBeLessThan(250);
    expect(kept.map(() => held.below(n))).toEqual(kept);
  });

  test('every value is as likely: within 5 standard deviations over 70 000 numbers', () => {
    const generator = Generator.of('f', 'counts');
    const counts = tally(7, 70_000, () => generator.below(7));
    // Standard deviation of a count: √(70 000 · 1/7 · 6/7) = 92.6.
    for (const count of counts) expect(Math.abs(count - 10_000)).toBeLessThan(463);
  });

  test('neighbouring seeds begin far apart: first numbers of 20 000 seeds fill ten parts evenly', () => {
    const counts = tally(10, 20_000, (i) => Generator.of('f', String(i)).below(10));
    // √(20 000 · 0.1 · 0.9) = 42.4.
    for (const count of counts) expect(Math.abs(count - 2000)).toBeLessThan(212);
  });

  test('a shuffle keeps every element', () => {
    fc.assert(
      fc.property(fc.string(), fc.array(fc.integer()), (seed, list) => {
        const shuffled = Generator.of('f', seed).shuffle(list);
        expect([...shuffled].sort()).toEqual([...list].sort());
      }),
    );
  });
});

describe('parameters', () => {
  const length = (from: number, to: number, step: number) => ({
    length: { from: ticks(from), to: ticks(to), step: ticks(step) },
  });

  test('keep to their range and step, ends included', () => {
    const seen = { length: new Set<number>(), whole: new Set<number>(), decimal: new Set<number>() };
    for (let i = 0; i < 500; i++) {
      const g = Generator.of('range', String(i));
      seen.length.add(drawValue(length(508, 2032, 508), g) as Ticks);
      seen.whole.add(drawValue({ whole: { from: 2, to: 5 } }, g) as number);
      seen.decimal.add(drawValue({ decimal: { from: 0.3, to: 0.7, step: 0.1 } }, g) as number);
    }
    const sorted = (set: Set<number>) => [...set].sort((a, b) => a - b);
    expect(sorted(seen.length)).toEqual([508, 1016, 1524, 2032]);
    expect(sorted(seen.whole)).toEqual([2, 3, 4, 5]);
    // 0.3 + 0.1 + … loses nothing: six decimals are kept.
    expect(sorted(seen.decimal)).toEqual([0.3, 0.4, 0.5, 0.6, 0.7]);
  });

  test('some: the needed ones are always there, none twice, the count in range', () => {
    const some = { some: { from: 3, to: 5, of: ['a', 'b', 'c', 'd', 'e', 'f'], always: ['b', 'e'] } };
    fc.assert(
      fc.property(fc.string({ minLength: 1 }), (seed) => {
        const drawn = drawValue(some, Generator.of('some', seed)) as string[];
        expect(drawn.length).toBeGreaterThanOrEqual(3);
        expect(drawn.length).toBeLessThanOrEqual(5);
        expect(new Set(drawn).size).toBe(drawn.length);
        expect(drawn).toEqual(expect.arrayContaining(['b', 'e']));
      }),
    );
  });

  test('the order of the file is the order of the draw', () => {
    const whole = { whole: { from: 0, to: 999 } };
    const one = drawValues({ a: whole, b: whole }, Generator.of('f', '1'));
    const other = drawValues({ b: whole, a: whole }, Generator.of('f', '1'));
    expect([one['a'], one['b']]).toEqual([other['b'], other['a']]);
  });
});

describe('seed texts', () => {
  test.each([
    ['1', true],
    [' ', true],
    ['x'.repeat(64), true],
    ['🪚'.repeat(64), true],
    ['', false],
    ['x'.repeat(65), false],
    ['🪚'.repeat(65), false],
    ['\ud83e', false],
  ])('%j', (seed, good) => {
    expect(seedFault(seed) === undefined).toBe(good);
  });

  test('are taken as they stand', () => {
    const words = ['1', '01', ' 1', 'é', 'e\u0301', 'A', 'a'].map((seed) => firstWords('f', seed).join());
    expect(new Set(words).size).toBe(words.length);
    expect(firstWords('fa', 'b').join()).not.toBe(firstWords('f', 'ab').join());
  });
});
