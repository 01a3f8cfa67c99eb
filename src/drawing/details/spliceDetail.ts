/** A joint of a run in detail: sleeve, plate, hinge, expansion splice, gap, each with what it is made with. */
import type { Catalogue, Tray } from '../../run/catalogue.ts';
import type { RigidJoint } from '../../run/straight.ts';
import { laySplice, type SpliceGiven, spliceParts } from '../splice.ts';
import type { How } from '../types.ts';
import { type Detail, type DetailGiven, fasteningOf, pick } from './detail.ts';
import { layOpening } from './opening.ts';
import { jointsOf, type PlacedJoint } from './places.ts';

/** Rigid splices, with the numbers of the whole run's sheets. */
const splices = (given: Pick<DetailGiven, 'resolved'>) =>
  jointsOf(given.resolved).flatMap(({ joint, leg, name }) =>
    joint.kind === 'socketed' || joint.kind === 'butt' ? [{ joint, leg, name }] : [],
  );

export const splicePlaces = (given: Pick<DetailGiven, 'resolved'>): readonly string[] =>
  splices(given).map(({ name }) => name);

export function laySpliceDetail(given: DetailGiven, how: How): Detail {
  const { joint, leg } = pick(splices(given), ({ name }) => name, given.of);
  const shown = spliceOf(joint, leg.tray, given.catalogue);
  return { ...laySplice({ ...shown, balloons: given.balloons }, how), parts: spliceParts[joint.kind] };
}

/** Ends that stand apart: expansion splices and gaps. A hinge along a leg stands straight and is neither. */
const openings = (given: Pick<DetailGiven, 'resolved'>): readonly PlacedJoint[] =>
  jointsOf(given.resolved).filter(({ joint: { kind } }) => kind === 'expansion' || kind === 'gap');

export const expansionPlaces = (given: Pick<DetailGiven, 'resolved'>): readonly string[] =>
  openings(given).map(({ name }) => name);

export const layExpansion = (given: DetailGiven, how: How): Detail =>
  layOpening(
    given,
    pick(openings(given), ({ name }) => name, given.of),
    how,
  );

/** A rigid joint with the item it is made with, and what fastens it; a resolved joint of a catalogue has both. */
export function spliceOf(joint: RigidJoint, tray: Tray, catalogue: Catalogue): SpliceGiven {
  const item = joint.item === null ? undefined : catalogue.get(joint.item);
  if (joint.kind === 'socketed' && item?.kind === 'sleeve') {
    return { joint, tray, item, fastening: fasteningOf(item.fastened.fastening, catalogue) };
  }
  if (joint.kind === 'butt' && item?.kind === 'plate') {
    return { joint, tray, item, fastening: fasteningOf(item.fastened.fastening, catalogue) };
  }
  throw new Error(`${joint.name}: its item does not make a ${joint.kind} joint`);
}
