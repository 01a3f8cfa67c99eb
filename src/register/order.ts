import { byText } from './bytes.ts';
import { type Citation, chainOf } from './header.ts';
import type { Entry } from './held.ts';
import { type Place, Reach } from './reach.ts';

/** An entry in its place among the others of one register. */
export interface Placed extends Entry, Place {
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
  /** The entries of its stretch: `row[step]` is itself. */
  readonly row: readonly Placed[];
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

/** Numbers by chain. */
type Lost = ReadonlyMap<string, number>;
const NONE: Lost = new Map();
const NO_LACKS: readonly Citation[] = [];

/** The row of whatever has no place yet. */
const NOT_YET: readonly Placed[] = [];

/** An entry on its way to its place: until it has one, its rank is where it stands in the lists of a `Draft`. */
type Making = { -readonly [K in keyof Placed]: Placed[K] };

/** What is known of entries on their way, each list by the same numbers: there are many of them. */
interface Draft {
  readonly cited: (readonly Making[])[];
  readonly measured: Uint8Array;
  readonly depth: Uint32Array;
  /** Highest number of each chain that is cited in the entry or its past, and lacking. */
  readonly lost: Lost[];
}

/**
 * Puts entries in order. A citation cannot run in a ring: an id is the hash of what holds the citation.
 * @param entries  entries of one register; what they cite and is not among them is lacking
 */
export function arrange(entries: Iterable<Entry>): Order {
  const byId = new Map<string, Making>();
  const all: Making[] = [];
  for (const entry of entries) {
    const made = making(entry, all.length);
    byId.set(made.id, made);
    all.push(made);
  }
  const size = all.length;
  const draft: Draft = {
    cited: [],
    measured: new Uint8Array(size),
    depth: new Uint32Array(size),
    lost: new Array(size).fill(NONE),
  };
  const find = finder(all, byId);
  for (const made of all) draft.cited.push(citedBy(made, find));
  for (const made of all) measure(made, draft);
  return place(all, byId, draft);
}

/** Field by field: what is spread takes several times as long. */
const making = (entry: Entry, at: number): Making => ({
  id: entry.id,
  header: entry.header,
  signature: entry.signature,
  time: entry.time,
  file: entry.file,
  line: entry.line,
  stretch: 0,
  step: 0,
  rank: at,
  entered: entry.time,
  chain: '',
  before: undefined,
  lacks: NO_LACKS,
  holed: false,
  broken: false,
  row: NOT_YET,
});

type Find = (cited: Citation) => Making | undefined;

/** Finds what is cited by its number in its chain first: chains are few, and ids a large table. */
function finder(all: readonly Making[], byId: ReadonlyMap<string, Making>): Find {
  const chains = new Map<string, Map<string, Making[]>>();
  for (const made of all) {
    const { signer, device, seq } = made.header;
    const devices = chains.get(signer) ?? new Map<string, Making[]>();
    const chain = devices.get(device) ?? [];
    if (seq === chain.length) chain.push(made);
    if (chain.length === 1) chains.set(signer, devices.set(device, chain));
  }
  return (cited) => {
    const { id, signer, device, seq } = cited;
    const likely = chains.get(signer)?.get(device)?.[seq];
    if (likely?.id === id) return likely;
    const found = byId.get(id);
    return found !== undefined && fits(cited, found) ? found : undefined;
  };
}

/** What is held of what an entry cites; what is not goes into what it lacks. */
function citedBy(made: Making, find: Find): readonly Making[] {
  const cited: Making[] = [];
  let lacks: Citation[] | undefined;
  for (const c of citations(made)) {
    const found = find(c);
    if (found !== undefined) cited.push(found);
    else {
      lacks ??= [];
      lacks.push(c);
    }
  }
  if (lacks !== undefined) made.lacks = lacks;
  return cited;
}

/** A function of its own, so that nothing of the draft is kept by those that the order is asked with. */
const sort = (list: Making[], { depth }: Draft): Making[] =>
  list.sort(
    (a, b) =>
      a.entered - b.entered || (depth[a.rank] as number) - (depth[b.rank] as number) || byText(a.id, b.id),
  );

function place(list: Making[], byId: ReadonlyMap<string, Making>, draft: Draft): Order {
  sort(list, draft);
  const reach = new Reach();
  const rows: Making[][] = [];
  const lost: Lost[] = [];
  const chains = new Map<string, string>();
  for (const [rank, p] of list.entries()) {
    const { prev, seq, signer, device } = p.header;
    const cited = draft.cited[p.rank] as readonly Making[];
    lost.push(draft.lost[p.rank] as Lost);
    p.rank = rank;
    // What it names as the one before it may be no such thing, and then may come after it.
    const before = prev === null ? undefined : cited[0]?.id === prev ? cited[0] : byId.get(prev);
    const isOwn = before?.header.signer === signer && before.header.device === device;
    const own = isOwn && before.row !== NOT_YET ? before : undefined;
    const follows = own?.header.seq === seq - 1 ? own : undefined;
    const at = reach.add(cited, follows);
    const row = rows[at.stretch] ?? [];
    rows[at.stretch] = row;
    row.push(p);
    p.stretch = at.stretch;
    p.step = at.step;
    p.before = own;
    p.row = row;
    p.broken = !(own === undefined ? prev === null : follows !== undefined && !own.broken);
    const chain = own?.chain ?? chainOf(p.header);
    p.chain = chains.get(chain) ?? chain;
    chains.set(p.chain, p.chain);
  }
  const isPast = (later: Placed, earlier: Placed): boolean => reach.knows(later, earlier);
  const mayKnow = (later: Placed, earlier: Placed): boolean =>
    isPast(later, earlier) ||
    ((later.broken || earlier.header.seq < (lost[later.rank]?.get(earlier.chain) ?? 0)) &&
      later !== earlier &&
      !isPast(earlier, later) &&
      earlier.entered <= later.entered);
  return { list, byId, isPast, mayKnow };
}

/** Time entered and depth of an entry and its past, the past first; without recursion, for chains are long. */
function measure(start: Making, draft: Draft): void {
  const { measured, depth, lost } = draft;
  if (measured[start.rank] === 1) return;
  const open = [start];
  while (open.length > 0) {
    const p = open.at(-1) as Making;
    const waiting = open.length;
    const cited = draft.cited[p.rank] as readonly Making[];
    if (measured[p.rank] === 0) {
      for (const q of cited) if (measured[q.rank] === 0) open.push(q);
    }
    if (open.length > waiting) continue;
    open.pop();
    if (measured[p.rank] === 1) continue;
    measured[p.rank] = 1;
    let { entered } = p;
    let deep = 0;
    let holed = p.lacks.length > 0;
    for (const q of cited) {
      if (q.entered > entered) entered = q.entered;
      deep = Math.max(deep, (depth[q.rank] as number) + 1);
      holed ||= q.holed;
    }
    p.entered = entered;
    p.holed = holed;
    depth[p.rank] = deep;
    if (holed) lost[p.rank] = lostIn(p, cited, lost);
  }
}

/** One map is handed on along a chain until something more is lacking. */
function lostIn({ lacks }: Making, cited: readonly Making[], before: readonly Lost[]): Lost {
  const maps = new Set(cited.map((q) => before[q.rank] as Lost));
  let lost = NONE;
  for (const map of maps) if (map.size > lost.size) lost = map;
  maps.delete(lost);
  let own: Map<string, number> | undefined;
  const add = (chain: string, seq: number): void => {
    if (seq <= (lost.get(chain) ?? -1)) return;
    own ??= new Map(lost);
    lost = own.set(chain, seq);
  };
  for (const map of maps) for (const [chain, seq] of map) add(chain, seq);
  for (const c of lacks) add(chainOf(c), c.seq);
  return lost;
}

/** Whether an entry is dated before something in its past. */
export const isBackDated = (p: Placed): boolean => p.time < p.entered;

/** Those of `among` that no other of them comes after by their past. */
export function latest(order: Order, among: readonly Placed[]): readonly Placed[] {
  // Of a stretch only the last can be one.
  const ends = new Map<number, Placed>();
  for (const p of among) if (p.step >= (ends.get(p.stretch)?.step ?? 0)) ends.set(p.stretch, p);
  const last = [...ends.values()];
  return among.filter((p) => ends.get(p.stretch) === p && !last.some((q) => order.isPast(q, p)));
}

/** An entry and those before it in its chain, as far as they are held. */
export function* chainBack(from: Placed): Generator<Placed> {
  for (let p: Placed | undefined = from; p !== undefined; p = p.before) yield p;
}

/** The nearest of an entry and those before it in its chain that has a number: what `chainBack` comes upon first. */
export function numbered(from: Placed, seq: number): Placed | undefined {
  for (let p: Placed | undefined = from; p !== undefined; p = p.row[0]?.before) {
    // Along a stretch numbers go up by one.
    const step = p.step - (p.header.seq - seq);
    if (step >= 0 && step <= p.step) return p.row[step];
  }
  return undefined;
}
