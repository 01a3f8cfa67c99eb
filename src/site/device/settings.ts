/** The settings of this device. A device that refuses to keep them shows everything as usual. */
import { type Kept, nothingKept, readSettings } from '../settings.ts';

const place = 'trayhand-settings';

export function keptSettings(): Kept {
  try {
    return readSettings(localStorage.getItem(place));
  } catch {
    return nothingKept;
  }
}

/** @returns whether the device keeps them */
export function keepSettings(settings: Kept): boolean {
  try {
    localStorage.setItem(place, JSON.stringify(settings));
    return true;
  } catch {
    return false;
  }
}
