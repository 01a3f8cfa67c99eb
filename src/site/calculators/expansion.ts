/** How far apart expansion joints may stand, and how wide one is set at the metal's temperature now. */
import { type ExpansionTable, expansion as expansionOf } from '../../trade/expansion.ts';
import { inches } from '../../trade/length.ts';
import { drawGap } from './figures/gap.ts';
import { degreesApart, measure, tape, temperature } from './measure.ts';
import { type Clash, line, sum } from './sum.ts';

export const expansion = sum<ExpansionTable>()({
  id: 'expansion',
  fields: {
    metal: {
      kind: 'choice',
      label: 'expansionSum.metal',
      options: [
        { value: 'steel', label: 'metal.steel' },
        { value: 'aluminium', label: 'metal.aluminium' },
        { value: 'stainless 304', label: 'metal.stainless304' },
        { value: 'stainless 316', label: 'metal.stainless316' },
      ],
    },
    lowF: { kind: 'temperature', label: 'expansionSum.low' },
    highF: { kind: 'temperature', label: 'expansionSum.high' },
    installF: { kind: 'temperature', label: 'expansionSum.install', hint: 'expansionSum.installHint' },
    length: {
      kind: 'length',
      scale: 'feet',
      from: 'above 0',
      label: 'expansionSum.length',
      hint: 'expansionSum.lengthHint',
      optional: true,
    },
    movementIn: {
      kind: 'size',
      bounds: { above: 0 },
      label: 'expansionSum.movement',
      hint: 'expansionSum.movementHint',
      optional: true,
    },
    movesLength: {
      kind: 'length',
      scale: 'feet',
      from: 'above 0',
      label: 'expansionSum.moves',
      hint: 'expansionSum.movesHint',
      optional: true,
    },
    movesBy: { kind: 'temperature', apart: true, label: 'expansionSum.movesBy', optional: true },
  },
  example: {
    metal: 'aluminium',
    lowF: -20,
    highF: 105,
    installF: 60,
    length: undefined,
    movementIn: undefined,
    movesLength: undefined,
    movesBy: undefined,
  },
  check: ({ lowF, highF, movesLength, movesBy }) => {
    const clashes: Clash[] = [];
    if (highF < lowF) clashes.push(['highF', line('expansionSum.exchanged')]);
    if (movesLength !== undefined && movesBy === undefined)
      clashes.push(['movesBy', line('expansionSum.both')]);
    if (movesLength === undefined && movesBy !== undefined)
      clashes.push(['movesLength', line('expansionSum.both')]);
    return clashes;
  },
  work: ({ metal, lowF, highF, installF, length, movementIn, movesLength, movesBy }, table) =>
    expansionOf(
      {
        metal,
        lowF,
        highF,
        installF,
        movementIn,
        lengthFt: length === undefined ? undefined : inches(length) / 12,
        movementOf:
          movesLength === undefined || movesBy === undefined
            ? undefined
            : { lengthFt: inches(movesLength) / 12, dF: movesBy },
      },
      table,
    ),
  say: ({ maxSpacingFt, tableFt, segments, gapIn, movedIn }, { installF, lowF, highF, length }) => ({
    asked: line('expansionSum.asked', { now: temperature(installF) }),
    huge: gapIn === null ? line('sums.refer') : line('expansionSum.answer', { gap: tape(gapIn) }),
    more: [
      ...(maxSpacingFt === null
        ? []
        : [line('expansionSum.apart', { spacing: measure('feet', Math.floor(maxSpacingFt * 10) / 10) })]),
      ...(segments === null || length === undefined
        ? []
        : [line('expansionSum.parts', { length: tape(inches(length)), segments })]),
    ],
    rows: [
      { label: line('expansionSum.range'), value: degreesApart(highF - lowF) },
      ...(gapIn === null ? [] : [{ label: line('expansionSum.gap'), value: measure('inches', gapIn) }]),
      ...(maxSpacingFt === null
        ? []
        : [{ label: line('expansionSum.spacing'), value: measure('feet', maxSpacingFt) }]),
      ...(tableFt === null ? [] : [{ label: line('expansionSum.table'), value: measure('feet', tableFt) }]),
      ...(segments === null ? [] : [{ label: line('expansionSum.segments'), value: String(segments) }]),
      ...(movedIn === null
        ? []
        : [
            {
              label: line(movedIn < 0 ? 'expansionSum.shorter' : 'expansionSum.longer'),
              value: measure('inches', Math.abs(movedIn)),
            },
          ]),
    ],
  }),
  figure: drawGap,
  caption: 'expansionSum.caption',
});
