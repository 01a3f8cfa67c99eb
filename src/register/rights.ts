import type { Appointment } from './appointments.ts';
import type { BodyKind } from './bodies.ts';
import type { Day } from './days.ts';
import type { Placed } from './order.ts';
import type { Ownership } from './ownership.ts';
import type { Refusal } from './refusal.ts';
import type { Retirement } from './retirement.ts';
import type { BodyState } from './view.ts';

/** Who may sign what, and what counts for nothing, worked out once for a view. */
export interface Authority extends Ownership {
  readonly appointments: readonly Appointment[];
  readonly retirements: readonly Retirement[];
  /** People ever bound to a key, the one that is bound for good first. */
  readonly persons: ReadonlyMap<string, ReadonlySet<string>>;
  /** What counts for nothing, by id. */
  readonly voids: ReadonlyMap<string, Refusal>;
  body<K extends BodyKind>(entry: Placed, kind: K): BodyState<K>;
  /** Whether its signer was appointed for anything when he signed it. */
  isWitness(entry: Placed): boolean;
  /** Whether its signer had any standing: owner or witness, and not cut off. */
  hasStanding(entry: Placed): boolean;
  /** Appointments in an entry's past that let its signer check a task on a day. */
  appointedFor(entry: Placed, task: string, on: Day): readonly Appointment[];
}
