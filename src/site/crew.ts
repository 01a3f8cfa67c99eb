/**
 * The crew board as a page shows it: every text and mark worked out from a board and the register behind it, so that
 * the components only set them. One and the same for the demo works at build time and for this device's register.
 */
import type { Board, PersonRow, TaskRow } from '../register/board.ts';
import { byText } from '../register/bytes.ts';
import type { Judged } from '../register/judged.ts';
import { meetsNeed, type Need, waysOf } from '../register/needs.ts';
import { isHeading, isTicket, type MapTask } from '../register/taskMap.ts';
import { type CrewSource, type EntryLink, governing, lineOf, markOf, stoppedOf } from './crewLines.ts';
import { dayText } from './dates.ts';
import { daysBetween, speakDays } from './days.ts';
import { marksOf, type Names, spokenName } from './people.ts';
import type { Tell } from './speak.ts';
import { type StateKey, stateKeys, stateOf } from './states.ts';
import { variantText } from './variants.ts';
import { waysOnRecord, wayText } from './ways.ts';

/** One person in one task. */
export interface CrewCell {
  /** Id of the place on the page where its reasons stand. */
  readonly anchor: string;
  readonly state: StateKey;
  /** What stands in the mark. */
  readonly mark: string;
  /** In a few words: witness and day, the reason, how it was practised. */
  readonly line: string;
  /** For someone who listens: who, task, word, witness, reason, until. */
  readonly spoken: string;
  /** A way of doing the task each, or a part of a heading: the one that governs first. Empty where nothing is on record. */
  readonly ways: readonly {
    readonly text: string;
    /** What it rests on. */
    readonly entries: readonly EntryLink[];
  }[];
}

export interface CrewPerson {
  readonly id: string;
  readonly short: string;
  readonly name: string;
  /** The person's own sheet. */
  readonly href: string;
  readonly count: string;
  /** Tickets on record; empty when there are none. */
  readonly tickets: string;
}

export interface CrewTask {
  readonly id: string;
  readonly name: string;
  /** The task's own sheet. */
  readonly href: string;
  /** A part of the heading above it. */
  readonly part: boolean;
  readonly count: string;
  readonly needed: boolean;
}

export interface CrewView {
  readonly asOf: string;
  readonly people: readonly CrewPerson[];
  readonly tasks: readonly CrewTask[];
  /** By task and person. */
  readonly cell: (task: string, person: string) => CrewCell;
  /** Who can take the job, or `undefined` when nothing is needed. */
  readonly job:
    | {
        readonly label: string;
        /** Full names, where they are known. */
        readonly ready: string;
        readonly lacks: readonly string[];
        /** Which way of each task is judged; empty when no task needed has more than one. */
        readonly ways: string;
      }
    | undefined;
  /** What the mark of a showing looks like here: whose sign is in it, or nothing where nobody is shown. */
  readonly sample: string;
  /** Whose name each mark stands for, people first, then who else signs; empty when no names are known. */
  readonly nameKey: readonly { readonly mark: string; readonly name: string }[];
  /** Who was erased, each with the sheet that says so. */
  readonly erased: readonly { readonly id: string; readonly href: string }[];
  /** Said beside counts that leave a heading out. */
  readonly countNote: string;
  readonly signers: readonly string[];
  readonly notes: readonly string[];
}

export interface CrewAsked extends Omit<CrewSource, 'marks'> {
  /** People of the board to show; all when left out. */
  readonly only?: readonly string[];
  /** What a job needs; `id` is left out where somebody only chose tasks. */
  readonly job?: { readonly id?: string; readonly needs: readonly Need[] };
}

/** Who signs in a register, by their persons. */
const signingIn = ({ authority }: Pick<Judged, 'authority'>): readonly string[] =>
  [...authority.persons.values()].flatMap((persons) => [...persons]);

/** What everybody of a board goes by in a box, those who sign too. */
export const boardMarks = (board: Board, judged: Judged, names: Names): ReadonlyMap<string, string> =>
  marksOf([...board.people.map(({ id }) => id), ...signingIn(judged)], names);

/** "As of 9 March 2026", and as known on another day where that was asked. */
export const asOfText = ({ on, knownOn }: Pick<Board, 'on' | 'knownOn'>, tell: Tell): string =>
  knownOn === null
    ? tell('person.asOf', { day: dayText(tell, on) })
    : tell('person.asOfKnown', { day: dayText(tell, on), known: dayText(tell, knownOn) });

/** How far each signer is known: the last number, and how old it is on the board's day. */
export const signerLines = (
  { board, judged, names }: Pick<CrewSource, 'board' | 'judged' | 'names'>,
  tell: Tell,
): readonly string[] =>
  board.signers.map(({ id, device, person, last, at }) => {
    const days = daysBetween(judged.view.dayIn(board.zone, Date.parse(at)), board.on);
    const age =
      days < 0
        ? tell('crew.ahead')
        : tell(days === 0 ? 'crew.age0' : days === 1 ? 'crew.age1' : 'crew.ages', { days });
    return tell('crew.signer', {
      who: person === null ? id.slice(0, 8) : spokenName(person, names),
      device,
      last,
      age,
    });
  });

