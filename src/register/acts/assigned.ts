import type { Fault } from '../../trade/given.ts';
import { readInstant, writeInstant } from '../days.ts';
import type { Judged } from '../judged.ts';
import { fault, refuseIf, type Writing, type Written, writeEntry, writerFaults } from '../write.ts';
import { endedFaults, personFaults, standingFaults, textFaults } from './faults.ts';

export interface AssignedGiven {
  readonly job: string;
  readonly person: string;
  /** First instant of the shift, RFC 3339 with an offset or Z. */
  readonly from: string;
  /** The instant at which it ends; after `from`. */
  readonly to: string;
  /** Why somebody is sent whom the register does not say yes for. */
  readonly override?: string | undefined;
}

/** Every fault that keeps an entry of who was sent where from being signed; empty when it may be. */
export function assignedFaults(judged: Judged, given: AssignedGiven, writing: Writing): readonly Fault[] {
  const { job, person, from, to, override } = given;
  const [start, end] = [readInstant(from), readInstant(to)];
  return [
    ...endedFaults(judged, writing),
    ...writerFaults(judged, writing),
    ...standingFaults(judged, writing),
    ...textFaults('job', job, 'write the id of the job'),
    ...personFaults(judged, person),
    ...instantFaults('from', from, start),
    ...instantFaults('to', to, end),
    ...(start !== undefined && end !== undefined && end <= start
      ? [fault('to', to, 'not after the beginning of the shift', 'write a later instant')]
      : []),
    ...(override === undefined ? [] : textFaults('override', override, 'say why, or leave it out')),
  ];
}

function instantFaults(field: string, given: string, read: number | undefined): readonly Fault[] {
  if (read !== undefined) return [];
  const todo = 'write it so: 2026-03-09T07:00:00Z, or with +01:00 in place of Z';
  return [fault(field, given === '' ? undefined : given, 'no instant with seconds and an offset', todo)];
}

/** Records who was sent to which job. @throws {GivenError} with all faults */
export async function assigned(judged: Judged, given: AssignedGiven, writing: Writing): Promise<Written> {
  refuseIf(assignedFaults(judged, given, writing));
  const { job, person, override = null } = given;
  const [from, to] = [given.from, given.to].map((text) => writeInstant(readInstant(text) as number));
  if (from === undefined || to === undefined) throw new RangeError('a shift has two ends');
  return writeEntry(judged, { kind: 'assigned', about: person, body: { job, from, to, override } }, writing);
}
