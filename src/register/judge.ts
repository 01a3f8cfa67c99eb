import type { Say } from '../trade/answer.ts';
import { authorityOf } from './authority.ts';
import { isKnownKind } from './bodies.ts';
import { byText } from './bytes.ts';
import type { Day, DayIn } from './days.ts';
import { type ForkState, forksOf, lostEntries, onBranches, settleForks } from './forks.ts';
import { type Gap, gapsOf, settledTargets } from './gaps.ts';
import type { Entry, Held } from './held.ts';
import { AHEAD, type Asked, type Judged, NoRegister, type SignerRow } from './judged.ts';
import { arrange, isBackDated, latest, type Order, type Placed } from './order.ts';
import { listProblems } from './problems.ts';
import type { Authority } from './rights.ts';
import { bodyState, type View } from './view.ts';

/**
 * Judges what a folder holds. Same entries, same answer: order of files and lines does not matter.
 * @throws {NoRegister} no readable `begin` is held
 */
export function judge(held: Held, given: Asked): Judged {
  const asked = { ...given, dayIn: remembered(given.dayIn) };
  const { begin, strangers } = partOf(held, asked.owner);
  const entries = [...held.entries.values()];
  const own = arrange(strangers.size === 0 ? entries : entries.filter((e) => !strangers.has(e.id)));
  const start = own.byId.get(begin.id) as Placed;
  const rootless = own.list.filter((p) => !p.holed && p !== start && !own.isPast(p, start));
  const cutOff = new Set(rootless);
  const order = rootless.length === 0 ? own : arrange(own.list.filter((p) => !cutOff.has(p)));
  const foreign = [...strangers.values(), ...rootless];

  const whole = viewOf(held, order, begin, asked, { knownOn: undefined, erased: new Set() });
  const everything = settle(whole);
  const erased = erasedIn(whole, everything);
  const { knownOn } = asked;
  const isWhole = knownOn === undefined && erased.size === 0;
  const view = isWhole ? whole : viewOf(held, order, begin, asked, { knownOn, erased });
  const all = isWhole ? everything : settle(view);
  const { authority, forks, settled, lost } = all;
  const inView = new Uint8Array(order.list.length);
  for (const p of view.list) inView[p.rank] = 1;
  const counts = (p: Placed): boolean => {
    const { id, rank = -1 } = order.list[p.rank] === p ? p : (order.byId.get(p.id) ?? { id: p.id });
    return inView[rank] === 1 && !authority.voids.has(id) && !lost.has(id);
  };
  const gaps = gapsOf(view, authority, settled);
  const doubt = doubtsOf(view, forks, gaps, settled);
  const bodyless = new Map<string, Placed>();
  for (const p of view.list) {
    const { about } = p.header;
    const state = bodyState(view, p).state;
    if (about === null || (state !== 'missing' && state !== 'altered')) continue;
    // What counts for nothing casts no doubt: nobody could end it.
    if (!authority.hasStanding(p) || !counts(p)) continue;
    if (!view.erased.has(about) && !bodyless.has(about)) bodyless.set(about, p);
  }
  const judged: Omit<Judged, 'problems'> = {
    view,
    authority,
    counts,
    doubt,
    gaps,
    forks,
    bodyless,
    signers: signersOf(
      order.list.filter(
        (p) => asked.knownOn === undefined || asked.dayIn(view.zone, p.entered) <= asked.knownOn,
      ),
      authority,
    ),
    ahead: latest(
      order,
      order.list.filter((p) => p.entered > asked.now + AHEAD),
    ),
    unknown: view.list.filter((p) => !isKnownKind(p.header.kind)),
    entries: order.list.length,
  };
  return { ...judged, problems: listProblems(judged, foreign, { settled, lost, owner: asked.owner }) };
}

/** The same days, every one kept as one text: there are few, and many entries. */
function remembered(dayIn: DayIn): DayIn {
  const days = new Map<Day, Day>();
  return (zone, instant) => {
    const day = dayIn(zone, instant);
    const known = days.get(day);
    if (known !== undefined) return known;
    days.set(day, day);
    return day;
  };
}

