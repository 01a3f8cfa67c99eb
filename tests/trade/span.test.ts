import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadedTray } from '../../src/schema/mechanicsInputs.ts';
import { METALS, type Metal } from '../../src/trade/metals.ts';
import { netOf } from '../../src/trade/section.ts';
import { type LoadedTray, type SpanGiven, span, spanByTable } from '../../src/trade/span.ts';
import { catalogue } from './catalogue.ts';

const item = catalogue.get('card-4');
if (item?.kind !== 'tray') throw new Error('the practice catalogue has no card-4');
const card: LoadedTray = loadedTray(item);
const adopted: LoadedTray = loadedTray({ ...item, origin: 'adopted by the site' });
/** Training values, invented: ft, lb/ft. */
const rows = [
  [4, 34],
  [5, 22],
  [6, 15],
  [8, 8.4],
  [10, 5.4],
] as const;

describe('by the load table', () => {
  test.each(rows)('%d ft carries its listed %d lb/ft, and no more', (ft, listed) => {
    const shorter = rows.filter(([l]) => l < ft).at(-1)?.[0];
    const at = (loadLbPerFt: number) => span({ tray: card, loadLbPerFt }).result.maxSpanIn;
    expect(at(listed)).toBe(12 * ft);
    expect(at(listed + 9e-10)).toBe(12 * ft); // within the hair that sums may lose
    expect(at(listed + 1e-8)).toBe(shorter === undefined ? null : 12 * shorter);
  });

  test.each(rows)(
    'with a weight at mid-span, %d ft carries 2P/L less (NEMA VE 1, extract of section 6)',
    (ft, listed) => {
      const load = 1.2;
      const point = ((listed - load) * ft) / 2;
      const at = (pointLb: number) => spanByTable(card.loadTable, load, pointLb);
      expect(at(point)).toBe(ft);
      expect(at(point + 1e-6) ?? 0).toBeLessThan(ft);
    },
  );

  test('no interpolation: 6.4 lb/ft goes to 8 ft, not 9', () => {
    expect(span({ tray: card, loadLbPerFt: 6.4 }).result).toEqual({
      maxSpanIn: 96,
      governs: 'table',
      refer: false,
      acceptance: false,
    });
  });

  test('no row carries it: null, referred, for an adopted table too', () => {
    for (const tray of [card, adopted])
      expect(span({ tray, loadLbPerFt: 34.1 }).result).toEqual({
        maxSpanIn: null,
        governs: 'table',
        refer: true,
        acceptance: false,
        why: [{ say: 'span.noRow', values: { tray: 'card-4' } }, { say: 'span.askTable' }],
      });
  });

  test('a table that the site has adopted may be accepted by', () => {
    expect(span({ tray: adopted, loadLbPerFt: 6.4 }).result).toMatchObject({
      acceptance: true,
      refer: false,
    });
    const only = loadedTray({ ...item, origins: { loadTable: 'adopted by the site' } });
    expect(only.adopted).toBe(true);
    expect(loadedTray({ ...item, origin: 'common practice' }).adopted).toBe(false);
    expect(
      loadedTray({ ...item, origin: 'adopted by the site', origins: { loadTable: 'training value' } })
        .adopted,
    ).toBe(false);
  });

  test('deflection has no part in a table', () => {
    const at = (deflectionRatio: number | null) =>
      span({ tray: card, loadLbPerFt: 6.4, deflectionRatio }).result;
    expect(at(1e6)).toEqual(at(null));
  });

  test('the working holds every row that is too long against the load, and warns of several spans', () => {
    const { steps } = span({ tray: card, loadLbPerFt: 6.4, pointLb: 8 });
    expect(steps.filter((s) => s.say === 'span.tooMuch').map((s) => s.values)).toEqual([
      { ft: '10', asked: '8', listed: '5.4' },
    ]);
    expect(steps.filter((s) => s.say === 'span.carries').map((s) => s.values)).toEqual([
      { ft: '8', asked: '8.4', listed: '8.4' },
    ]);
    expect(steps.map((s) => s.say)).toEqual(
      expect.arrayContaining(['span.simple', 'span.several', 'span.walkway', 'span.training']),
    );
  });

  test('a load below the weight of the tray itself is asked about', () => {
    const says = (loadLbPerFt: number) => span({ tray: card, loadLbPerFt }).steps.map((s) => s.say);
    expect(says(1.19)).toContain('span.lighter');
    expect(says(1.2)).not.toContain('span.lighter');
  });

  // The load is the total, tray included (our manual of the command); below the tray's own weight it is none.
  test('nor is work accepted by it, and the answer says why; at the very weight it is', () => {
    const ask = (loadLbPerFt: number) => span({ tray: adopted, loadLbPerFt }).result;
    expect(ask(1.19)).toMatchObject({
      maxSpanIn: 120,
      acceptance: false,
      refer: false,
      why: [{ say: 'span.lighter', values: { tray: 'card-4', weight: '1.2' } }],
    });
    expect(ask(1.2)).toEqual({ maxSpanIn: 120, governs: 'table', refer: false, acceptance: true });
    // A sum of decimals may fall a hair short.
    expect(ask(1.2 - 1e-12)).toMatchObject({ acceptance: true });
    expect(span({ tray: card, loadLbPerFt: 1.19 }).result).not.toHaveProperty('why');
  });

  test('more load never goes farther', () => {
    const load = fc.double({ min: 0, max: 40, noNaN: true });
    fc.assert(
      fc.property(load, load, load, (a, b, point) => {
        const [light, heavy] = [Math.min(a, b), Math.max(a, b)];
        const at = (w: number, p: number) => spanByTable(card.loadTable, w, p) ?? 0;
        expect(at(heavy, point)).toBeLessThanOrEqual(at(light, point));
        expect(at(light, point)).toBeLessThanOrEqual(at(light, 0));
      }),
    );
  });
});

