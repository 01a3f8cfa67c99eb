import { lackingOf } from './lacking.ts';
import type { Placed } from './order.ts';
import { misread, type Refusal, refusal } from './refusal.ts';
import type { Authority } from './rights.ts';
import type { View } from './view.ts';

/** Kinds that nobody signs about himself. */
const neverOwn: readonly string[] = ['check', 'second', 'ticket', 'withdraw', 'correct', 'settle'];

/** What is asked of an entry beyond its form: its signer may sign that, about that person, of that entry. */
type Demand = (p: Placed, view: View, authority: Authority) => Refusal | undefined;

const personsOf = ({ persons }: Authority, key: string): ReadonlySet<string> => persons.get(key) ?? new Set();

/** Whether two keys are one, or one person's. */
export const samePerson = (authority: Authority, a: string, b: string): boolean =>
  a === b || [...personsOf(authority, a)].some((who) => personsOf(authority, b).has(who));

/** The one entry that an entry acts on, when that is, or may be, in its past. */
function targetOf({ order }: View, p: Placed): Placed | undefined {
  const [id, more] = p.header.target;
  const q = id === undefined || more !== undefined ? undefined : order.byId.get(id);
  return q !== undefined && order.mayKnow(p, q) ? q : undefined;
}

/** Whether what an entry acts on is missing here: it does nothing then, and nothing is wrong with it that is known. */
function isMissing({ order }: View, p: Placed): boolean {
  const [id, more] = p.header.target;
  return id !== undefined && more === undefined && lackingOf(order).has(id) && !order.byId.has(id);
}

const checked: Demand = (p, view, authority) => {
  const state = authority.body(p, 'check');
  if (p.header.about === null) return misread('about: nobody is named');
  if (state.state !== 'held')
    return authority.isWitness(p) ? undefined : refusal('not-appointed', 'no-standing');
  const { task, on } = state.body;
  if (authority.appointedFor(p, task, on).length === 0) return refusal('not-appointed', 'not-appointed');
  return on > view.dayIn(view.zone, p.entered) ? misread('on: seen after the day of entry') : undefined;
};

const seconded: Demand = (p, view, authority) => {
  if (isMissing(view, p)) return standing(p, view, authority);
  const q = targetOf(view, p);
  if (q?.header.kind !== 'check') return refusal('not-appointed', 'no-target');
  if (q.header.about !== p.header.about) return misread('about: not the person of the check');
  if (samePerson(authority, p.header.signer, q.header.signer)) return refusal('own-signature', 'own-second');
  const state = authority.body(q, 'check');
  const may =
    state.state === 'held'
      ? authority.appointedFor(p, state.body.task, state.body.on).length > 0
      : authority.isWitness(p);
  return may ? undefined : refusal('not-appointed', 'not-appointed');
};

const amended =
  (...kinds: readonly string[]): Demand =>
  (p, view, authority) => {
    if (isMissing(view, p)) return standing(p, view, authority);
    const q = targetOf(view, p);
    if (q === undefined || !kinds.includes(q.header.kind)) return refusal('not-appointed', 'no-target');
    if (q.header.about !== p.header.about) return misread('about: not the person of the entry');
    const own = samePerson(authority, p.header.signer, q.header.signer) && authority.isWitness(p);
    return own || authority.byOwner(p) ? undefined : refusal('not-appointed', 'not-own');
  };

const standing: Demand = (p, _, authority) =>
  authority.byOwner(p) || authority.isWitness(p) ? undefined : refusal('not-appointed', 'no-standing');

const settled: Demand = (p, view, authority) => {
  const about = view.order.byId.get(p.header.target[0] ?? '')?.header.about ?? null;
  if (p.header.target.length !== 1) return misread('target: one entry is settled');
  const own = about !== null && personsOf(authority, p.header.signer).has(about);
  return own ? refusal('own-signature', 'own-signature') : undefined;
};

const demands: Readonly<Record<string, Demand>> = {
  check: checked,
  second: seconded,
  withdraw: amended('check', 'second', 'ticket', 'assigned'),
  correct: amended('check'),
  settle: settled,
  ticket: standing,
  assigned: standing,
  seen: standing,
};

/** Why an entry's signer might not sign it; `undefined` when he might. */
export const demanded: Demand = (p, view, authority) => {
  const { kind, about, signer } = p.header;
  if (about !== null && neverOwn.includes(kind) && personsOf(authority, signer).has(about)) {
    return refusal('own-signature', 'own-signature');
  }
  // A kind may be any word, one that every object has among them.
  return Object.hasOwn(demands, kind) ? demands[kind]?.(p, view, authority) : undefined;
};
