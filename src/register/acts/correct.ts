import type { Fault } from '../../trade/given.ts';
import type { Json } from '../canonical.ts';
import type { Regrade } from '../checks.ts';
import type { Judged } from '../judged.ts';
import type { Placed } from '../order.ts';
import { fault, refuseIf, type Writing, type Written, writeEntry, writerFaults } from '../write.ts';
import { evidenceFaults } from './evidence.ts';
import { whyFaults } from './faults.ts';
import { amendFaults, namedOf } from './named.ts';

export interface CorrectGiven {
  /** Id of a check. */
  readonly entry: string;
  /** The sheet's answers that take the place of those it was signed with. */
  readonly evidence: Json;
  readonly why: string;
}

/** Every fault that keeps the evidence of a check from being replaced; empty when it may be. */
export function correctFaults(
  judged: Judged,
  { entry: id, evidence, why }: CorrectGiven,
  writing: Writing,
  regrade: Regrade | undefined,
): readonly Fault[] {
  const found = namedOf(['check'], judged, 'entry', id, writing);
  const faults: Fault[] = [...writerFaults(judged, writing)];
  if (found.entry === undefined) faults.push(...found.faults);
  else {
    faults.push(...amendFaults(judged, found.entry, writing));
    faults.push(...answersFaults(judged, found.entry, evidence, regrade));
  }
  return [...faults, ...whyFaults(why)];
}

function answersFaults(
  judged: Judged,
  check: Placed,
  evidence: Json,
  regrade: Regrade | undefined,
): readonly Fault[] {
  const state = judged.authority.body(check, 'check');
  const person = check.header.about;
  if (state.state !== 'held' || person === null) {
    return [
      fault('entry', check.id, 'what this check says is not here', 'bring in the copy that holds its body'),
    ];
  }
  if (evidence === null) return [fault('evidence', null, 'no answers', 'give the answers to the sheet')];
  const todo = 'withdraw the check, and have it shown again';
  return evidenceFaults(evidence, { ...state.body, person }, regrade, todo);
}

/** Replaces the evidence of a check, nothing else; what was there stays readable. @throws {GivenError} */
export async function correct(
  judged: Judged,
  given: CorrectGiven,
  writing: Writing,
  regrade?: Regrade,
): Promise<Written> {
  refuseIf(correctFaults(judged, given, writing, regrade));
  const { about } = judged.view.order.byId.get(given.entry)?.header ?? {};
  if (about === undefined) throw new RangeError('an entry without a fault is held');
  const body = { why: given.why, evidence: given.evidence };
  return writeEntry(judged, { kind: 'correct', about, target: [given.entry], body }, writing);
}
