/** Who has had no entry for so many months: a list for a person to decide on. Nothing is dropped by it. Pure. */

import { byText } from '../../register/bytes.ts';
import { addMonths, type Day } from '../../register/days.ts';
import type { Judged } from '../../register/judged.ts';

export interface Quiet {
  readonly person: string;
  /** Day of the last entry about the person, or signed by one of the person's keys; `null` for none at all. */
  readonly last: Day | null;
  readonly entries: number;
}

/**
 * @param ids     people of the names file, who may have no entry at all
 * @param today   in the register's zone
 * @param months  whole months without an entry; the day exactly so long ago still counts as within them
 */
export function quietPeople(
  { view, authority }: Judged,
  ids: readonly string[],
  today: Day,
  months: number,
): readonly Quiet[] {
  const found = new Map<string, { last: number | null; entries: number }>(
    ids.map((id) => [id, { last: null, entries: 0 }]),
  );
  for (const { header, time } of view.order.list) {
    const people = new Set([header.about, ...(authority.persons.get(header.signer) ?? [])]);
    for (const person of people) {
      if (person === null) continue;
      const row = found.get(person) ?? { last: null, entries: 0 };
      const about = header.about === person ? 1 : 0;
      found.set(person, { last: Math.max(row.last ?? time, time), entries: row.entries + about });
    }
  }
  const from = addMonths(today, -months);
  return [...found]
    .filter(([person]) => !view.erased.has(person))
    .map(([person, { last, entries }]) => ({
      person,
      last: last === null ? null : view.dayIn(view.zone, last),
      entries,
    }))
    .filter(({ last }) => last === null || last < from)
    .sort((a, b) => byText(a.last ?? '', b.last ?? '') || byText(a.person, b.person));
}
