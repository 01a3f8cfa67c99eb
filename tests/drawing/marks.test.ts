import { describe, expect, test } from 'vitest';
import { cloudedDimension } from '../../src/drawing/cloud.ts';
import { cloudPath } from '../../src/drawing/cloudPath.ts';
import { textWidth } from '../../src/drawing/glyphs.ts';
import { numberedTriangle, stateMark } from '../../src/drawing/marks.ts';
import { pagePalette as p } from '../../src/drawing/palette.ts';
import { buttonArrow, logo, safetyTriangle } from '../../src/drawing/signs.ts';

const all = {
  'not shown': stateMark('not shown', '', p),
  'practice only': stateMark('practice only', '', p),
  shown: stateMark('shown', 'KDW', p),
  'show again': stateMark('show again', 'T', p),
  'triangle in a line': numberedTriangle(2, 'line', p),
  'triangle of a note': numberedTriangle(2, 'note', p),
  safety: safetyTriangle('var(--ground)'),
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
    expect(all.shown).toMatch(new RegExp(`fill="${p.sheet.replace(/[()]/g, '\\$&')}">KDW<`));
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

test('a clouded dimension says itself, escaped, and holds its text', () => {
  const svg = cloudedDimension(`<b>"&`, p);
  expect(svg).toContain('role="img" aria-label="&lt;b&gt;&quot;&amp;"');
  expect(svg).not.toMatch(/<b>|style|class=/);
  const width = (text: string) => Number(/width="(\d+)"/.exec(cloudedDimension(text, p))?.[1]);
  expect(width(`12'-11 15/16"`)).toBeGreaterThan(textWidth(`12'-11 15/16"`, 17) + 2 * 14);
});

test('a cloud is drawn whole: no arc reaches the edge of its picture', () => {
  for (const text of ['1"', `1'-0"`, `12'-11 15/16"`]) {
    const svg = cloudedDimension(text, p);
    const edge = Number(/ d="M([\d.]+) /.exec(svg)?.[1]);
    const stroke = Number(/stroke-width="([\d.]+)"/.exec(svg)?.[1]);
    const arcs = [...svg.matchAll(/a([\d.]+) [\d.]+ 0 0 1 (-?[\d.]+) (-?[\d.]+)/g)];
    expect(arcs.length).toBeGreaterThanOrEqual(8);
    for (const [, r, x, y] of arcs) {
      const chord = Math.max(Math.abs(Number(x)), Math.abs(Number(y)));
      expect(2 * Number(r)).toBeGreaterThan(chord);
      const bulge = Number(r) - Math.sqrt(Number(r) ** 2 - chord ** 2 / 4);
      expect(bulge + stroke / 2).toBeLessThan(edge);
    }
  }
});

test('a triangle carries its number, in the accent', () => {
  for (const where of ['line', 'note'] as const) {
    expect(numberedTriangle(12, where, p)).toContain(`fill="${p.mark}">12<`);
  }
});
