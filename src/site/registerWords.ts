/** What a page says of a register, its keys and what is wrong with it. Pure. */
import type { Problem } from '../register/held.ts';
import type { Judged } from '../register/judged.ts';
import { dayText } from './dates.ts';
import { speakDays } from './days.ts';
import type { Speak, Tell } from './speak.ts';

/** What a key may do in a register: own it, witness for tasks, or nothing; and to whom it is bound. */
export function standingOfKey({ authority }: Judged, publicKey: string, tell: Tell): readonly string[] {
  const lines: string[] = [];
  if (authority.owner === publicKey) lines.push(tell('register.keyOwner'));
  const appointed = authority.appointments
    .filter(({ key }) => key === publicKey)
    .map(({ tasks, on }) => {
      const named = tasks === null || tasks === 'all' ? tell('register.allTasks') : tasks.join(', ');
      return on === null ? named : tell('register.fromDay', { tasks: named, day: dayText(tell, on) });
    });
  if (appointed.length > 0) lines.push(tell('register.keyWitness', { tasks: appointed.join('; ') }));
  const [person] = authority.persons.get(publicKey) ?? [];
  if (person !== undefined) lines.push(tell('register.keyPerson', { person }));
  return lines.length > 0 ? lines : [tell('register.keyNot')];
}

export interface ProblemRow {
  readonly at: string;
  readonly what: string;
  /** Empty where it is settled: then nobody need do anything. */
  readonly todo: string;
  readonly settled: boolean;
}

/** What does not hold, where, and what to do about it. */
export function problemRows(problems: readonly Problem[], speak: Speak, tell: Tell): readonly ProblemRow[] {
  return problems.map(({ file, line, code, say, settled }) => ({
    at: line === undefined ? file : `${file}, ${tell('register.line', { line })}`,
    what: speakDays(say, speak, tell),
    todo: settled === true ? '' : tell(`register.todo-${code}`),
    settled: settled === true,
  }));
}

/** The first line of the register's page: whether it holds, and what it is. */
export function registerAnswer({ view, problems, entries }: Judged, tell: Tell) {
  const open = problems.filter(({ settled }) => settled !== true).length;
  const day = dayText(tell, view.dayIn(view.zone, view.begin.time));
  const values = { entries, day, zone: view.zone };
  return {
    label: tell(entries === 1 ? 'register.labelOne' : 'register.label', values),
    line:
      open === 0
        ? tell('register.holds')
        : tell(open === 1 ? 'register.problemsOne' : 'register.problems', { count: open }),
  };
}
