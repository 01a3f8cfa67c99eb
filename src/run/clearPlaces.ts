/** Where a saw cut may stand instead, when it falls on a hole of the floor or too near one. */
import type { Source, Step } from '../trade/answer.ts';
import { fromInches, type Ticks } from '../trade/length.ts';
import { mark } from '../trade/mark.ts';
import type { HoleRow } from './catalogue.ts';
import { cutOnHole } from './hole.ts';

/** A cut that keeps too little metal to a hole. */
export interface CutAtHole {
  /** `on` it, or `near`: nearer than one hole width, the clearance taken when a site has adopted none. */
  readonly falls: 'on' | 'near';
  /** Nearest clear places on this length, each to the nearest tick; null where there is none. */
  readonly shorter: Ticks | null;
  readonly longer: Ticks | null;
  readonly steps: readonly Step[];
  readonly sources: readonly Source[];
}

/**
 * A piece lies on its stock from the first end, and the row of holes ends before the stock does.
 *
 * @param cut    length of the piece
 * @param holes  centres at `first + k·pitch`
 * @param stock  one length as it comes
 * @returns null where the cut keeps clear of every hole, or nothing is cut
 */
export function cutAtHole(cut: Ticks, holes: HoleRow, stock: Ticks): CutAtHole | null {
  const k = Math.max(0, Math.round((cut - holes.first) / holes.pitch));
  if (cut >= stock || holes.first + k * holes.pitch >= stock) return null;
  const { result, steps, sources } = mark({
    at: cut,
    firstHole: holes.first,
    pitch: holes.pitch,
    holeWidth: holes.width,
  });
  if (result.clear) return null;
  const [shorter, longer] = [result.shorterIn, result.longerIn].map((place) =>
    place === null ? null : fromInches(place),
  );
  const found = { falls: cutOnHole(cut, holes, stock) ? 'on' : 'near', shorter: shorter ?? null } as const;
  if (longer == null || longer <= stock) return { ...found, longer: longer ?? null, steps, sources };
  return { ...found, longer: null, steps: withoutLonger(steps), sources };
}

/** The same working where the place beyond the hole is beyond the length as well. */
function withoutLonger(steps: readonly Step[]): readonly Step[] {
  const at = steps.findIndex(({ say }) => say === 'mark.longer');
  const after = steps[at + 1]?.say === 'mark.tape' ? at + 2 : at + 1;
  return [...steps.slice(0, at), { say: 'mark.noLonger' }, ...steps.slice(after)];
}
