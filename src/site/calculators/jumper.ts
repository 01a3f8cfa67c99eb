/** The size of a bonding jumper by the largest device on its load side. */
import { type JumperTable, jumper as jumperOf } from '../../trade/jumper.ts';
import { editionField } from './fields.ts';
import { measure } from './measure.ts';
import { line, sum } from './sum.ts';

export const jumper = sum<JumperTable>()({
  id: 'jumper',
  fields: {
    devices: {
      kind: 'rows',
      label: 'jumperSum.devices',
      hint: 'jumperSum.devicesHint',
      row: 'jumperSum.device',
      add: 'jumperSum.add',
      takeOut: 'jumperSum.takeOut',
      least: 1,
      fresh: {},
      fields: { a: { kind: 'number', as: 'amperes', bounds: { above: 0 }, label: 'jumperSum.amperes' } },
    },
    metal: {
      kind: 'choice',
      label: 'jumperSum.metal',
      options: [
        { value: 'copper', label: 'metal.copper' },
        { value: 'aluminium', label: 'metal.aluminium' },
      ],
    },
    edition: editionField,
  },
  example: { devices: [{ a: 20 }, { a: 60 }], metal: 'copper', edition: 2023 },
  work: ({ devices, metal, edition }, table) =>
    jumperOf({ devicesA: devices.map(({ a }) => a), metal, edition }, table),
  say: ({ size, rowA, table }, { devices, metal }) => ({
    asked: line('jumperSum.asked', { largest: measure('amperes', Math.max(...devices.map(({ a }) => a))) }),
    huge: size === null ? line('sums.refer') : line(`jumperSum.${metal}`, { size }),
    more: rowA === null ? [] : [line('jumperSum.row', { table, row: measure('amperes', rowA) })],
  }),
});
