/** The rack of this device. Where the device keeps nothing it lasts as long as the page, which says so. */
import { useCallback, useEffect, useState } from 'react';
import { changeRack, keptRack } from '../../device/rack.ts';
import type { Rack } from '../../sticks/rack.ts';

export interface RackHeld {
  readonly rack: Rack;
  readonly stays: boolean;
  readonly change: (change: (rack: Rack) => Rack) => void;
}

export function useRack(): RackHeld {
  const [rack, setRack] = useState<Rack>([]);
  const [stays, setStays] = useState(true);
  useEffect(() => {
    keptRack().then(setRack, () => setStays(false));
  }, []);
  const change = useCallback((change: (rack: Rack) => Rack) => {
    changeRack(change).then(setRack, () => {
      setStays(false);
      setRack(change);
    });
  }, []);
  return { rack, stays, change };
}
