/** What the views of a whole run are told of it. */
import type { Finding } from '../run/inspect/finding.ts';
import type { ResolvedRun } from '../run/resolved.ts';
import type { RunTables } from '../run/tables.ts';
import type { Balloon } from './types.ts';

export interface RunGiven {
  readonly resolved: ResolvedRun;
  /** Bonding and fill are judged by them; without them the views of those are not drawn. */
  readonly tables?: RunTables | undefined;
  /** What is wrong, numbered in this order. */
  readonly findings?:
    | readonly Pick<Finding, 'leg' | 'at' | 'rule' | 'measured' | 'unit' | 'say'>[]
    | undefined;
  /** Tags of what stands at the ends, `LAD-2`; of ends by the leg that ends there. */
  readonly tags?: { readonly start?: string; readonly ends?: Readonly<Record<string, string>> } | undefined;
  /** Numbered steps, in place of the balloons that name the legs. Parts: `start`, `leg-ID`, `end-ID`, `sN`, `support-A`. */
  readonly balloons?: readonly Balloon[] | undefined;
  /** Leg whose section is shown; left out, the fullest. */
  readonly leg?: string | undefined;
}