const thin = { widthIn: 4, depthIn: 1.75, thicknessIn: 0.0747 };
const stout = { widthIn: 2, depthIn: 1.5, thicknessIn: 0.25 };
const estimate = (given: Omit<Extract<SpanGiven, { section: unknown }>, 'metal'> & { metal?: Metal }) =>
  span({ metal: 'steel', ...given }).result;

/** The rules of the estimate at one span, with the formulas of any textbook. */
function holdsAt(l: number, given: Extract<SpanGiven, { section: unknown }>) {
  const { yieldPsi, ePsi, poisson } = METALS[given.metal];
  const { iIn4, sLegIn3, sWebIn3 } = netOf(given.section);
  const b = given.section.depthIn - given.section.thicknessIn;
  const buckles =
    (0.43 * Math.PI ** 2 * ePsi) / (12 * (1 - poisson ** 2) * (b / given.section.thicknessIn) ** 2);
  const [w, p] = [given.loadLbPerFt / 12, given.pointLb ?? 0];
  const ratio = given.deflectionRatio === undefined ? 200 : given.deflectionRatio;
  return {
    strong:
      (w * l * l) / 8 + (p * l) / 4 <= (Math.min(yieldPsi, buckles) / 1.67) * Math.min(sLegIn3, sWebIn3),
    stiff:
      ratio === null ||
      (5 * w * l ** 4) / (384 * ePsi * iIn4) + (p * l ** 3) / (48 * ePsi * iIn4) <= l / ratio,
  };
}

