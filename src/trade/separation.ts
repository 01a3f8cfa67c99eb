/** The barrier between cables of high and low voltage in one tray. */
import type { Answered } from './answer.ts';
import { type ByEdition, type Edition, NEWEST } from './editions.ts';
import { figure } from './figure.ts';
import { atMost } from './hair.ts';

export interface SeparationRule {
  readonly aboveV: number;
  readonly sources: ByEdition;
}

export interface SeparationGiven {
  /** Of the cables that share the tray: at least one, each from 0. */
  readonly volts: readonly number[];
  /** The cables above the threshold are Type MC. */
  readonly mc: boolean;
  readonly edition?: Edition | undefined;
}

export interface SeparationResult {
  readonly barrier: boolean;
  readonly thresholdV: number;
}

export function separation(
  { volts, mc, edition = NEWEST }: SeparationGiven,
  rule: SeparationRule,
): Answered<SeparationResult> {
  const high = volts.filter((v) => !atMost(v, rule.aboveV)).length;
  const mixed = high > 0 && high < volts.length;
  const barrier = mixed && !mc;
  const values = { limit: figure(rule.aboveV) };
  return {
    result: { barrier, thresholdV: rule.aboveV },
    steps: [
      { say: mixed ? 'separation.mixed' : high > 0 ? 'separation.allAbove' : 'separation.allBelow', values },
      ...(mixed ? [{ say: mc ? 'separation.mc' : 'separation.barrier' }] : []),
      { say: 'separation.signal' },
    ],
    sources: [rule.sources[edition]],
  };
}
