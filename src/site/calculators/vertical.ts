/** What each load-bearing support of a vertical drop carries. */
import { fromInches, inches } from '../../trade/length.ts';
import { vertical as verticalOf } from '../../trade/vertical.ts';
import { measure, tape } from './measure.ts';
import { line, sum } from './sum.ts';

export const vertical = sum()({
  id: 'vertical',
  fields: {
    drop: { kind: 'length', scale: 'feet', from: 'above 0', label: 'verticalSum.drop' },
    lbPerFt: {
      kind: 'number',
      as: 'lbPerFt',
      bounds: { from: 0 },
      label: 'verticalSum.load',
      hint: 'verticalSum.loadHint',
    },
    loadSupports: {
      kind: 'count',
      from: 1,
      label: 'verticalSum.supports',
      hint: 'verticalSum.supportsHint',
    },
  },
  example: { drop: fromInches(18 * 12), lbPerFt: 3.5, loadSupports: 2 },
  work: ({ drop, lbPerFt, loadSupports }) => verticalOf({ dropFt: inches(drop) / 12, lbPerFt, loadSupports }),
  say: ({ lb }, { drop, lbPerFt, loadSupports }) => ({
    asked: line('verticalSum.asked', { drop: tape(inches(drop)), load: measure('lbPerFt', lbPerFt) }),
    huge: line(loadSupports === 1 ? 'verticalSum.one' : 'verticalSum.each', { lb: measure('lb', lb) }),
    rows: [
      { label: line('verticalSum.whole'), value: measure('lb', lb * loadSupports) },
      { label: line('verticalSum.share'), value: measure('lb', lb) },
    ],
  }),
});
