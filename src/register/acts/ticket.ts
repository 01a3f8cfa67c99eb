import type { Fault } from '../../trade/given.ts';
import { type Day, isDay } from '../days.ts';
import type { Judged } from '../judged.ts';
import { ticketId } from '../shapes.ts';
import { fault, refuseIf, type Writing, type Written, writeEntry, writerFaults } from '../write.ts';
import { endedFaults, ownFaults, personFaults, standingFaults, textFaults } from './faults.ts';

export interface TicketGiven {
  readonly person: string;
  /** W1 to W8. */
  readonly ticket: string;
  readonly issuer: string;
  readonly number: string;
  /** Last day that it is good. */
  readonly until: Day;
}

/** Every fault that keeps an outside ticket from being recorded; empty when it may be. */
export function ticketFaults(judged: Judged, given: TicketGiven, writing: Writing): readonly Fault[] {
  const { person, ticket, issuer, number, until } = given;
  return [
    ...endedFaults(judged, writing),
    ...writerFaults(judged, writing),
    ...standingFaults(judged, writing),
    ...personFaults(judged, person),
    ...ownFaults(judged, 'person', person, person, writing),
    ...textFaults('ticket', ticket, 'write W1 to W8', ticketId),
    ...textFaults('issuer', issuer, 'write who issued it'),
    ...textFaults('number', number, 'write the number that it bears'),
    ...(isDay(until) ? [] : [fault('until', until, 'no day of the calendar', 'write it so: 2026-03-09')]),
  ];
}

/** Records an outside ticket that was looked at. @throws {GivenError} with all faults */
export async function ticket(judged: Judged, given: TicketGiven, writing: Writing): Promise<Written> {
  refuseIf(ticketFaults(judged, given, writing));
  const { person, ticket: id, issuer, number, until } = given;
  return writeEntry(
    judged,
    { kind: 'ticket', about: person, body: { ticket: id, issuer, number, until } },
    writing,
  );
}
