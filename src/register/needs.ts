/** Whether a person is shown for what a job needs: the rule of the board's question "who can take this job?". */
import type { PersonRow } from './board.ts';
import type { Variant } from './bodies.ts';
import { fullVariant, isHeading, type MapTask, type TaskMap, taskOf, variantText } from './taskMap.ts';

export interface Need {
  readonly task: string;
  /** A pair left out has its plain value, as everywhere; for a heading the pairs go to the parts that know them. */
  readonly variant?: Variant | undefined;
}

/** A task that somebody is shown in, and the one way of doing it that is asked about. */
export interface Way {
  readonly task: MapTask;
  readonly variant: Variant;
}

/**
 * The ways that a need comes to: one for a task, one a part for a heading. `undefined` when there is no such task, or a
 * pair that nothing it stands for knows.
 */
export function waysOf(map: TaskMap, { task: id, variant = {} }: Need): readonly Way[] | undefined {
  const task = taskOf(map, id);
  if (task === undefined) return undefined;
  const parts = isHeading(task) ? task.parts.map((part) => taskOf(map, part)) : [task];
  if (parts.some((part) => part === undefined)) return undefined;
  const known = parts as readonly MapTask[];
  const knows = (part: MapTask, pair: string) => Object.hasOwn(part.variants, pair);
  if (!Object.keys(variant).every((pair) => known.some((part) => knows(part, pair)))) return undefined;
  return known.map((part) => ({
    task: part,
    variant: fullVariant(
      part,
      Object.fromEntries(Object.entries(variant).filter(([pair]) => knows(part, pair))),
    ),
  }));
}

/** Whether every way of a need stands as shown: no other way of doing the task counts for it, nor against it. */
export function meetsNeed(row: PersonRow, need: Need, map: TaskMap): boolean {
  const ways = waysOf(map, need);
  if (ways === undefined || row.erased === true) return false;
  return ways.every(({ task, variant }) => {
    const wanted = variantText(variant);
    return row.tasks[task.id]?.variants.some(
      (way) => variantText(way.variant) === wanted && way.standing === 'shown',
    );
  });
}
