/** How long ago the register was carried off this device, and whether it is time to do it again. Pure. */
import type { Judged } from '../../register/judged.ts';
import type { Placed } from '../../register/order.ts';
import { daysBetween } from '../days.ts';
import type { LastNumbers } from './joined.ts';

/** Days after which a file that was carried off is called old (common practice, no source). */
export const OLD_AFTER = 7;

/** When it was last carried off, as ISO text, the last number of every chain in that file, and its entries signed here. */
export interface Carried {
  readonly at: string;
  readonly numbers: LastNumbers;
  /** Ids of entries of this device's own chains; `undefined` of a file that an earlier version carried off. */
  readonly ids?: ReadonlySet<string> | undefined;
}

export interface CarriedState {
  /** Whole days since, in the register's zone; `null` when it never was. */
  readonly days: number | null;
  /** Entries here that the last file did not hold. */
  readonly since: number;
  /** Of them, those that this device signed: nobody else may have them. */
  readonly own: number;
  readonly warn: boolean;
}

/** Entries that were signed on this device, under whatever name it went by. */
export const signedHere = ({ view }: Judged, chains: ReadonlySet<string>): readonly Placed[] =>
  view.order.list.filter(({ chain }) => chains.has(chain));

/**
 * @param chains  every chain that was ever written on this device: each key that it had under each name. What was signed
 *   here is looked for by id, since a number may have been written twice.
 */
export function carriedState(
  judged: Judged,
  carried: Carried | undefined,
  chains: ReadonlySet<string>,
  now: number,
): CarriedState {
  const { view } = judged;
  const { numbers = {}, ids } = carried ?? {};
  const isLater = ({ chain, header }: Placed) => header.seq > (numbers[chain] ?? -1);
  const since = view.order.list.filter(isLater);
  const mine = signedHere(judged, chains).filter((entry) =>
    ids === undefined ? isLater(entry) : !ids.has(entry.id),
  ).length;
  const day = (instant: number) => view.dayIn(view.zone, instant);
  const days = carried === undefined ? null : daysBetween(day(Date.parse(carried.at)), day(now));
  return { days, since: since.length, own: mine, warn: mine > 0 || (days !== null && days >= OLD_AFTER) };
}
