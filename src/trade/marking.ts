/** The danger notice that conductors in tray ask for above a voltage. */
import type { Answered } from './answer.ts';
import { type ByEdition, type Edition, NEWEST } from './editions.ts';
import { figure } from './figure.ts';
import { atMost } from './hair.ts';

export interface MarkingRule {
  /** Above this voltage a notice is wanted. */
  readonly aboveV: number;
  readonly spacingFt: number;
  readonly sources: ByEdition;
}

export interface MarkingGiven {
  /** Highest of any conductor in the tray, from 0. */
  readonly volts: number;
  readonly edition?: Edition | undefined;
}

export interface MarkingResult {
  readonly required: boolean;
  /** Null where no notice is wanted. */
  readonly maxSpacingFt: number | null;
}

export function marking(
  { volts, edition = NEWEST }: MarkingGiven,
  rule: MarkingRule,
): Answered<MarkingResult> {
  const required = !atMost(volts, rule.aboveV);
  const values = { volts: figure(volts), limit: figure(rule.aboveV) };
  return {
    result: { required, maxSpacingFt: required ? rule.spacingFt : null },
    steps: required
      ? [
          { say: 'marking.above', values },
          { say: 'marking.spacing', value: rule.spacingFt, unit: 'ft' },
        ]
      : [{ say: 'marking.below', values }],
    sources: [rule.sources[edition]],
  };
}
