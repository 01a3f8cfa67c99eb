import type { Fault } from '../../trade/given.ts';
import { covers } from '../appointments.ts';
import {
  type Help,
  helps,
  hows,
  type Manner,
  type Measured,
  manners,
  type Outcome,
  outcomes,
  type Point,
  type Variant,
} from '../bodies.ts';
import type { Json, JsonObject } from '../canonical.ts';
import type { Regrade } from '../checks.ts';
import { type Day, isDay } from '../days.ts';
import type { Judged } from '../judged.ts';
import { fullVariant, isHeading, revisionOn, type TaskMap, taskOf, variantFaults } from '../taskMap.ts';
import { fault, refuseIf, type Writing, type Written, writeEntry, writerFaults } from '../write.ts';
import { evidenceFaults } from './evidence.ts';
import { endedFaults, personFaults, taskFaults } from './faults.ts';
import { type Demands, ownStandingFaults } from './ownStanding.ts';

/** What a witness saw. */
export interface CheckGiven {
  readonly person: string;
  readonly task: string;
  readonly outcome: Outcome;
  /** The day it was seen, in the register's zone. */
  readonly on: Day;
  /** A pair left out has its plain value. */
  readonly variant?: Variant | undefined;
  /** Left out: performed, alone, in sight, not stopped. */
  readonly manner?: Manner | undefined;
  readonly help?: Help | undefined;
  readonly inSight?: boolean | undefined;
  readonly stopped?: boolean | undefined;
  /** The one in force on the day seen, or an earlier one. */
  readonly revision?: number | undefined;
  readonly points?: readonly Point[] | undefined;
  readonly measured?: readonly Measured[] | undefined;
  /** The sheet's answers as they were handed over, or nothing. */
  readonly evidence?: Json | undefined;
}

/**
 * Every fault that keeps a check from being signed; empty when it may be.
 * @param demands  what the site asks of a witness beyond his appointment; nothing when left out
 */
export function checkFaults(
  judged: Judged,
  given: CheckGiven,
  map: TaskMap,
  writing: Writing,
  regrade: Regrade | undefined,
  demands?: Demands,
): readonly Fault[] {
  const faults: (Fault | undefined)[] = [
    ...endedFaults(judged, writing),
    ...writerFaults(judged, writing),
    ...personFaults(judged, given.person),
    ...taskFaults(map, given.task),
    ...dayFaults(judged, given.on, writing.now),
    ...formFaults(given),
    ...signerFaults(judged, given, writing),
  ];
  const task = taskOf(map, given.task);
  if (task !== undefined && !isHeading(task)) {
    faults.push(...variantFaults(task, given.variant ?? {}, 'variant'));
    if (given.revision !== undefined && isDay(given.on)) {
      const inForce = revisionOn(task, given.on);
      if (given.revision > inForce || !task.revisions.some((r) => r.n === given.revision)) {
        const message = `not a revision of ${task.id} in force by the day seen`;
        faults.push(
          fault('revision', given.revision, message, `leave it out, or write one up to ${inForce}`),
        );
      }
    }
  }
  faults.push(...ownStandingFaults(judged, given, map, writing, regrade, demands));
  const { evidence = null } = given;
  if (evidence !== null) {
    faults.push(...evidenceFaults(evidence, given, regrade, 'sign not-yet, or set a new sheet'));
  }
  return faults.filter((f) => f !== undefined);
}

/**
 * Signs what a witness saw.
 * @param regrade  grades evidence again; needed when there is evidence
 * @param demands  as `checkFaults` takes them
 * @throws {GivenError} with all faults; nothing is signed then
 */
export async function check(
  judged: Judged,
  given: CheckGiven,
  map: TaskMap,
  writing: Writing,
  regrade?: Regrade,
  demands?: Demands,
): Promise<Written> {
  refuseIf(checkFaults(judged, given, map, writing, regrade, demands));
  const task = taskOf(map, given.task);
  if (task === undefined) throw new RangeError('a task without a fault is in the map');
  const body: JsonObject = {
    task: task.id,
    revision: given.revision ?? revisionOn(task, given.on),
    variant: fullVariant(task, given.variant ?? {}),
    outcome: given.outcome,
    manner: given.manner ?? 'performed',
    help: given.help ?? 'alone',
    inSight: given.inSight ?? true,
    stopped: given.stopped ?? false,
    on: given.on,
    points: given.points ?? [],
    measured: given.measured ?? [],
    evidence: given.evidence ?? null,
  };
  return writeEntry(judged, { kind: 'check', about: given.person, body }, writing);
}

function dayFaults({ view }: Judged, on: Day, now: number): readonly Fault[] {
  if (!isDay(on)) return [fault('on', on, 'no day of the calendar', 'write it so: 2026-03-09')];
  const today = view.dayIn(view.zone, now);
  if (on <= today) return [];
  return [fault('on', on, `after the day of entry (${today} in ${view.zone})`, 'enter it once it was seen')];
}

function formFaults(given: CheckGiven): readonly (Fault | undefined)[] {
  const among = (field: string, value: string | undefined, values: readonly string[]): Fault | undefined =>
    value === undefined || values.includes(value)
      ? undefined
      : fault(field, value, 'no such choice', `write ${values.join(' or ')}`);
  return [
    among('outcome', given.outcome, outcomes),
    among('manner', given.manner, manners),
    among('help-given', given.help, helps),
    ...(given.points ?? []).map((p, i) => among(`points[${i}].how`, p.how, hows)),
    ...pointFaults(given),
    given.stopped === true && given.outcome !== 'not-yet'
      ? fault('stopped', true, 'a stopped attempt shows nothing', 'use it with not-yet only')
      : undefined,
  ];
}

/** A critical point stands once; with one of them missed nothing was shown. */
function pointFaults({ points = [], outcome }: CheckGiven): readonly Fault[] {
  const named = points.map(({ point }) => point);
  return points.flatMap(({ point, how }, i): readonly Fault[] => {
    const field = `points[${i}]`;
    if (named.indexOf(point) < i) return [fault(field, point, 'this point stands twice', 'keep one')];
    if (outcome !== 'shown' || how !== 'missed') return [];
    const message = 'a critical point was missed: nothing was shown';
    return [fault(field, point, message, 'sign not-yet')];
  });
}

function signerFaults({ authority }: Judged, given: CheckGiven, { signer }: Writing): readonly Fault[] {
  const { publicKey } = signer;
  const faults: Fault[] = [];
  if (authority.persons.get(publicKey)?.has(given.person)) {
    faults.push(fault('person', given.person, 'nobody signs for himself', 'have another witness look'));
  }
  const appointed = authority.appointments.some(
    (a) => a.key === publicKey && covers(a, given.task, given.on),
  );
  if (!appointed && isDay(given.on)) {
    const message = `not appointed for ${given.task} on ${given.on}`;
    faults.push(fault('key', publicKey, message, 'have the owner appoint this key first'));
  }
  return faults;
}
