import type { Day } from './days.ts';
import type { Placed } from './order.ts';
import type { Ownership } from './ownership.ts';
import { misread, type Refusals, refusal } from './refusal.ts';
import type { Retirement } from './retirement.ts';
import { bodyState, type View } from './view.ts';

/** An appointment that stands. `tasks`, `on` are `null` where its body is not here: it may have been for anything. */
export interface Appointment {
  readonly entry: Placed;
  readonly key: string;
  readonly tasks: 'all' | readonly string[] | null;
  readonly on: Day | null;
}

/** Whether an appointment is for a task on a day. */
export const covers = (a: Appointment, task: string, on: Day): boolean =>
  (a.tasks === null || a.tasks === 'all' || a.tasks.includes(task)) && (a.on === null || a.on <= on);

export interface Bound {
  readonly appointments: readonly Appointment[];
  /** People ever bound to a key, the one that is bound for good first. */
  readonly persons: ReadonlyMap<string, ReadonlySet<string>>;
}

/**
 * Appointments that stand, and who every key belongs to. A key is bound to the first person it is appointed for; a
 * later appointment for somebody else counts for nothing, but is remembered when it is asked who signs for himself.
 */
export function appointmentsOf(
  view: View,
  { byOwner }: Ownership,
  retirements: readonly Retirement[],
  counts: (p: Placed) => boolean,
  refusals: Refusals,
): Bound {
  const appointments: Appointment[] = [];
  const persons = new Map<string, Set<string>>();
  const bind = (key: string, person: string): void => {
    persons.set(key, (persons.get(key) ?? new Set()).add(person));
  };
  const { signer, about: owner } = view.begin.header;
  if (owner !== null) bind(signer, owner);
  const retiredBy = Map.groupBy(retirements, (r) => r.key);
  for (const p of view.list) {
    const { kind, key, about } = p.header;
    if (kind !== 'appoint' || !counts(p) || !byOwner(p)) continue;
    if (key === null || about === null) {
      refusals.add(p, misread('an appointment names a key and a person'));
      continue;
    }
    const bound = persons.get(key);
    const stranger = bound !== undefined && !bound.has(about);
    bind(key, about);
    if (stranger) refusals.add(p, refusal('not-appointed', 'bound'));
    else if (retiredBy.get(key)?.some((r) => view.order.isPast(p, r.entry))) {
      refusals.add(p, refusal('after-retirement', 'retired-appointed'));
    } else {
      const state = bodyState(view, p);
      const body = state.state === 'held' ? (state.body as Pick<Appointment, 'tasks' | 'on'>) : undefined;
      appointments.push({ entry: p, key, tasks: body?.tasks ?? null, on: body?.on ?? null });
    }
  }
  return { appointments, persons };
}
