import { describe, expect, test } from 'vitest';
import { ARROW_ROOM } from '../../src/drawing/dimension.ts';
import { plateScale } from '../../src/drawing/plate.ts';
import { sectionScale } from '../../src/drawing/section.ts';
import type { Circle, Line, Rect, Shape } from '../../src/drawing/shapes.ts';
import { laySplice } from '../../src/drawing/splice.ts';
import { layStrip } from '../../src/drawing/strip.ts';
import type { Sheet } from '../../src/drawing/svg.ts';
import { layTape } from '../../src/drawing/tape.ts';
import { inches, readLength as L } from '../../src/trade/length.ts';
import { item, resolved } from '../run/practice.ts';
import { packLaws } from './packLaws.ts';
import { every, forms, how, straight, subjects } from './subjects.ts';

const rects = ({ plan }: Sheet, part: RegExp) =>
  plan.shapes.filter((s): s is Rect => s.kind === 'rect' && part.test(s.part ?? ''));
const circles = ({ plan }: Sheet, part: string) =>
  plan.shapes.filter((s): s is Circle => s.kind === 'circle' && s.part === part);
const lines = ({ plan }: Sheet, test: (l: Line) => boolean) =>
  plan.shapes.filter((s): s is Line => s.kind === 'line' && test(s));
const lay = (name: string, form: (typeof forms)[number]) => {
  const made = subjects[name];
  if (made === undefined) throw new Error(name);
  return made(how(form));
};

describe.each(forms)('strip on %s: everything stands where the run has it', (form) => {
  const given = straight(`63'-7 1/2"`);
  const sheet = layStrip(given, how(form));
  const pieces = rects(sheet, /^piece/);
  const px = (pieces[0]?.w ?? 0) / 240;
  const x0 = pieces[0]?.x ?? 0;

  test('pieces as long as they are, openings between them', () => {
    // Hand: three of 240 in, one of 43 1/8, openings of 1/8.
    const at = [0, 240.125, 480.25, 720.375];
    pieces.forEach((p, i) => {
      expect(p.x).toBeCloseTo(x0 + (at[i] ?? 0) * px, 6);
      expect(p.w).toBeCloseTo((i < 3 ? 240 : 43.125) * px, 6);
    });
    expect(pieces).toHaveLength(4);
  });

  test('splices centred on their places, the off-cut beyond the saw as long as what is left', () => {
    const splices = rects(sheet, /^splice/);
    expect(splices.map((s) => (s.x + s.w / 2 - x0) / px)).toEqual(
      [240.0625, 480.1875, 720.3125].map((v) => expect.closeTo(v, 6)),
    );
    const [left] = rects(sheet, /^left over/);
    expect(((left?.x ?? 0) - x0) / px).toBeCloseTo(763.625, 6);
    expect((left?.w ?? 0) / px).toBeCloseTo(196.75, 6);
    expect(left?.pen).toBe('phantom');
  });

  test('the whole is dimensioned from end to end', () => {
    const [whole] = lines(sheet, (l) => l.part === 'whole' && l.from[1] === l.to[1]);
    expect(whole?.from[0]).toBeCloseTo(x0, 6);
    expect(whole?.to[0]).toBeCloseTo(x0 + 763.5 * px, 6);
  });

  test('supports under their places, the opening to the instrument as long as it is', () => {
    const long = lay('strip from ladder to instrument', form);
    const [first] = rects(long, /^piece 1/);
    // Hand: piece 1 goes 1 1/2 into the ladder tray and is 181 7/16 long.
    const s = (first?.w ?? 0) / 181.4375;
    const zero = (first?.x ?? 0) + 1.5 * s;
    expect(rects(long, /^support/).map((r) => (r.x + r.w / 2 - zero) / s)).toEqual(
      [18, 84, 150, 216, 276].map((v) => expect.closeTo(v, 6)),
    );
    const [bubble] = circles(long, 'instrument');
    expect(((bubble?.at[0] ?? 0) - (bubble?.r ?? 0) - 1.5 - zero) / s).toBeCloseTo(296.5 + 18, 6);
  });
});

