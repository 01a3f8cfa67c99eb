import type { Bodies } from './bodies.ts';
import { byText } from './bytes.ts';
import type { Day } from './days.ts';
import type { Judged } from './judged.ts';

/** An outside ticket on record: looked at, never assessed; good to the end of `until`. */
export interface Ticket {
  readonly ticket: string;
  readonly issuer: string;
  readonly number: string;
  readonly until: Day;
  readonly entry: string;
}

/** A person's tickets by their ids: of several of one kind the last that was not taken back; nobody's who is erased. */
export function ticketsOn(judged: Judged, person: string): readonly Ticket[] {
  const counting = judged.view.list.filter((p) => p.header.about === person && judged.counts(p));
  const gone = new Set(counting.filter((p) => p.header.kind === 'withdraw').flatMap((p) => p.header.target));
  const last = new Map<string, Ticket>();
  for (const p of counting) {
    if (p.header.kind !== 'ticket' || gone.has(p.id)) continue;
    const state = judged.authority.body(p, 'ticket');
    if (state.state !== 'held') continue;
    const { ticket, issuer, number, until }: Bodies['ticket'] = state.body;
    last.set(ticket, { ticket, issuer, number, until, entry: p.id });
  }
  return [...last.values()].sort((a, b) => byText(a.ticket, b.ticket));
}
