/** Between what is answered on a run and what its drawing shows. */
import { samePlace, type TapChosen, type TapPlace } from '../../../../drawing/tap/given.ts';
import { askOf } from '../../../../practice/draw.ts';
import type { FaultAt, PlacedAt } from '../../../../practice/model.ts';
import type { ResolvedRun } from '../../../../run/resolved.ts';
import type { EntryProps } from './entry.ts';

/** The run that an ask is answered on. @throws {Error} where the model gives none: a fault of its content */
export function runOf({ draw, within, world }: Pick<EntryProps, 'draw' | 'within' | 'world'>): ResolvedRun {
  const resolved = askOf(draw.model, within).on?.(draw.plan, world);
  if (resolved === undefined) throw new Error(`${draw.family.id}: ${within} has no run`);
  return resolved;
}

/** Rules about what runs over a leg: they are of the whole leg, and answered at its first working point. */
const WHOLE = new Set(['fill-over', 'fill-no-row', 'power-with-signal', 'air-with-cables']);

export const faultChosen = ({ leg, at, rule }: FaultAt): TapChosen => ({
  leg,
  at: WHOLE.has(rule) ? null : at,
  what: rule,
});

/** A fault of that rule on a tapped part. */
export function faultOn({ leg, at, elsewhere }: TapPlace, rule: string): FaultAt {
  return { leg, at: (WHOLE.has(rule) ? null : (elsewhere[rule] ?? at)) ?? 0, rule };
}

/** Whether a fault that was named is on a tapped part. */
export function isOn(fault: FaultAt, { leg, at, elsewhere }: TapPlace): boolean {
  return samePlace(faultChosen(fault), { leg, at: elsewhere[fault.rule] ?? at });
}

export const sameMark = (a: PlacedAt, b: PlacedAt): boolean => a.what === b.what && samePlace(a, b);

/** Along the run: by legs in order of travel, then along each. */
export function alongRun<M extends { readonly leg: string; readonly at: number }>(
  marks: readonly M[],
  { legs }: ResolvedRun,
): readonly M[] {
  const order = new Map(legs.map(({ leg }, i) => [leg, i]));
  return [...marks].sort((a, b) => (order.get(a.leg) ?? 0) - (order.get(b.leg) ?? 0) || a.at - b.at);
}
