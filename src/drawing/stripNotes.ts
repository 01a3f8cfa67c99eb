import { shortLength } from '../trade/shortLength.ts';
import { spoken } from './spoken.ts';
import type { StripGiven } from './stripGiven.ts';
import { leftOver } from './stripScale.ts';
import type { How } from './types.ts';

/** Notes under a strip: what all its splices have in common, the saw, what is left. */
export function stripNotes(
  { leg, stock, kerf }: StripGiven,
  lettered: boolean,
  { speak, form }: How,
): readonly string[] {
  const notes: string[] = [];
  const { joints } = leg;
  const note = (key: string, values: Record<string, string | number> = {}) =>
    notes.push(speak({ say: `drawing.${key}`, values }));
  const whole = leg.pieces.filter(({ cut }) => cut === stock).length;
  if (stock !== undefined && whole > 0 && !lettered) {
    note(whole === 1 ? 'oneWhole' : 'wholes', { count: whole, stock: shortLength(stock) });
  }
  if (joints.length > 0) note(joints.length === 1 ? 'oneSplice' : 'splices', { count: joints.length });
  const one = <T>(of: readonly T[]) => (new Set(of).size === 1 ? of[0] : undefined);
  const into = one(joints.flatMap(({ insertions }) => insertions));
  if (into !== undefined && into > 0) note('intoEach', { length: spoken(into, speak) });
  const gap = one(joints.map(({ opening }) => opening));
  if (gap !== undefined) {
    if (gap === 0) note('endsMeet');
    else note(form === 'phone' ? 'gap' : 'gapBetween', { gap: shortLength(gap) });
  }
  if (leg.end.open > 0) note('open', { length: shortLength(leg.end.open) });
  const left = leftOver(leg, stock, kerf);
  if (left !== undefined) {
    if (kerf !== undefined && kerf > 0) note('saw', { kerf: shortLength(kerf) });
    note('left', { length: shortLength(left.length) });
  }
  return notes;
}
