/**
 * What to practise next on a device, from what came of the first try at each draw and from nothing else. How long a family
 * may rest after such tries is passed in (`RestUntil`): no number of it is kept, each is worked out from the tries again.
 */
import { type Attempt, type Came, firstTries } from './attempts.ts';

/** A family as far as its turn asks: in the order of the list, the task that it is numbered by first. */
export interface Turn {
  readonly id: string;
  readonly tasks: readonly string[];
}

/** A task as far as turns ask. */
export interface TurnTask {
  readonly id: string;
  readonly prerequisites: readonly string[];
  /** Tasks that it is the heading of. */
  readonly parts: readonly string[];
}

/** The first try at a draw: when (ms since 1970) and what came of it. */
export interface FirstTry {
  readonly at: number;
  readonly came: Came;
}

/** The moment (ms since 1970) until which a family rests after these first tries at its draws, first to last, at least one. */
export type RestUntil = (tries: readonly FirstTry[]) => number;

export interface TurnsGiven {
  readonly families: readonly Turn[];
  readonly tasks: readonly TurnTask[];
  readonly attempts: readonly Attempt[];
  /** ms since 1970. */
  readonly now: number;
  /** The day, `YYYY-MM-DD`, on which a moment falls where the device is. */
  readonly dayOf: (moment: number) => string;
  readonly restUntil: RestUntil;
}

/** Ids of families. */
export interface Turns {
  /** Tried before, and their rest is over today: who waits longest first. */
  readonly today: readonly string[];
  /** Never tried, and what comes before them was practised: in the order of the list. */
  readonly next: readonly string[];
  /** Tried before, and resting until a later day: the first to come first. */
  readonly later: readonly { readonly family: string; readonly day: string }[];
  /** Never tried, and a task that comes before theirs was not practised yet: in the order of the list. */
  readonly after: readonly string[];
}

/** Whose turn it is. A family that is not in the list has none, whatever was tried of it. */
export function turnsOf({ families, tasks, attempts, now, dayOf, restUntil }: TurnsGiven): Turns {
  const tried = Map.groupBy(firstTries(attempts), ({ family }) => family);
  const isPractised = practisedIn(families, tasks, tried);
  const wants = new Map(tasks.map(({ id, prerequisites }) => [id, prerequisites]));
  const untried = families.filter(({ id }) => !tried.has(id));
  const may = ({ tasks: [first = ''] }: Turn) => (wants.get(first) ?? []).every(isPractised);

  const resting = families
    .flatMap(({ id }) => {
      const tries = tried.get(id);
      return tries === undefined ? [] : [{ family: id, until: untilOf(tries, restUntil) }];
    })
    .sort((a, b) => a.until - b.until)
    .map(({ family, until }) => ({ family, day: dayOf(until) }));
  const today = dayOf(now);
  return {
    today: resting.filter(({ day }) => day <= today).map(({ family }) => family),
    next: untried.filter(may).map(({ id }) => id),
    later: resting.filter(({ day }) => day > today),
    after: untried.filter((family) => !may(family)).map(({ id }) => id),
  };
}

/** A try of which nobody noted what came has its turn at once: opening its sheet finds out. */
function untilOf(tries: readonly Attempt[], restUntil: RestUntil): number {
  const known = tries.flatMap(({ at, came }) => (came === undefined ? [] : [{ at: Date.parse(at), came }]));
  return known.length < tries.length ? Date.parse(tries[0]?.at ?? '') : restUntil(known);
}

/**
 * Whether a task was practised: the first try at some draw of it, or of a part of it, passed. A task that has no family is
 * as good as what comes before it.
 */
function practisedIn(
  families: readonly Turn[],
  tasks: readonly TurnTask[],
  tried: ReadonlyMap<string, readonly Attempt[]>,
): (task: string) => boolean {
  const known = new Map(tasks.map((task) => [task.id, task]));
  const isPractised = (id: string): boolean => {
    const task = known.get(id);
    const ids = [id, ...(task?.parts ?? [])];
    const own = families.filter((family) => family.tasks.some((one) => ids.includes(one)));
    if (own.length === 0) return (task?.prerequisites ?? []).every(isPractised);
    return own.some((family) => tried.get(family.id)?.some(({ came }) => came === 'passed') ?? false);
  };
  return isPractised;
}
