import type { Bodies } from './bodies.ts';
import { byText } from './bytes.ts';
import type { Day } from './days.ts';
import type { Judged } from './judged.ts';
import type { Placed } from './order.ts';

/** An outside ticket on record: looked at, never assessed; good to the end of `until`. */
export interface Ticket {
  readonly ticket: string;
  readonly issuer: string;
  readonly number: string;
  readonly until: Day;
  readonly entry: string;
}

/** A person's tickets by their ids: of several of one kind the last that was not taken back; nobody's who is erased. */
export const ticketsOn = (judged: Judged, person: string): readonly Ticket[] =>
  ticketsOf(judged).get(person) ?? [];

type ByPerson = ReadonlyMap<string, readonly Ticket[]>;
const known = new WeakMap<Judged, ByPerson>();

/** Everybody's tickets, by person. */
function ticketsOf(judged: Judged): ByPerson {
  const found = known.get(judged) ?? readTickets(judged);
  known.set(judged, found);
  return found;
}

function readTickets(judged: Judged): ByPerson {
  const told = judged.view.list.filter(
    ({ header }) => (header.kind === 'ticket' || header.kind === 'withdraw') && header.about !== null,
  );
  const people = Map.groupBy(told.filter(judged.counts), (p) => p.header.about as string);
  return new Map([...people].map(([person, entries]) => [person, lastOf(judged, entries)]));
}

/** @param entries  one person's tickets and what was taken back of his, in order */
function lastOf(judged: Judged, entries: readonly Placed[]): readonly Ticket[] {
  const gone = new Set(entries.filter((p) => p.header.kind === 'withdraw').flatMap((p) => p.header.target));
  const last = new Map<string, Ticket>();
  for (const p of entries) {
    if (p.header.kind !== 'ticket' || gone.has(p.id)) continue;
    const state = judged.authority.body(p, 'ticket');
    if (state.state !== 'held') continue;
    const { ticket, issuer, number, until }: Bodies['ticket'] = state.body;
    last.set(ticket, { ticket, issuer, number, until, entry: p.id });
  }
  return [...last.values()].sort((a, b) => byText(a.ticket, b.ticket));
}
