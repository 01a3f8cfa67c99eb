/** What the entries hold between the person and the engine: a bench of lengths, marks on a run, what was found of them. */
import { expect, test } from 'vitest';
import type { TapPlace } from '../../../src/drawing/tap/given.ts';
import type { ShownAsk } from '../../../src/practice/show.ts';
import { asCuts, benchOf, onto, takeAnother, taken } from '../../../src/site/islands/practice/asks/bench.ts';
import { faultChosen, faultOn, isOn } from '../../../src/site/islands/practice/asks/onRun.ts';
import { answerText, outcomes, readNumber } from '../../../src/site/practice.ts';
import { teller } from '../../../src/site/speak.ts';
import { readLength as L } from '../../../src/trade/length.ts';
import { table } from '../wordTable.ts';

const tell = teller(table('en'));

const given = {
  from: [
    { id: 'new', length: L(`20'`), many: true },
    { id: 'r1', length: L(`6'-4"`), many: false },
  ],
  pieces: [L(`5'`), L(`5'`), L(`12'-3 1/8"`)],
  kerf: L('1/8'),
};

test('remnants and one new length lie ready; pieces go onto them and off again; another length is taken', () => {
  const empty = benchOf(given);
  expect(empty).toEqual({ bars: ['r1', 'new'], on: {} });
  expect(asCuts(empty, given)).toEqual([]);
  const laid = onto(onto(onto(takeAnother(empty, 'new'), 0, 0), 1, 2), 2, 2);
  expect(taken(laid, 2)).toEqual([1, 2]);
  expect(asCuts(laid, given)).toEqual([
    { from: 'r1', pieces: [60] },
    { from: 'new', pieces: [60, 147.125] },
  ]);
  expect(asCuts(onto(laid, 1, null), given)).toEqual([
    { from: 'r1', pieces: [60] },
    { from: 'new', pieces: [147.125] },
  ]);
});

test('the bench of an answer gives that answer again, whatever lengths it used', () => {
  const cuts = [
    { from: 'new', pieces: [147.125, 60] },
    { from: 'new', pieces: [60] },
  ];
  const bench = benchOf(given, cuts);
  expect(bench.bars).toEqual(['new', 'new', 'r1']);
  // Pieces stand in their own order; two of one length are alike.
  expect(asCuts(bench, given)).toEqual([
    { from: 'new', pieces: [60, 147.125] },
    { from: 'new', pieces: [60] },
  ]);
});

const part = (more: Partial<TapPlace>): TapPlace => ({
  key: 'k',
  leg: '2',
  at: 0,
  part: 'fitting',
  elsewhere: { 'fitting-unsupported': 7 },
  letters: 'fit',
  words: 'Fitting',
  ...more,
});

test('a fault stands where its rule looks: a missing support at the face, the fitting itself at its working point', () => {
  expect(faultOn(part({}), 'fitting-unsupported')).toEqual({ leg: '2', at: 7, rule: 'fitting-unsupported' });
  expect(faultOn(part({}), 'wrong-hand')).toEqual({ leg: '2', at: 0, rule: 'wrong-hand' });
  expect(isOn({ leg: '2', at: 7, rule: 'fitting-unsupported' }, part({}))).toBe(true);
  expect(isOn({ leg: '2', at: 7, rule: 'wrong-hand' }, part({}))).toBe(false);
  expect(isOn({ leg: '1', at: 0, rule: 'wrong-hand' }, part({}))).toBe(false);
});

test('what is over a leg is of the whole leg, and is answered at its beginning', () => {
  const whole = part({ part: 'leg', at: null, elsewhere: {} });
  const fault = faultOn(whole, 'fill-over');
  expect(fault).toEqual({ leg: '2', at: 0, rule: 'fill-over' });
  expect(faultChosen(fault).at).toBeNull();
  expect(isOn(fault, whole)).toBe(true);
  expect(isOn(fault, part({}))).toBe(false);
});

const ask = (more: Partial<ShownAsk>): ShownAsk => ({ id: 'a', kind: 'place', prompt: 'Where?', ...more });

test('answers of every kind as a person reads them', () => {
  const placing = ask({ options: [{ id: 'support', text: 'support' }] });
  expect(answerText(tell, placing, [{ leg: '1', at: 54.5, what: 'support' }])).toBe(
    `Leg 1 at 4'-6\u00a01/2": support`,
  );
  const naming = ask({ kind: 'faults', options: [{ id: 'span-too-long', text: 'Span too long' }] });
  expect(
    answerText(tell, naming, [
      { leg: '1', at: 6, rule: 'span-too-long' },
      { leg: '2', at: 12, rule: 'span-too-long' },
    ]),
  ).toBe(`Leg 1 at 6": Span too long; Leg 2 at 1'-0": Span too long`);
  const cutting = ask({ kind: 'sticks', options: [{ id: 'new', text: `20'-0"` }] });
  expect(answerText(tell, cutting, [{ from: 'new', pieces: [60, 147] }])).toBe(`20'-0": 5'-0", 12'-3"`);
  expect(answerText(tell, ask({ kind: 'order' }), ['cut', 'clamp'])).toBe('');
  expect(answerText(tell, ask({ kind: 'number', unit: 'count' }), 4)).toBe('4');
  expect(answerText(tell, ask({ kind: 'number', unit: 'degF' }), -5)).toBe('-5 °F');
  const step = ask({
    kind: 'job',
    parts: [
      { id: 'cut', kind: 'number', prompt: 'Cut to', unit: 'in' },
      { id: 'go', kind: 'stop', prompt: 'And now', options: [{ id: 'stop', text: 'Stop the job' }] },
    ],
  });
  expect(answerText(tell, step, { cut: 12, go: 'stop' })).toBe(`Cut to: 1'-0" And now: Stop the job`);
  const finding = {
    ask: 'a',
    verdict: 'rework',
    mistake: null,
    says: '',
    parts: { cut: true, go: false },
  } as const;
  const [outcome] = outcomes(
    tell,
    [step],
    { score: 0, passed: false, criticalMissed: [], findings: [finding] },
    { a: { cut: 12 } },
  );
  expect(outcome?.parts).toEqual([
    { id: 'cut', prompt: 'Cut to', rows: [`1'-0"`], holds: true },
    { id: 'go', prompt: 'And now', rows: [], holds: false },
  ]);
});

test.each([
  ['-5', 'degF', -5],
  ['−12.5 °C', 'degC', -12.5],
  ['12 lb/ft', 'lbPerFt', 12],
  ['40 %', 'percent', 40],
  ['7', 'count', 7],
  ['-5', 'ft', undefined],
  ['12 lb', 'lbPerFt', undefined],
  ['12 mm', 'ft', undefined],
])('%s as %s is %s', (text, unit, number) => {
  expect(readNumber(text, unit)).toBe(number);
});