describe.each(forms)('sleeve on %s', (form) => {
  test.each([
    ['sleeve, 4 in', 5, 5],
    ['sleeve, one end short', 5, 3.9375],
  ])('%s: what goes in is to scale, the opening is not, and it says so', (name, a, b) => {
    const sheet = lay(name, form);
    const [sleeve] = rects(sheet, /^sleeve/);
    const ends = lines(sheet, (l) => l.part?.startsWith('channel end') === true).map((l) => l.from[0]);
    const [left, right] = [sleeve?.x ?? 0, (sleeve?.x ?? 0) + (sleeve?.w ?? 0)];
    const into = [(ends[0] ?? 0) - left, right - (ends[1] ?? 0)];
    expect((into[0] ?? 0) / (into[1] ?? 1)).toBeCloseTo(a / b, 6);
    const px = (into[0] ?? 0) / a;
    expect((ends[1] ?? 0) - (ends[0] ?? 0)).toBeGreaterThan(px / 8);
    expect(sheet.plan.texts.some((t) => /but for the gap|Gap, metal larger/.test(t.text))).toBe(true);
    // Height of the channel at the same scale: 1 3/4 in.
    expect(rects(sheet, /^channel before/)[0]?.h).toBeCloseTo(1.75 * px, 6);
    // Fasteners 2 1/2 in from the sleeve's ends (training value).
    expect(circles(sheet, 'fastener').map((c) => c.at[0])).toEqual([
      expect.closeTo(left + 2.5 * px, 6),
      expect.closeTo(right - 2.5 * px, 6),
    ]);
    // The channel inside is hidden: its ends and walls are dashed.
    expect(lines(sheet, (l) => l.pen === 'hidden').length).toBeGreaterThanOrEqual(6);
  });

  test('an exaggeration is not claimed where the ends touch', () => {
    const sheet = lay('sleeve, ends touching', form);
    expect(lines(sheet, (l) => l.part?.startsWith('channel end') === true)).toHaveLength(1);
    expect(sheet.plan.texts.some((t) => t.text === 'no gap')).toBe(true);
  });
});

test.each(forms)(
  'plate on %s: bolts 3/4 and 2 1/4 from each channel end, plate 6 long across the joint',
  (form) => {
    const run = resolved(`30'`, { joints: [{ leg: '1', kind: 'butt', at: `15'` }] });
    const joint = run.legs[0]?.joints[0];
    if (joint?.kind !== 'butt') throw new Error('no butt joint');
    const given = {
      joint,
      tray: run.tray,
      item: item('card-4-plate', 'plate'),
      fastening: item('plate-fastener', 'fastening'),
    };
    const sheet = laySplice(given, how(form));
    const { along, cx } = plateScale(given, form);
    expect(circles(sheet, 'fastener').map((c) => (c.at[0] - cx) / along)).toEqual(
      [-2.25, -0.75, 0.75, 2.25].map((v) => expect.closeTo(v, 6)),
    );
    const [plate] = rects(sheet, /^plate/);
    expect((plate?.w ?? 0) / along).toBeCloseTo(6, 6);
    expect((plate?.x ?? 0) + (plate?.w ?? 0) / 2).toBeCloseTo(cx, 6);
  },
);

