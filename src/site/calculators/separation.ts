/** Whether cables of high and low voltage in one tray need a barrier between them. */
import { type SeparationRule, separation as separationOf } from '../../trade/separation.ts';
import { editionField } from './fields.ts';
import { measure } from './measure.ts';
import { line, sum } from './sum.ts';

export const separation = sum<SeparationRule>()({
  id: 'separation',
  fields: {
    cables: {
      kind: 'rows',
      label: 'separationSum.cables',
      row: 'separationSum.cable',
      add: 'separationSum.add',
      takeOut: 'separationSum.takeOut',
      least: 1,
      fresh: {},
      fields: { v: { kind: 'number', as: 'volts', bounds: { from: 0 }, label: 'separationSum.volts' } },
    },
    mc: { kind: 'truth', label: 'separationSum.mc' },
    edition: editionField,
  },
  example: { cables: [{ v: 480 }, { v: 24 }], mc: false, edition: 2023 },
  work: ({ cables, mc, edition }, rule) =>
    separationOf({ volts: cables.map(({ v }) => v), mc, edition }, rule),
  say: ({ barrier, thresholdV }, { cables }) => ({
    asked: line('separationSum.asked', { count: cables.length }),
    huge: line(barrier ? 'separationSum.barrier' : 'separationSum.none'),
    more: [line('separationSum.threshold', { volts: measure('volts', thresholdV) })],
  }),
});
