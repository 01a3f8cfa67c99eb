/** One weight at mid-span as a load along the span. */
import { equivalent as equivalentOf } from '../../trade/equivalent.ts';
import { fromInches, inches } from '../../trade/length.ts';
import { measure, tape } from './measure.ts';
import { line, sum } from './sum.ts';

export const equivalent = sum()({
  id: 'equivalent',
  fields: {
    staticLb: { kind: 'number', as: 'lb', bounds: { from: 0 }, label: 'equivalentSum.weight' },
    span: { kind: 'length', scale: 'feet', from: 'above 0', label: 'equivalentSum.span' },
    otherLbPerFt: {
      kind: 'number',
      as: 'lbPerFt',
      bounds: { from: 0 },
      label: 'equivalentSum.other',
      hint: 'equivalentSum.otherHint',
    },
  },
  example: { staticLb: 12, span: fromInches(72), otherLbPerFt: 3.5 },
  work: ({ staticLb, span, otherLbPerFt }) =>
    equivalentOf({ staticLb, spanFt: inches(span) / 12, otherLbPerFt }),
  say: ({ equivalentLbPerFt, totalLbPerFt }, { staticLb, span }) => ({
    asked: line('equivalentSum.asked', { weight: measure('lb', staticLb), span: tape(inches(span)) }),
    huge: line('equivalentSum.answer', { total: measure('lbPerFt', totalLbPerFt) }),
    more: [line('equivalentSum.use')],
    rows: [
      { label: line('equivalentSum.asLoad'), value: measure('lbPerFt', equivalentLbPerFt) },
      { label: line('equivalentSum.total'), value: measure('lbPerFt', totalLbPerFt) },
    ],
  }),
});
