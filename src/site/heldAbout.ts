/** Everything held about one person as the file that he may ask for: one name and one form, wherever it is saved from. Pure. */
import type { Judged } from '../register/judged.ts';
import { personFile } from '../register/person.ts';

export interface HeldAbout {
  readonly name: string;
  /** JSON, laid out to be read. */
  readonly text: string;
  /** How many entries, and how many texts of them, are in it. */
  readonly entries: number;
  readonly bodies: number;
}

/**
 * @param judged  the register as it is known now: what was known on an earlier day only is not everything
 * @param now     ms; the day of it, in the register's zone, is in the file's name
 */
export function heldAbout(judged: Judged, person: string, now: number): HeldAbout {
  const { view } = judged;
  const held = personFile(judged, person);
  return {
    name: `held-about-${person}-${view.dayIn(view.zone, now)}.json`,
    text: `${JSON.stringify(held, null, 2)}\n`,
    entries: held.entries.length,
    bodies: held.bodies.length,
  };
}
