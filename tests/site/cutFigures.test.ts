import { expect, test } from 'vitest';
import { cutFigures } from '../../src/site/cutFigures.ts';
import { teller } from '../../src/site/speak.ts';
import { INSERTION, OPENING } from '../../src/trade/habits.ts';
import { readLength } from '../../src/trade/length.ts';
import { table } from './wordTable.ts';

const tell = teller(table('en'));
const row = { width: readLength('9/16'), first: readLength('6'), pitch: readLength('6') };

test('each figure stands under what its own source says of it', () => {
  expect(INSERTION.source.seen).toBe('common practice');
  expect(OPENING.source.seen).toBe('training value');
  const [common, training, ...others] = cutFigures({ row, origin: 'training value' }, tell);
  expect(others).toEqual([]);
  expect(common).toMatch(/^Common practice, no source: 5" goes into each splice; .*20'-0".*; .*1\/8"\.$/);
  expect(training).toMatch(/^Training value, not adopted: .*1\/8".*; holes 9\/16" wide/);
});

test('what a site has adopted is said so', () => {
  const said = cutFigures({ row, origin: 'adopted by the site' }, tell);
  expect(said.at(-1)).toMatch(/^Adopted by the site: holes 9\/16" wide/);
  expect(said).toHaveLength(3);
});
