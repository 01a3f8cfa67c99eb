/**
 * Every way of a task that is on record for a person, in words: how it stands, who saw it, when, since when, until when,
 * why, and the entries it rests on. What board, person sheet and task sheet are made of. Pure.
 */
import type { PersonRow, TaskRow } from '../register/board.ts';
import { rankOf, type Stands } from '../register/standing.ts';
import { isHeading, type MapTask } from '../register/taskMap.ts';
import {
  type CrewSource,
  type EntryLink,
  entryLink,
  lastOf,
  markOf,
  reasonOf,
  showingOf,
  witnessOf,
} from './crewLines.ts';
import { dayText } from './dates.ts';
import { speakDays } from './days.ts';
import { type StateKey, stateOf } from './states.ts';
import { variantText } from './variants.ts';

export interface Way {
  /** Its variant, or which part of a heading it is; empty where the task is done one way. */
  readonly name: string;
  readonly state: StateKey;
  readonly word: string;
  /** What stands in the mark. */
  readonly mark: string;
  /** What speaks against a showing, the one that governs first; how it was practised; what is missing. */
  readonly why: readonly string[];
  /** Witness of the showing, or of what was seen last: the mark he goes by, and his name. */
  readonly by: string;
  readonly byName: string;
  readonly seen: string;
  /** First day of the present standing, where that is not the day seen. */
  readonly since: string;
  /** Last day that the showing is or was good. */
  readonly until: string;
  readonly entries: readonly EntryLink[];
}

/** A standing and what it is of. */
interface Named {
  readonly name: string;
  readonly stands: Stands;
}

/** What is on record, one a variant; of a heading one a part and variant. A task with nothing on record is one. */
function namedOf({ speak }: CrewSource, task: MapTask, row: PersonRow, map: readonly MapTask[]): Named[] {
  const of = (one: MapTask, whole: string): Named[] => {
    const stands = row.tasks[one.id] as TaskRow;
    const name = (way: string) => [whole, way].filter((text) => text !== '').join(', ');
    return stands.variants.length === 0
      ? [{ name: whole, stands }]
      : stands.variants.map((way) => ({ name: name(variantText(one, way.variant, speak)), stands: way }));
  };
  if (!isHeading(task)) return of(task, '');
  return task.parts.flatMap((id) => {
    const part = map.find((one) => one.id === id);
    return part === undefined ? [] : of(part, id);
  });
}

/** The way that a task's standing comes from first, then the others by standing, lowest first. */
export function waysOnRecord(source: CrewSource, task: MapTask, row: PersonRow): readonly [Way, ...Way[]] {
  const { standing, since, until } = row.tasks[task.id] as TaskRow;
  const named = namedOf(source, task, row, source.map.tasks);
  const governs = ({ stands }: Named) =>
    stands.standing === standing && stands.since === since && stands.until === until;
  const first = named.find(governs) ?? (named[0] as Named);
  const others = named
    .filter((one) => one !== first)
    .sort((a, b) => rankOf(a.stands.standing) - rankOf(b.stands.standing));
  return [wayOf(source, first, row), ...others.map((one) => wayOf(source, one, row))];
}

function wayOf(source: CrewSource, { name, stands }: Named, row: PersonRow): Way {
  const { speak, tell } = source;
  const state = stateOf(stands.standing);
  const seen = showingOf(source, stands) ?? lastOf(source, stands);
  const witness = seen === undefined ? undefined : witnessOf(source, seen.entry);
  const whys = stands.why.map(({ say }) => speakDays(say, speak, tell));
  const why = row.erased === true ? [tell('crew.erased')] : whys.length > 0 ? whys : reasonOf(source, stands);
  const day = (text: string | null | undefined) => (typeof text === 'string' ? dayText(tell, text) : '');
  return {
    name,
    state,
    word: tell(`state.${state}`),
    mark: markOf(source, stands),
    why,
    by: witness?.short ?? '',
    byName: witness?.name ?? '',
    seen: day(seen?.body.on),
    since: stands.since === seen?.body.on ? '' : day(stands.since),
    until: day(stands.until),
    entries: stands.entries.map((id) => entryLink(source, id)),
  };
}

/** The same in one line: "4 in: Show again, revision 2 of … asks for it again, witness Kirra Dunmarsh, seen …". */
export function wayText({ tell }: Pick<CrewSource, 'tell'>, way: Way): string {
  const facts = [
    way.word,
    ...way.why,
    way.byName === '' ? '' : tell('standing.byWitness', { witness: way.byName }),
    way.seen === '' ? '' : tell('standing.seenShort', { day: way.seen }),
    way.since === '' ? '' : tell('standing.since', { day: way.since }),
    way.until === '' ? '' : tell('crew.goodTo', { day: way.until }),
  ];
  const line = facts.filter((text) => text !== '').join(', ');
  return way.name === '' ? line : tell('standing.way', { name: way.name, line });
}