describe('the estimate', () => {
  test('figures of metals (ASTM A653, B221, A240 and handbooks, from memory)', () => {
    expect(Object.entries(METALS).map(([m, f]) => [m, f.yieldPsi, f.ePsi, f.poisson])).toEqual([
      ['steel', 33_000, 29.0e6, 0.3],
      ['aluminium', 25_000, 10.0e6, 0.33],
      ['stainless', 30_000, 28.0e6, 0.3],
    ]);
  });

  test('what governs, each once, by hand', () => {
    // b/t = 1.6753/0.0747 = 22.427; Fcr = 0.43π²·29e6/(12·0.91·502.98) = 22 408 psi < 33 000; Fb = 13 418 psi;
    // S = 0.124035 in³; M = 1664.3 lb-in; L = √(8·1664.3/(20/12)) = 89.38 in.
    expect(estimate({ section: thin, loadLbPerFt: 20 })).toMatchObject({
      maxSpanIn: expect.closeTo(89.379, 2),
      governs: 'leg buckling',
      refer: true,
      acceptance: false,
    });
    // b/t = 5: yields first. Fb = 19 760 psi, with 100 lb at mid-span and nothing else.
    const { sLegIn3, sWebIn3 } = netOf(stout);
    expect(estimate({ section: stout, loadLbPerFt: 0, pointLb: 400, deflectionRatio: null })).toMatchObject({
      maxSpanIn: expect.closeTo((4 * (33_000 / 1.67) * Math.min(sLegIn3, sWebIn3)) / 400, 6),
      governs: 'bending',
    });
    // EI/200 = 29e6·0.162957/200; 5wL³/384 = that: L = 102.877 in at 20 lb/ft; a stricter ratio governs.
    expect(estimate({ section: thin, loadLbPerFt: 20, deflectionRatio: 400 })).toMatchObject({
      maxSpanIn: expect.closeTo(((384 * 29e6 * netOf(thin).iIn4) / (5 * (20 / 12) * 400)) ** (1 / 3), 6),
      governs: 'deflection',
    });
    expect(estimate({ section: thin, loadLbPerFt: 1 })).toMatchObject({ maxSpanIn: 144, governs: 'ceiling' });
    expect(estimate({ section: thin, loadLbPerFt: 0 })).toMatchObject({ maxSpanIn: 144, governs: 'ceiling' });
  });

  test('a weight beyond all measure leaves a span beyond all measure, not none: 4M/P', () => {
    const { sLegIn3, sWebIn3 } = netOf(stout);
    const allowed = (33_000 / 1.67) * Math.min(sLegIn3, sWebIn3);
    for (const loadLbPerFt of [0, 20])
      for (const pointLb of [1e150, 1e160, 1e300])
        expect(
          ((estimate({ section: stout, loadLbPerFt, pointLb }).maxSpanIn ?? 0) * (pointLb / 4)) / allowed,
        ).toBeCloseTo(1, 12);
  });

  test('lips are not counted on, holes are taken out', () => {
    const holed = { ...thin, holes: [{ diameterIn: 0.5, count: 2, in: 'legs', heightIn: 1.4 }] as const };
    const at = (section: typeof thin) => estimate({ section, loadLbPerFt: 20 }).maxSpanIn ?? 0;
    expect(at(holed)).toBeLessThan(at(thin));
    const lipped = { ...thin, lipIn: 0.4 };
    const { sLegIn3, sWebIn3 } = netOf(lipped);
    const buckles = 22_407.82;
    expect(at(lipped)).toBeCloseTo(
      Math.sqrt((8 * (buckles / 1.67) * Math.min(sLegIn3, sWebIn3)) / (20 / 12)),
      3,
    );
  });

  test('both sides of the limit: at the span it holds, a hair beyond it does not', () => {
    const any = fc.record({
      section: fc.constantFrom(thin, stout, { ...thin, lipIn: 0.4 }),
      metal: fc.constantFrom<Metal[]>('steel', 'aluminium', 'stainless'),
      loadLbPerFt: fc.double({ min: 0, max: 200, noNaN: true }),
      pointLb: fc.double({ min: 0, max: 500, noNaN: true }),
      deflectionRatio: fc.constantFrom(null, undefined, 100, 360),
    });
    fc.assert(
      fc.property(any, (given) => {
        const { maxSpanIn, governs } = span(given).result;
        const l = maxSpanIn ?? Number.NaN;
        expect(holdsAt(l * (1 - 1e-9), given)).toEqual({ strong: true, stiff: true });
        const beyond = holdsAt(l * (1 + 1e-9), given);
        if (governs === 'ceiling') expect(l).toBe(144);
        else expect(governs === 'deflection' ? beyond.stiff : beyond.strong).toBe(false);
      }),
    );
  });

  test('an estimate is never accepted by, and says why', () => {
    const { result, steps, sources } = span({ section: thin, metal: 'aluminium', loadLbPerFt: 20 });
    expect(result.why).toEqual([{ say: 'span.estimate' }, { say: 'span.askTable' }]);
    expect(steps.map((s) => s.say)).toEqual(expect.arrayContaining(['span.several', 'span.estimate']));
    expect(sources.map((s) => s.id)).toEqual([
      'statics',
      'statics',
      'aisi-s100',
      'astm-b221',
      'elastic-figures',
    ]);
  });
});
