/** A mitred turn: how far the short wall is cut back, and the angle off square. */
import { mitre as mitreOf } from '../../trade/mitre.ts';
import { drawMitre } from './figures/mitre.ts';
import { measure, tape } from './measure.ts';
import { line, sum } from './sum.ts';

export const mitre = sum()({
  id: 'mitre',
  fields: {
    widthIn: { kind: 'size', bounds: { above: 0 }, label: 'mitreSum.width', hint: 'mitreSum.widthHint' },
    turnDeg: { kind: 'number', as: 'degrees', bounds: { above: 0, below: 180 }, label: 'mitreSum.turn' },
  },
  example: { widthIn: 4.25, turnDeg: 45 },
  work: mitreOf,
  say: ({ cutBackIn, angleDeg }, { widthIn, turnDeg }) => ({
    asked: line('mitreSum.asked', { width: measure('inches', widthIn), turn: measure('degrees', turnDeg) }),
    huge: line('mitreSum.answer', { back: tape(cutBackIn) }),
    more: [line('mitreSum.each', { angle: measure('degrees', angleDeg) })],
    rows: [
      { label: line('mitreSum.back'), value: measure('inches', cutBackIn) },
      { label: line('mitreSum.angle'), value: measure('degrees', angleDeg) },
    ],
  }),
  figure: drawMitre,
  caption: 'mitreSum.caption',
});
