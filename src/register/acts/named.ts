/** The entries that an act speaks of: which they are, and whether it may act on them. */
import type { Fault } from '../../trade/given.ts';
import { isHex } from '../bytes.ts';
import { samePerson } from '../demands.ts';
import { AHEAD, type Judged } from '../judged.ts';
import type { Placed } from '../order.ts';
import { fault, type Writing, willKnow } from '../write.ts';
import { isAppointed, isOwner, ownFaults } from './faults.ts';

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
  if (entry.entered > writing.now + AHEAD) {
    return no('the time of this entry has not come', 'set the clock right, or sign later');
  }
  const cutOff = judged.authority.voids.get(id)?.code === 'after-retirement';
  if (!cutOff && !willKnow(judged, writing, entry)) {
    if (!judged.authority.hasStanding(entry)) {
      return no('nobody with standing signed this entry: it counts for nothing', 'name another entry');
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
  if (judged.authority.voids.get(id)?.code === 'after-retirement') {
    const message = 'a retirement or a take-over cut this entry off: it counts for nothing';
    return { entry: undefined, faults: [fault(field, id, message, 'name another entry')] };
  }
  const { kind, about } = found.entry.header;
  if (!kinds.includes(kind)) {
    const todo = `name an entry of kind ${kinds.join(' or ')}`;
    return { entry: undefined, faults: [fault(field, id, `an entry of kind ${kind}`, todo)] };
  }
  if (about !== null && !judged.view.erased.has(about)) return found;
  const message = about === null ? 'an entry about nobody' : 'the person it is about was erased';
  return { entry: undefined, faults: [fault(field, id, message, 'name another entry')] };
}

/** An entry is amended by the owner or by whoever signed it, with any key of his that is appointed; never by its person. */
export function amendFaults(judged: Judged, entry: Placed, writing: Writing): readonly Fault[] {
  const { publicKey } = writing.signer;
  const faults: Fault[] = [...ownFaults(judged, 'entry', entry.id, entry.header.about, writing)];
  const own = samePerson(judged.authority, publicKey, entry.header.signer) && isAppointed(judged, publicKey);
  if (!own && !isOwner(judged, writing)) {
    const message = 'neither the owner’s key nor one of the witness who signed that entry';
    faults.push(fault('key', publicKey, message, 'have the owner sign, or who signed the entry'));
  }
  return faults;
}

/** Whether a withdrawal that counts names an entry. */
export function isWithdrawn(judged: Judged, id: string): boolean {
  return judged.view.list.some(
    (p) => p.header.kind === 'withdraw' && p.header.target[0] === id && judged.counts(p),
  );
}
