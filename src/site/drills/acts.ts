/** Every act that the register's page signs, as data. What each may and does is the register's (../../register/acts). */

import { assigned, assignedFaults } from '../../register/acts/assigned.ts';
import { correct, correctFaults } from '../../register/acts/correct.ts';
import { erase, eraseFaults } from '../../register/acts/erase.ts';
import { retire, retireFaults } from '../../register/acts/retire.ts';
import { settle, settleFaults } from '../../register/acts/settle.ts';
import { succeed, succeedFaults } from '../../register/acts/succeed.ts';
import { takeOver, takeOverFaults } from '../../register/acts/takeOver.ts';
import { ticket, ticketFaults } from '../../register/acts/ticket.ts';
import { withdraw, withdrawFaults } from '../../register/acts/withdraw.ts';
import type { Json } from '../../register/canonical.ts';
import type { Regrade } from '../../register/checks.ts';
import { samePerson } from '../../register/demands.ts';
import { latest } from '../../register/order.ts';
import { readJson } from '../../register/strictJson.ts';
import { GivenError } from '../../trade/given.ts';
import { spokenName } from '../people.ts';
import { shortKey } from '../shortKey.ts';
import type { SiteKey } from '../speak.ts';
import { instantText } from '../zoned.ts';
import { type Act, type ActField, type Means, signs, type Values } from './act.ts';
import { settleOptions } from './branches.ts';
import { devicesOf, keysInUse } from './devices.ts';
import { ageText, dayOf, entryOptions, entryText, signerName } from './entries.ts';
import { erasingOf, peopleOnRecord } from './erasing.ts';
import type { Looking, Option } from './looking.ts';
import { tickets } from './tickets.ts';

const field = (
  { tell }: Looking,
  name: string,
  label: SiteKey,
  is: ActField['is'],
  more: { readonly hint?: SiteKey; readonly options?: readonly Option[] } = {},
): ActField => {
  const { hint, ...others } = more;
  return { name, label: tell(label), is, ...others, ...(hint === undefined ? {} : { hint: tell(hint) }) };
};
const why = (looking: Looking): ActField =>
  field(looking, 'why', 'drills.why', 'text', { hint: 'drills.whyHint' });

const needsKey = ({ me }: Looking): SiteKey | undefined => (me === undefined ? 'drills.barKey' : undefined);
const needsOwner = (looking: Looking): SiteKey | undefined => {
  const { judged, me } = looking;
  if (judged.authority.forked) return 'drills.barForked';
  return needsKey(looking) ?? (me === judged.authority.owner ? undefined : 'drills.barOwner');
};

/** Nothing of that device stands. */
const NONE = 'none';
const AFTER = 'after:';
/** The newest entries of a device that a retirement can name: more would hardly be found in a list. */
const MOST = 60;

/** The field of one device of one key: what was chosen for a device of the same name of another key is not its own. */
const afterField = (key: string, device: string): string => `${AFTER}${key}:${device}`;

/** What a retirement names: one entry a device, left out where nothing stands. */
const afterOf = (values: Values): readonly string[] =>
  Object.entries(values).flatMap(([name, id]) =>
    name.startsWith(AFTER) && id !== NONE && id !== '' ? [id] : [],
  );

