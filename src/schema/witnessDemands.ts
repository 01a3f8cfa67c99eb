import type { Demands } from '../register/acts/ownStanding.ts';
import { adoptedOf, type SitePaper } from './site.ts';
import type { Task } from './task.ts';

/**
 * What the site asks of a witness beyond his appointment, from the day its paper was signed: for every task that can be
 * shown, what is adopted for that task, else what is adopted for all. Without a paper nothing is asked.
 */
export function witnessDemandsOf(library: {
  readonly tasks: ReadonlyMap<string, Task>;
  readonly site: ReadonlyMap<string, SitePaper>;
}): Demands {
  const { 'own-standing': all, 'own-standing-in': one } = adoptedOf(library.site.values());
  const ownStanding = [...library.tasks.values()].flatMap(({ id, parts }): [string, string][] => {
    const limit = one.get(id) ?? all;
    // A paper's day stands as the edition of its source.
    const from = limit?.source.edition;
    return parts.length > 0 || limit?.value !== true || from === undefined ? [] : [[id, from]];
  });
  return { ownStanding: Object.fromEntries(ownStanding) };
}
