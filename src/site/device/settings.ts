/** The settings of this device. A device that refuses to keep them shows everything as usual. */
import { readSettings, type Settings, usual } from '../settings.ts';

const place = 'trayhand-settings';

export function keptSettings(): Settings {
  try {
    return readSettings(localStorage.getItem(place));
  } catch {
    return usual;
  }
}

/** @returns whether the device keeps them */
export function keepSettings(settings: Settings): boolean {
  try {
    localStorage.setItem(place, JSON.stringify(settings));
    return true;
  } catch {
    return false;
  }
}
