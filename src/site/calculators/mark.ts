/** Whether a cutting mark keeps clear of the holes, and the nearest places that do. */
import { fromInches, inches } from '../../trade/length.ts';
import { mark as markOf } from '../../trade/mark.ts';
import { drawMark } from './figures/mark.ts';
import { tape, tapeAtLeast, tapeAtMost } from './measure.ts';
import { line, sum } from './sum.ts';

export const mark = sum()({
  id: 'mark',
  fields: {
    at: { kind: 'length', scale: 'feet', from: 'from 0', label: 'markSum.at' },
    firstHole: { kind: 'length', scale: 'inches', from: 'from 0', label: 'markSum.first' },
    pitch: { kind: 'length', scale: 'inches', from: 'above 0', label: 'markSum.pitch' },
    holeWidth: { kind: 'length', scale: 'inches', from: 'above 0', label: 'markSum.width' },
    clearance: {
      kind: 'length',
      scale: 'inches',
      from: 'from 0',
      label: 'markSum.clearance',
      hint: 'markSum.clearanceHint',
      optional: true,
    },
  },
  example: {
    at: fromInches(96.25),
    firstHole: fromInches(6),
    pitch: fromInches(6),
    holeWidth: fromInches(9 / 16),
    clearance: undefined,
  },
  work: markOf,
  say: ({ clear, shorterIn, longerIn }, { at }) => ({
    asked: line('markSum.asked', { at: tape(inches(at), 64) }),
    huge: clear
      ? line('markSum.clear')
      : shorterIn === null && longerIn === null
        ? line('markSum.none')
        : shorterIn === null || longerIn === null
          ? line('markSum.moveOne', {
              place: shorterIn === null ? tapeAtLeast(longerIn ?? 0, 64) : tapeAtMost(shorterIn, 64),
            })
          : line('markSum.moveTwo', {
              shorter: tapeAtMost(shorterIn, 64),
              longer: tapeAtLeast(longerIn, 64),
            }),
    more: clear ? [] : [line('markSum.move')],
  }),
  figure: drawMark,
  caption: 'markSum.caption',
});
