import { describe, expect, test } from 'vitest';
import {
  blankDimension,
  buttonArrow,
  cloudedDimension,
  cloudPath,
  logo,
  numberedTriangle,
  ringedDimension,
  safetyTriangle,
  stateMark,
} from '../../src/drawing/marks.ts';
import { pagePalette as p } from '../../src/drawing/palette.ts';

const all = {
  'not shown': stateMark({ state: 'not shown' }, p),
  'practice only': stateMark({ state: 'practice only' }, p),
  shown: stateMark({ state: 'shown', initials: 'KD' }, p),
  'show again': stateMark({ state: 'show again', sign: 'T' }, p),
  triangle: numberedTriangle('2', p),
  ring: ringedDimension(`4'-6"`, p),
  cloud: cloudedDimension(`7'-0"`, p),
  blank: blankDimension(p),
  safety: safetyTriangle(p, '#FFC400'),
  arrow: buttonArrow(),
  logo: logo(p),
};

test.each(Object.entries(all))('%s is decoration: hidden, whole, no style', (_, svg) => {
  expect(svg).toMatch(
    /^<svg xmlns="[^"]+" viewBox="0 0 [\d.]+ [\d.]+" width="[\d.]+" height="[\d.]+" aria-hidden="true" focusable="false">.*<\/svg>$/,
  );
  expect(svg).not.toMatch(/style|class=|NaN|undefined|<script/);
  for (const [, size] of svg.matchAll(/font-size="([\d.]+)"/g))
    expect(Number(size)).toBeGreaterThanOrEqual(13);
});

describe('the four states are told apart by line and fill alone', () => {
  test('all are 40 by 28', () => {
    for (const state of ['not shown', 'practice only', 'shown', 'show again'] as const) {
      expect(all[state]).toContain('width="40" height="28"');
    }
  });
  test('dashed, hatched, solid with initials cut out, triangle with its sign', () => {
    expect(all['not shown']).toContain('stroke-dasharray');
    expect(all['practice only']).not.toContain('stroke-dasharray');
    expect(all['practice only'].match(/M/g)?.length).toBeGreaterThanOrEqual(4);
    expect(all.shown).toContain(`fill="${p.ink}"`);
    expect(all.shown).toMatch(new RegExp(`fill="${p.sheet.replace(/[()]/g, '\\$&')}">KD<`));
    expect(all['show again']).toContain('>T<');
  });
  test('none uses the accent', () => {
    for (const state of ['not shown', 'practice only', 'shown', 'show again'] as const) {
      expect(all[state]).not.toContain(p.mark);
    }
  });
});

test('a cloud closes where it began, its arcs as long as the box', () => {
  const arcs = [...cloudPath(0, 0, 70, 28).matchAll(/a[\d.]+ [\d.]+ 0 0 1 (-?[\d.]+) (-?[\d.]+)/g)];
  const sum = (i: 1 | 2) => arcs.reduce((s, m) => s + Number(m[i]), 0);
  expect(sum(1)).toBeCloseTo(0, 1);
  expect(sum(2)).toBeCloseTo(0, 1);
  expect(arcs).toHaveLength(2 * 5 + 2 * 2);
});

test('what is lettered is escaped', () => {
  expect(ringedDimension(`<4'-6">`, p)).toContain('&lt;4');
});
