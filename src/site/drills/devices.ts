/** The devices of a key, each with the last entry that is known of it: what a retirement names. Pure. */
import { byText } from '../../register/bytes.ts';
import type { Judged } from '../../register/judged.ts';
import type { Placed } from '../../register/order.ts';

export interface KeyDevice {
  readonly device: string;
  /** The newest first. */
  readonly entries: readonly Placed[];
}

export function devicesOf({ view }: Judged, key: string): readonly KeyDevice[] {
  const own = view.list.filter(({ header }) => header.signer === key);
  return [...Map.groupBy(own, ({ header }) => header.device)]
    .sort(([a], [b]) => byText(a, b))
    .map(([device, entries]) => ({
      device,
      entries: entries.sort((a, b) => b.header.seq - a.header.seq || b.rank - a.rank),
    }));
}

/** Keys that were appointed and are not retired, in the order of their appointment. */
export function keysInUse({ authority }: Judged): readonly string[] {
  const retired = new Set(authority.retirements.map(({ key }) => key));
  return [...new Set(authority.appointments.map(({ key }) => key))].filter((key) => !retired.has(key));
}
