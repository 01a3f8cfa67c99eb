import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import CutPiece from '../../src/site/islands/CutPiece.tsx';
import { readLength } from '../../src/trade/length.ts';
import { table } from './wordTable.ts';

const words = table('en');
/** The sheet's first part as it is built into the page, its text alone. */
const page = (measured: string) =>
  renderToStaticMarkup(
    createElement(CutPiece, {
      words,
      measured: readLength(measured),
      insertion: readLength('5'),
      stock: readLength(`20'`),
      holes: { width: readLength('9/16'), first: readLength('6'), pitch: readLength('6') },
    }),
  )
    .replaceAll(/<[^>]*>/g, ' ')
    .replaceAll('&#x27;', "'")
    .replaceAll('&quot;', '"')
    .replaceAll(/[\s\u00a0]+/g, ' ');

test('a cut that lands on a hole is said, with the nearest clear places and why (hand: hole at 96, 27/32 to each side)', () => {
  const text = page('91 1/4');
  expect(text).toContain(`Cut to 8'-0 1/4"`);
  expect(text).toContain('This cut lands on a hole in the floor.');
  expect(text).toContain(`Nearest clear places: 7'-11 5/32" and 8'-0 27/32".`);
  expect(text).toContain('The cut and the holes');
  expect(text).toContain('a cut stays one hole width clear of a hole');
});

test('one beside a hole is told from one on it, and a clear one has no word of holes', () => {
  expect(page('91 5/8')).toContain('This cut is nearer to a hole in the floor than one hole width.');
  const clear = page('92 5/8');
  expect(clear).toContain(`Cut to 8'-1 5/8"`);
  expect(clear).not.toMatch(/\bholes?\b/i);
});

test('before anyone writes, the sheet says that it is an example, in the label and in the title', () => {
  const text = page('92 5/8');
  expect(text).toContain(`Example: Measured 7'-8 5/8"`);
  expect(text).toContain(`Example: Cut to 8'-1 5/8"`);
});
