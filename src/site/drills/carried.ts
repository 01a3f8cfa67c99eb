/** How long ago the register was carried off this device, and whether it is time to do it again. Pure. */
import { chainOf } from '../../register/header.ts';
import type { Judged } from '../../register/judged.ts';
import { daysBetween } from '../days.ts';
import type { LastNumbers } from './joined.ts';

/** Days after which a file that was carried off is called old (common practice, no source). */
export const OLD_AFTER = 7;

/** When it was last carried off, as ISO text, and the last number of every chain in that file. */
export interface Carried {
  readonly at: string;
  readonly numbers: LastNumbers;
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

/** @param own  key and name of this device, if it has a key */
export function carriedState(
  { view }: Judged,
  carried: Carried | undefined,
  own: { readonly publicKey: string; readonly device: string } | undefined,
  now: number,
): CarriedState {
  const chain = own === undefined ? '' : chainOf({ signer: own.publicKey, device: own.device });
  const last = carried?.numbers ?? {};
  const since = view.order.list.filter(({ chain: of, header }) => header.seq > (last[of] ?? -1));
  const mine = since.filter((entry) => entry.chain === chain).length;
  const day = (instant: number) => view.dayIn(view.zone, instant);
  const days = carried === undefined ? null : daysBetween(day(Date.parse(carried.at)), day(now));
  return { days, since: since.length, own: mine, warn: mine > 0 || (days !== null && days >= OLD_AFTER) };
}
