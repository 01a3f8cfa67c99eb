/** How figures are shown on this device, and which edition of the code it begins with. What keeps it: device/settings.ts. */
import { EDITIONS } from '../trade/fillTables.ts';

export const metricWays = ['none', 'beside', 'instead'] as const;
export const degreeWays = ['F', 'C'] as const;

export interface Settings {
  /** Metric measures in answers: none, beside the trade's own, or instead of them. */
  readonly metric: (typeof metricWays)[number];
  readonly degrees: (typeof degreeWays)[number];
  readonly edition: (typeof EDITIONS)[number];
}

/** What every page is built with, and what holds on a device that keeps nothing else. */
export const usual: Settings = { metric: 'none', degrees: 'F', edition: 2023 };

const one = <T>(list: readonly T[], value: unknown, or: T): T => list.find((known) => known === value) ?? or;

/** Settings out of a kept text; whatever does not read is as usual. */
export function readSettings(text: string | null): Settings {
  let kept: unknown;
  try {
    kept = JSON.parse(text ?? 'null');
  } catch {
    return usual;
  }
  if (typeof kept !== 'object' || kept === null) return usual;
  const { metric, degrees, edition } = kept as Record<string, unknown>;
  return {
    metric: one(metricWays, metric, usual.metric),
    degrees: one(degreeWays, degrees, usual.degrees),
    edition: one(EDITIONS, edition, usual.edition),
  };
}
