import { type Appointment, appointmentsOf, covers } from './appointments.ts';
import type { BodyKind } from './bodies.ts';
import { demanded } from './demands.ts';
import type { Placed } from './order.ts';
import { ownerKinds, ownershipOf } from './ownership.ts';
import { misread, Refusals, refusal } from './refusal.ts';
import { retirementOf } from './retirement.ts';
import type { Authority } from './rights.ts';
import { type BodyState, bodyState, type View } from './view.ts';

/** What a retirement ends of an owner's key: his acts as a witness. Of any other key it ends everything. */
const witnessKinds: readonly string[] = ['check', 'second', 'ticket', 'assigned'];

/** @param lost  entries on the losing branch of a settled fork, by id: they count for nothing either */
export function authorityOf(view: View, lost: ReadonlySet<string>): Authority {
  const { isPast, mayKnow } = view.order;
  const refusals = new Refusals();
  const counts = (p: Placed): boolean => !refusals.has(p) && !lost.has(p.id);
  const body = <K extends BodyKind>(p: Placed, kind: K): BodyState<K> =>
    (p.header.kind === kind ? bodyState(view, p) : { state: 'none' }) as BodyState<K>;

  const ownership = ownershipOf(view, lost, refusals);
  const { byOwner } = ownership;
  for (const p of view.list) {
    const state = bodyState(view, p);
    if (state.state === 'unreadable') refusals.add(p, misread(state.why));
    if (ownerKinds.includes(p.header.kind) && !byOwner(p)) {
      refusals.add(p, refusal('not-appointed', 'not-owner'));
    }
  }
  const retirements = view.list
    .filter((p) => p.header.kind === 'retire' && p.header.key !== null && counts(p))
    .map((p) => retirementOf(view.order, p));
  const { appointments, persons } = appointmentsOf(view, ownership, retirements, counts, refusals);

  const retiredBy = Map.groupBy(retirements, (r) => r.key);
  for (const p of view.list) {
    const own = retiredBy.get(p.header.signer);
    if (own === undefined || (byOwner(p) && !witnessKinds.includes(p.header.kind))) continue;
    const cuts = own.filter((r) => !r.stands.has(p.id));
    const known = cuts.some((r) => isPast(r.entry, p));
    if (cuts.length > 0) refusals.add(p, refusal('after-retirement', 'retired', known));
  }
  const byKey = Map.groupBy(appointments, (a) => a.key);
  const ofSigner = (p: Placed): readonly Appointment[] => byKey.get(p.header.signer) ?? [];
  const isWitness = (p: Placed): boolean => ofSigner(p).some((a) => mayKnow(p, a.entry));
  const authority: Authority = {
    ...ownership,
    appointments,
    retirements,
    persons,
    voids: refusals.byId,
    body,
    isWitness,
    hasStanding: (p) => (byOwner(p) || isWitness(p)) && refusals.byId.get(p.id)?.code !== 'after-retirement',
    appointedFor: (p, task, on) => ofSigner(p).filter((a) => covers(a, task, on) && mayKnow(p, a.entry)),
  };
  for (const p of view.list) if (counts(p)) refusals.add(p, demanded(p, view, authority));
  return authority;
}
