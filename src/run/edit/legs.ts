/** Adding a leg to a run and taking one off, with all that stands on it. */

import type { Ticks } from '../../trade/length.ts';
import type { Catalogue } from '../catalogue.ts';
import type { Leg, Run } from '../types.ts';
import { placesOf } from './place.ts';
import type { WayOutChoice } from './ways.ts';

/** The smallest number that no leg has yet. */
export function nextLegId({ legs }: Pick<Run, 'legs'>): string {
  const taken = new Set(legs.map(({ id }) => id));
  for (let n = legs.length + 1; ; n++) if (!taken.has(String(n))) return String(n);
}

/** The run with a leg more; what ended at the leg before it no longer ends there. */
export function addLeg(run: Run, { from, fitting, dir, onEdge }: WayOutChoice, length: Ticks): Run {
  const leg: Leg = {
    id: nextLegId(run),
    from,
    fitting,
    dir,
    length,
    ...(onEdge ? { onEdge: true } : {}),
  };
  const before = from.replace(/:(?:left|right)$/, '');
  const ends = run.ends?.filter(({ leg: at }) => at !== before);
  return { ...run, legs: [...run.legs, leg], ...(run.ends === undefined ? {} : { ends }) };
}

const parentOf = ({ from }: Leg, ids: ReadonlySet<string>): string =>
  ids.has(from) ? from : from.replace(/:(?:left|right)$/, '');

/** Ids of a leg and of all that go on from it. */
export function legAndBeyond({ legs }: Pick<Run, 'legs'>, id: string): ReadonlySet<string> {
  const ids = new Set(legs.map((leg) => leg.id));
  const gone = new Set([id]);
  for (let grown = 0; grown !== gone.size; ) {
    grown = gone.size;
    for (const leg of legs) if (gone.has(parentOf(leg, ids))) gone.add(leg.id);
  }
  return gone;
}

/** The run without a leg, the legs beyond it, and what stands on them; cables that went there end at the leg before it. */
export function takeOff(run: Run, id: string): Run {
  const gone = legAndBeyond(run, id);
  const own = run.legs.find((leg) => leg.id === id);
  const before = own === undefined || own.from === 'start' ? undefined : parentOf(own, idsOf(run));
  const stays = <T extends { readonly leg: string }>(rows: readonly T[] | undefined) =>
    rows?.filter(({ leg }) => !gone.has(leg));
  const lists = {
    ends: stays(run.ends),
    joints: stays(run.joints),
    supports: stays(run.supports),
    marks: stays(run.marks),
    places: stays(run.places),
    cables:
      before === undefined
        ? run.cables
        : run.cables?.map((cable) => (gone.has(cable.to) ? { ...cable, to: before } : cable)),
  };
  const given = Object.fromEntries(Object.entries(lists).filter(([, rows]) => rows !== undefined));
  return { ...run, ...given, legs: run.legs.filter((leg) => !gone.has(leg.id)) };
}

const idsOf = ({ legs }: Run): ReadonlySet<string> => new Set(legs.map(({ id }) => id));

/** Legs that can be gone on from, the newest last. */
export function openEnds(run: Run, catalogue: Catalogue): readonly string[] {
  const open = new Set(placesOf(run, catalogue).flatMap(({ leg, full }) => (full ? [] : [leg])));
  return run.legs.map(({ id }) => id).filter((id) => open.has(id));
}
