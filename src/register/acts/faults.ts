import type { Fault } from '../../trade/given.ts';
import type { Json } from '../canonical.ts';
import type { Judged } from '../judged.ts';
import { isGoodPoint } from '../keys.ts';
import { personId, type Shape, text } from '../shapes.ts';
import { isHeading, type TaskMap, taskOf } from '../taskMap.ts';
import { fault, isRetired, type Writing } from '../write.ts';

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

export const isOwner = (judged: Judged, writing: Writing): boolean =>
  ownerFaults(judged, writing).length === 0;

/** Whether a key was appointed for anything, from whatever day on. */
export const isAppointed = ({ authority }: Judged, key: string): boolean =>
  authority.appointments.some((a) => a.key === key);

/** What keeps a key from signing what owner and witnesses may sign. */
export function standingFaults(judged: Judged, writing: Writing): readonly Fault[] {
  const { publicKey } = writing.signer;
  if (isOwner(judged, writing) || isAppointed(judged, publicKey)) return [];
  return [
    fault(
      'key',
      publicKey,
      'neither the owner’s nor a witness’s key',
      'have the owner appoint this key first',
    ),
  ];
}

/** Nobody signs about himself: by person, over every key ever bound to him. */
export function ownFaults(
  { authority }: Judged,
  field: string,
  value: string,
  about: string | null,
  { signer }: Writing,
): readonly Fault[] {
  if (about === null || authority.persons.get(signer.publicKey)?.has(about) !== true) return [];
  return [fault(field, value, 'nobody signs about himself', 'have somebody else sign it')];
}

/** What keeps a text from being kept. */
export function textFaults(
  field: string,
  given: string,
  todo: string,
  shape: Shape = text,
): readonly Fault[] {
  if (given.trim() === '') return [fault(field, given === '' ? undefined : given, 'says nothing', todo)];
  if (!given.isWellFormed()) return [fault(field, given, 'holds half a sign (a lone surrogate)', todo)];
  const wrong = shape(given as Json);
  return wrong === undefined ? [] : [fault(field, given, wrong, todo)];
}

export const whyFaults = (why: string): readonly Fault[] => textFaults('why', why, 'say why, in a sentence');

/** What keeps a text from being a public key that can be trusted. */
export function keyFaults(field: string, key: string): readonly Fault[] {
  if (isGoodPoint(key)) return [];
  if (key === '') return [fault(field, undefined, 'no public key is given', 'give the public key')];
  return [fault(field, key, 'no public key that can be trusted', 'have "key" make one')];
}

/** What a retirement ends of the owner's own key: his acts as a witness. Of any other key `writerFaults` says it. */
export function endedFaults(judged: Judged, { signer }: Writing): readonly Fault[] {
  const { publicKey } = signer;
  if (publicKey !== judged.authority.owner || !isRetired(judged, publicKey)) return [];
  const message = 'this key is retired as a witness';
  return [fault('key', publicKey, message, 'sign with a key that is not')];
}
