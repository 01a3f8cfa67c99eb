/** So many of so many. */
import { type Interval, wilson } from '../passRule/interval.ts';

/** Below so many answers a share alone would say more than is known. */
export const FEW = 30;

export interface Share {
  readonly n: number;
  readonly held: number;
  /** Of Wilson, 95 %. */
  readonly interval: Interval;
  /** Fewer than `FEW`: n and interval are said, and no share. */
  readonly few: boolean;
}

export const shareOf = (held: number, n: number): Share => ({
  n,
  held,
  interval: wilson(held, n),
  few: n < FEW,
});
