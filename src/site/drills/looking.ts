import type { Judged } from '../../register/judged.ts';
import type { TaskMap } from '../../register/taskMap.ts';
import type { Names } from '../people.ts';
import type { Speak, Tell } from '../speak.ts';

/** The register as it is looked at on this device, and the words for it. */
export interface Looking {
  readonly judged: Judged;
  readonly map: TaskMap;
  readonly names: Names;
  /** Public key of this device, if it has one. */
  readonly me: string | undefined;
  /** The moment it was opened at, ms. */
  readonly now: number;
  readonly speak: Speak;
  readonly tell: Tell;
}

/** One of a list to choose from. */
export interface Option {
  readonly value: string;
  readonly text: string;
}
