/** The device's settings inside an island: as usual while the page is built and taken over, then the device's own. */
import { useEffect, useState } from 'react';
import { keptSettings } from '../device/settings.ts';
import { type Settings, usual } from '../settings.ts';

export function useSettings(): Settings {
  const [settings, setSettings] = useState(usual);
  useEffect(() => setSettings(keptSettings()), []);
  return settings;
}
