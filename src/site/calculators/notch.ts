/** The V that a leg needs where the channel is bent about its floor. */
import { notch as notchOf } from '../../trade/notch.ts';
import { drawNotch } from './figures/notch.ts';
import { measure, tape } from './measure.ts';
import { line, sum } from './sum.ts';

export const notch = sum()({
  id: 'notch',
  fields: {
    depthIn: { kind: 'size', bounds: { above: 0 }, label: 'notchSum.depth', hint: 'notchSum.depthHint' },
    bendDeg: { kind: 'number', as: 'degrees', bounds: { above: 0, below: 180 }, label: 'notchSum.bend' },
  },
  example: { depthIn: 1.75, bendDeg: 30 },
  work: notchOf,
  say: ({ edgeWidthIn }, { depthIn, bendDeg }) => ({
    asked: line('notchSum.asked', { depth: measure('inches', depthIn), bend: measure('degrees', bendDeg) }),
    huge: line('notchSum.answer', { width: tape(edgeWidthIn) }),
    more: [line('notchSum.side', { side: tape(edgeWidthIn / 2, 32) })],
    rows: [
      { label: line('notchSum.width'), value: measure('inches', edgeWidthIn) },
      { label: line('notchSum.half'), value: measure('inches', edgeWidthIn / 2) },
    ],
  }),
  figure: drawNotch,
  caption: 'notchSum.caption',
});
