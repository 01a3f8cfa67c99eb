import type { Bodies } from './bodies.ts';
import { byText } from './bytes.ts';
import type { Day } from './days.ts';
import type { Judged } from './judged.ts';
import type { Placed } from './order.ts';

/** A check that counts and was not taken back. */
export interface Look {
  readonly entry: Placed;
  readonly body: Bodies['check'];
}

/** Every look by person and task, the last seen first: gone through once for a register. */
const known = new WeakMap<Judged, ReadonlyMap<string, readonly Look[]>>();

const keyOf = (person: string, task: string): string => `${person} ${task}`;

function looksOf(judged: Judged): ReadonlyMap<string, readonly Look[]> {
  const { view, authority } = judged;
  const counted = view.list.filter(judged.counts);
  const gone = new Set(
    counted.filter(({ header }) => header.kind === 'withdraw').flatMap(({ header }) => header.target),
  );
  const looks = new Map<string, Look[]>();
  for (const entry of counted) {
    const { kind, about } = entry.header;
    if (kind !== 'check' || about === null || gone.has(entry.id)) continue;
    const state = authority.body(entry, 'check');
    if (state.state !== 'held') continue;
    const key = keyOf(about, state.body.task);
    const own = looks.get(key) ?? [];
    looks.set(key, own);
    own.push({ entry, body: state.body });
  }
  for (const own of looks.values()) {
    own.sort((a, b) => byText(b.body.on, a.body.on) || b.entry.rank - a.entry.rank);
  }
  return looks;
}

/**
 * When somebody was last looked at in a task, up to a day: also a look that says nothing of how the person stands, as
 * one that was stopped for safety. `undefined` where nobody looked.
 */
export function lastLook(judged: Judged, person: string, task: string, on: Day): Look | undefined {
  const looks = known.get(judged) ?? looksOf(judged);
  known.set(judged, looks);
  return looks.get(keyOf(person, task))?.find(({ body }) => body.on <= on);
}
