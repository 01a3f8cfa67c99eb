/** Rows of a person sheet and of a task sheet: who stands where in what, by state, in the order in which states stand. Pure. */
import type { PersonRow } from '../register/board.ts';
import { isHeading, isTicket, type MapTask } from '../register/taskMap.ts';
import type { CrewSource } from './crewLines.ts';
import { spokenName } from './people.ts';
import { type StateKey, stateKeys } from './states.ts';
import { type Way, waysOnRecord } from './ways.ts';

export interface StandRow {
  /** Id of the row on its page. */
  readonly anchor: string;
  /** Task number, or what the person goes by. */
  readonly code: string;
  readonly name: string;
  /** The sheet of that task or person. */
  readonly href: string;
  /** The lowest, which the row stands as. */
  readonly lowest: Way;
  readonly others: readonly Way[];
}

export interface StandGroup {
  readonly state: StateKey;
  readonly rows: readonly StandRow[];
  /** "11 of 15 tasks", "3 of 12 people". */
  readonly count: string;
}

/** Every state, in order, with its rows; none is left out, so that nothing is nobody's. */
function grouped(
  { tell }: CrewSource,
  rows: readonly StandRow[],
  counted: 'standing.countOf' | 'standing.peopleOf',
): readonly StandGroup[] {
  return stateKeys.map((state) => {
    const own = rows.filter(({ lowest }) => lowest.state === state);
    return {
      state,
      rows: own,
      count: tell(counted, { count: own.length, of: rows.length }),
    };
  });
}

/** A person in every task; parts stand in the row of their heading. */
export function tasksOf(source: CrewSource, person: PersonRow): readonly StandGroup[] {
  const { links, map, speak } = source;
  const parts = new Set(map.tasks.flatMap((task) => task.parts));
  const tasks = map.tasks.filter(({ id }) => !isTicket(id) && !parts.has(id));
  return grouped(
    source,
    tasks.map((task): StandRow => {
      const [lowest, ...others] = waysOnRecord(source, task, person);
      return {
        anchor: task.id,
        code: task.id,
        name: speak({ say: `${task.id}.name` }),
        href: links.task(task.id),
        ...tidied(task, lowest, others),
      };
    }),
    'standing.countOf',
  );
}

/** Everybody of a board in one task. */
export function peopleOf(
  source: CrewSource,
  task: MapTask,
  people: readonly PersonRow[],
): readonly StandGroup[] {
  const { links, marks, names } = source;
  return grouped(
    source,
    people.map((person): StandRow => {
      const [lowest, ...others] = waysOnRecord(source, task, person);
      return {
        anchor: person.id,
        code: marks.get(person.id) ?? person.id,
        name: spokenName(person.id, names),
        href: links.person(person.id),
        ...tidied(task, lowest, others),
      };
    }),
    'standing.peopleOf',
  );
}

/** Parts of a heading that nobody saw are the row's own word already; they are not said one by one. */
function tidied(task: MapTask, lowest: Way, others: readonly Way[]): Pick<StandRow, 'lowest' | 'others'> {
  const bare = (way: Way) => way.state === 'not-shown' && way.entries.length === 0 && way.mark === '';
  if (!isHeading(task) || !bare(lowest)) return { lowest, others };
  const silent = [lowest, ...others.filter(bare)];
  return {
    lowest: { ...lowest, name: silent.map(({ name }) => name).join(', ') },
    others: others.filter((way) => !bare(way)),
  };
}
