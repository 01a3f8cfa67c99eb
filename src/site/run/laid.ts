/** Whether what was found for a run still stands on it. */
import type { Run } from '../../run/types.ts';

/** What a lay-out rests on. */
const GROUNDS = [
  'tray',
  'start',
  'legs',
  'ends',
  'cables',
  'places',
  'limits',
  'temps',
  'stock',
  'kerf',
] as const;
const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/**
 * `stands`: the run is as it was laid out. `stale`: its supports are, and what they were chosen by is not.
 * `gone`: supports were changed or taken off, or it is another run.
 */
export function standing(run: Run, laid: Run): 'stands' | 'stale' | 'gone' {
  if (!same(run.supports, laid.supports)) return 'gone';
  return GROUNDS.every((part) => same(run[part], laid[part])) ? 'stands' : 'stale';
}
