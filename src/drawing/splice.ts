/**
 * One splice, large: a sleeve from the side, or a plate from below, with its section A–A.
 * A sleeve's fasteners stand in the legs, one a leg and channel; a plate's go through the floor, two a channel.
 */
import type { Fastening, Plate, Sleeve, Tray } from '../run/catalogue.ts';
import type { ResolvedJoint } from '../run/straight.ts';
import { layPlate } from './plate.ts';
import { laySleeve } from './sleeve.ts';
import { render, type Sheet } from './svg.ts';
import type { Balloon, Drawing, How } from './types.ts';

export interface SpliceGiven {
  readonly joint: ResolvedJoint;
  readonly tray: Tray;
  /** The joint's catalogue item: a sleeve for a socketed joint, a plate for a butt joint. */
  readonly item: Sleeve | Plate;
  readonly fastening: Fastening;
  /** Parts: `spliceParts.socketed` or `spliceParts.butt`. */
  readonly balloons?: readonly Balloon[] | undefined;
}

/** What a balloon may point at, by the kind of joint. */
export const spliceParts = {
  socketed: [
    'first-channel',
    'second-channel',
    'first-mark',
    'second-mark',
    'channel-end',
    'splice',
    'fastener',
    'opening',
    'section',
  ],
  butt: ['first-channel', 'second-channel', 'channel-end', 'splice', 'fastener', 'opening', 'section'],
} as const;

export function drawSplice(given: SpliceGiven, how: How): Drawing {
  return render(laySplice(given, how), how);
}

export function laySplice(given: SpliceGiven, how: How): Sheet {
  const { joint, item } = given;
  if (item.kind === 'sleeve' && joint.kind === 'socketed') return laySleeve({ ...given, item }, how);
  if (item.kind === 'plate' && joint.kind === 'butt') return layPlate({ ...given, item }, how);
  throw new RangeError(`a ${joint.kind} joint is not made with a ${item.kind}`);
}