export function crewView(given: CrewAsked): CrewView {
  const { board, judged, map, only, job, names, speak, tell, links } = given;
  const listed = board.people.filter(({ id }) => only?.includes(id) ?? true);
  // Of somebody who was erased nothing is on record: as a column he would stand among those who were never seen.
  const rows = listed.filter(({ erased }) => erased !== true);
  const signing = [...signingIn(judged)];
  const marks = boardMarks(board, judged, names);
  const asked: Asked = { ...given, marks };
  const parts = new Set(map.tasks.flatMap((task) => task.parts));
  const tasks = map.tasks.filter((task) => !isTicket(task.id));
  const cells = new Map(
    tasks.map((task) => [task.id, new Map(rows.map((row) => [row.id, cellOf(asked, task, row)]))]),
  );
  const stands = (task: string, person: PersonRow) => person.tasks[task]?.standing === 'shown';
  const whole = tasks.filter((task) => !parts.has(task.id));
  const countOf = (count: number, of: number) => tell('crew.countOf', { count, of });
  return {
    asOf: asOfText(board, tell),
    people: rows.map((row) => ({
      id: row.id,
      short: marks.get(row.id) ?? row.id,
      name: spokenName(row.id, names),
      href: links.person(row.id),
      count: countOf(whole.filter((task) => stands(task.id, row)).length, whole.length),
      tickets: ticketsText(row, tell),
    })),
    tasks: tasks.map((task) => ({
      id: task.id,
      name: speak({ say: `${task.id}.name` }),
      href: links.task(task.id),
      part: parts.has(task.id),
      count: countOf(rows.filter((row) => stands(task.id, row)).length, rows.length),
      needed: job?.needs.some((need) => need.task === task.id) ?? false,
    })),
    cell: (task, person) => cells.get(task)?.get(person) as CrewCell,
    job: job === undefined || job.needs.length === 0 ? undefined : jobText(asked, rows, job),
    sample:
      [...cells.values()].flatMap((row) => [...row.values()]).find(({ state }) => state === 'shown')?.mark ??
      '',
    nameKey: [...new Set([...rows.map(({ id }) => id), ...signing.sort(byText)])].flatMap((id) => {
      const name = names.get(id);
      return name === undefined ? [] : [{ mark: marks.get(id) ?? id, name }];
    }),
    erased: listed.filter(({ erased }) => erased === true).map(({ id }) => ({ id, href: links.person(id) })),
    countNote: tasks.some(isHeading) ? tell('crew.countNote') : '',
    signers: signerLines(given, tell),
    notes: board.notes.map((note) => speakDays(note, speak, tell)),
  };
}

interface Asked extends CrewAsked, CrewSource {}

function ticketsText({ tickets }: PersonRow, tell: Tell): string {
  if (tickets.length === 0) return '';
  const list = tickets.map(({ ticket, until }) => tell('crew.ticket', { ticket, day: dayText(tell, until) }));
  return tell('crew.tickets', { list: list.join(', ') });
}

/** Who is shown for all of a job, and who lacks one thing only. Dates and showings alone: nothing else is judged. */
function jobText(
  { board, map, names, speak, tell }: Asked,
  rows: readonly PersonRow[],
  job: NonNullable<CrewAsked['job']>,
) {
  const lacking = rows.map((row) => ({ row, lacks: job.needs.filter((need) => !meetsNeed(row, need, map)) }));
  const ready = lacking.filter(({ lacks }) => lacks.length === 0).map(({ row }) => spokenName(row.id, names));
  const nearly = lacking.filter(({ lacks }) => lacks.length === 1 && job.needs.length > 1);
  const values = { tasks: job.needs.map(({ task }) => task).join(', '), day: dayText(tell, board.on) };
  const ways = job.needs
    .flatMap((need) => waysOf(map, need) ?? [])
    .map(({ task, variant }) => ({ task: task.id, way: variantText(task, variant, speak) }))
    .filter(({ way }) => way !== '')
    .map((values) => tell('crew.way', values));
  return {
    label:
      job.id === undefined
        ? tell('crew.needsChosen', values)
        : tell('crew.needs', { ...values, job: job.id }),
    ready: ready.length === 0 ? tell('crew.nobody') : ready.join(', '),
    lacks: nearly.map(({ row, lacks }) =>
      tell('crew.lacks', { person: spokenName(row.id, names), task: lacks[0]?.task ?? '' }),
    ),
    ways: ways.length === 0 ? '' : tell('crew.ways', { list: ways.join('; ') }),
  };
}

function cellOf(asked: Asked, task: MapTask, row: PersonRow): CrewCell {
  const { names, speak, tell } = asked;
  const stands = row.tasks[task.id] as TaskRow;
  const onRecord =
    isHeading(task) ||
    stands.why.length > 0 ||
    stands.entries.length > 0 ||
    stoppedOf(asked, stands, row.id, task) !== undefined;
  const state = stateOf(stands.standing);
  const line = lineOf(asked, governing(task, row), row.id, task);
  const until =
    stands.standing === 'shown' && stands.until !== null
      ? tell('crew.goodTo', { day: dayText(tell, stands.until) })
      : '';
  const note = [line, until]
    .filter((text) => text !== '')
    .map((text) => tell('crew.note', { text }))
    .join('');
  return {
    anchor: `${row.id}-${task.id}`,
    state,
    mark: markOf(asked, governing(task, row)),
    line,
    spoken: tell('crew.cell', {
      person: spokenName(row.id, names),
      task: speak({ say: `${task.id}.name` }),
      state: tell(`state.${state}`),
      note,
    }),
    ways: onRecord
      ? waysOnRecord(asked, task, row).map((way) => ({ text: wayText(asked, way), entries: way.entries }))
      : [],
  };
}

/** Cells of a list, by state, in the order in which states always stand. */
export function byState<T extends { readonly cell: CrewCell }>(
  list: readonly T[],
): readonly { readonly state: StateKey; readonly list: readonly T[] }[] {
  return stateKeys
    .map((state) => ({ state, list: list.filter(({ cell }) => cell.state === state) }))
    .filter((group) => group.list.length > 0);
}
