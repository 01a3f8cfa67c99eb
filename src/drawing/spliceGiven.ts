import type { Fastening, Plate, Sleeve, Tray } from '../run/catalogue.ts';
import type { ButtJoint, SocketedJoint } from '../run/straight.ts';
import type { Balloon } from './types.ts';

interface Detail {
  readonly tray: Tray;
  readonly fastening: Fastening;
  /** Parts: `spliceParts.socketed` or `spliceParts.butt`. */
  readonly balloons?: readonly Balloon[] | undefined;
}
export interface SleeveGiven extends Detail {
  readonly joint: SocketedJoint;
  readonly item: Sleeve;
}
export interface PlateGiven extends Detail {
  readonly joint: ButtJoint;
  readonly item: Plate;
}

/** What a splice detail shows: a joint with what it is made with. */
export type SpliceGiven = SleeveGiven | PlateGiven;
