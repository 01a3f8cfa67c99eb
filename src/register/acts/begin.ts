import type { Fault } from '../../trade/given.ts';
import type { DayIn } from '../days.ts';
import { markerText } from '../held.ts';
import { MARKER } from '../paths.ts';
import { deviceName, personId } from '../shapes.ts';
import { deviceOf, fault, refuseIf, type Writing, type Written, writeEntry } from '../write.ts';

export interface BeginGiven {
  /** IANA name of the zone that days are counted in. */
  readonly zone: string;
  /** The owner's own id, when he is a person of the register. */
  readonly person?: string | undefined;
}

/** Every fault that keeps a register from being begun; empty when it may be. `sign` of the signer is not called. */
export function beginFaults(given: BeginGiven, writing: Writing, dayIn: DayIn): readonly Fault[] {
  const { zone, person } = given;
  const wrongPerson = person === undefined ? undefined : personId(person);
  const wrongDevice = deviceName(deviceOf(writing));
  const wrongZone = zone === '' ? 'no time zone is given' : 'no time zone of that name is known';
  return [
    zoneIsKnown(zone, dayIn)
      ? undefined
      : fault('zone', zone, wrongZone, 'write a name such as UTC or America/Denver'),
    wrongPerson === undefined
      ? undefined
      : fault('person', person, `an id ${wrongPerson}`, 'write another id'),
    wrongDevice === undefined
      ? undefined
      : fault('device', deviceOf(writing), `the device ${wrongDevice}`, 'name the device so'),
  ].filter((one) => one !== undefined);
}

/**
 * Begins a register: its first entry, signed by its owner.
 * @throws {GivenError} a zone that nobody knows, an id that is none
 */
export async function begin(given: BeginGiven, writing: Writing, dayIn: DayIn): Promise<Written> {
  refuseIf(beginFaults(given, writing, dayIn));
  const { zone, person } = given;
  const written = await writeEntry(
    undefined,
    { kind: 'begin', about: person ?? null, body: { zone } },
    writing,
  );
  return { ...written, put: { ...written.put, [MARKER]: markerText(written.entry) } };
}

function zoneIsKnown(zone: string, dayIn: DayIn): boolean {
  // Names only: an offset such as +01:00 knows no summer time, and older engines do not know it.
  if (!/^[A-Za-z][A-Za-z0-9_+/-]*$/.test(zone)) return false;
  try {
    dayIn(zone, 0);
    return true;
  } catch {
    return false;
  }
}
