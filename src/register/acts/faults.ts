import type { Fault } from '../../trade/given.ts';
import { isHex } from '../bytes.ts';
import type { Json } from '../canonical.ts';
import type { Judged } from '../judged.ts';
import { isGoodPoint } from '../keys.ts';
import type { Placed } from '../order.ts';
import { personId, type Shape, text } from '../shapes.ts';
import { isHeading, type TaskMap, taskOf } from '../taskMap.ts';
import { fault, type Writing, willKnow } from '../write.ts';

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

/** An entry that an act names, or what is wrong with its id. */
export type Named =
  | { readonly entry: Placed }
  | { readonly entry: undefined; readonly faults: readonly Fault[] };

/** What keeps a text from being the whole id of an entry. */
export function idFaults(field: string, id: string): readonly Fault[] {
  const whole: boolean = isHex(id, 32);
  if (whole) return [];
  if (id === '') return [fault(field, undefined, 'no entry is named', 'write the whole id of the entry')];
  const message =
    /^[0-9a-f]+$/i.test(id) && id.length < 64 ? 'not the whole id of an entry' : 'no id of an entry';
  return [fault(field, id, message, 'write all 64 digits, small, as they were printed')];
}

/** The entry with an id, which whoever signs now knows: an entry acts on what lies in its past, on nothing else. */
export function named(judged: Judged, field: string, id: string, writing: Writing): Named {
  const wrong = idFaults(field, id);
  if (wrong.length > 0) return { entry: undefined, faults: wrong };
  const entry = judged.view.order.byId.get(id);
  const no = (message: string, todo: string): Named => ({
    entry: undefined,
    faults: [fault(field, id, message, todo)],
  });
  if (entry === undefined) {
    const missing = judged.gaps.some((g) => g.cited.id === id);
    return missing
      ? no('this entry is missing: it is cited, and not held here', 'bring in the copy that holds it')
      : no(
          'no such entry is in this register',
          'name one of its entries, or bring in the copy that holds it',
        );
  }
  if (judged.authority.voids.get(id)?.code === 'after-retirement') {
    return no('a retirement or a take-over cut this entry off: it counts for nothing', 'name another entry');
  }
  if (!willKnow(judged, writing, entry)) {
    if (!judged.authority.hasStanding(entry)) {
      return no('nobody with standing signed this entry: it counts for nothing', 'name another entry');
    }
    if (entry.entered > writing.now) {
      return no('the time of this entry has not come', 'set the clock right, or sign later');
    }
    return no(
      'it is on a branch that this device’s own chain does not follow',
      'sign on another device, or have the fork settled first',
    );
  }
  return { entry };
}

/** The entry with an id, when it is of one of these kinds and about somebody who was not erased. */
export function namedOf(
  kinds: readonly string[],
  judged: Judged,
  field: string,
  id: string,
  writing: Writing,
): Named {
  const found = named(judged, field, id, writing);
  if (found.entry === undefined) return found;
  const { kind, about } = found.entry.header;
  if (!kinds.includes(kind)) {
    const todo = `name an entry of kind ${kinds.join(' or ')}`;
    return { entry: undefined, faults: [fault(field, id, `an entry of kind ${kind}`, todo)] };
  }
  if (about !== null && !judged.view.erased.has(about)) return found;
  const message = about === null ? 'an entry about nobody' : 'the person it is about was erased';
  return { entry: undefined, faults: [fault(field, id, message, 'name another entry')] };
}
