/** The sheet being made, kept on this device so that a reload loses nothing. What cannot be read is begun anew. */
import type { Family } from '../../practice/family.ts';
import { isRecord } from '../../practice/fileFields.ts';
import { isNarrowing, narrowFaults } from '../../practice/narrow.ts';
import { type Draft, newDraft, type Picked } from './draft.ts';

const place = 'trayhand-making';

export function keepDraft(draft: Draft): void {
  try {
    localStorage.setItem(place, JSON.stringify(draft));
  } catch {
    // A device that keeps nothing makes sheets all the same.
  }
}

export function keptDraft(number: number): Draft {
  try {
    return draftOf(JSON.parse(localStorage.getItem(place) ?? 'null'), number);
  } catch {
    return newDraft(number);
  }
}

/** A draft out of what lies kept, field for field: what is not of its kind (an older release, another hand) stays as new. */
export function draftOf(kept: unknown, number: number): Draft {
  const fresh = newDraft(number);
  if (!isRecord(kept)) return fresh;
  const { tasks, picks, rule, bound, wald } = kept;
  const whole = (value: unknown, or: number) =>
    Number.isInteger(value) && Number(value) > 0 ? Number(value) : or;
  const numbers = <T extends Readonly<Record<string, number>>>(value: unknown, or: T): T =>
    isRecord(value) && Object.keys(or).every((name) => typeof value[name] === 'number')
      ? (Object.fromEntries(Object.keys(or).map((name) => [name, value[name]])) as unknown as T)
      : or;
  return {
    number: whole(kept['number'], fresh.number),
    benches: whole(kept['benches'], fresh.benches),
    tasks: Array.isArray(tasks) ? tasks.filter((task) => typeof task === 'string') : [],
    picks: isRecord(picks)
      ? Object.fromEntries(
          Object.entries(picks).flatMap(([id, one]): [string, Picked][] => {
            const picked = pickedOf(one);
            return picked === undefined ? [] : [[id, picked]];
          }),
        )
      : {},
    rule: rule === 'bound' || rule === 'sequential' ? rule : 'all',
    bound: numbers(bound, fresh.bound),
    wald: numbers(wald, fresh.wald),
  };
}

/** What is narrowed in no form that there is, is not narrowed. */
function pickedOf(value: unknown): Picked | undefined {
  if (!isRecord(value)) return undefined;
  const { draws, narrow } = value;
  if (!Number.isInteger(draws) || !isRecord(narrow)) return undefined;
  return { draws: Number(draws), narrow: isNarrowing(narrow) ? narrow : {} };
}

/** The draft without what an older release narrowed and these families do not draw; the same draft where all of it stands. */
export function fitted(draft: Draft, families: ReadonlyMap<string, Family>): Draft {
  const unfit = Object.entries(draft.picks).filter(([id, { narrow }]) => {
    const family = families.get(id);
    return family !== undefined && narrowFaults(family, narrow).length > 0;
  });
  if (unfit.length === 0) return draft;
  const mended = unfit.map(([id, { draws }]) => [id, { draws, narrow: {} }] as const);
  return { ...draft, picks: { ...draft.picks, ...Object.fromEntries(mended) } };
}
