/** Where a support may stand, and what it is called. */
import { formatLength, inches, type Ticks, ticks } from '../trade/length.ts';
import type { Face, ResolvedJoint } from './straight.ts';
import type { Bad } from './tree.ts';
import type { Support } from './types.ts';

/** Letters that cannot be taken for a figure: no I, O, Q. */
const LETTERS = 'ABCDEFGHJKLMNPRSTUVWXYZ';

/** A, B … Z, AA, AB … */
export function supportName(index: number): string {
  const letter = LETTERS[index % LETTERS.length] ?? '';
  return index < LETTERS.length ? letter : supportName(Math.floor(index / LETTERS.length) - 1) + letter;
}

/** The leg on which a support is judged: what is not known is not judged. */
interface On {
  readonly length: Ticks;
  readonly plumb: boolean;
  readonly faces: readonly [Face | null, Face | null];
  readonly joints: readonly ResolvedJoint[];
}

/** A support carries channel: not a fitting, a hinge, the open of a gap, nor what is beyond. */
export function supportFaults({ at, way }: Support, field: string, leg: On, bad: Bad): void {
  const [start, end] = leg.faces;
  const from = ticks(start?.takeOut ?? 0);
  const to = ticks(leg.length - (end?.takeOut ?? 0));
  const wrong = (message: string, todo: string) => bad(`${field}.at`, inches(at), message, todo);
  if (at < 0 || at > leg.length) {
    wrong(
      'the support is not under the channel',
      `place it between ${formatLength(from)} and ${formatLength(to)}`,
    );
  } else if (at < from || at > to) {
    wrong(
      'the support stands on a fitting',
      `place it between ${formatLength(from)} and ${formatLength(to)}`,
    );
  }
  for (const { kind, edges, name } of leg.joints) {
    if ((kind !== 'hinged' && kind !== 'gap') || at <= edges[0] || at >= edges[1]) continue;
    wrong(
      kind === 'gap' ? `there is no channel in the gap ${name}` : `the support stands on the hinge ${name}`,
      `place it up to ${formatLength(edges[0])} or from ${formatLength(edges[1])}`,
    );
  }
  if (way === 'vertical' && !leg.plumb) {
    bad(`${field}.way`, way, 'a vertical support holds a leg that goes up or down', 'write horizontal');
  }
}
