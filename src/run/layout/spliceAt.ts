/** Where a splice may stand within a span: in the outer quarter at either end, and its sleeve clear of the strut. */
import type { SpliceRule } from './line.ts';

/** No such place. */
export const NOWHERE = Number.NEGATIVE_INFINITY;
/** Takes up what a share that is no power of two loses as a floating number; far below a tick. */
const SHARE_LOSS = 1e-6;

/**
 * Farthest place for a splice between two neighbouring supports, not beyond `cap`; `NOWHERE` where there is none.
 * The farthest one serves best: all that is asked of it later is that the next piece be not too long.
 */
export function lastSplice(rule: SpliceRule, from: number, to: number, cap: number): number {
  const { length, grain } = rule;
  const reach = (to - from) * rule.share + SHARE_LOSS;
  const half = length / 2;
  if (reach < half) return NOWHERE;
  const capped = Math.floor(cap / grain) * grain;
  const far = Math.min(capped, Math.floor((to - half) / grain) * grain);
  if (far >= to - reach) return far;
  const near = Math.min(capped, Math.floor((from + reach) / grain) * grain);
  return near >= from + half ? near : NOWHERE;
}
