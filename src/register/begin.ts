import type { DayIn } from './days.ts';
import { markerText } from './held.ts';
import { MARKER } from './paths.ts';
import { deviceName, personId } from './shapes.ts';
import { deviceOf, fault, refuseIf, type Writing, type Written, writeEntry } from './write.ts';

export interface BeginGiven {
  /** IANA name of the zone that days are counted in. */
  readonly zone: string;
  /** The owner's own id, when he is a person of the register. */
  readonly person?: string | undefined;
}

/**
 * Begins a register: its first entry, signed by its owner.
 * @throws {GivenError} a zone that nobody knows, an id that is none
 */
export async function begin(given: BeginGiven, writing: Writing, dayIn: DayIn): Promise<Written> {
  const { zone, person } = given;
  const wrongPerson = person === undefined ? undefined : personId(person);
  const wrongDevice = deviceName(deviceOf(writing));
  refuseIf([
    zoneIsKnown(zone, dayIn)
      ? undefined
      : fault(
          'zone',
          zone,
          'no time zone of that name is known',
          'write a name such as UTC or America/Denver',
        ),
    wrongPerson === undefined
      ? undefined
      : fault('person', person, `an id ${wrongPerson}`, 'write another id'),
    wrongDevice === undefined
      ? undefined
      : fault('device', deviceOf(writing), `the device ${wrongDevice}`, 'name the device so'),
  ]);
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
