/**
 * Every way of a task that is on record for a person, in words: how it stands, who saw it, when, since when, until when,
 * why, and the entries it rests on. What board, person sheet and task sheet are made of. Pure.
 */
import type { PersonRow, TaskRow } from '../register/board.ts';
import type { Variant } from '../register/bodies.ts';
import { rankOf, type Stands } from '../register/standing.ts';
import { isHeading, type MapTask, taskOf } from '../register/taskMap.ts';
import {
  type CrewSource,
  type EntryLink,
  entryLink,
  lastOf,
  markOf,
  reasonOf,
  secondsOf,
  showingOf,
  stoppedOf,
  witnessOf,
} from './crewLines.ts';
import { dayText, shortDay } from './dates.ts';
import { speakDays } from './days.ts';
import { type StateKey, stateOf } from './states.ts';
import { otherThanPlain, variantText } from './variants.ts';

export interface Way {
  /** Its variant, or which part of a heading it is; empty where the task is done one way. */
  readonly name: string;
  readonly state: StateKey;
  readonly word: string;
  /** What stands in the mark. */
  readonly mark: string;
  /** What speaks against a showing, the one that governs first; how it was practised; what is missing. */
  readonly why: readonly string[];
  /** Witness of the showing, or of what was seen last, then the second where there is one: marks they go by, and names. */
  readonly by: string;
  readonly byName: string;
  readonly seen: string;
  /** First day of the present standing, where that is not the day seen. */
  readonly since: string;
  /** Last day that the showing is or was good. */
  readonly until: string;
  /** Seen and until as columns write them. */
  readonly short: { readonly seen: string; readonly until: string };
  readonly entries: readonly EntryLink[];
}

/** A standing and what it is of. */
interface Named {
  readonly name: string;
  /** The task, or the part of a heading. */
  readonly task: MapTask;
  readonly stands: Stands;
}

/**
 * What is on record, one a variant; of a heading one a part and variant. A task with nothing on record is one. A part
 * names only what is not plain: the rest stands on its own sheet.
 */
function namedOf({ map, speak }: CrewSource, task: MapTask, row: PersonRow): readonly Named[] {
  const of = (one: MapTask, name: (variant: Variant) => string): readonly Named[] => {
    const stands = row.tasks[one.id] as TaskRow;
    return stands.variants.length === 0
      ? [{ name: isHeading(task) ? one.id : '', task: one, stands }]
      : stands.variants.map((way) => ({ name: name(way.variant), task: one, stands: way }));
  };
  if (!isHeading(task)) return of(task, (variant) => variantText(task, variant, speak));
  return task.parts.flatMap((id) => {
    const part = taskOf(map, id);
    return part === undefined
      ? []
      : of(part, (variant) => [id, ...otherThanPlain(part, variant, speak)].join(', '));
  });
}

/** The way that a task's standing comes from first, then the others by standing, lowest first. */
export function waysOnRecord(source: CrewSource, task: MapTask, row: PersonRow): readonly [Way, ...Way[]] {
  const { standing, since, until } = row.tasks[task.id] as TaskRow;
  const named = namedOf(source, task, row);
  const governs = ({ stands }: Named) =>
    stands.standing === standing && stands.since === since && stands.until === until;
  const first = named.find(governs) ?? (named[0] as Named);
  const others = named
    .filter((one) => one !== first)
    .sort((a, b) => rankOf(a.stands.standing) - rankOf(b.stands.standing));
  return [wayOf(source, first, row), ...others.map((one) => wayOf(source, one, row))];
}

function wayOf(source: CrewSource, { name, task, stands }: Named, row: PersonRow): Way {
  const { speak, tell } = source;
  const state = stateOf(stands.standing);
  const stopped = row.erased === true ? undefined : stoppedOf(source, stands, row.id, task);
  const seen = showingOf(source, stands) ?? lastOf(source, stands) ?? stopped;
  const rests = stopped === undefined ? stands.entries : [stopped.entry.id];
  const witnesses = [...(seen === undefined ? [] : [seen.entry]), ...secondsOf(source, stands)].map((entry) =>
    witnessOf(source, entry),
  );
  const whys = stands.why.map(({ say }) => speakDays(say, speak, tell));
  const why =
    row.erased === true
      ? [tell('crew.erased')]
      : whys.length > 0
        ? whys
        : reasonOf(source, stands, lastOf(source, stands) ?? stopped);
  const day = (text: string | null | undefined, as = dayText) =>
    typeof text === 'string' ? as(tell, text) : '';
  return {
    name,
    state,
    word: tell(`state.${state}`),
    mark: markOf(source, stands),
    why,
    by: witnesses.map(({ short }) => short).join(' '),
    byName: witnesses.map(({ name }) => name).join(', '),
    seen: day(seen?.body.on),
    since:
      whys.some((text) => text.includes(day(stands.since))) || stands.since === seen?.body.on
        ? ''
        : day(stands.since),
    until: day(stands.until),
    short: { seen: day(seen?.body.on, shortDay), until: day(stands.until, shortDay) },
    entries: rests.map((id) => entryLink(source, id)),
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

/** The same for a narrow column: how it stands, why, whose mark, until when. */
export function shortWay({ tell }: Pick<CrewSource, 'tell'>, way: Way): string {
  const until = way.short.until === '' ? '' : tell('crew.goodTo', { day: way.short.until });
  const line = [way.word, ...way.why, way.by, until].filter((text) => text !== '').join(', ');
  return way.name === '' ? line : tell('standing.way', { name: way.name, line });
}
