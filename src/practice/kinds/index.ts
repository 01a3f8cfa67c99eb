/** Every kind of ask. */
import type { Ask, AskKind } from '../family.ts';
import { choice } from './choice.ts';
import { faults } from './faults.ts';
import { jobOf } from './job.ts';
import type { AnyKind } from './kind.ts';
import { number } from './number.ts';
import { order } from './order.ts';
import { place } from './place.ts';
import { reading } from './reading.ts';
import { sticks } from './sticks.ts';
import { stop } from './stop.ts';

/** Sound because an ask goes only to its own kind, and an answer only to the ask it was read for. */
const kinds = {
  number,
  choice,
  order,
  place,
  faults,
  sticks,
  stop,
  reading,
  job: jobOf((part) => kindOf(part)),
} as unknown as Readonly<Record<AskKind, AnyKind>>;

export function kindOf(ask: Ask): AnyKind {
  return kinds[ask.kind];
}
