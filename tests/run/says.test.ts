import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Splice } from '../../src/run/joints.ts';
import { straightSays } from '../../src/run/says.ts';
import { spliceStraightRun } from '../../src/run/spliceStraight.ts';
import { speaker } from '../../src/schema/words.ts';
import { readLength as L } from '../../src/trade/length.ts';

const file = new URL('../../content/words/en/run.json', import.meta.url);
const groups = JSON.parse(readFileSync(file, 'utf8')) as Record<string, Record<string, string>>;
const words = new Map(
  Object.entries(groups).flatMap(([g, keys]) =>
    Object.entries(keys).map(([k, t]) => [`${g}.${k}`, t] as const),
  ),
);

const sum = (length: string, splice: Splice) =>
  spliceStraightRun({ length: L(length), stock: L(`20'`), kerf: L('1/8'), splice }).steps.map(speaker(words));
const sleeve: Splice = { kind: 'socketed', length: L('10 1/8'), insertions: [L(5), L(5)] };

test('the keys listed are the words there are', () => {
  expect([...words.keys()].sort()).toEqual([...straightSays].sort());
});

test('the sum in words, along the run and by piece', () => {
  expect(sum(`27'-3"`, sleeve)).toEqual([
    `1 length at 20'-0"`,
    `+ piece 2 at 7'-2 7/8"`,
    `+ 1 gap at 1/8"`,
    `= 27'-3", which is your run`,
    `Piece 1: 19'-7" clear and 5" that goes into splices: cut to 20'-0"`,
    `Piece 2: 6'-9 7/8" clear and 5" that goes into splices: cut to 7'-2 7/8"`,
    `The sleeve is 10 1/8" long: 5", a gap of 1/8", and 5"`,
  ]);
});

test('one piece that goes into nothing', () => {
  expect(sum(`7'-3"`, { kind: 'butt', length: L(6), gap: L(0) })).toEqual([
    `+ piece 1 at 7'-3"`,
    `= 7'-3", which is your run`,
    `Piece 1: 7'-3" clear, nothing goes in: cut to 7'-3"`,
  ]);
});
