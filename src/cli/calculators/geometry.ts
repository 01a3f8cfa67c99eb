/** Offsets, mitres, notches, arcs. */
import { arcInput, mitreInput, notchInput, offsetInput } from '../../schema/geometryInputs.ts';
import { arc } from '../../trade/arc.ts';
import { mitre } from '../../trade/mitre.ts';
import { notch } from '../../trade/notch.ts';
import { offset } from '../../trade/offset.ts';
import { type Calculator, calculator } from '../calculator.ts';

export const geometry: readonly Calculator[] = [
  calculator(
    'offset',
    'an offset by two equal bends, rolling too: exactly, and by the rounded figures of the trade',
    offsetInput,
    offset,
    [
      ['trueOffsetIn', 'along the straight line of offset and roll'],
      [
        'travelIn, advanceIn, multiplier',
        'bend to bend along the slope and along the run; travel over true offset',
      ],
      ['shrinkIn', 'travel less advance'],
      [
        'trade',
        'multiplier travelIn shrinkIn of the trade, travelDifferenceIn shrinkDifferenceIn (trade less exact); null but at 10, 22.5, 30, 45, 60 degrees',
      ],
    ],
  ),
  calculator('mitre', 'how far each end of a mitred turn is cut back', mitreInput, mitre, [
    ['cutBackIn', 'the short wall behind the long one'],
    ['angleDeg', 'of the cut, off square'],
  ]),
  calculator('notch', 'the notch in the legs of a channel bent about its web', notchInput, notch, [
    ['edgeWidthIn', "full width at the leg's edge; the point is at the web"],
  ]),
  calculator('arc', 'lengths along a curved fitting', arcInput, arc, [
    ['insideIn, centreIn, outsideIn', 'along the inner wall, the centre line, the outer wall'],
    ['tangentIn', 'from the corner of the centre lines to the end of the curve'],
  ]),
];
