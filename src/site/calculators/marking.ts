/** The danger notice that conductors in tray ask for above a voltage. */
import { type MarkingRule, marking as markingOf } from '../../trade/marking.ts';
import { editionField } from './fields.ts';
import { measure } from './measure.ts';
import { line, sum } from './sum.ts';

export const marking = sum<MarkingRule>()({
  id: 'marking',
  fields: {
    volts: {
      kind: 'number',
      as: 'volts',
      bounds: { from: 0 },
      label: 'markingSum.volts',
      hint: 'markingSum.hint',
    },
    edition: editionField,
  },
  example: { volts: 480, edition: 2023 },
  work: markingOf,
  say: ({ required, maxSpacingFt }, { volts }) => ({
    asked: line('markingSum.asked', { volts: measure('volts', volts) }),
    huge:
      required && maxSpacingFt !== null
        ? line('markingSum.required', { spacing: measure('feet', maxSpacingFt) })
        : line('markingSum.none'),
  }),
});
