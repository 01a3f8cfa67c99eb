/**
 * The sheet of one person: what he has shown, by state, the tickets that were looked at, the entries behind all of it,
 * and how far each signer is known. One and the same for the demo works and for this device's register. Pure.
 */
import type { Board, PersonRow } from '../register/board.ts';
import { isHeading } from '../register/taskMap.ts';
import { asOfText, boardMarks, signerLines } from './crew.ts';
import { type CrewSource, type EntryLink, entryLink } from './crewLines.ts';
import { dayText } from './dates.ts';
import { type EntryRow, entryRows } from './entryRows.ts';
import type { MayView } from './mayView.ts';
import { spokenName, withoutErased } from './people.ts';
import { saidOr } from './speak.ts';
import { type StandGroup, tasksOf } from './standRows.ts';

export interface TicketLine {
  readonly ticket: string;
  readonly name: string;
  readonly issuer: string;
  readonly until: string;
  /** Its last day is over on the sheet's day: said, never assessed. */
  readonly past: string;
  readonly entry: EntryLink;
}

export interface PersonView {
  readonly id: string;
  readonly name: string;
  readonly short: string;
  readonly asOf: string;
  readonly groups: readonly StandGroup[];
  readonly tickets: readonly TicketLine[];
  readonly entries: readonly EntryRow[];
  /** Where this person signs too. */
  readonly signed: string;
  readonly erased: string;
  /** How tasks with parts are counted. */
  readonly countNote: string;
  readonly signers: readonly string[];
  /** Whether signatures hold, and what is open. */
  readonly holds: readonly string[];
}

/** Everything a sheet is made of but the marks, which follow from the board. */
export type SheetAsked = Omit<CrewSource, 'marks'>;

export function sourceOf(asked: SheetAsked): CrewSource {
  const names = withoutErased(asked.names, asked.judged.view.erased);
  return { ...asked, names, marks: boardMarks(asked.board, asked.judged, names) };
}

export const rowOf = ({ people }: Board, person: string): PersonRow | undefined =>
  people.find(({ id }) => id === person);

/** `undefined` for somebody of whom the register holds nothing and no list knows. */
export function personView(source: CrewSource, person: string): PersonView | undefined {
  const { board, names, tell } = source;
  const row = rowOf(board, person);
  if (row === undefined) return undefined;
  return {
    id: person,
    name: spokenName(person, names),
    short: source.marks.get(person) ?? person,
    asOf: asOfText(board, tell),
    groups: tasksOf(source, row),
    tickets: ticketLines(source, row),
    entries: entryRows(source, person),
    signed: signedText(source, person),
    erased: row.erased === true ? erasedText(source, person) : '',
    countNote: source.map.tasks.some(isHeading) ? tell('crew.countNote') : '',
    signers: signerLines(source, tell),
    holds: holdsLines(source),
  };
}

function ticketLines(source: CrewSource, { tickets }: PersonRow): readonly TicketLine[] {
  const { board, speak, tell } = source;
  return tickets.map(({ ticket, issuer, number, until, entry }) => ({
    ticket,
    name: saidOr(speak, `${ticket}.name`, ''),
    issuer: tell('person.ticketLine', { issuer, number }),
    until: dayText(tell, until),
    past: until < board.on ? tell('person.ticketPast') : '',
    entry: entryLink(source, entry),
  }));
}

function signedText({ judged, names, tell }: CrewSource, person: string): string {
  const keys = [...judged.authority.persons].flatMap(([key, persons]) => (persons.has(person) ? [key] : []));
  if (keys.length === 0) return '';
  const signed = judged.view.list.filter((p) => keys.includes(p.header.signer) && judged.counts(p));
  const values = { witness: spokenName(person, names), count: signed.length };
  return tell(signed.length === 1 ? 'person.signedOne' : 'person.signedLine', values);
}

function erasedText({ judged, tell }: CrewSource, person: string): string {
  const { view } = judged;
  const act = view.list.find(
    (p) => p.header.kind === 'erase' && p.header.about === person && judged.counts(p),
  );
  return act === undefined
    ? tell('person.erasedBare', { person })
    : tell('person.erasedLine', { person, day: dayText(tell, view.dayIn(view.zone, act.entered)) });
}

function holdsLines({ judged, tell }: CrewSource): readonly string[] {
  const open = judged.problems.filter(({ settled }) => settled !== true).length;
  return [
    tell('entryRow.heardLine', { entries: judged.entries }),
    ...(open > 0 ? [tell('entryRow.openProblems', { count: open })] : []),
  ];
}

/** A question about this person: the first one to be answered large, and the others beside it. */
export interface Asked {
  readonly first: MayView;
  readonly others: readonly MayView[];
  /** The job that asks. */
  readonly job: string;
}
