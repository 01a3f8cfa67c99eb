import type { Fault } from '../../trade/given.ts';
import type { Judged } from '../judged.ts';
import { personId } from '../shapes.ts';
import { isHeading, type TaskMap, taskOf } from '../taskMap.ts';
import { fault, type Writing } from '../write.ts';

/** What keeps an id from being a person that can be written about. */
export function personFaults(judged: Judged, person: string): readonly Fault[] {
  if (person === '') return [fault('person', undefined, 'no id is given', 'write the id of the person')];
  const wrong = personId(person);
  if (wrong !== undefined) return [fault('person', person, `an id ${wrong}`, 'write another id')];
  if (!judged.view.erased.has(person)) return [];
  return [fault('person', person, 'this person was erased', 'an erased id is never used again')];
}

/** What keeps an id from being a task that somebody can show. */
export function taskFaults(map: TaskMap, id: string): readonly Fault[] {
  const task = taskOf(map, id);
  if (task === undefined) return [fault('task', id, 'no such task', 'see "register tasks" for the ids')];
  if (!isHeading(task)) return [];
  return [fault('task', id, 'a heading is not shown itself', `name its parts: ${task.parts.join(', ')}`)];
}

/** What keeps a key from an owner's act. */
export function ownerFaults({ authority }: Judged, { signer }: Writing): readonly Fault[] {
  const { publicKey } = signer;
  if (authority.forked) {
    return [fault('key', publicKey, 'the ownership is forked: nobody is owner', 'begin a register anew')];
  }
  if (publicKey === authority.owner) return [];
  return [fault('key', publicKey, 'not the owner’s key', 'sign with the key that owns the register')];
}
