import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inside } from '../../src/drawing/frame.ts';
import { pagePalette } from '../../src/drawing/palette.ts';
import { within } from '../../src/drawing/shapes.ts';
import { layStrip } from '../../src/drawing/strip.ts';
import { render } from '../../src/drawing/svg.ts';
import { clashes, flaws, outside } from './measure.ts';
import { every, forms, how, straight } from './subjects.ts';

test('the measuring finds a clash and a shape outside, where there is one', () => {
  const sheet = layStrip(straight(`7'`), how('phone'));
  sheet.plan.text([100, 60], 'over the dimension');
  sheet.plan.line('edge', [0, 0], [50, 50]);
  expect(clashes(sheet)).not.toEqual([]);
  expect(outside(sheet)).not.toEqual([]);
});

test('every kind of flaw is found where there is one, and none where there is none', () => {
  const flawed = (spoil: (plan: ReturnType<typeof layStrip>['plan']) => void) => {
    const sheet = layStrip(straight(`7'`), how('phone'));
    spoil(sheet.plan);
    return flaws(sheet);
  };
  expect(flawed(() => {})).toEqual([]);
  expect(flawed((plan) => plan.text([100, 60], 'over the dimension')).join()).toContain('run into');
  expect(flawed((plan) => plan.line('edge', [0, 0], [50, 50])).join()).toContain('leaves the frame: line');
  expect(flawed((plan) => plan.text([164, 20], '{count} pieces')).join()).toContain('not filled: {count}');
  expect(flawed((plan) => plan.text([164, 20], 'small', { size: 12 })).join()).toContain('too small, 12 px');
  expect(flawed((plan) => plan.line('edge', [Number.NaN, 0], [50, 50])).join()).toContain('no number: line');
});

describe('every view in every form', () => {
  test.each(every)('%s', (_, form, lay) => {
    const sheet = lay(how(form));
    expect(flaws(sheet)).toEqual([]);
    if (form === 'phone') expect(sheet.width).toBe(328);
    if (form === 'desk') expect([480, 660, 752]).toContain(sheet.width);
  });

  test.each(every)(
    '%s as SVG: presentation attributes only, colours from the palette only',
    (_, form, lay) => {
      const given = { ...how(form), palette: pagePalette };
      const { svg, words, width, height } = render(lay(given), given);
      expect(svg).toMatch(/^<svg [^>]*role="img" aria-label="[^"]+"/);
      expect(svg).toContain(`viewBox="0 0 ${width} ${height}"`);
      expect(svg).not.toMatch(/style|class=|<script|href|#[0-9a-f]{3}|undefined/i);
      expect(svg).not.toContain('NaN');
      const colours = [...svg.matchAll(/(?:fill|stroke)="([^"]*)"/g)].map((m) => m[1]);
      expect(new Set(colours)).toEqual(
        new Set(colours.filter((c) => c === 'none' || /^var\(--\w+\)$/.test(c ?? ''))),
      );
      const opened = [...svg.matchAll(/<(svg|g|text)\b/g)].map((m) => m[1]);
      const closed = [...svg.matchAll(/<\/(svg|g|text)>/g)].map((m) => m[1]);
      expect(closed.sort()).toEqual(opened.sort());
      expect(words.length).toBeGreaterThan(12);
      expect(words).not.toMatch(/["{}]/);
    },
  );

  test.each(every)(
    '%s: balloons are numbered once, on free ground, and stand in the zone that is said',
    (_, form, lay) => {
      const sheet = lay(how(form));
      const circles = sheet.plan.shapes.flatMap((s) =>
        s.kind === 'circle' && s.part?.startsWith('balloon') ? [s] : [],
      );
      expect(circles.map((c) => c.part?.slice(8))).toEqual(Object.keys(sheet.zones));
      for (const { at, r, part } of circles) {
        const { frame } = sheet;
        if (frame === undefined) throw new Error('a balloon without a frame');
        const zone = sheet.zones[part?.slice(8) ?? ''] ?? '';
        const room = inside(frame);
        const column = Number(zone.slice(1)) - 1;
        const row = 'ABCDEFGHJK'.indexOf(zone[0] ?? '');
        const cell = { w: room.w / frame.across, h: room.h / frame.down };
        const box = { x: room.x + column * cell.w, y: room.y + row * cell.h, ...cell };
        expect(within({ x: at[0], y: at[1], w: 0, h: 0 }, box, -0.01), `${part} in ${zone}`).toBe(true);
        const others = circles.filter((c) => c.part !== part);
        for (const o of others) expect(Math.hypot(o.at[0] - at[0], o.at[1] - at[1])).toBeGreaterThan(r + o.r);
      }
    },
  );
});

test('strips of any length: no text on text, nothing outside', () => {
  fc.assert(
    fc.property(fc.integer({ min: 8128, max: 75_000_000 }), fc.constantFrom(...forms), (length, form) => {
      const sheet = layStrip(straight(length), how(form));
      expect(clashes(sheet)).toEqual([]);
      expect(outside(sheet)).toEqual([]);
    }),
    { numRuns: 150 },
  );
});
