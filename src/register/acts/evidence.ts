import { type Fault, GivenError } from '../../trade/given.ts';
import type { Bodies } from '../bodies.ts';
import type { Json } from '../canonical.ts';
import type { Regrade } from '../checks.ts';
import { fault } from '../write.ts';

/** The check that evidence is for. */
interface For extends Pick<Bodies['check'], 'task' | 'outcome'> {
  readonly person: string;
}

/**
 * What keeps answers from being the evidence of a check: with a sheet that does not pass, nothing was shown.
 * @param todo  what to do when they do not pass and the check says shown
 */
export function evidenceFaults(
  evidence: Json,
  { person, task, outcome }: For,
  regrade: Regrade | undefined,
  todo: string,
): readonly Fault[] {
  if (regrade === undefined) {
    return [fault('evidence', undefined, 'nothing here can grade it again', 'sign where it can be graded')];
  }
  try {
    if (regrade(evidence, { person, task }) || outcome !== 'shown') return [];
    return [fault('evidence', undefined, 'graded again, the answers do not pass', todo)];
  } catch (error) {
    if (!(error instanceof GivenError)) throw error;
    return error.faults.map((f) => ({ ...f, field: f.field === '' ? 'evidence' : `evidence.${f.field}` }));
  }
}
