import type { Fastening, Plate, Sleeve, Tray } from '../run/catalogue.ts';
import type { ResolvedJoint } from '../run/straight.ts';
import type { Balloon } from './types.ts';

/** What a splice detail shows. */
export interface SpliceGiven {
  readonly joint: ResolvedJoint;
  readonly tray: Tray;
  /** The joint's catalogue item: a sleeve for a socketed joint, a plate for a butt joint. */
  readonly item: Sleeve | Plate;
  readonly fastening: Fastening;
  /** Parts: `spliceParts.socketed` or `spliceParts.butt`. */
  readonly balloons?: readonly Balloon[] | undefined;
}
