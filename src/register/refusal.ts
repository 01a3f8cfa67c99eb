import type { Say } from '../trade/answer.ts';
import type { ProblemCode } from './held.ts';

/** Reasons why an entry counts for nothing, by their words in `registerProblem`. */
export const reasons = [
  'second-take-over',
  'not-named',
  'taken-over',
  'owner-forked',
  'not-owner',
  'bound',
  'retired-appointed',
  'retired',
  'own-signature',
  'own-second',
  'not-appointed',
  'no-target',
  'not-own',
  'no-standing',
] as const;
type Reason = (typeof reasons)[number];

/** Why an entry counts for nothing. `settled`: whoever cut it off knew it. */
export interface Refusal {
  readonly code: ProblemCode;
  readonly say: Say;
  readonly settled: boolean;
}

export const refusal = (code: ProblemCode, reason: Reason, settled = false): Refusal => ({
  code,
  say: { say: `registerProblem.${reason}` },
  settled,
});

/** For what is signed well and says nothing that can be read. */
export const misread = (why: string): Refusal => ({
  code: 'unreadable',
  say: { say: 'registerProblem.unreadable', values: { why } },
  settled: false,
});

/** Entries that count for nothing, by id; the first reason found stays. */
export class Refusals {
  readonly byId = new Map<string, Refusal>();

  add({ id }: { readonly id: string }, found: Refusal | undefined): void {
    if (found !== undefined && !this.byId.has(id)) this.byId.set(id, found);
  }

  has({ id }: { readonly id: string }): boolean {
    return this.byId.has(id);
  }
}
