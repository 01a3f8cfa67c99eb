/** What each load-bearing support of a vertical drop carries. */
import type { Answered } from './answer.ts';
import { figure } from './figure.ts';
import { WEIGHTS } from './mechanicsSources.ts';

export interface VerticalGiven {
  /** Above 0. */
  readonly dropFt: number;
  /** Tray and everything that hangs on it; from 0. */
  readonly lbPerFt: number;
  /** Supports that bear weight; guides do not count. From 1. */
  readonly loadSupports: number;
}

export interface VerticalResult {
  readonly lb: number;
}

/**
 * The whole weight of a drop, shared alike by the supports that bear weight.
 *
 * @param given  ft above 0, lb/ft from 0, a whole count from 1, which the input's shape sees to (schema/mechanicsInputs.ts)
 * @returns      lb on each, unrounded; alike only where the supports give alike, which the working says
 * @throws       nothing
 * Source: WEIGHTS in mechanicsSources.ts.
 */
export function vertical({ dropFt, lbPerFt, loadSupports }: VerticalGiven): Answered<VerticalResult> {
  const whole = dropFt * lbPerFt;
  const lb = whole / loadSupports;
  return {
    result: { lb },
    steps: [
      {
        say: 'vertical.whole',
        values: { drop: figure(dropFt), load: figure(lbPerFt) },
        value: whole,
        unit: 'lb',
      },
      {
        say: 'vertical.each',
        values: { whole: figure(whole), supports: loadSupports },
        value: lb,
        unit: 'lb',
      },
      { say: loadSupports === 1 ? 'vertical.one' : 'vertical.several' },
      { say: 'vertical.engineer' },
    ],
    sources: [WEIGHTS],
  };
}
