/** How far cables may cross open, without tray under them. */
import { inches, readLength } from '../../trade/length.ts';
import { type OpenGapRule, transition as transitionOf } from '../../trade/transition.ts';
import { editionField } from './fields.ts';
import { measure, tape } from './measure.ts';
import { line, sum } from './sum.ts';

export const transition = sum<OpenGapRule>()({
  id: 'transition',
  fields: {
    gap: { kind: 'length', scale: 'feet', from: 'from 0', label: 'transitionSum.gap' },
    secured: { kind: 'truth', label: 'transitionSum.secured' },
    guarded: { kind: 'truth', label: 'transitionSum.guarded' },
    edition: editionField,
  },
  example: { gap: readLength("4'-6"), secured: true, guarded: true, edition: 2023 },
  work: ({ gap, secured, guarded, edition }, rule) =>
    transitionOf({ gapFt: inches(gap) / 12, secured, guarded, edition }, rule),
  say: ({ holds, limitFt }, { gap, secured, guarded }) => ({
    asked: line('transitionSum.asked', { gap: tape(inches(gap)) }),
    huge:
      holds === null
        ? line('sums.refer')
        : holds
          ? line('transitionSum.holds')
          : line(inches(gap) > limitFt * 12 ? 'transitionSum.tooLong' : 'transitionSum.notYet'),
    more:
      holds === null
        ? []
        : [
            line('transitionSum.limit', { limit: measure('feet', limitFt) }),
            ...(secured ? [] : [line('transitionSum.loose')]),
            ...(guarded ? [] : [line('transitionSum.open')]),
          ],
  }),
});
