import type { Fault } from '../../trade/given.ts';
import { covers } from '../appointments.ts';
import type { Judged } from '../judged.ts';
import type { TaskMap } from '../taskMap.ts';
import { fault, type Writing, writerFaults } from '../write.ts';
import { endedFaults, personFaults, taskFaults } from './faults.ts';

/** A sheet that is set: for whom, and which of the tasks that it is evidence for. */
export interface SetGiven {
  readonly person: string;
  readonly task: string;
}

/** Whether a witness was appointed for a task by the day on which it is now. */
export function mayWitness({ authority, view }: Judged, task: string, { signer, now }: Writing): boolean {
  const today = view.dayIn(view.zone, now);
  return authority.appointments.some((a) => a.key === signer.publicKey && covers(a, task, today));
}

/**
 * Every fault that keeps a witness from setting a sheet; empty when he may. Nothing is written: a set sheet is a file.
 * He may set one for himself, since another witness signs.
 */
export function setFaults(
  judged: Judged,
  { person, task }: SetGiven,
  map: TaskMap,
  writing: Writing,
): readonly Fault[] {
  const { publicKey } = writing.signer;
  const tasks = taskFaults(map, task);
  const faults = [
    // No entry is written, so only what is wrong with the key itself keeps him from it.
    ...endedFaults(judged, writing),
    ...writerFaults(judged, writing).filter(({ field }) => field === 'key'),
    ...personFaults(judged, person),
    ...tasks,
  ];
  if (tasks.length > 0 || mayWitness(judged, task, writing)) return faults;
  const { view } = judged;
  const message = `not appointed for ${task} on ${view.dayIn(view.zone, writing.now)}`;
  return [...faults, fault('key', publicKey, message, 'have the owner appoint this key first')];
}
