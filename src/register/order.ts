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

/** An entry on its way to its place. */
interface Draft {
  readonly entry: Entry;
  readonly cited: Draft[];
  readonly lacks: Citation[];
  /** The latest time in it and its past; `undefined` until its past is measured. */
  entered: number | undefined;
  depth: number;
  holed: boolean;
  /** Highest number of each chain that is cited in the entry or its past, and lacking. */
  lost: ReadonlyMap<string, number>;
  placed: Placed | undefined;
}

const NONE: ReadonlyMap<string, number> = new Map();

/**
 * Puts entries in order. A citation cannot run in a ring: an id is the hash of what holds the citation.
 * @param entries  entries of one register; what they cite and is not among them is lacking
 */
export function arrange(entries: Iterable<Entry>): Order {
  const drafts = new Map<string, Draft>();
  for (const entry of entries) {
    const empty = { entered: undefined, depth: 0, holed: false, lost: NONE, placed: undefined };
    drafts.set(entry.id, { entry, cited: [], lacks: [], ...empty });
  }
  for (const draft of drafts.values()) {
    for (const c of citations(draft.entry)) {
      const found = drafts.get(c.id);
      if (found !== undefined && fits(c, found.entry)) draft.cited.push(found);
      else draft.lacks.push(c);
    }
  }
  for (const draft of drafts.values()) measure(draft);
  return place([...drafts.values()], drafts);
}

function place(drafts: Draft[], byId: ReadonlyMap<string, Draft>): Order {
  const sorted = drafts.sort(
    (a, b) =>
      (a.entered as number) - (b.entered as number) || a.depth - b.depth || byText(a.entry.id, b.entry.id),
  );
  const reach = new Reach();
  const rows: Placed[][] = [];
  const lost: ReadonlyMap<string, number>[] = [];
  const list: Placed[] = [];
  for (const draft of sorted) {
    const { entry, cited, lacks, holed } = draft;
    const { prev, seq } = entry.header;
    const before = prev === null ? undefined : byId.get(prev)?.placed;
    const chain = chainOf(entry.header);
    const own = before?.chain === chain ? before : undefined;
    const follows = own?.header.seq === seq - 1 ? own : undefined;
    const at = reach.add(
      cited.map((d) => d.placed as Placed),
      follows,
    );
    const linked = own === undefined ? prev === null : follows !== undefined && !own.broken;
    const row = rows[at.stretch] ?? [];
    rows[at.stretch] = row;
    // Field by field: there are many of them, and what is spread takes several times as long.
    const placed: Placed = {
      id: entry.id,
      header: entry.header,
      signature: entry.signature,
      time: entry.time,
      file: entry.file,
      line: entry.line,
      stretch: at.stretch,
      step: at.step,
      rank: list.length,
      entered: draft.entered as number,
      chain: own?.chain ?? chain,
      before: own,
      lacks,
      holed,
      broken: !linked,
      row,
    };
    draft.placed = placed;
    list.push(placed);
    lost.push(draft.lost);
    row.push(placed);
  }
  const isPast = (later: Placed, earlier: Placed): boolean => reach.knows(later, earlier);
  const mayKnow = (later: Placed, earlier: Placed): boolean =>
    isPast(later, earlier) ||
    ((later.broken || earlier.header.seq < (lost[later.rank]?.get(earlier.chain) ?? 0)) &&
      later !== earlier &&
      !isPast(earlier, later) &&
      earlier.entered <= later.entered);
  return { list, byId: new Map(list.map((p) => [p.id, p])), isPast, mayKnow };
}

/** Time entered and depth of an entry and its past, the past first; without recursion, for chains are long. */
function measure(start: Draft): void {
  const open = [start];
  while (open.length > 0) {
    const draft = open.at(-1) as Draft;
    const waiting = open.length;
    if (draft.entered === undefined) {
      for (const d of draft.cited) if (d.entered === undefined) open.push(d);
    }
    if (open.length > waiting) continue;
    open.pop();
    if (draft.entered !== undefined) continue;
    draft.holed = draft.lacks.length > 0;
    let entered = draft.entry.time;
    for (const d of draft.cited) {
      entered = Math.max(entered, d.entered as number);
      draft.depth = Math.max(draft.depth, d.depth + 1);
      draft.holed ||= d.holed;
    }
    draft.entered = entered;
    draft.lost = lostIn(draft);
  }
}

/** One map is handed on along a chain until something more is lacking. */
function lostIn({ lacks, cited }: Draft): ReadonlyMap<string, number> {
  let lost = NONE;
  for (const d of cited) if (d.lost.size > lost.size) lost = d.lost;
  let own: Map<string, number> | undefined;
  const add = (chain: string, seq: number): void => {
    if (seq <= (lost.get(chain) ?? -1)) return;
    own ??= new Map(lost);
    lost = own.set(chain, seq);
  };
  const maps = new Set(cited.map((d) => d.lost));
  maps.delete(lost);
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
