import type { Fault } from '../../trade/given.ts';
import { type Day, isDay } from '../days.ts';
import type { Judged } from '../judged.ts';
import { isGoodPoint } from '../keys.ts';
import type { TaskMap } from '../taskMap.ts';
import { fault, refuseIf, type Writing, type Written, writeEntry, writerFaults } from '../write.ts';
import { ownerFaults, personFaults, taskFaults } from './faults.ts';

export interface AppointGiven {
  /** Public key of the witness, 64 hexadecimal digits. */
  readonly witness: string;
  readonly person: string;
  readonly tasks: 'all' | readonly string[];
  /** First day of the appointment. */
  readonly on: Day;
}

/** Every fault that keeps an appointment from being signed; empty when it may be. */
export function appointFaults(
  judged: Judged,
  given: AppointGiven,
  map: TaskMap,
  writing: Writing,
): readonly Fault[] {
  const { authority } = judged;
  const { witness, person, tasks, on } = given;
  const key = isGoodPoint(witness);
  const bound = [...(authority.persons.get(witness) ?? [])];
  return [
    ...ownerFaults(judged, writing),
    ...writerFaults(judged, writing),
    ...personFaults(judged, person),
    key
      ? undefined
      : witness === ''
        ? fault('witness', undefined, 'no public key is given', 'give the witness’s public key')
        : fault('witness', witness, 'no public key that can be trusted', 'have "key" make one'),
    authority.retirements.some((r) => r.key === witness)
      ? fault(
          'witness',
          witness,
          'this key is retired',
          'a retired key is never appointed again: make a new one',
        )
      : undefined,
    authority.takeOvers.length > 0 && witness === judged.view.begin.header.signer
      ? fault(
          'witness',
          witness,
          'the ownership was taken over from this key: it signs nothing more',
          'make a new key for this person',
        )
      : undefined,
    bound.length > 0 && !bound.includes(person)
      ? fault(
          'person',
          person,
          `the key is bound to ${bound.join(', ')} for good`,
          'make a new key for this person',
        )
      : undefined,
    ...(tasks === 'all'
      ? []
      : tasks.flatMap((id) => taskFaults(map, id).map((f) => ({ ...f, field: 'tasks' })))),
    tasks.length === 0 ? fault('tasks', '', 'names no task', 'write all, or ids with commas') : undefined,
    isDay(on) ? undefined : fault('on', on, 'no day of the calendar', 'write it so: 2026-03-09'),
  ].filter((one) => one !== undefined);
}

/** Signs a witness in for tasks, from a day on. @throws {GivenError} with all faults */
export async function appoint(
  judged: Judged,
  given: AppointGiven,
  map: TaskMap,
  writing: Writing,
): Promise<Written> {
  refuseIf(appointFaults(judged, given, map, writing));
  const { witness, person, tasks, on } = given;
  const body = { tasks: tasks === 'all' ? tasks : [...new Set(tasks)].sort(), on };
  return writeEntry(judged, { kind: 'appoint', about: person, key: witness, body }, writing);
}
