/** Lengths along a curved fitting. */
import { arc as arcOf } from '../../trade/arc.ts';
import { drawArc } from './figures/arc.ts';
import { measure, tape } from './measure.ts';
import { line, sum } from './sum.ts';

export const arc = sum()({
  id: 'arc',
  fields: {
    insideRadiusIn: { kind: 'size', bounds: { from: 0 }, label: 'arcSum.radius', hint: 'arcSum.radiusHint' },
    widthIn: { kind: 'size', bounds: { above: 0 }, label: 'arcSum.width' },
    turnDeg: { kind: 'number', as: 'degrees', bounds: { above: 0, below: 180 }, label: 'arcSum.turn' },
  },
  example: { insideRadiusIn: 12, widthIn: 4, turnDeg: 90 },
  work: arcOf,
  say: ({ insideIn, centreIn, outsideIn, tangentIn }, { insideRadiusIn, widthIn, turnDeg }) => ({
    asked: line('arcSum.asked', {
      turn: measure('degrees', turnDeg),
      radius: measure('inches', insideRadiusIn),
      width: measure('inches', widthIn),
    }),
    huge: line('arcSum.answer', { centre: tape(centreIn) }),
    more: [line('arcSum.corner', { tangent: tape(tangentIn) })],
    rows: [
      { label: line('arcSum.inside'), value: tape(insideIn) },
      { label: line('arcSum.centre'), value: tape(centreIn) },
      { label: line('arcSum.outside'), value: tape(outsideIn) },
      { label: line('arcSum.tangent'), value: tape(tangentIn) },
    ],
  }),
  figure: drawArc,
  caption: 'arcSum.caption',
});
