/** Random histories: who is there, what may be tried, and the same written by hand where an act refuses. */

import { appoint } from '../../../src/register/acts/appoint.ts';
import { assigned } from '../../../src/register/acts/assigned.ts';
import { check } from '../../../src/register/acts/check.ts';
import { correct } from '../../../src/register/acts/correct.ts';
import { erase } from '../../../src/register/acts/erase.ts';
import { retire } from '../../../src/register/acts/retire.ts';
import { second } from '../../../src/register/acts/second.ts';
import { settle } from '../../../src/register/acts/settle.ts';
import { succeed } from '../../../src/register/acts/succeed.ts';
import { takeOver } from '../../../src/register/acts/takeOver.ts';
import { ticket } from '../../../src/register/acts/ticket.ts';
import { withdraw } from '../../../src/register/acts/withdraw.ts';
import { hashOf, toHex } from '../../../src/register/bytes.ts';
import type { JsonObject } from '../../../src/register/canonical.ts';
import { canonical } from '../../../src/register/canonical.ts';
import { writeInstant } from '../../../src/register/days.ts';
import { type Header, idOf, lineOf, signedBytes, sortCitations } from '../../../src/register/header.ts';
import type { RegisterFiles } from '../../../src/register/held.ts';
import type { Judged } from '../../../src/register/judged.ts';
import type { Signer } from '../../../src/register/keys.ts';
import { isBackDated, type Placed } from '../../../src/register/order.ts';
import { bodyPath, chainPath } from '../../../src/register/paths.ts';
import type { Draft, Writing, Written } from '../../../src/register/write.ts';
import { checkBody, kd, lz, map, next, owner, signerOf, stranger } from '../book.ts';

/** KD has two keys, one of them on two devices, and so has the owner. */
export const kd2 = signerOf(6, 'kd-old');
export const mt = signerOf(7, 'mt-phone');
export const signers: readonly Signer[] = [
  owner,
  { ...owner, device: 'tablet' },
  kd,
  { ...kd, device: 'tablet' },
  kd2,
  lz,
  mt,
  next,
  { ...next, device: 'tablet' },
  stranger,
];
export const people = ['DM', 'EI', 'KD', 'LZ', 'MT', 'OW', 'nobody'] as const;
const tasks = ['T1', 'T3', 'T4'] as const;
const days = ['2025-12-31', '2026-01-01', '2026-01-02'] as const;
export const why = 'because';
/** Answers that pass say so: grading itself is the practice's affair. */
export const regrade = (evidence: unknown): boolean => evidence === 'passes';

/** What is tried, by the places of what it speaks of in lists that are long enough. */
export interface Try {
  readonly kind: (typeof kinds)[number];
  readonly signer: number;
  /** Entries spoken of, as places in the order of the register; beyond it: one that is missing, one that never was. */
  readonly entries: readonly number[];
  readonly person: number;
  readonly key: number;
  readonly pick: number;
  /** Whether what it speaks of is chosen so that it may well be signed. */
  readonly fit: boolean;
}
export const kinds = [
  'check',
  'check',
  'check',
  'second',
  'second',
  'withdraw',
  'correct',
  'ticket',
  'assigned',
  'appoint',
  'retire',
  'settle',
  'settle',
  'succeed',
  'take-over',
  'erase',
] as const;

const of = <T>(list: readonly T[], at: number): T => list[at % list.length] as T;

/** An act as it is called, and the same entry as it would be written by hand. */
export interface Tried {
  readonly signer: Signer;
  readonly draft: Draft;
  act(judged: Judged, writing: Writing): Promise<Written>;
}

/** Ids that may be spoken of: every entry, what is missing, and one that never was. */
const idsOf = (judged: Judged): readonly string[] => [
  ...judged.view.order.list.map((p) => p.id),
  ...judged.gaps.map((g) => g.cited.id),
  'ab'.repeat(32),
];

/** What each kind may act on. */
const acted: Readonly<Record<string, readonly string[]>> = {
  second: ['check'],
  correct: ['check'],
  withdraw: ['check', 'second', 'ticket', 'assigned'],
};

/** Ids that an act of this kind may well name. */
function fitting(judged: Judged, kind: string, key: string): readonly string[] {
  const { view, gaps, forks } = judged;
  const held = view.order.list;
  const kindsOf = acted[kind];
  if (kindsOf !== undefined) return held.filter((p) => kindsOf.includes(p.header.kind)).map((p) => p.id);
  if (kind === 'retire') {
    const own = held.filter((p) => p.header.signer === key);
    return [...Map.groupBy(own, (p) => p.chain).values()].flatMap((c) => c.at(-1)?.id ?? []);
  }
  const early = held.filter(isBackDated).map((p) => p.id);
  return [
    ...gaps.map((g) => g.cited.id),
    ...early,
    ...forks.flatMap((f) => f.fork.branches.map((b) => b.id)),
  ];
}

const ownerKinds = ['appoint', 'retire', 'settle', 'succeed', 'erase'];

