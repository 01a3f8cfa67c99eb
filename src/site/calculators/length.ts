/** Reads a length in any form and writes it in feet and inches, inches and millimetres. */
import { layTape } from '../../drawing/tape.ts';
import { convert } from '../../trade/convert.ts';
import { DENOMINATORS, fromInches } from '../../trade/length.ts';
import { measure } from './measure.ts';
import { line, sum } from './sum.ts';

export const length = sum()({
  id: 'length',
  fields: {
    text: { kind: 'text', label: 'lengthSum.text', hint: 'lengthSum.textHint' },
    toFraction: {
      kind: 'choice',
      label: 'lengthSum.part',
      options: [
        { value: 16, label: 'lengthSum.part16' },
        { value: 8, label: 'lengthSum.part8' },
        { value: 4, label: 'lengthSum.part4' },
        { value: 2, label: 'lengthSum.part2' },
        { value: 32, label: 'lengthSum.part32' },
        { value: 64, label: 'lengthSum.part64' },
      ],
    },
  },
  example: { text: fromInches(763.4375), toFraction: 16 },
  work: ({ text, toFraction }) =>
    convert({ text, toFraction: DENOMINATORS.find((known) => known === toFraction) }),
  say: (result, { toFraction }) => ({
    huge: line('lengthSum.reads', { text: result.text }),
    more: [
      line(result.in === result.roundedIn ? 'lengthSum.exact' : 'lengthSum.rounded', {
        part: toFraction,
      }),
    ],
    rows: [
      {
        label: line('lengthSum.inches'),
        value: line('measure.in', { n: String(Number(result.in.toFixed(4))) }),
      },
      { label: line('lengthSum.feet'), value: measure('feet', result.in / 12) },
      { label: line('lengthSum.mm'), value: line('measure.mm', { n: String(Number(result.mm.toFixed(2))) }) },
    ],
  }),
  figure: (result, _given, how) => layTape({ reading: fromInches(result.roundedIn), printed: true }, how),
  caption: 'lengthSum.caption',
});