const retiring: Act = {
  id: 'retire',
  title: 'drills.retire',
  button: 'drills.retireNow',
  done: 'drills.retired',
  bar: needsOwner,
  fields: (looking, values) => {
    const { judged, tell } = looking;
    const keys = keysInUse(judged).map((key) => ({
      value: key,
      text: tell('drills.keyOf', { key: shortKey(key), person: signerName(key, looking) }),
    }));
    const witness = values['witness'] ?? '';
    const devices = devicesOf(judged, witness).map(({ device, entries }): ActField => {
      const [last] = entries;
      const age = last === undefined ? '' : ageText(looking, last.time);
      return {
        name: afterField(witness, device),
        label: tell('drills.lastOf', { device, number: last?.header.seq ?? 0, age }),
        is: 'pick',
        start: last?.id ?? NONE,
        options: [
          ...entries.slice(0, MOST).map((entry) => ({ value: entry.id, text: entryText(entry, looking) })),
          { value: NONE, text: tell('drills.noneStands') },
        ],
      };
    });
    return [
      field(looking, 'witness', 'drills.whichKey', 'pick', { options: keys }),
      ...devices,
      why(looking),
    ];
  },
  before: (looking, values) => {
    const { judged, tell } = looking;
    const key = values['witness'] ?? '';
    if (key === '') return [];
    const whose = tell('drills.retireBefore', { person: signerName(key, looking), key: shortKey(key) });
    const devices = devicesOf(judged, key);
    if (devices.length === 0) return [whose, tell('drills.retireNothing')];
    const cuts = devices.map(({ device, entries }) => {
      const named = entries.find(({ id }) => id === values[afterField(key, device)]);
      if (named === undefined) return tell('drills.cutAll', { device, count: entries.length });
      const cut = entries.filter(({ header }) => header.seq > named.header.seq).length;
      return tell('drills.cutAfter', { device, number: named.header.seq, count: cut });
    });
    return [whose, ...cuts];
  },
  ...signs(
    (values) => ({
      witness: values['witness'] ?? '',
      after: afterOf(values),
      why: values['why'] ?? '',
    }),
    retireFaults,
    retire,
  ),
};

const succeeding: Act = {
  id: 'succeed',
  title: 'drills.succeed',
  button: 'drills.succeedNow',
  done: 'drills.succeeded',
  bar: needsOwner,
  fields: (looking) => [field(looking, 'next', 'drills.nextKey', 'public', { hint: 'drills.nextHint' })],
  ...signs((values) => ({ next: values['next'] ?? '' }), succeedFaults, succeed),
};

/** The key that may take over now: of the last succession, where the ownership is not forked. */
export function namedNext({ judged }: Looking): string | undefined {
  const { authority, view } = judged;
  return latest(view.order, authority.successions).at(-1)?.header.key ?? undefined;
}

const takingOver: Act = {
  id: 'take-over',
  title: 'drills.takeOver',
  button: 'drills.takeOverNow',
  done: 'drills.tookOver',
  bar: (looking) => {
    const { me, judged } = looking;
    if (me !== undefined && me === judged.authority.owner) return 'drills.barIsOwner';
    return needsKey(looking) ?? (me === namedNext(looking) ? undefined : 'drills.barNext');
  },
  fields: (looking) => [why(looking)],
  before: ({ tell }) => [tell('drills.takeOverBefore')],
  ...signs((values) => ({ why: values['why'] ?? '' }), takeOverFaults, takeOver),
};

const settling: Act = {
  id: 'settle',
  title: 'drills.settle',
  button: 'drills.settleNow',
  done: 'drills.settled',
  bar: (looking) =>
    needsOwner(looking) ?? (settleOptions(looking).length === 0 ? 'drills.barSettle' : undefined),
  fields: (looking) => [
    field(looking, 'entry', 'drills.whatStands', 'pick', { options: settleOptions(looking) }),
    why(looking),
  ],
  before: (looking, values) => {
    const stands = settleOptions(looking).find(({ value }) => value === values['entry']);
    if (stands === undefined) return [];
    return [looking.tell('drills.settles', { what: stands.text }), looking.tell('drills.settleBefore')];
  },
  ...signs((values) => ({ entry: values['entry'] ?? '', why: values['why'] ?? '' }), settleFaults, settle),
};

/** People on record, by name, to find an entry by. */
const personPick = (looking: Looking): ActField =>
  field(looking, 'person', 'drills.person', 'pick', {
    options: peopleOnRecord(looking.judged).map((id) => ({ value: id, text: nameAndId(id, looking) })),
  });
