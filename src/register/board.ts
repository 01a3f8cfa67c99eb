import type { Say } from '../trade/answer.ts';
import type { Variant } from './bodies.ts';
import { byText } from './bytes.ts';
import { type Check, checksOf, type Regrade } from './checks.ts';
import type { Day } from './days.ts';
import type { Judged, SignerRow } from './judged.ts';
import type { Placed } from './order.ts';
import { ids, isOnRecord, type On, rankOf, type Stands, standingOf, type Why } from './standing.ts';
import { isHeading, isTicket, type MapTask, monthsOf, type TaskMap } from './taskMap.ts';
import { type Ticket, ticketsOn } from './tickets.ts';

export interface VariantRow extends Stands {
  readonly variant: Variant;
}
export interface TaskRow extends Stands {
  /** By variant text. */
  readonly variants: readonly VariantRow[];
}
export interface PersonRow {
  readonly id: string;
  readonly erased?: true;
  readonly tickets: readonly Ticket[];
  /** Every task of the map, headings too, outside tickets not. */
  readonly tasks: Readonly<Record<string, TaskRow>>;
}

/** Who stands where on a day, from what was known. */
export interface Board {
  readonly on: Day;
  readonly knownOn: Day | null;
  readonly zone: string;
  readonly owner: string;
  /** By id. */
  readonly people: readonly PersonRow[];
  readonly signers: readonly SignerRow[];
  readonly notes: readonly Say[];
}

export interface BoardAsked {
  readonly on: Day;
  /** As it was judged; only said again here. */
  readonly knownOn?: Day | undefined;
  readonly map: TaskMap;
  /** People to list even without entries. */
  readonly people?: readonly string[];
  /** Months in place of the map's, by task. */
  readonly months?: Readonly<Record<string, number>>;
  readonly regrade?: Regrade | undefined;
}

const nothing: Stands = { standing: 'not shown', since: null, until: null, why: [], entries: [] };

const noRow: TaskRow = { ...nothing, variants: [] };

/** The crew board of a judged register. */
export function boardOf(judged: Judged, asked: BoardAsked): Board {
  const { view, authority } = judged;
  const checks = checksOf(judged, asked.map, asked.regrade);
  const people = new Set(asked.people ?? []);
  // Everyone with an entry, entered in time or not: a board of an earlier day says that nothing was shown then.
  for (const { header } of view.order.list) {
    if (header.about !== null) people.add(header.about);
  }
  const rows = rowsOf(judged, asked);
  return {
    on: asked.on,
    knownOn: asked.knownOn ?? null,
    zone: view.zone,
    owner: authority.owner,
    people: [...people].sort(byText).map((id) => personRow(id, checks.get(id) ?? [], rows)),
    signers: judged.signers,
    notes: notesOf(judged),
  };
}

/** What the rows of a board have in common. */
interface Rows {
  readonly judged: Judged;
  readonly on: Day;
  /** Every task of the map, headings too, outside tickets not. */
  readonly tasks: readonly MapTask[];
  /** Those that are no headings, each with what is asked about it; where all of a person is in doubt, that goes in. */
  readonly single: readonly On[];
}

function rowsOf(judged: Judged, { map, on, months }: BoardAsked): Rows {
  const tasks = map.tasks.filter((t) => !isTicket(t.id));
  const single = tasks
    .filter((t) => !isHeading(t))
    .map(
      (task): On => ({ judged, task, on, months: months?.[task.id] ?? monthsOf(task), unsure: undefined }),
    );
  return { judged, on, tasks, single };
}

function personRow(id: string, checks: readonly Check[], { judged, on, tasks, single }: Rows): PersonRow {
  const erased = judged.view.erased.has(id);
  const missing = judged.bodyless.get(id);
  const unsure: Why | undefined =
    missing === undefined ? undefined : { code: '?', say: { say: 'registerWhy.body' }, entry: missing.id };
  const seen = Map.groupBy(
    checks.filter((c) => c.body.on <= on),
    (c) => c.body.task,
  );
  const known = new Map<string, TaskRow>();
  for (const of of single) {
    const at = unsure === undefined ? of : { ...of, unsure };
    known.set(of.task.id, erased ? noRow : taskRow(seen.get(of.task.id) ?? [], at));
  }
  const row = (t: MapTask): TaskRow => known.get(t.id) ?? headingRow(t, known);
  return {
    id,
    ...(erased ? { erased } : {}),
    tickets: erased ? [] : ticketsOn(judged, id),
    tasks: Object.fromEntries(tasks.map((t) => [t.id, row(t)])),
  };
}

/** @param seen  the person's checks of the task that count, up to the day */
function taskRow(seen: readonly Check[], at: On): TaskRow {
  // Most cells of a large board are empty, and all of these are one.
  if (seen.length === 0 && at.unsure === undefined) return noRow;
  const variants = [...Map.groupBy(seen, (c) => c.variantKey)]
    .filter(([, list]) => list.some((c) => isOnRecord(c, at)))
    .sort(([a], [b]) => byText(a, b))
    .map(([, list]): VariantRow => ({ variant: (list[0] as Check).variant, ...standingOf(list, at) }));
  const [only, more] = variants;
  if (only === undefined) return { ...standingOf([], at), variants };
  // What is spread takes several times as long, and most cells are of one way.
  if (more === undefined) {
    const { standing, since, until, why, entries } = only;
    return { standing, since, until, why, entries, variants };
  }
  return { ...lowest(variants), entries: allEntries(variants), variants };
}

/** A heading is as low as its lowest part, a part that nobody saw included. */
function headingRow(heading: MapTask, single: ReadonlyMap<string, TaskRow>): TaskRow {
  const parts = heading.parts.map((id): Stands => single.get(id) ?? nothing);
  return { ...lowest(parts), entries: allEntries(parts), variants: [] };
}

/** The lowest; of several alike the one that ends first, then the first. */
function lowest(list: readonly Stands[]): Stands {
  const { standing, since, until, why, entries } = list.reduce((low, s) => {
    const lower = rankOf(s.standing) - rankOf(low.standing) || byText(s.until ?? '~', low.until ?? '~');
    return lower < 0 ? s : low;
  });
  return { standing, since, until, why, entries };
}

const allEntries = (list: readonly Stands[]): readonly string[] => ids(list.flatMap((s) => s.entries));

function notesOf(judged: Judged): readonly Say[] {
  const { authority, view } = judged;
  const notes: Say[] = [];
  if (authority.forked) notes.push({ say: 'registerNote.owner-forked' });
  if (!successorNamed(judged)) notes.push({ say: 'registerNote.no-successor' });
  for (const p of judged.ahead) {
    const { signer, device, time } = p.header;
    notes.push({ say: 'registerNote.ahead', values: { signer: signer.slice(0, 8), device, time } });
  }
  for (const p of judged.unknown) {
    notes.push({
      say: 'registerNote.unknown-kind',
      values: { kind: p.header.kind, entry: p.id.slice(0, 8) },
    });
  }
  const open = judged.problems.filter((p) => p.settled !== true).length;
  if (open > 0) notes.push({ say: 'registerNote.problems', values: { count: open } });
  if (authority.body(view.begin, 'begin').state !== 'held') notes.push({ say: 'registerNote.no-zone' });
  return notes;
}

/** Whether the present owner has named a key that may take over. */
function successorNamed({ authority, view }: Judged): boolean {
  const [taken] = authority.takeOvers;
  return authority.successions.some(
    (s: Placed) =>
      s.header.signer === authority.owner && (taken === undefined || view.order.isPast(s, taken)),
  );
}
