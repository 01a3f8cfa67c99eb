import { type Fault, GivenError } from '../trade/given.ts';
import { filesHolding } from './bodyFiles.ts';
import { hashOf, isHex, toHex } from './bytes.ts';
import { canonical, type JsonObject } from './canonical.ts';
import { writeInstant } from './days.ts';
import { branchOf } from './forks.ts';
import {
  type Citation,
  chainOf,
  citationOf,
  type Header,
  idOf,
  lineOf,
  MOST_SEEN,
  signedBytes,
  sortCitations,
} from './header.ts';
import type { RegisterFiles } from './held.ts';
import type { Judged } from './judged.ts';
import type { Chance } from './keyFile.ts';
import type { Signer } from './keys.ts';
import type { Placed } from './order.ts';
import { bodyPath, chainPath } from './paths.ts';
import { deviceName } from './shapes.ts';

/** What every act of writing needs beside its own fields. */
export interface Writing {
  readonly signer: Signer;
  /** Now, ms since 1970 UTC: as the register was judged with. */
  readonly now: number;
  readonly chance: Chance;
  /** In place of the key's own. */
  readonly device?: string | undefined;
}

/** What an entry adds to a register. Bodies and marker are written first, then the lines in one go. */
export interface Written {
  /** Id of the entry asked for (entries of kind `seen` may stand before it). */
  readonly entry: string;
  /** Whole files that are new. */
  readonly put: RegisterFiles;
  /** Lines to append, each with its line feed. */
  readonly append: { readonly path: string; readonly text: string };
  /** Hashes of bodies that go once the lines stand, from every file that holds one: what was said about a person who is erased. */
  readonly drop?: readonly string[];
}

/** What an entry says, before it has its place. */
export interface Draft {
  readonly kind: string;
  readonly about?: string | null;
  readonly target?: readonly string[];
  readonly key?: string | null;
  /** Without its salt; `null` for kinds without a body. */
  readonly body: JsonObject | null;
}

/** A register after an entry was written. */
export function withWritten(files: RegisterFiles, { put, append, drop = [] }: Written): RegisterFiles {
  const after = { ...files, ...put, [append.path]: `${files[append.path] ?? ''}${append.text}` };
  const gone = new Set(filesHolding(after, drop));
  return gone.size === 0
    ? after
    : Object.fromEntries(Object.entries(after).filter(([path]) => !gone.has(path)));
}

export const fault = (field: string, value: unknown, message: string, todo: string): Fault =>
  value === undefined ? { field, message, todo } : { field, value, message, todo };

/** @throws {GivenError} when there are faults, with all of them */
export function refuseIf(faults: readonly (Fault | undefined)[]): void {
  const found = faults.filter((f) => f !== undefined);
  if (found.length > 0) throw new GivenError(found);
}

export const deviceOf = ({ signer, device }: Writing): string => device ?? signer.device;

export const isRetired = ({ authority }: Judged, key: string): boolean =>
  authority.retirements.some((r) => r.key === key);

/** Faults that keep a key from writing anything into a register. */
export function writerFaults(judged: Judged, writing: Writing): readonly Fault[] {
  const { authority, view } = judged;
  const { publicKey } = writing.signer;
  const device = deviceOf(writing);
  const faults: Fault[] = [];
  const wrong = deviceName(device);
  if (wrong !== undefined) faults.push(fault('device', device, `the device ${wrong}`, 'name the device so'));
  // An owner's acts end only by a take-over: what his retirement as a witness ends is asked where a witness signs.
  if (isRetired(judged, publicKey) && publicKey !== authority.owner) {
    faults.push(fault('key', publicKey, 'this key is retired', 'sign with a key that is not'));
  }
  if (authority.takeOvers.length > 0 && publicKey === view.begin.header.signer) {
    faults.push(
      fault('key', publicKey, 'the ownership was taken over from this key', 'sign with another key'),
    );
  }
  const early = tooEarly(citedBy(judged, chainOf({ signer: publicKey, device })), writing.now);
  if (early !== undefined) faults.push(early);
  const file = chainPath(publicKey, device);
  if (view.held.torn.has(file)) {
    faults.push(fault('device', device, `${file} ends in a torn line`, 'mend the register first'));
  }
  return faults;
}

/**
 * Gives a draft its place at the end of its signer's chain and has it signed. Heads of other chains that are new go
 * along, so that the entry's whole past is always cited.
 *
 * @param judged  the register now, everything known; `undefined` only for the entry that begins one
 * @throws {GivenError} a time earlier than what is cited, a torn file, a retired key
 */
