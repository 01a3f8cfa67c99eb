/** Everything that follows from a run, put together for its page: or every fault of it, with its route where that holds. */
import type { Catalogue, Item } from '../../run/catalogue.ts';
import { type Inspected, inspect } from '../../run/inspect/inspect.ts';
import { resolveRun } from '../../run/resolve.ts';
import type { ResolvedRun } from '../../run/resolved.ts';
import type { RunTables } from '../../run/tables.ts';
import type { Takeoff, takeoff } from '../../run/takeoff.ts';
import type { Run } from '../../run/types.ts';
import { usualOf } from '../../run/usual.ts';
import type { Answered } from '../../trade/answer.ts';
import { type Fault, GivenError } from '../../trade/given.ts';
import type { Budget } from '../../trade/sticks/types.ts';

/** What a page is handed of the content. */
export interface RunData {
  readonly items: readonly Item[];
  readonly tables: RunTables;
}

export interface World {
  readonly catalogue: Catalogue;
  readonly tables: RunTables;
}

export const worldOf = ({ items, tables }: RunData): World => ({
  catalogue: new Map(items.map((item) => [item.id, item])),
  tables,
});

export interface WorkedRun {
  /** The run; where it is at fault its route alone; null where not even that holds. */
  readonly resolved: ResolvedRun | null;
  readonly inspected: Answered<Inspected> | null;
  readonly takeoff: Answered<Takeoff> | null;
  readonly faults: readonly Fault[];
}

/**
 * @param take  the take-off, whose cutting plans weigh: a page loads it later, and shows the rest meanwhile
 */
export function workOut(
  run: Run,
  { catalogue, tables }: World,
  budget: Budget,
  take: typeof takeoff | null,
): WorkedRun {
  const usual = usualOf(tables);
  const whole = tried(() => resolveRun(run, catalogue, usual));
  if (!whole.good) {
    const route = tried(() => resolveRun(routeOf(run), catalogue, usual));
    return {
      resolved: route.good ? route.value : null,
      inspected: null,
      takeoff: null,
      faults: whole.faults,
    };
  }
  const resolved = whole.value;
  const inspected = inspect(resolved, catalogue, tables);
  if (take === null) return { resolved, inspected, takeoff: null, faults: [] };
  const taken = tried(() => take(resolved, catalogue, tables, budget));
  return {
    resolved,
    inspected,
    takeoff: taken.good ? taken.value : null,
    faults: taken.good ? [] : taken.faults,
  };
}

/** The legs alone, so that a figure stands while something on them is at fault. */
function routeOf({ v, tray, legs }: Run): Run {
  return { v, tray, start: { kind: 'free', joint: 'free' }, legs };
}

type Tried<T> =
  | { readonly good: true; readonly value: T }
  | { readonly good: false; readonly faults: readonly Fault[] };

function tried<T>(act: () => T): Tried<T> {
  try {
    return { good: true, value: act() };
  } catch (cause) {
    if (!(cause instanceof GivenError)) throw cause;
    return { good: false, faults: cause.faults };
  }
}
