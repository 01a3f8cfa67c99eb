/** What is left of a cable's ampacity in tray. */
import { type AmpacityTable, ampacity as ampacityOf } from '../../trade/ampacity.ts';
import { inches } from '../../trade/length.ts';
import { editionField } from './fields.ts';
import { measure } from './measure.ts';
import { line, sum } from './sum.ts';

export const ampacity = sum<AmpacityTable>()({
  id: 'ampacity',
  fields: {
    currentCarrying: {
      kind: 'count',
      from: 1,
      label: 'ampacitySum.conductors',
      hint: 'ampacitySum.conductorsHint',
    },
    cover: {
      kind: 'length',
      scale: 'feet',
      from: 'from 0',
      label: 'ampacitySum.cover',
      hint: 'ampacitySum.coverHint',
      optional: true,
    },
    edition: editionField,
  },
  example: { currentCarrying: 7, cover: undefined, edition: 2023 },
  work: ({ currentCarrying, cover, edition }, table) =>
    ampacityOf(
      { currentCarrying, coverFt: cover === undefined ? undefined : inches(cover) / 12, edition },
      table,
    ),
  say: ({ percent, tables }, { currentCarrying }) => ({
    asked: line('ampacitySum.asked', { count: currentCarrying }),
    huge: line(percent === 100 ? 'ampacitySum.whole' : 'ampacitySum.answer', {
      percent: measure('percent', percent),
    }),
    more: [line('ampacitySum.tables', { tables: tables.join(', ') })],
  }),
});
