/** The sheet of one task: who stands where in it, what it asks for, its revisions. Pure. */
import { isHeading, type MapTask, revisionOn, taskOf } from '../register/taskMap.ts';
import { asOfText, signerLines } from './crew.ts';
import type { CrewSource } from './crewLines.ts';
import { dayText } from './dates.ts';
import { peopleOf, type StandGroup } from './standRows.ts';
import { pairName, valueName } from './variants.ts';

export interface TaskView {
  readonly id: string;
  readonly name: string;
  readonly purpose: string;
  readonly asOf: string;
  readonly groups: readonly StandGroup[];
  /** Name and value each: months, second witness, tickets, variants, parts. */
  readonly facts: readonly { readonly name: string; readonly lines: readonly string[] }[];
  /** The last first. */
  readonly revisions: readonly { readonly n: string; readonly on: string; readonly again: string }[];
  readonly signers: readonly string[];
}

export interface TaskAsked {
  readonly task: string;
  /** People of the board to show; all when left out. */
  readonly only?: readonly string[] | undefined;
}

/** `undefined` for a task that the map does not have. */
export function taskView(source: CrewSource, { task: id, only }: TaskAsked): TaskView | undefined {
  const { board, map, speak, tell } = source;
  const task = taskOf(map, id);
  if (task === undefined) return undefined;
  const people = board.people.filter((row) => row.erased !== true && (only?.includes(row.id) ?? true));
  const now = revisionOn(task, board.on);
  return {
    id,
    name: speak({ say: `${id}.name` }),
    purpose: speak({ say: `${id}.purpose` }),
    asOf: asOfText(board, tell),
    groups: peopleOf(source, task, people),
    facts: factsOf(source, task),
    revisions: [...task.revisions].reverse().map(({ n, on, showAgain }) => ({
      n: n === now ? tell('taskSheet.now', { n }) : String(n),
      on: dayText(tell, on),
      again: tell(showAgain ? 'taskSheet.againYes' : 'taskSheet.againNo'),
    })),
    signers: signerLines(source, tell),
  };
}

function factsOf({ map, speak, tell }: CrewSource, task: MapTask): TaskView['facts'] {
  const named = (id: string) => tell('person.ticket', { ticket: id, name: speak({ say: `${id}.name` }) });
  const variants = Object.entries(task.variants).map(([pair, values]) =>
    tell('taskSheet.variantRow', {
      pair: pairName(pair, speak),
      values: values.map((value) => valueName(pair, value, speak)).join(', '),
    }),
  );
  const months =
    isHeading(task) || task.months === null
      ? tell('taskSheet.monthsParts')
      : tell(task.months === 1 ? 'taskSheet.monthsOne' : 'taskSheet.monthsOf', { months: task.months });
  const heading = isHeading(task);
  return [
    { name: tell('taskSheet.months'), lines: [months] },
    ...(heading
      ? [
          {
            name: tell('taskSheet.parts'),
            lines: task.parts.filter((id) => taskOf(map, id) !== undefined).map(named),
          },
        ]
      : [
          {
            name: tell('taskSheet.second'),
            lines: [tell(task.second ? 'taskSheet.secondYes' : 'taskSheet.secondNo')],
          },
          {
            name: tell('taskSheet.variants'),
            lines: variants.length > 0 ? variants : [tell('taskSheet.variantsNone')],
          },
        ]),
    {
      name: tell('taskSheet.tickets'),
      lines: task.tickets.length > 0 ? task.tickets.map(named) : [tell('taskSheet.ticketsNone')],
    },
  ];
}
