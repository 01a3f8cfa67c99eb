/** What came of a thing that may be refused. Apart from refusals.ts, so that a sum's page loads nothing of the register. */
import { type Fault, GivenError } from '../trade/given.ts';

export type Attempt<T> =
  | { readonly good: true; readonly value: T }
  | { readonly good: false; readonly faults: readonly Fault[] };

/** Runs a computation that refuses with `GivenError`, and hands the faults back; a slip of the program goes on up. */
export function tried<T>(compute: () => T): Attempt<T> {
  try {
    return { good: true, value: compute() };
  } catch (thrown) {
    if (thrown instanceof GivenError) return { good: false, faults: thrown.faults };
    throw thrown;
  }
}
