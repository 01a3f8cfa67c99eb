import { expect, test } from 'vitest';
import { cite } from '../../src/schema/source.ts';
import type { Source } from '../../src/trade/answer.ts';
import * as habits from '../../src/trade/habits.ts';
import { inches } from '../../src/trade/length.ts';
import { library } from './tables.ts';

const sources: readonly Source[] = Object.values(habits).map((h) => ('source' in h ? h.source : h));

test.each(sources)('$where stands in content/sources as the calculators cite it', (source) => {
  expect(cite(source, source.edition, library.sources)).toEqual(source);
});

test('the figures are those of their sources', () => {
  expect(inches(habits.INSERTION.length)).toBe(5); // common practice, no source
  expect(inches(habits.STOCK.length)).toBe(240); // common practice, no source
  expect(inches(habits.KERF.length)).toBe(1 / 8); // common practice, no source
  expect(inches(habits.REUSABLE.length)).toBe(12); // common practice, no source
  expect(inches(habits.OPENING.length)).toBe(1 / 8); // training value: sleeve 10 1/8 in, 5 in each side
  expect(inches(habits.SOCKET.length)).toBe(1.5); // training value
});