const nameAndId = (id: string, { names, tell }: Looking): string =>
  names.has(id) ? tell('drills.nameId', { name: spokenName(id, names), id }) : id;

/** Entries about a person that this key may speak of again: its own, or for the owner all; what is taken back is done with. */
function entriesFor(looking: Looking, person: string, kinds: readonly string[]): readonly Option[] {
  const { judged, me } = looking;
  const owner = me === judged.authority.owner;
  const gone = new Set(
    judged.view.list
      .filter((entry) => entry.header.kind === 'withdraw' && judged.counts(entry))
      .flatMap(({ header }) => header.target),
  );
  const entries = judged.view.order.list.filter(
    (entry) =>
      entry.header.about === person &&
      kinds.includes(entry.header.kind) &&
      judged.counts(entry) &&
      !gone.has(entry.id) &&
      (owner || (me !== undefined && samePerson(judged.authority, me, entry.header.signer))),
  );
  return entryOptions(entries, looking);
}

/** The entry that is chosen, in words, and what signing does to it: nothing before one is chosen. */
const beforeEntry =
  (chosen: SiteKey, does: SiteKey): NonNullable<Act['before']> =>
  (looking, values) => {
    const entry = looking.judged.view.order.byId.get(values['entry'] ?? '');
    if (entry === undefined) return [];
    return [looking.tell(chosen, { entry: entryText(entry, looking) }), looking.tell(does)];
  };

const withdrawing: Act = {
  id: 'withdraw',
  title: 'drills.withdraw',
  button: 'drills.withdrawNow',
  done: 'drills.withdrawn',
  bar: needsKey,
  fields: (looking, values) => [
    personPick(looking),
    field(looking, 'entry', 'drills.entryPick', 'pick', {
      hint: 'drills.entryHint',
      options: entriesFor(looking, values['person'] ?? '', ['check', 'second', 'ticket', 'assigned']),
    }),
    why(looking),
  ],
  before: beforeEntry('drills.takesBack', 'drills.withdrawBefore'),
  ...signs(
    (values) => ({ entry: values['entry'] ?? '', why: values['why'] ?? '' }),
    withdrawFaults,
    withdraw,
  ),
};

/** The evidence as it was handed over. @throws {GivenError} no JSON */
function evidenceOf(text: string): Json {
  if (text === '') return null;
  try {
    return readJson(text);
  } catch (error) {
    const todo = 'give the answers file as it was handed over';
    throw new GivenError([{ field: 'evidence', message: `not JSON (${(error as Error).message})`, todo }]);
  }
}

function regradeOf({ regrade }: Means): Regrade {
  // Its form is not there before (`grades`).
  if (regrade === undefined) throw new Error('what grades answers is not fetched yet');
  return regrade;
}

const correcting: Act = {
  id: 'correct',
  title: 'drills.mendEvidence',
  button: 'drills.mendNow',
  done: 'drills.mended',
  grades: true,
  bar: needsKey,
  fields: (looking, values) => [
    personPick(looking),
    field(looking, 'entry', 'drills.checkPick', 'pick', {
      hint: 'drills.entryHint',
      options: entriesFor(looking, values['person'] ?? '', ['check']),
    }),
    field(looking, 'evidence', 'drills.evidence', 'file', { hint: 'drills.evidenceHint' }),
    why(looking),
  ],
  before: beforeEntry('drills.mends', 'drills.mendBefore'),
  ...signs(
    (values) => ({
      entry: values['entry'] ?? '',
      evidence: evidenceOf(values['evidence'] ?? ''),
      why: values['why'] ?? '',
    }),
    (judged, given, writing, means) => correctFaults(judged, given, writing, regradeOf(means)),
    (judged, given, writing, means) => correct(judged, given, writing, regradeOf(means)),
  ),
};

