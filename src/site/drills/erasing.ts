/** What an erase would drop and what would stay, counted before anybody signs. Pure. */
import { bodiesToDrop } from '../../register/acts/erase.ts';
import { dropped } from '../../register/bodies.ts';
import type { Judged } from '../../register/judged.ts';

export interface Erasing {
  /** Texts about the person that are held now and would be dropped. */
  readonly drops: number;
  /** Headers about the person: they stay for good. */
  readonly headers: number;
  /** Appointments and retirements of the person's keys: their texts stay. */
  readonly stays: number;
}

export function erasingOf(judged: Judged, person: string): Erasing {
  const about = judged.view.order.list.filter(({ header }) => header.about === person);
  const stays = about.filter(({ header }) => header.body !== null && !dropped.includes(header.kind));
  const { bodies, alteredBodies } = judged.view.held;
  const drops = bodiesToDrop(judged, person).filter((hash) => bodies.has(hash) || alteredBodies.has(hash));
  return { drops: drops.length, headers: about.length, stays: stays.length };
}

/** Everyone who is on record and not erased, by id. */
export function peopleOnRecord({ view }: Judged): readonly string[] {
  const ids = new Set(view.order.list.flatMap(({ header }) => header.about ?? []));
  return [...ids].filter((id) => !view.erased.has(id)).sort();
}
