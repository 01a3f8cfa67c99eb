/**
 * An offset: two equal bends that carry a run sideways. Exactly, and beside it the rounded figures that the trade
 * teaches for the usual angles. Rolling: sideways and up at once, worked along the straight line of both.
 */
import type { Answered, Step } from './answer.ts';
import { sine, tangent } from './degrees.ts';
import { figure } from './figure.ts';
import { OFFSET_FIGURES, TRIANGLES } from './geometrySources.ts';
import { same } from './hair.ts';
import { inches, type Ticks } from './length.ts';

export interface OffsetGiven {
  /** How far the run moves over, above 0. */
  readonly offset: Ticks;
  /** Angle of each bend in degrees, above 0 and below 90. */
  readonly angleDeg: number;
  /** How far it also moves at right angles to `offset`, from 0. */
  readonly roll?: Ticks | undefined;
}

/** The trade's rounded figures for the same offset; differences are trade less exact. */
export interface TradeOffset {
  readonly multiplier: number;
  readonly travelIn: number;
  readonly shrinkIn: number;
  readonly travelDifferenceIn: number;
  readonly shrinkDifferenceIn: number;
}

export interface OffsetResult {
  readonly trueOffsetIn: number;
  /** Along the sloping part, bend to bend. */
  readonly travelIn: number;
  /** Along the run, bend to bend. */
  readonly advanceIn: number;
  /** Travel over true offset. */
  readonly multiplier: number;
  /** Travel less advance: how much shorter the run comes out. */
  readonly shrinkIn: number;
  /** Null at an angle that the trade has no figure for. */
  readonly trade: TradeOffset | null;
}

/** Angle of the bends, what the true offset is multiplied by, what each inch of it shortens the run. */
const TRADE = [
  { angleDeg: 10, multiplier: 6, shrink: 1 / 16, part: '1/16' },
  { angleDeg: 22.5, multiplier: 2.6, shrink: 3 / 16, part: '3/16' },
  { angleDeg: 30, multiplier: 2, shrink: 1 / 4, part: '1/4' },
  { angleDeg: 45, multiplier: 1.4, shrink: 3 / 8, part: '3/8' },
  { angleDeg: 60, multiplier: 1.2, shrink: 1 / 2, part: '1/2' },
] as const;

export function offset({ offset: over, angleDeg, roll }: OffsetGiven): Answered<OffsetResult> {
  const [a, b] = [inches(over), roll === undefined ? 0 : inches(roll)];
  const trueOffsetIn = b === 0 ? a : Math.sqrt(a * a + b * b);
  const multiplier = 1 / sine(angleDeg);
  const travelIn = trueOffsetIn * multiplier;
  const advanceIn = trueOffsetIn / tangent(angleDeg);
  // The same as travel less advance, without the difference of two nearly equal numbers at small angles.
  const shrinkIn = trueOffsetIn * tangent(angleDeg / 2);
  const row = TRADE.find((t) => same(t.angleDeg, angleDeg));
  const trade = row === undefined ? null : tradeOf(row, { trueOffsetIn, travelIn, shrinkIn });

  const shown = { angle: figure(angleDeg), offset: figure(trueOffsetIn) };
  const steps: Step[] = [
    b === 0
      ? { say: 'offset.straight', value: trueOffsetIn, unit: 'in' }
      : {
          say: 'offset.rolling',
          values: { offset: figure(a), roll: figure(b) },
          value: trueOffsetIn,
          unit: 'in',
        },
    { say: 'offset.multiplier', values: shown, value: multiplier },
    {
      say: 'offset.travel',
      values: { ...shown, multiplier: figure(multiplier) },
      value: travelIn,
      unit: 'in',
    },
    { say: 'offset.advance', values: shown, value: advanceIn, unit: 'in' },
    {
      say: 'offset.shrink',
      values: { travel: figure(travelIn), advance: figure(advanceIn) },
      value: shrinkIn,
      unit: 'in',
    },
    ...(row === undefined || trade === null
      ? [{ say: 'offset.noTrade', values: { angle: shown.angle } }]
      : tradeSteps(row, trade, shown.offset)),
    { say: 'offset.measured' },
  ];
  return {
    result: { trueOffsetIn, travelIn, advanceIn, multiplier, shrinkIn, trade },
    steps,
    sources: trade === null ? [TRIANGLES] : [TRIANGLES, OFFSET_FIGURES],
  };
}

type TradeRow = (typeof TRADE)[number];

function tradeOf(
  { multiplier, shrink }: TradeRow,
  exact: { readonly trueOffsetIn: number; readonly travelIn: number; readonly shrinkIn: number },
): TradeOffset {
  const [travelIn, shrinkIn] = [exact.trueOffsetIn * multiplier, exact.trueOffsetIn * shrink];
  return {
    multiplier,
    travelIn,
    shrinkIn,
    travelDifferenceIn: travelIn - exact.travelIn,
    shrinkDifferenceIn: shrinkIn - exact.shrinkIn,
  };
}

function tradeSteps(row: TradeRow, trade: TradeOffset, offset: string): Step[] {
  const { travelIn, shrinkIn, travelDifferenceIn, shrinkDifferenceIn } = trade;
  return [
    {
      say: 'offset.tradeTravel',
      values: { offset, multiplier: row.multiplier },
      value: travelIn,
      unit: 'in',
    },
    { say: 'offset.tradeShrink', values: { offset, part: row.part }, value: shrinkIn, unit: 'in' },
    {
      say: 'offset.difference',
      values: { travel: signed(travelDifferenceIn), shrink: signed(shrinkDifferenceIn) },
    },
  ];
}

/** With its sign, a true minus before what is below 0. */
function signed(n: number): string {
  const text = figure(Math.abs(n));
  return text === '0' ? text : `${n < 0 ? '−' : '+'}${text}`;
}
