import { describe, expect, test } from 'vitest';
import {
  degreesApart,
  lettered,
  type Measure,
  measure,
  measureText,
  tape,
  tapeAtLeast,
  tapeAtMost,
  temperature,
  written,
} from '../../../src/site/calculators/measure.ts';
import { nothingKept, readSettings, type Settings, settingsOf, usual } from '../../../src/site/settings.ts';
import { tell } from './all.ts';

const instead: Settings = { ...usual, metric: 'instead', degrees: 'C' };
const text = (given: Measure, settings: Settings) =>
  measureText(given, settings, tell).replaceAll('\u00a0', ' ');

describe('in the trade’s units and in metric', () => {
  test.each([
    // Exact factors: 1 in = 25.4 mm, 1 lb = 0.45359237 kg (international yard and pound, 1959), 1 lbf = 4.448222 N.
    [tape(147.5), `12'-3 1/2"`, '3747 mm'],
    [tape(0.39), '3/8"', '9.9 mm'],
    [tape(-1.5), '−1 1/2"', '−38.1 mm'],
    [measure('inches', 0.105), '0.105 in', '2.667 mm'],
    [measure('feet', 10), '10 ft', '3.048 m'],
    // NFPA 70 Table 392.22(A)(5) prints 2.5 in² as 1600 mm²: a rounded twin; the exact one is 1612.9.
    [measure('in2', 2.5), '2.5 in²', '1613 mm²'],
    [measure('in4', 1), '1 in to the 4th', '41.62 cm to the 4th'],
    // 1 lb/ft = 1.48816 kg/m, 1 lb-ft = 1.35582 N·m (handbook, from memory).
    [measure('lbPerFt', 1), '1 lb/ft', '1.488 kg/m'],
    [measure('lbFt', 1), '1 lb-ft', '1.356 N·m'],
    [measure('lb', 100), '100 lb', '45.36 kg'],
    // Steel 29.0 million psi = 200 GPa (handbook, from memory).
    [measure('psi', 29e6), '29 000 000 psi', '199 948 MPa'],
    [temperature(50), '50 °F', '10 °C'],
    [degreesApart(125), '125 °F', '69.4 °C'],
    [measure('degrees', 22.5), '22.5°', '22.5°'],
  ] as const)('%j is %s, or %s', (given, own, metric) => {
    expect(text(given, usual)).toBe(own);
    expect(text(given, instead)).toBe(metric);
  });

  test('beside each other; a drawing letters one only', () => {
    const beside: Settings = { ...usual, metric: 'beside' };
    expect(text(tape(147.5), beside)).toBe(`12'-3 1/2" (3747 mm)`);
    expect(lettered(tape(147.5), beside, tell).replaceAll('\u00a0', ' ')).toBe(`12'-3 1/2"`);
    expect(text(measure('degrees', 30), beside)).toBe('30°');
  });
});

test('a greatest length goes down to what a tape shows, a least one up, a whole one stays', () => {
  expect(text(tapeAtMost(2.88), usual)).toBe('2 7/8"');
  expect(text(tapeAtLeast(2.88), usual)).toBe('2 15/16"');
  expect(text(tapeAtMost(72), usual)).toBe(`6'-0"`);
  expect(text(tapeAtLeast(96.84375, 64), usual)).toBe(`8'-0 27/32"`);
});

test.each([
  [0, '0'],
  [0.0022718, '0.002272'],
  [51.7109, '51.71'],
  [2500000, '2500000'],
  [-4.6419, '−4.642'],
  [1234.567, '1235'],
])('%d is written %s', (n, want) => expect(written(n)).toBe(want));

describe('settings that a device kept', () => {
  test.each([
    [null, nothingKept],
    ['', nothingKept],
    ['{', nothingKept],
    ['7', nothingKept],
    ['{"metric":"beside","degrees":"C","edition":2017}', { metric: 'beside', degrees: 'C', edition: 2017 }],
    ['{"metric":"always","degrees":"K","edition":2014}', nothingKept],
  ])('%s', (kept, want) => expect(readSettings(kept)).toEqual(want));
});

test('the device’s edition comes before the works’', () => {
  expect(settingsOf(nothingKept, 2020).edition).toBe(2020);
  expect(settingsOf({ ...nothingKept, edition: 2017 }, 2020).edition).toBe(2017);
});
