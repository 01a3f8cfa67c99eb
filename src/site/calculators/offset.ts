/** An offset or a rolling offset: travel, advance and shrink, exactly, beside the trade's rounded figures. */
import { fromInches, inches } from '../../trade/length.ts';
import { offset as offsetOf } from '../../trade/offset.ts';
import { drawOffset } from './figures/offset.ts';
import { measure, tape } from './measure.ts';
import { line, sum } from './sum.ts';

export const offset = sum()({
  id: 'offset',
  fields: {
    offset: { kind: 'length', scale: 'inches', from: 'above 0', label: 'offsetSum.offset' },
    angleDeg: {
      kind: 'number',
      as: 'degrees',
      bounds: { above: 0, below: 90 },
      label: 'offsetSum.angle',
      hint: 'offsetSum.angleHint',
    },
    roll: {
      kind: 'length',
      scale: 'inches',
      from: 'from 0',
      label: 'offsetSum.roll',
      hint: 'offsetSum.rollHint',
      optional: true,
    },
  },
  example: { offset: fromInches(14), angleDeg: 45, roll: undefined },
  work: offsetOf,
  say: ({ trueOffsetIn, travelIn, advanceIn, shrinkIn, multiplier, trade }, { angleDeg, offset, roll }) => {
    const rolled = roll === undefined ? 0 : inches(roll);
    return {
      asked: line(rolled === 0 ? 'offsetSum.asked' : 'offsetSum.askedRolling', {
        offset: tape(inches(offset)),
        roll: tape(rolled),
        angle: measure('degrees', angleDeg),
      }),
      huge: line('offsetSum.answer', { travel: tape(travelIn), shrink: tape(shrinkIn) }),
      more:
        trade === null
          ? [line('offsetSum.noTrade')]
          : [
              line(trade.shrinkDifferenceIn < 0 ? 'offsetSum.tradeShort' : 'offsetSum.tradeLong', {
                shrink: tape(trade.shrinkIn),
                off: tape(Math.abs(trade.shrinkDifferenceIn)),
              }),
            ],
      rows: [
        ...(rolled === 0 ? [] : [{ label: line('offsetSum.true'), value: tape(trueOffsetIn) }]),
        { label: line('offsetSum.travel'), value: tape(travelIn) },
        { label: line('offsetSum.advance'), value: tape(advanceIn) },
        { label: line('offsetSum.shrink'), value: tape(shrinkIn) },
        { label: line('offsetSum.multiplier'), value: measure('plain', multiplier) },
        ...(trade === null
          ? []
          : [
              {
                label: line('offsetSum.tradeTravel', { multiplier: trade.multiplier }),
                value: tape(trade.travelIn),
              },
              { label: line('offsetSum.tradeShrink'), value: tape(trade.shrinkIn) },
            ]),
      ],
    };
  },
  figure: drawOffset,
  caption: 'offsetSum.caption',
});
