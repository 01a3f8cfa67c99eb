/** How one person stands in one task, in words and as the text of its mark: what the crew board's cells are made of. Pure. */
import type { Board, PersonRow, TaskRow } from '../register/board.ts';
import { byText } from '../register/bytes.ts';
import { type Day, isDay } from '../register/days.ts';
import type { Judged } from '../register/judged.ts';
import type { Placed } from '../register/order.ts';
import type { Stands } from '../register/standing.ts';
import { isHeading, type MapTask, type TaskMap } from '../register/taskMap.ts';
import { dayText } from './dates.ts';
import { speakDays } from './days.ts';
import { type Names, spokenName } from './people.ts';
import type { Speak, Tell } from './speak.ts';
import { stateOf } from './states.ts';
import { variantText } from './variants.ts';

/** A board, the register behind it, and the words for both. */
export interface CrewSource {
  readonly board: Board;
  readonly judged: Judged;
  readonly map: TaskMap;
  readonly names: Names;
  /** What each person goes by in a box. */
  readonly marks: ReadonlyMap<string, string>;
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

function witnessOf(
  { judged, names, marks }: CrewSource,
  entry: Placed,
): { readonly short: string; readonly name: string } {
  const [person] = judged.authority.persons.get(entry.header.signer) ?? [];
  if (person === undefined) return { short: '?', name: entry.header.signer.slice(0, 8) };
  return { short: marks.get(person) ?? person, name: spokenName(person, names) };
}

/** The check that is the showing: shown, not one that speaks against it. */
const showingOf = (asked: CrewSource, stands: Stands) =>
  checksOf(asked, stands).find(({ body }) => body.outcome === 'shown');

export function markOf(asked: CrewSource, stands: Stands): string {
  if (stands.standing === 'show again') return stands.why[0]?.code ?? '?';
  const showing = showingOf(asked, stands);
  return stands.standing !== 'shown' || showing === undefined ? '' : witnessOf(asked, showing.entry).short;
}

/** A standing in a few words. */
export function lineOf(asked: CrewSource, stands: Stands): string {
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
  const [last] = checksOf(asked, stands);
  if (last === undefined) return tell('crew.noRecord');
  const { body } = last;
  if (stands.standing === 'not shown') return tell('crew.notYetOn', { day: day(body.on) });
  const how = body.manner === 'performed' ? (body.help === 'alone' ? 'outOfSight' : 'withHelp') : body.manner;
  return tell(`crew.practice-${how}`, { day: day(body.on) });
}

/** Every way of the task that is on record, and every reason for how it stands. */
export function reasonsOf(asked: CrewSource, task: MapTask, row: PersonRow): readonly string[] {
  const { tell, speak } = asked;
  const stands = row.tasks[task.id] as TaskRow;
  const say = (name: string, way: Stands) => {
    const whys = way.why.map((why) => speakDays(why.say, speak, tell));
    const lines = way.standing === 'shown' || way.why.length === 0 ? [lineOf(asked, way), ...whys] : whys;
    const showing = way.standing === 'show again' ? showingOf(asked, way) : undefined;
    const before =
      showing === undefined
        ? []
        : [
            tell('crew.witnessOn', {
              witness: witnessOf(asked, showing.entry).name,
              day: dayText(tell, showing.body.on),
            }),
          ];
    const until =
      way.standing === 'shown' && way.until !== null
        ? [tell('crew.goodTo', { day: dayText(tell, way.until) })]
        : [];
    return tell('crew.variant', {
      variant: name,
      state: tell(`state.${stateOf(way.standing)}`),
      line: [...lines, ...before, ...until].filter((text) => text !== '').join(', '),
    });
  };
  if (isHeading(task)) {
    return task.parts.map((id) => {
      const part = row.tasks[id] as TaskRow;
      return say(tell('crew.part', { id, name: speak({ say: `${id}.name` }) }), part.variants[0] ?? part);
    });
  }
  if (stands.variants.length > 0) {
    return stands.variants.map((way) =>
      say(variantText(task, way.variant, speak) || tell('crew.anyWay'), way),
    );
  }
  return stands.why.length > 0 || stands.entries.length > 0 ? [say(tell('crew.anyWay'), stands)] : [];
}
