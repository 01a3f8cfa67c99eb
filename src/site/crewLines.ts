/** How one person stands in one task, in words and as the text of its mark: what the crew board's cells are made of. Pure. */
import type { Board, PersonRow, TaskRow } from '../register/board.ts';
import { byText } from '../register/bytes.ts';
import { type Day, isDay } from '../register/days.ts';
import type { Judged } from '../register/judged.ts';
import { type Look, lastLook } from '../register/looks.ts';
import type { Placed } from '../register/order.ts';
import type { Stands } from '../register/standing.ts';
import { isHeading, type MapTask, type TaskMap } from '../register/taskMap.ts';
import { dayText } from './dates.ts';
import { speakDays } from './days.ts';
import { type Names, spokenName } from './people.ts';
import { shortKey } from './shortKey.ts';
import type { Speak, Tell } from './speak.ts';

/** Where the sheet of a person, of a task, and an entry about a person are to be found. */
export interface CrewLinks {
  readonly person: (id: string) => string;
  readonly task: (id: string) => string;
  /** On the sheet of the person it is about; `short` is the beginning of its id. */
  readonly entry: (person: string, short: string) => string;
}

/** A board, the register behind it, and the words for both. */
export interface CrewSource {
  readonly board: Board;
  readonly judged: Judged;
  readonly map: TaskMap;
  readonly names: Names;
  /** What each person goes by in a box. */
  readonly marks: ReadonlyMap<string, string>;
  readonly links: CrewLinks;
  readonly speak: Speak;
  readonly tell: Tell;
}

/** The variant that a task's standing comes from, or for a heading the part; the task itself where there is neither. */
export function governing(task: MapTask, row: PersonRow): Stands {
  const stands = row.tasks[task.id] as TaskRow;
  const ways: readonly Stands[] = isHeading(task)
    ? task.parts.flatMap((id) => row.tasks[id] ?? [])
    : stands.variants;
  const same = ways.find(
    (way) => way.standing === stands.standing && way.since === stands.since && way.until === stands.until,
  );
  return same ?? stands;
}

const entryOf = ({ judged }: CrewSource, id: string): Placed | undefined => judged.view.order.byId.get(id);

/** An entry as a page names it, and where it is shown; an entry that is not here, or about nobody, leads nowhere. */
export interface EntryLink {
  readonly short: string;
  readonly href: string | undefined;
}

/** Id of an entry's row on the sheet of the person it is about. */
export const entryAnchor = (short: string): string => `e-${short}`;

export function entryLink(source: Pick<CrewSource, 'judged' | 'links'>, id: string): EntryLink {
  const short = shortKey(id);
  const about = source.judged.view.order.byId.get(id)?.header.about ?? undefined;
  return { short, href: about === undefined ? undefined : source.links.entry(about, short) };
}

/** The checks behind a standing, the last seen first. */
function checksOf(asked: CrewSource, { entries }: Stands) {
  return entries
    .flatMap((id) => {
      const entry = entryOf(asked, id);
      const state = entry === undefined ? undefined : asked.judged.authority.body(entry, 'check');
      return entry === undefined || state?.state !== 'held' ? [] : [{ entry, body: state.body }];
    })
    .sort((a, b) => byText(b.body.on, a.body.on) || byText(a.entry.id, b.entry.id));
}

/** The witness who signed an entry. */
export function witnessOf(
  { judged, names, marks }: Pick<CrewSource, 'judged' | 'names' | 'marks'>,
  entry: Placed,
): { readonly short: string; readonly name: string } {
  const [person] = judged.authority.persons.get(entry.header.signer) ?? [];
  if (person === undefined) return { short: '?', name: entry.header.signer.slice(0, 8) };
  return { short: marks.get(person) ?? person, name: spokenName(person, names) };
}

/** The check that is the showing: shown, not one that speaks against it. */
export const showingOf = (asked: CrewSource, stands: Stands) =>
  checksOf(asked, stands).find(({ body }) => body.outcome === 'shown');

/** Second witnesses that it rests on. */
export const secondsOf = (asked: CrewSource, { entries }: Stands): readonly Placed[] =>
  entries.flatMap((id) => {
    const entry = entryOf(asked, id);
    return entry?.header.kind === 'second' ? [entry] : [];
  });

/** What was seen last. */
export const lastOf = (asked: CrewSource, stands: Stands) => checksOf(asked, stands)[0];

export function markOf(asked: CrewSource, stands: Stands): string {
  if (stands.standing === 'show again') return stands.why[0]?.code ?? '?';
  const showing = showingOf(asked, stands);
  return stands.standing !== 'shown' || showing === undefined ? '' : witnessOf(asked, showing.entry).short;
}

/**
 * The last look at a person in a task, or in one part of a heading, that left nothing which he stands by: it was stopped
 * for safety. `undefined` where there is none, or where something is on record.
 */
export function stoppedOf(
  { board, judged }: Pick<CrewSource, 'board' | 'judged'>,
  stands: Stands,
  person: string,
  task: MapTask,
): Look | undefined {
  if (stands.standing !== 'not shown' || stands.entries.length > 0) return undefined;
  const looks = [task.id, ...task.parts].flatMap((id) => lastLook(judged, person, id, board.on) ?? []);
  return looks
    .filter(({ body }) => body.stopped)
    .reduce<Look | undefined>(
      (last, look) => (last === undefined || look.body.on > last.body.on ? look : last),
      undefined,
    );
}

/** A standing in a few words. */
export function lineOf(asked: CrewSource, stands: Stands, person: string, task: MapTask): string {
  const { tell, speak } = asked;
  const [why] = stands.why;
  const day = (on: Day | null) => (isDay(on) ? dayText(tell, on) : '');
  const witnessed = () => {
    const showing = showingOf(asked, stands);
    if (showing === undefined) return '';
    const { name } = witnessOf(asked, showing.entry);
    return tell('crew.witnessOn', { witness: name, day: day(showing.body.on) });
  };
  if (stands.standing === 'shown') return witnessed();
  if (why !== undefined) return speakDays(why.say, speak, tell);
  const look = lastOf(asked, stands) ?? stoppedOf(asked, stands, person, task);
  const [line = ''] = reasonOf(asked, stands, look);
  return look === undefined ? line : tell('crew.byMark', { line, mark: witnessOf(asked, look.entry).short });
}

/**
 * What there is to say of a standing that no entry speaks against: how it was practised, that it was not yet, or stopped.
 * @param look  what it rests on, or the look that left nothing to rest on
 */
export function reasonOf(
  { tell }: Pick<CrewSource, 'tell'>,
  stands: Stands,
  look: Pick<Look, 'body'> | undefined,
): readonly string[] {
  if (stands.standing === 'shown') return [];
  if (look === undefined) return [tell('crew.noRecord')];
  const { body } = look;
  const day = dayText(tell, body.on);
  if (stands.standing === 'not shown')
    return [tell(body.stopped ? 'crew.stoppedOn' : 'crew.notYetOn', { day })];
  const how = body.manner === 'performed' ? (body.help === 'alone' ? 'outOfSight' : 'withHelp') : body.manner;
  return [tell(`crew.practice-${how}`, { day })];
}