export async function writeEntry(
  judged: Judged | undefined,
  draft: Draft,
  writing: Writing,
): Promise<Written> {
  const { signer, now, chance } = writing;
  const device = deviceOf(writing);
  const chain = { signer: signer.publicKey, device };
  if (judged !== undefined) refuseIf(writerFaults(judged, writing));
  const head = judged === undefined ? undefined : ownHead(judged, chainOf(chain));
  const heads = judged === undefined ? [] : newHeads(judged, chainOf(chain), head);

  const salted = draft.body === null ? null : canonical({ ...draft.body, salt: toHex(chance(16)) });
  const body = salted === null ? null : hashOf(salted);
  const common = {
    v: 1 as const,
    register: judged?.view.begin.id ?? null,
    ...chain,
    time: writeInstant(now),
  };
  const full: Omit<Header, 'seq' | 'prev' | 'seen'> = {
    ...common,
    kind: draft.kind,
    about: draft.about ?? null,
    target: [...(draft.target ?? [])].sort(),
    key: draft.key ?? null,
    body,
  };
  const bare = { ...common, kind: 'seen', about: null, target: [], key: null, body: null };

  let citations = sortCitations(heads.map((h) => citationOf(h.id, h.header)));
  let last = head === undefined ? undefined : { id: head.id, seq: head.header.seq };
  let text = '';
  const add = async (
    fields: Omit<Header, 'seq' | 'prev' | 'seen'>,
    seen: readonly Citation[],
  ): Promise<void> => {
    const header: Header = { ...fields, seq: (last?.seq ?? -1) + 1, prev: last?.id ?? null, seen };
    const signature = toHex(await signer.sign(signedBytes(header)));
    if (!isHex(signature, 64)) throw new RangeError('a signature is 64 bytes');
    last = { id: idOf(header), seq: header.seq };
    text += `${lineOf(header, signature)}\n`;
  };
  for (; citations.length > MOST_SEEN; citations = citations.slice(MOST_SEEN)) {
    await add(bare, citations.slice(0, MOST_SEEN));
  }
  await add(full, citations);
  return {
    entry: (last as unknown as { id: string }).id,
    put: salted === null || body === null ? {} : { [bodyPath(body)]: salted },
    append: { path: chainPath(signer.publicKey, device), text },
  };
}

/** Whether an entry that is written now would have another in its past. */
export function willKnow(judged: Judged, writing: Writing, entry: Placed): boolean {
  const cited = citedBy(judged, chainOf({ signer: writing.signer.publicKey, device: deviceOf(writing) }));
  return cited.some((p) => p === entry || judged.view.order.isPast(p, entry));
}

/** What the next entry of a chain would follow. */
function citedBy(judged: Judged, chain: string): readonly Placed[] {
  const head = ownHead(judged, chain);
  return [...(head === undefined ? [] : [head]), ...newHeads(judged, chain, head)];
}

function tooEarly(cited: readonly Placed[], now: number): Fault | undefined {
  const latestCited = Math.max(...cited.map((p) => p.entered));
  if (cited.length === 0 || now >= latestCited) return undefined;
  return fault(
    'at',
    writeInstant(now),
    `earlier than an entry that it follows (${writeInstant(latestCited)})`,
    'set the clock right, or write later',
  );
}

/** The entry that a chain goes on from: of a forked one the branch that stands, then the longer. */
function ownHead(judged: Judged, chain: string): Placed | undefined {
  const own = judged.view.order.list.filter((p) => p.chain === chain);
  const lost = (p: Placed): boolean =>
    judged.forks.some(({ fork, lost: gone }) => {
      const branch = branchOf(fork, p);
      return branch !== undefined && gone.includes(branch);
    });
  const heads = endsOf(own);
  const standing = heads.filter((p) => !lost(p));
  return (standing.length > 0 ? standing : heads).reduce<Placed | undefined>(
    (best, p) => (best === undefined || p.header.seq > best.header.seq ? p : best),
    undefined,
  );
}

/** Entries of a chain that none of the others comes straight after. */
function endsOf(chain: readonly Placed[]): readonly Placed[] {
  const passed = new Set(chain.map((p) => p.before));
  return chain.filter((p) => !passed.has(p));
}

/** Heads of the other chains that the chain's last entry did not know, of signers with standing. */
function newHeads(judged: Judged, chain: string, head: Placed | undefined): readonly Placed[] {
  const { view, authority } = judged;
  const others = view.list.filter((p) => p.chain !== chain && authority.hasStanding(p));
  const chains = [...Map.groupBy(others, (p) => p.chain).values()];
  return chains.flatMap(endsOf).filter((p) => head === undefined || !view.order.isPast(head, p));
}
