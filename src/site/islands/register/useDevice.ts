import type { KeyFile } from '../../../register/keyFile.ts';
import { chainsHere } from '../../device/chains.ts';
import { isKept } from '../../device/edge.ts';
import { ownKey } from '../../device/keys.ts';
import { lastCarried, namesText, type Opened, ownRegister } from '../../device/register.ts';
import { type KeptSheet, sheetBeingAnswered } from '../../device/sheets.ts';
import type { Carried } from '../../drills/carried.ts';
import { keptPeople, type People } from '../../people.ts';
import { useReading } from './useReading.ts';

/** What this device keeps for the register, read together. */
export interface Device {
  readonly key: KeyFile | undefined;
  readonly opened: Opened | undefined;
  readonly people: People;
  /** When the register was last carried off, and how far that file went. */
  readonly carried: Carried | undefined;
  /** Every chain that was ever written here. */
  readonly chains: ReadonlySet<string>;
  readonly answering: KeptSheet | undefined;
  /** Whether the browser has agreed to keep it; `undefined` where it does not say. */
  readonly kept: boolean | undefined;
}

async function readDevice(): Promise<Device> {
  const [key, opened, names, carried, chains, answering, kept] = await Promise.all([
    ownKey(),
    ownRegister(),
    namesText(),
    lastCarried(),
    chainsHere(),
    sheetBeingAnswered(),
    isKept(),
  ]);
  return { key, opened, people: keptPeople(names), carried, chains, answering, kept };
}

/** `undefined` until it is read; an error when this device keeps nothing. Read again on `refresh` and on coming back. */
export function useDevice(): {
  readonly device: Device | undefined;
  readonly failed: unknown;
  readonly refresh: () => Promise<void>;
} {
  const { value, failed, refresh } = useReading(readDevice);
  return { device: value, failed, refresh };
}