/** The beginning that a folder belongs to, and the entries of other registers in it. */
function partOf(held: Held, owner: string | undefined): { begin: Entry; strangers: Map<string, Entry> } {
  const begins: Entry[] = [];
  for (const e of held.entries.values()) if (e.header.kind === 'begin') begins.push(e);
  const trusted = begins.filter((b) => b.header.signer === owner);
  const among = trusted.length > 0 ? trusted : begins;
  const begin =
    among.find((b) => b.id === held.marker) ?? among.sort((a, b) => a.time - b.time || byText(a.id, b.id))[0];
  if (begin === undefined) throw new NoRegister(held);
  const strangers = new Map<string, Entry>();
  for (const [id, e] of held.entries) if ((e.header.register ?? id) !== begin.id) strangers.set(id, e);
  return { begin, strangers };
}

function viewOf(
  held: Held,
  order: Order,
  begin: Entry,
  asked: Asked,
  { knownOn, erased }: { knownOn: Day | undefined; erased: ReadonlySet<string> },
): View {
  const placed = order.byId.get(begin.id) as Placed;
  const bare = { held, order, list: [], begin: placed, zone: 'UTC', dayIn: asked.dayIn, erased };
  const state = bodyState(bare, placed);
  const zone = state.state === 'held' ? (state.body as { zone: string }).zone : 'UTC';
  const list = order.list.filter(
    (p) =>
      p.entered <= asked.now + AHEAD && (knownOn === undefined || asked.dayIn(zone, p.entered) <= knownOn),
  );
  return { ...bare, zone, list };
}

function erasedIn(whole: View, { authority, lost }: Settled): ReadonlySet<string> {
  const acts = whole.list.filter(
    (p) => p.header.kind === 'erase' && !authority.voids.has(p.id) && !lost.has(p.id),
  );
  return new Set(acts.flatMap((p) => p.header.about ?? []));
}

interface Settled {
  readonly authority: Authority;
  readonly forks: readonly ForkState[];
  readonly lost: ReadonlySet<string>;
  /** Targets of settlements that count. */
  readonly settled: ReadonlySet<string>;
}

/**
 * A settlement may take away another's branch, and with it what that one settled: so the round is gone through until
 * nothing changes. Rounds are bounded; in honest registers two are enough.
 */
function settle(view: View): Settled {
  const found = forksOf(view);
  const before = authorityOf(view, new Set());
  let settles: readonly Placed[] = [];
  for (let round = 0; ; round++) {
    const forks = settleForks(view, before, found, settles);
    const lost = lostEntries(view, forks);
    const authority = lost.size === 0 ? before : authorityOf(view, lost);
    const settled = settledTargets(view, settles);
    const next = view.list.filter(
      (p) =>
        p.header.kind === 'settle' && authority.byOwner(p) && !authority.voids.has(p.id) && !lost.has(p.id),
    );
    const same = next.length === settles.length && next.every((p, i) => p === settles[i]);
    if (same || round > 8) return { authority, forks, lost, settled };
    settles = next;
  }
}

/** Doubt from an entry's own chain or time: back-dated, on a branch of an open fork, or behind a hole. */
function doubtsOf(
  view: View,
  forks: readonly ForkState[],
  gaps: readonly Gap[],
  settled: ReadonlySet<string>,
): (p: Placed) => Say | undefined {
  const open = onBranches(
    view.order.list,
    forks.filter((f) => !f.settled).map((f) => f.fork),
  );
  const ended = new Set(gaps.filter((g) => g.settled || g.cut).map((g) => g.cited.id));
  for (const id of settled) ended.add(id);
  const holed = new Set<string>();
  for (const p of view.list) {
    const { prev, seq } = p.header;
    const broken =
      prev !== null && (p.before === undefined ? !ended.has(prev) : p.before.header.seq !== seq - 1);
    if (broken || (p.before !== undefined && holed.has(p.before.id))) holed.add(p.id);
  }
  return (p) => {
    if (isBackDated(p) && !settled.has(p.id)) return { say: 'registerWhy.back-dated' };
    if (open.has(p.id)) return { say: 'registerWhy.fork' };
    return holed.has(p.id) ? { say: 'registerWhy.hole' } : undefined;
  };
}

/** Chains as known, those whose last entry is ahead of its time included. */
function signersOf(known: readonly Placed[], authority: Authority): readonly SignerRow[] {
  const chains = Map.groupBy(known, (p) => p.chain);
  return [...chains.entries()]
    .sort(([a], [b]) => byText(a, b))
    .map(([, list]) => {
      const head = list.reduce((a, b) => (b.header.seq >= a.header.seq ? b : a));
      const { signer, device, seq, time } = head.header;
      const [person = null] = authority.persons.get(signer) ?? [];
      return { id: signer, device, person, last: seq, at: time };
    });
}
