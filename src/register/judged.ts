import type { Say } from '../trade/answer.ts';
import type { Day, DayIn } from './days.ts';
import type { ForkState } from './forks.ts';
import type { Gap } from './gaps.ts';
import type { Held, Problem } from './held.ts';
import type { Placed } from './order.ts';
import { MARKER } from './paths.ts';
import type { Authority } from './rights.ts';
import type { View } from './view.ts';

/** How far ahead of now an entry may be dated and still be cited and counted, ms. */
export const AHEAD = 24 * 3_600_000;

export interface Asked {
  /** Now, ms since 1970 UTC. */
  readonly now: number;
  readonly dayIn: DayIn;
  /** Only what was entered up to the end of this day; everything when left out. */
  readonly knownOn?: Day | undefined;
  /** Public key that must be the owner; the folder's own word when left out. */
  readonly owner?: string | undefined;
}

/** One row a chain: its last number and when that was. */
export interface SignerRow {
  readonly id: string;
  readonly device: string;
  readonly person: string | null;
  readonly last: number;
  readonly at: string;
}

/** A register judged: what counts, what is in doubt, what is wrong. */
export interface Judged {
  readonly view: View;
  readonly authority: Authority;
  /** Whether an entry counts: it is of this register, its signer might, and nothing cut it off. */
  counts(entry: Placed): boolean;
  /** Why an entry is in doubt, by its own chain or time; checks also through those they rest on (see checks.ts). */
  doubt(entry: Placed): Say | undefined;
  readonly gaps: readonly Gap[];
  readonly forks: readonly ForkState[];
  /** People with a body that is not here, and the entry that names it. */
  readonly bodyless: ReadonlyMap<string, Placed>;
  readonly problems: readonly Problem[];
  readonly signers: readonly SignerRow[];
  /** Heads that are dated too far ahead to count yet. */
  readonly ahead: readonly Placed[];
  /** Entries of kinds that this version does not know. */
  readonly unknown: readonly Placed[];
  /** Every entry of this register whose bytes are whole, those ahead included. */
  readonly entries: number;
}

/** Thrown where a folder holds no beginning: there is no register to judge. */
export class NoRegister extends Error {
  readonly held: Held;
  /** What `verify` lists for it. */
  readonly problem: Problem = {
    file: MARKER,
    code: 'gap',
    say: { say: 'registerProblem.no-beginning' },
  };
  constructor(held: Held) {
    super('no beginning of a register is here');
    this.name = 'NoRegister';
    this.held = held;
  }
}
