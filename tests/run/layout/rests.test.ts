/** What a lay-out rests on, and what exactly it proves, is said with it. */
import { expect, test } from 'vitest';
import { layout } from '../../../src/run/layout/layout.ts';
import { layoutSays } from '../../../src/run/layout/says.ts';
import { runShape } from '../../../src/schema/run.ts';
import { adoptedOf, withAdopted } from '../../../src/schema/site.ts';
import { runTablesOf } from '../../../src/schema/tradeTables.ts';
import { type Given, wall } from '../inspect/runs.ts';
import { catalogue } from '../practice.ts';
import { library, speak, tables } from '../tables.ts';

const said = (rest: Given = {}, by = tables, from = catalogue) =>
  layout(runShape.parse(wall(rest)), from, by).steps.filter(({ say }) => !say.startsWith('layout.load'));
const keys = (...of: Parameters<typeof said>) => said(...of).map(({ say }) => say);

test('its limits and its load table are training values until the site adopts its own', () => {
  expect(keys()).toEqual(expect.arrayContaining(['inspect.limits-training', 'inspect.table-training']));
  // By the run's own greatest span no load table is relied on.
  expect(keys({ limits: { maxSpan: 60 } })).not.toContain('inspect.table-training');
});

test('what the site has adopted is said by its paper', () => {
  const adopted = adoptedOf([
    {
      id: 'paper',
      document: 'Standard 7',
      by: 'A. Reyes',
      on: '2026-02-10',
      values: [
        { key: 'support-within', value: tables.limits.supportWithin.value },
        { key: 'item', of: 'card-4', value: 'all' },
      ],
    },
  ]);
  const own = runTablesOf(library.rules.values(), library.sources, adopted);
  const of = keys({}, own, withAdopted(catalogue, adopted));
  expect(of).toEqual(expect.arrayContaining(['inspect.limits-adopted', 'inspect.limits-others']));
  expect(of).not.toContain('inspect.table-training');
});

test('what is proven: at whole inches, or at the given places; splices of the tray’s own sleeve at sixteenths', () => {
  const [first] = said();
  expect(first?.say).toBe('layout.line-inches');
  expect(first === undefined ? '' : speak(first)).toMatch(/whole inches .*own sleeve at whole sixteenths/);
  const places = [{ leg: '1', at: Array.from({ length: 80 }, (_, i) => i * 6) }];
  const [placed] = said({ places });
  expect(placed?.say).toBe('layout.line-given');
  expect(placed === undefined ? '' : speak(placed)).toMatch(/given places .*own sleeve at whole sixteenths/);
  for (const key of [first?.say, placed?.say]) expect(layoutSays).toContain(key);
});
