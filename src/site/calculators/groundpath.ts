/** Whether the tray itself may be the ground path. */
import { type GroundpathTable, groundpath as groundpathOf } from '../../trade/groundpath.ts';
import { editionField } from './fields.ts';
import { measure } from './measure.ts';
import { line, sum } from './sum.ts';

export const groundpath = sum<GroundpathTable>()({
  id: 'groundpath',
  fields: {
    metal: {
      kind: 'choice',
      label: 'groundpathSum.metal',
      options: [
        { value: 'steel', label: 'metal.steel' },
        { value: 'aluminium', label: 'metal.aluminium' },
        { value: 'stainless', label: 'metal.stainless' },
      ],
    },
    deviceA: {
      kind: 'number',
      as: 'amperes',
      bounds: { above: 0 },
      label: 'groundpathSum.device',
      hint: 'groundpathSum.deviceHint',
    },
    markedAreaIn2: {
      kind: 'number',
      as: 'in2',
      bounds: { from: 0 },
      label: 'groundpathSum.marked',
      hint: 'groundpathSum.markedHint',
    },
    qualifiedService: { kind: 'truth', label: 'groundpathSum.qualified' },
    identified: { kind: 'truth', label: 'groundpathSum.identified' },
    edition: editionField,
  },
  example: {
    metal: 'aluminium',
    deviceA: 60,
    markedAreaIn2: 0.4,
    qualifiedService: true,
    identified: true,
    edition: 2023,
  },
  work: groundpathOf,
  say: ({ requiredIn2, holds, refer, table }, { deviceA, markedAreaIn2 }) => ({
    asked: line('groundpathSum.asked', { device: measure('amperes', deviceA) }),
    huge: refer
      ? line('sums.refer')
      : requiredIn2 === null
        ? line('groundpathSum.notPermitted')
        : line(holds === true ? 'groundpathSum.holds' : 'groundpathSum.short', {
            marked: measure('in2', markedAreaIn2),
            required: measure('in2', requiredIn2),
          }),
    more: refer ? [] : [line('groundpathSum.table', { table })],
  }),
});
