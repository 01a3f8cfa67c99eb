/** What the views of a whole run are told of it. */
import type { Catalogue } from '../run/catalogue.ts';
import type { Finding } from '../run/inspect/finding.ts';
import type { ResolvedRun } from '../run/resolved.ts';
import type { RunTables } from '../run/tables.ts';
import type { Balloon } from './types.ts';

export interface RunGiven {
  readonly resolved: ResolvedRun;
  /** Bonding and fill are judged by these two; without them the views of those are not drawn. */
  readonly tables?: RunTables | undefined;
  readonly catalogue?: Catalogue | undefined;
  /** What is wrong, numbered in this order. */
  readonly findings?:
    | readonly Pick<Finding, 'leg' | 'at' | 'rule' | 'measured' | 'unit' | 'say'>[]
    | undefined;
  /** Tags of what stands at the ends, `LAD-2`; of ends by the leg that ends there. */
  readonly tags?: { readonly start?: string; readonly ends?: Readonly<Record<string, string>> } | undefined;
  /** Numbered steps, in place of the balloons that name the legs. Parts: `start`, `leg-ID`, `end-ID`, `sN`, `support-A`. */
  readonly balloons?: readonly Balloon[] | undefined;
  /** A last leg that is only being entered: an isometric draws it, and the fitting before it, in phantom line. */
  readonly phantom?: string | undefined;
  /** The strip's bars alone: no frame, no title, no notes. */
  readonly bare?: true | undefined;
  /** Leg whose section is shown; left out, the fullest. */
  readonly leg?: string | undefined;
}
