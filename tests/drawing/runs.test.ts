/** Views of whole runs by chance, measured: no text on a text, nothing outside the frame, whatever the run. */
import { describe, expect, test } from 'vitest';
import { pagePalette } from '../../src/drawing/palette.ts';
import { render } from '../../src/drawing/svg.ts';
import { runViews } from '../../src/drawing/views.ts';
import { inspect } from '../../src/run/inspect/inspect.ts';
import { resolveRun } from '../../src/run/resolve.ts';
import { TRADE_USUAL } from '../../src/run/usual.ts';
import { catalogue } from '../run/practice.ts';
import { randomRun } from '../run/randomRun.ts';
import { speak, tables } from '../run/tables.ts';
import { flaws } from './measure.ts';
import { forms } from './subjects.ts';

/** Enough to hold every kind of fitting, joint and end many times over. */
const SEEDS = Array.from({ length: 120 }, (_, k) => k + 1);

const given = SEEDS.map((seed) => {
  const resolved = resolveRun(randomRun(seed), catalogue, TRADE_USUAL);
  const findings =
    seed % 3 === 0 ? inspect(resolved, catalogue, tables).result.findings.slice(0, seed % 11) : [];
  return {
    seed,
    given: { resolved, tables, catalogue, findings, tags: seed % 2 === 0 ? { start: 'LAD-2' } : {} },
  };
});

describe.each(runViews.map(({ view, lay }) => [view, lay] as const))('%s', (_, lay) => {
  test.each(forms)('of any run on %s: texts apart, all inside, all finite', (form) => {
    // Paper is the desk's form but for its width.
    for (const { seed, given: one } of form === 'paper' ? given.slice(0, 40) : given) {
      const sheet = lay(one, { form, palette: pagePalette, speak });
      expect(flaws(sheet), `run ${seed}`).toEqual([]);
      if (form === 'phone') expect(sheet.width).toBe(328);
    }
  });

  test('as SVG: presentation attributes only, colours from the palette only', () => {
    for (const { given: one } of given.slice(0, 12)) {
      const how = { form: 'desk', palette: pagePalette, speak } as const;
      const { svg } = render(lay(one, how), how);
      expect(svg).not.toMatch(/style|class=|<script|href|#[0-9a-f]{3}|NaN|undefined/i);
    }
  });
});
