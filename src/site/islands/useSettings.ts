/** The device's settings inside an island: as usual while the page is built and taken over, then the device's own. */
import { useEffect, useMemo, useState } from 'react';
import { type Edition, NEWEST } from '../../trade/editions.ts';
import { keptSettings } from '../device/settings.ts';
import { type Kept, nothingKept, type Settings, settingsOf } from '../settings.ts';

export function useKept(): Kept {
  const [kept, setKept] = useState(nothingKept);
  useEffect(() => setKept(keptSettings()), []);
  return kept;
}

/** @param works  edition that the works goes by, which holds where the device has none of its own */
export function useSettings(works: Edition = NEWEST): Settings {
  const kept = useKept();
  return useMemo(() => settingsOf(kept, works), [kept, works]);
}
