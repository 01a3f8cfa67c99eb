/** A single weight at mid-span as a uniform load: 2P/L makes the same moment, since PL/4 = wL²/8. */
import type { Answered } from './answer.ts';
import { figure } from './figure.ts';
import { CONCENTRATED } from './mechanicsSources.ts';

export interface EquivalentGiven {
  /** From 0. */
  readonly staticLb: number;
  /** Above 0. */
  readonly spanFt: number;
  /** Cables, tray and whatever else lies along the span; from 0. */
  readonly otherLbPerFt: number;
}

export interface EquivalentResult {
  readonly equivalentLbPerFt: number;
  readonly totalLbPerFt: number;
}

/**
 * The uniform load that bends a simple span as much as one weight at its middle does: 2 · P / L, and with all else on it.
 *
 * @param given  lb and lb/ft from 0, ft above 0, which the input's shape sees to (schema/mechanicsInputs.ts)
 * @returns      lb/ft, unrounded; alike in greatest moment, not in deflection
 * @throws       nothing
 * Source: CONCENTRATED in mechanicsSources.ts.
 */
export function equivalent({ staticLb, spanFt, otherLbPerFt }: EquivalentGiven): Answered<EquivalentResult> {
  const equivalentLbPerFt = (2 * staticLb) / spanFt;
  const totalLbPerFt = equivalentLbPerFt + otherLbPerFt;
  return {
    result: { equivalentLbPerFt, totalLbPerFt },
    steps: [
      {
        say: 'equivalent.weight',
        values: { weight: figure(staticLb), span: figure(spanFt) },
        value: equivalentLbPerFt,
        unit: 'lb/ft',
      },
      {
        say: 'equivalent.total',
        values: { equivalent: figure(equivalentLbPerFt), other: figure(otherLbPerFt) },
        value: totalLbPerFt,
        unit: 'lb/ft',
      },
      { say: 'equivalent.same' },
      { say: 'equivalent.walkway' },
    ],
    sources: [CONCENTRATED],
  };
}