const erasing: Act = {
  id: 'erase',
  title: 'drills.erase',
  button: 'drills.eraseNow',
  done: 'drills.erased',
  bar: needsOwner,
  fields: (looking) => [personPick(looking), why(looking)],
  before: (looking, values) => {
    const { judged, tell } = looking;
    const person = values['person'] ?? '';
    if (person === '') return [];
    const counts = { ...erasingOf(judged, person), person };
    return [
      tell('drills.eraseDrops', counts),
      tell('drills.eraseHere', counts),
      tell('drills.eraseStays', counts),
      tell('drills.eraseCopies'),
    ];
  },
  ...signs((values) => ({ person: values['person'] ?? '', why: values['why'] ?? '' }), eraseFaults, erase),
};

const recordingTicket: Act = {
  id: 'ticket',
  title: 'drills.ticket',
  button: 'drills.ticketNow',
  done: 'drills.ticketed',
  bar: needsKey,
  fields: (looking) => [
    field(looking, 'person', 'drills.personId', 'line'),
    field(looking, 'ticket', 'drills.ticketKind', 'pick', {
      options: tickets.map((id) => ({ value: id, text: `${id} ${looking.speak({ say: `${id}.name` })}` })),
    }),
    field(looking, 'issuer', 'drills.issuer', 'line'),
    field(looking, 'number', 'drills.number', 'line'),
    field(looking, 'until', 'drills.until', 'line', { hint: 'drills.untilHint' }),
  ],
  ...signs(
    (values) => ({
      person: values['person'] ?? '',
      ticket: values['ticket'] ?? '',
      issuer: values['issuer'] ?? '',
      number: values['number'] ?? '',
      until: values['until'] ?? '',
    }),
    ticketFaults,
    ticket,
  ),
};

/** Hours are the register's, as wherever a shift is asked about: two devices in two zones write one shift alike. */
const moment = (looking: Looking, name: string, label: SiteKey): ActField => ({
  ...field(looking, name, label, 'moment'),
  hint: looking.tell('drills.fromHint', { zone: looking.judged.view.zone }),
});

const assigning: Act = {
  id: 'assigned',
  title: 'drills.assigned',
  button: 'drills.assignNow',
  done: 'drills.assignDone',
  bar: needsKey,
  fields: (looking) => [
    field(looking, 'job', 'drills.job', 'line'),
    field(looking, 'person', 'drills.personId', 'line'),
    moment(looking, 'from', 'drills.from'),
    moment(looking, 'to', 'drills.to'),
    field(looking, 'override', 'drills.override', 'text', { hint: 'drills.overrideHint' }),
  ],
  ...signs(
    ({ job = '', person = '', from = '', to = '', override = '' }, { view: { zone } }) => ({
      job,
      person,
      from: instantText(zone, from),
      to: instantText(zone, to),
      ...(override === '' ? {} : { override }),
    }),
    assignedFaults,
    assigned,
  ),
};

export const acts = {
  retire: retiring,
  succeed: succeeding,
  takeOver: takingOver,
  settle: settling,
  withdraw: withdrawing,
  correct: correcting,
  erase: erasing,
  ticket: recordingTicket,
  assigned: assigning,
} as const;

/** Who owns it, and who may take over, in one line. */
export function ownershipLine(looking: Looking): string {
  const { judged, tell } = looking;
  const { owner, forked, takeOvers } = judged.authority;
  if (forked) return tell('drills.barForked');
  const next = namedNext(looking);
  const values = { owner: signerName(owner, looking), key: shortKey(owner) };
  const line = tell('drills.ownerNow', values);
  const [taken] = takeOvers;
  const since = taken === undefined ? '' : ` ${tell('drills.takenOn', { day: dayOf(looking, taken.time) })}`;
  const named =
    next === undefined || next === owner
      ? tell('drills.nextNone')
      : tell('drills.nextIs', { key: shortKey(next) });
  return `${line}${since} ${named}`;
}