export function triedOf(judged: Judged, t: Try): Tried {
  const { kind } = t;
  const isOwners = ownerKinds.includes(kind);
  const fitSigners = signers.filter(({ publicKey }) =>
    kind === 'take-over'
      ? publicKey === next.publicKey
      : (publicKey === judged.authority.owner) === isOwners && publicKey !== stranger.publicKey,
  );
  const signer = of(t.fit && fitSigners.length > 0 ? fitSigners : signers, t.signer);
  const person = of(t.fit ? (['DM', 'EI'] as const) : people, t.person);
  const keys = t.fit && kind === 'succeed' ? [next] : t.fit ? [kd, kd2, lz, mt] : signers;
  const key = of(keys, t.key).publicKey;
  const may = t.fit ? fitting(judged, kind, key) : [];
  // Mostly what is new: an entry far back is rarely of the kind that is asked for.
  const ids = [...(may.length > 0 ? may : idsOf(judged))].reverse();
  const named = t.entries.map((n) => of(ids, n));
  const [entry = ''] = named;
  const target = [entry];
  const about = judged.view.order.byId.get(entry)?.header.about ?? null;
  const task = of(tasks, t.pick);
  const on = of(days, t.pick >>> 2);
  const [bound = null] = judged.authority.persons.get(key) ?? [];
  const acts: Readonly<Record<Try['kind'], () => Omit<Tried, 'signer'>>> = {
    check: () => {
      const outcome = t.pick % 5 === 0 ? 'not-yet' : 'shown';
      return {
        draft: { kind: 'check', about: person, body: checkBody(task, on, { outcome }) },
        act: (j, w) => check(j, { person, task, outcome, on }, map, w),
      };
    },
    second: () => ({
      draft: { kind: 'second', about, target, body: { saw: true } },
      act: (j, w) => second(j, { entry }, map, w),
    }),
    withdraw: () => ({
      draft: { kind: 'withdraw', about, target, body: { why } },
      act: (j, w) => withdraw(j, { entry, why }, w),
    }),
    correct: () => ({
      draft: { kind: 'correct', about, target, body: { why, evidence: 'passes' } },
      act: (j, w) => correct(j, { entry, evidence: 'passes', why }, w, regrade),
    }),
    ticket: () => {
      const body = { ticket: 'W4', issuer: 'a house', number: '7', until: '2027-01-01' };
      return {
        draft: { kind: 'ticket', about: person, body },
        act: (j, w) => ticket(j, { person, ...body }, w),
      };
    },
    assigned: () => {
      const body = { job: 'J1', from: '2026-01-03T07:00:00.000Z', to: '2026-01-03T15:00:00.000Z' };
      return {
        draft: { kind: 'assigned', about: person, body: { ...body, override: null } },
        act: (j, w) => assigned(j, { person, ...body }, w),
      };
    },
    appoint: () => ({
      draft: { kind: 'appoint', about: person, key, body: { tasks: [task], on } },
      act: (j, w) => appoint(j, { witness: key, person, tasks: [task], on }, map, w),
    }),
    retire: () => {
      const after = t.pick % 4 === 0 ? [] : named;
      return {
        draft: { kind: 'retire', about: bound, key, target: [...new Set(after)], body: { why } },
        act: (j, w) => retire(j, { witness: key, after, why }, w),
      };
    },
    settle: () => ({
      draft: { kind: 'settle', about, target, body: { why } },
      act: (j, w) => settle(j, { entry, why }, w),
    }),
    succeed: () => ({
      draft: { kind: 'succeed', key, body: null },
      act: (j, w) => succeed(j, { next: key }, w),
    }),
    'take-over': () => ({
      draft: { kind: 'take-over', body: { why } },
      act: (j, w) => takeOver(j, { why }, w),
    }),
    erase: () => ({
      draft: { kind: 'erase', about: person, body: { why } },
      act: (j, w) => erase(j, { person, why }, w),
    }),
  };
  return { signer, ...acts[kind]() };
}

/**
 * Signs a draft whatever speaks against it: after the last of its own chain, with the ends of all others cited.
 * @returns the files, and the id of the entry
 */
export async function byHand(
  { view }: Judged,
  files: RegisterFiles,
  { signer, draft }: Tried,
  now: number,
  salt: number,
): Promise<{ readonly files: RegisterFiles; readonly id: string }> {
  const { publicKey, device } = signer;
  const chains = Map.groupBy(view.list, (p) => p.chain);
  const endOf = (list: readonly Placed[]): Placed =>
    list.reduce((end, p) => (p.header.seq >= end.header.seq ? p : end));
  const ends = [...chains.values()].map(endOf);
  const own = ends.find((p) => p.header.signer === publicKey && p.header.device === device);
  const seen = ends
    .filter((p) => p !== own)
    .map(({ id, header }) => {
      const { signer: by, device: on, seq } = header;
      return { id, signer: by, device: on, seq };
    });
  const body = draft.body === null ? null : canonical({ ...(draft.body as JsonObject), salt: saltOf(salt) });
  const header: Header = {
    v: 1,
    kind: draft.kind,
    register: view.begin.id,
    signer: publicKey,
    device,
    seq: own === undefined ? 0 : own.header.seq + 1,
    prev: own?.id ?? null,
    seen: sortCitations(seen),
    time: writeInstant(now),
    about: draft.about ?? null,
    target: [...(draft.target ?? [])].sort(),
    key: draft.key ?? null,
    body: body === null ? null : hashOf(body),
  };
  const line = `${lineOf(header, toHex(await signer.sign(signedBytes(header))))}\n`;
  const path = chainPath(publicKey, device);
  const bodies = body === null || header.body === null ? {} : { [bodyPath(header.body)]: body };
  return { files: { ...files, ...bodies, [path]: `${files[path] ?? ''}${line}` }, id: idOf(header) };
}

const saltOf = (n: number): string => n.toString(16).padStart(32, '0');
