import type { Json } from '../../register/canonical.ts';
import type { Judged } from '../../register/judged.ts';
import { benchOf, usesOf } from '../../register/usedBenches.ts';

/**
 * Says on standard error that answers were used before: the entry stands all the same, for no rule forbids it.
 * @param person  whose check it is
 */
export function sayUsed(judged: Judged, person: string, evidence: Json): void {
  for (const { sheet, bench, entry, task, variant } of usesOf(judged, person, benchOf(evidence))) {
    const check = [task, ...Object.values(variant)].join(', ');
    process.stderr.write(
      `sheet ${sheet}, bench ${bench} is already used for ${person}: entry ${entry}, ${check}; a new bench asks something new\n`,
    );
  }
}
