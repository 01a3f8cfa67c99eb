/** The tightest bend that a cable may take. */
import { type RadiusTable, radius as radiusOf } from '../../trade/radius.ts';
import { editionField } from './fields.ts';
import { drawBend } from './figures/bend.ts';
import { measure, tapeAtLeast } from './measure.ts';
import { line, sum } from './sum.ts';

export const radius = sum<RadiusTable>()({
  id: 'radius',
  fields: {
    cable: {
      kind: 'choice',
      label: 'radiusSum.cable',
      options: [
        { value: 'TC', label: 'radiusSum.tc' },
        { value: 'MC interlocked', label: 'radiusSum.mcInterlocked' },
        { value: 'MC smooth', label: 'radiusSum.mcSmooth' },
        { value: 'MC shielded', label: 'radiusSum.mcShielded' },
        { value: 'ITC', label: 'radiusSum.itc' },
        { value: 'PLTC', label: 'radiusSum.pltc' },
        { value: 'over 1000 V', label: 'radiusSum.over1000' },
      ],
    },
    odIn: { kind: 'size', bounds: { above: 0 }, label: 'radiusSum.od' },
    shielded: {
      kind: 'truth',
      label: 'radiusSum.shielded',
      only: { field: 'cable', is: ['TC', 'over 1000 V'] },
    },
    conductorOdIn: {
      kind: 'size',
      bounds: { above: 0 },
      label: 'radiusSum.conductor',
      hint: 'radiusSum.conductorHint',
      only: { field: 'cable', is: ['MC shielded', 'over 1000 V'] },
      optional: true,
    },
    edition: editionField,
  },
  example: { cable: 'TC', odIn: 0.72, shielded: false, conductorOdIn: undefined, edition: 2023 },
  check: ({ cable, odIn, conductorOdIn }) =>
    cable === 'MC shielded' && conductorOdIn === undefined
      ? [['conductorOdIn', line('radiusSum.needsConductor')]]
      : conductorOdIn !== undefined && conductorOdIn > odIn + 1e-9
        ? [['conductorOdIn', line('radiusSum.thicker')]]
        : [],
  work: radiusOf,
  say: ({ multiple, radiusIn, table }, { cable, odIn }) => ({
    asked: line('radiusSum.asked', { cable, od: measure('inches', odIn) }),
    huge:
      radiusIn === null ? line('sums.refer') : line('radiusSum.answer', { radius: tapeAtLeast(radiusIn) }),
    more:
      multiple === null || table === null
        ? []
        : [line('radiusSum.by', { multiple, table }), line('radiusSum.inner')],
    rows: radiusIn === null ? [] : [{ label: line('radiusSum.exactly'), value: measure('inches', radiusIn) }],
  }),
  figure: drawBend,
  caption: 'radiusSum.caption',
});
