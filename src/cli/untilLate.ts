/** How long the command looks for cutting plans. The clock is here, and nowhere below. */

/** How long one plan is looked for where the call does not say, in seconds. */
export const PLAN_SECONDS = 2;

/** A search begun now that stops after so many seconds. */
export function untilLate(seconds: number = PLAN_SECONDS): { readonly stop: () => boolean } {
  const end = performance.now() + 1000 * seconds;
  return { stop: () => performance.now() >= end };
}
