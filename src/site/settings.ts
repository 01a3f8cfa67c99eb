/** How figures are shown on this device, and which edition of the code it begins with. What keeps it: device/settings.ts. */
import { EDITIONS, type Edition, NEWEST } from '../trade/editions.ts';

export const metricWays = ['none', 'beside', 'instead'] as const;
export const degreeWays = ['F', 'C'] as const;

export interface Settings {
  /** Metric measures in answers: none, beside the trade's own, or instead of them. */
  readonly metric: (typeof metricWays)[number];
  readonly degrees: (typeof degreeWays)[number];
  readonly edition: Edition;
}

/** As a device keeps them: without an edition of its own it goes by the works'. */
export type Kept = Omit<Settings, 'edition'> & { readonly edition: Edition | null };

/** What holds on a device that keeps nothing. */
export const nothingKept: Kept = { metric: 'none', degrees: 'F', edition: null };

/** What holds on a device, in a works that goes by an edition. */
export const settingsOf = (kept: Kept, works: Edition): Settings => ({
  ...kept,
  edition: kept.edition ?? works,
});

/** What every page is built with, where the works has adopted no edition. */
export const usual: Settings = settingsOf(nothingKept, NEWEST);

const one = <T>(list: readonly T[], value: unknown, or: T): T => list.find((known) => known === value) ?? or;

/** Settings out of a kept text; whatever does not read is as if it were not kept. */
export function readSettings(text: string | null): Kept {
  let kept: unknown;
  try {
    kept = JSON.parse(text ?? 'null');
  } catch {
    return nothingKept;
  }
  if (typeof kept !== 'object' || kept === null) return nothingKept;
  const { metric, degrees, edition } = kept as Record<string, unknown>;
  return {
    metric: one(metricWays, metric, nothingKept.metric),
    degrees: one(degreeWays, degrees, nothingKept.degrees),
    edition: one<Edition | null>(EDITIONS, edition, null),
  };
}
