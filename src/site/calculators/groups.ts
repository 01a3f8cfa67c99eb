/** The sums in the order of the job, for the lists. */
import type { SumId } from './sum.ts';

/** Sums that have a page of their own making, at install/NAME; their words are in `NAMESheet` and `install.NAMELine`. */
export const ownSums = ['cut', 'sticks', 'fill'] as const;
export type OwnSum = (typeof ownSums)[number];
export const isOwn = (id: SumId | OwnSum): id is OwnSum => (ownSums as readonly string[]).includes(id);

export const groups = [
  ['measure', ['length', 'offset', 'arc']],
  ['cut', ['cut', 'sticks', 'mark', 'mitre', 'notch']],
  ['hang', ['span', 'equivalent', 'vertical', 'beam', 'section']],
  ['join', ['expansion', 'transition']],
  ['bond', ['jumper', 'groundpath']],
  ['fill', ['fill', 'radius', 'ampacity', 'separation', 'marking']],
] as const satisfies readonly (readonly [string, readonly (SumId | OwnSum)[]])[];

export type GroupId = (typeof groups)[number][0];

/** The part of the job that a sum belongs to. */
export function groupOf(id: SumId): GroupId {
  const found = groups.find(([, ids]) => (ids as readonly string[]).includes(id));
  if (found === undefined) throw new Error(`no group holds the sum ${id}`);
  return found[0];
}
