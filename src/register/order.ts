import { byText } from './bytes.ts';
import { type Citation, chainOf } from './header.ts';
import type { Entry } from './held.ts';

/** An entry in its place among the others of one register. */
export interface Placed extends Entry {
  /** Rank in one order in which everything comes after its past. */
  readonly rank: number;
  /** The latest time in the entry and its past, ms: no honest entry is earlier. */
  readonly entered: number;
  readonly chain: string;
  /** The entry before it in its chain, where it is held. */
  readonly before: Placed | undefined;
  /** Entries that it cites and nobody here holds (or that are not what the citation says). */
  readonly lacks: readonly Citation[];
  /** Whether anything in its past is lacking. */
  readonly holed: boolean;
  /** Whether an entry before it in its own chain is lacking. */
  readonly broken: boolean;
}

export interface Order {
  /** Everything comes after its past; entries that do not know each other stand by time entered, then id. */
  readonly list: readonly Placed[];
  readonly byId: ReadonlyMap<string, Placed>;
  /** Whether `earlier` lies in the past of `later`; no entry lies in its own. */
  isPast(later: Placed, earlier: Placed): boolean;
  /**
   * Whether `earlier` lies in the past of `later`, or may: what is lacking in its own chain may have cited it, and
   * what is lacking in another chain came after what stands before it there. That something is lacking is doubt enough;
   * it is not said besides that its signer knew nothing.
   */
  mayKnow(later: Placed, earlier: Placed): boolean;
}

/** Every citation of an entry: the one before it in its chain, then what it has seen. */
function citations({ header }: Entry): readonly Citation[] {
  const { prev, seq, signer, device } = header;
  return prev === null ? header.seen : [{ id: prev, signer, device, seq: seq - 1 }, ...header.seen];
}

const fits = (cited: Citation, { header }: Entry): boolean =>
  cited.signer === header.signer && cited.device === header.device && cited.seq === header.seq;

interface Draft {
  readonly entry: Entry;
  readonly cited: readonly Entry[];
  readonly lacks: readonly Citation[];
}

/**
 * Puts entries in order. A citation cannot run in a ring: an id is the hash of what holds the citation.
 * @param entries  entries of one register; what they cite and is not among them is lacking
 */
export function arrange(entries: Iterable<Entry>): Order {
  const held = new Map([...entries].map((e) => [e.id, e]));
  const drafts = new Map<string, Draft>();
  for (const entry of held.values()) {
    const cited: Entry[] = [];
    const lacks: Citation[] = [];
    for (const c of citations(entry)) {
      const found = held.get(c.id);
      if (found !== undefined && fits(c, found)) cited.push(found);
      else lacks.push(c);
    }
    drafts.set(entry.id, { entry, cited, lacks });
  }
  return place(drafts);
}

interface Measure {
  readonly draft: Draft;
  readonly entered: number;
  readonly depth: number;
  readonly holed: boolean;
  /** Highest number of each chain that is cited in the entry or its past, and lacking. */
  readonly lost: ReadonlyMap<string, number>;
}

function place(drafts: ReadonlyMap<string, Draft>): Order {
  const measures = measure(drafts);
  const sorted = [...measures.values()].sort(
    (a, b) => a.entered - b.entered || a.depth - b.depth || byText(a.draft.entry.id, b.draft.entry.id),
  );
  const byId = new Map<string, Placed>();
  const width = Math.ceil(sorted.length / 32);
  const pasts: Uint32Array[] = [];
  const list = sorted.map(({ draft, entered, holed }, rank): Placed => {
    const past = new Uint32Array(width);
    for (const cited of draft.cited) {
      const earlier = (byId.get(cited.id) as Placed).rank;
      const theirs = pasts[earlier] as Uint32Array;
      for (let i = 0; i < width; i++) past[i] = (past[i] as number) | (theirs[i] as number);
      past[earlier >>> 5] = (past[earlier >>> 5] as number) | (1 << (earlier & 31));
    }
    pasts.push(past);
    const { entry, lacks } = draft;
    const before = entry.header.prev === null ? undefined : byId.get(entry.header.prev);
    const own = before?.chain === chainOf(entry.header) ? before : undefined;
    const { prev, seq } = entry.header;
    const linked = own === undefined ? prev === null : own.header.seq === seq - 1 && !own.broken;
    const chain = chainOf(entry.header);
    const placed = { ...entry, rank, entered, chain, before: own, lacks, holed, broken: !linked };
    byId.set(entry.id, placed);
    return placed;
  });
  const isPast = (later: Placed, earlier: Placed): boolean =>
    (((pasts[later.rank] as Uint32Array)[earlier.rank >>> 5] as number) & (1 << (earlier.rank & 31))) !== 0;
  const mayKnow = (later: Placed, earlier: Placed): boolean =>
    isPast(later, earlier) ||
    ((later.broken || earlier.header.seq < (measures.get(later.id)?.lost.get(earlier.chain) ?? 0)) &&
      later !== earlier &&
      !isPast(earlier, later) &&
      earlier.entered <= later.entered);
  return { list, byId, isPast, mayKnow };
}

/** Time entered and depth of every entry, the past first; without recursion, for chains are long. */
function measure(drafts: ReadonlyMap<string, Draft>): Map<string, Measure> {
  const done = new Map<string, Measure>();
  for (const start of drafts.keys()) {
    const open = [start];
    while (open.length > 0) {
      const id = open.at(-1) as string;
      const draft = drafts.get(id) as Draft;
      const waiting = done.has(id) ? [] : draft.cited.filter((c) => !done.has(c.id));
      if (waiting.length > 0) {
        open.push(...waiting.map((c) => c.id));
        continue;
      }
      open.pop();
      if (done.has(id)) continue;
      const past = draft.cited.map((c) => done.get(c.id) as Measure);
      done.set(id, {
        draft,
        entered: Math.max(draft.entry.time, ...past.map((m) => m.entered)),
        depth: Math.max(-1, ...past.map((m) => m.depth)) + 1,
        holed: draft.lacks.length > 0 || past.some((m) => m.holed),
        lost: lostIn(draft, past),
      });
    }
  }
  return done;
}

/** One map is handed on along a chain until something more is lacking. */
function lostIn({ lacks }: Draft, past: readonly Measure[]): ReadonlyMap<string, number> {
  const [most = new Map<string, number>()] = past.map((m) => m.lost).sort((a, b) => b.size - a.size);
  const all = [
    ...past.filter((m) => m.lost !== most).flatMap((m) => [...m.lost]),
    ...lacks.map((c) => [chainOf(c), c.seq] as const),
  ];
  const more = all.filter(([chain, seq]) => seq > (most.get(chain) ?? -1));
  if (more.length === 0) return most;
  const lost = new Map(most);
  for (const [chain, seq] of more) lost.set(chain, Math.max(seq, lost.get(chain) ?? -1));
  return lost;
}

/** Whether an entry is dated before something in its past. */
export const isBackDated = (p: Placed): boolean => p.time < p.entered;

/** Those of `among` that no other of them comes after by their past. */
export function latest(order: Order, among: readonly Placed[]): readonly Placed[] {
  return among.filter((p) => !among.some((q) => order.isPast(q, p)));
}

/** An entry and those before it in its chain, as far as they are held. */
export function* chainBack(from: Placed): Generator<Placed> {
  for (let p: Placed | undefined = from; p !== undefined; p = p.before) yield p;
}