describe.each(forms)('tape on %s', (form) => {
  test.each([`63'-7 1/2"`, `7'-3 5/8"`, `0'-0 13/16"`])('at %s the pointer stands on its mark', (reading) => {
    const sheet = layTape({ reading: L(reading), printed: false }, how(form));
    const pointer = lines(sheet, (l) => l.part === 'pointer')[0]?.from[0] ?? 0;
    const mark = lines(sheet, (l) => l.part === `mark ${inches(L(reading)) * 16}`)[0];
    expect(mark?.from[0]).toBeCloseTo(pointer, 6);
  });

  test('sixteenths are evenly apart, at least 8 px, and longer the coarser they are', () => {
    const sheet = layTape({ reading: L(`7'-3 5/8"`), printed: false }, how(form));
    const marks = lines(sheet, (l) => l.part?.startsWith('mark') === true);
    const step = (marks[1]?.from[0] ?? 0) - (marks[0]?.from[0] ?? 0);
    expect(step).toBeGreaterThanOrEqual(8);
    const heights = new Map<number, Set<number>>();
    marks.forEach((m, i) => {
      if (i > 0) expect(m.from[0] - (marks[i - 1]?.from[0] ?? 0)).toBeCloseTo(step, 6);
      const n = Number(m.part?.slice(5));
      const coarse = [16, 8, 4, 2, 1].find((d) => n % d === 0) ?? 1;
      heights.set(coarse, (heights.get(coarse) ?? new Set()).add(Math.round(m.to[1] - m.from[1])));
    });
    const tall = [16, 8, 4, 2, 1].map((d) => [...(heights.get(d) ?? [])]);
    for (const h of tall) expect(h).toHaveLength(1);
    expect(tall.flat()).toEqual([...tall.flat()].sort((a, b) => b - a));
    expect(new Set(tall.flat()).size).toBe(5);
  });

  test('the foot and an inch are always lettered, so that the reading can be told', () => {
    for (let n = 1; n <= 16 * 30; n += 7) {
      const sheet = layTape({ reading: L(n / 16), printed: false }, how(form));
      expect(
        sheet.plan.texts.some((t) => /^inch/.test(t.part ?? '')),
        `${n}/16`,
      ).toBe(true);
      expect(
        sheet.plan.texts.some((t) => / ft$/.test(t.text)) || sheet.plan.shapes.some((h) => h.part === 'hook'),
        `${n}/16`,
      ).toBe(true);
    }
  });
});

describe.each(forms)('section on %s', (form) => {
  test('inside width and cables at one scale, each cable in the channel', () => {
    const given = {
      tray: item('card-4', 'tray'),
      cables: [
        { odIn: 0.6, count: 8 },
        { odIn: 0.75, count: 1 },
      ],
    };
    const { px } = sectionScale(given, form);
    const sheet = lay('section of nine cables', form);
    const [width] = lines(sheet, (l) => l.part === 'inside width' && l.from[1] === l.to[1]);
    expect(((width?.to[0] ?? 0) - (width?.from[0] ?? 0)) / px).toBeCloseTo(4, 6);
    expect(circles(sheet, 'cable 0').map((c) => (2 * c.r) / px)).toEqual(
      new Array(8).fill(expect.closeTo(0.6, 6)),
    );
    expect(circles(sheet, 'cable 1')).toHaveLength(1);
    for (const c of sheet.plan.shapes.filter(
      (s): s is Circle => s.kind === 'circle' && s.part?.startsWith('cable') === true,
    )) {
      expect(c.at[0] - c.r).toBeGreaterThanOrEqual((width?.from[0] ?? 0) - 0.01);
      expect(c.at[0] + c.r).toBeLessThanOrEqual((width?.to[0] ?? 0) + 0.01);
    }
  });
});

packLaws();

test('arrowheads are three long to one wide, and stand only where there is room', () => {
  for (const [name, form, made] of every) {
    const sheet = made(how(form));
    const arrows = sheet.plan.shapes.filter((s: Shape) => s.kind === 'arrow');
    for (const l of lines(
      sheet,
      (d) => d.pen === 'dimension' && d.from[1] === d.to[1] && d.part !== undefined,
    )) {
      const at = arrows.filter(
        (a) => a.kind === 'arrow' && a.at[1] === l.from[1] && [0, 180].includes(a.towardsDeg),
      );
      const between = at.filter((a) => a.kind === 'arrow' && a.towardsDeg === 180 && a.at[0] === l.from[0]);
      const ends = at.filter((a) => a.kind === 'arrow' && a.towardsDeg === 0 && a.at[0] === l.to[0]);
      if (between.length > 0 && ends.length > 0) {
        expect(l.to[0] - l.from[0], `${name} ${l.part}`).toBeGreaterThanOrEqual(ARROW_ROOM);
      }
    }
  }
});
