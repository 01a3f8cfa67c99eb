/**
 * Lines laid out so that every piece fits a slot of its own: the question that exact.ts asks again and again.
 *
 * As in cheapest.ts, but a label holds which slots are taken. Of two labels the one whose free slots are no fewer, at
 * whatever length they are counted from, and whose next piece begins no nearer, is never worse.
 */
import type { Prepared } from './cheapest.ts';
import { cutsOf, type LineLayout, leavesOut } from './line.ts';
import { lastSplice, NOWHERE } from './spliceAt.ts';

/** Slots of one length. */
export interface Slots {
  readonly length: number;
  readonly count: number;
}

/** Lengths, each as often as it is there; those of nothing are no slots. */
export function slotsOf(lengths: readonly number[]): readonly Slots[] {
  const counts = new Map<number, number>();
  for (const length of lengths) if (length > 0) counts.set(length, (counts.get(length) ?? 0) + 1);
  return [...counts].map(([length, count]) => ({ length, count })).sort((a, b) => b.length - a.length);
}

export interface Cover {
  /** One a line; null: there is none. */
  readonly layouts: readonly LineLayout[] | null;
  /** Steps of work done. */
  readonly work: number;
  /** The work allowed ran out before the answer was known. */
  readonly cut: boolean;
}

interface Labels {
  /** Slots taken that are no shorter than each length, one after another. */
  readonly taken: (readonly number[])[];
  readonly begin: number[];
  readonly place: number[];
  readonly before: number[];
  readonly splice: number[];
}

/** What is kept of the ways to one place. */
interface Way {
  readonly taken: readonly number[];
  readonly begin: number;
  readonly before: number;
  readonly splice: number;
}

/** @param slots  longest first, no two of a length */
export function cover(lines: readonly Prepared[], slots: readonly Slots[], most: number): Cover {
  const none: Cover = { layouts: null, work: 0, cut: false };
  if (slots.length === 0) return none;
  /** Slots no shorter than each length. */
  const may: number[] = [];
  for (const { count } of slots) may.push((may.at(-1) ?? 0) + count);

  let work = 0;
  const labels: Labels = { taken: [], begin: [], place: [], before: [], splice: [] };
  const ways: Way[] = [];
  const offer = (way: Way) => {
    work += ways.length;
    for (const known of ways) if (isNoWorse(known, way)) return;
    let kept = 0;
    for (const known of ways) if (!isNoWorse(way, known)) ways[kept++] = known;
    ways.length = kept;
    ways.push(way);
  };
  const keep = (place: number) => {
    for (const { taken, begin, before, splice } of ways) {
      labels.taken.push(taken);
      labels.begin.push(begin);
      labels.place.push(place);
      labels.before.push(before);
      labels.splice.push(splice);
    }
    ways.length = 0;
  };
  /** One slot more of the r-th length is taken; null when there is none left. */
  const take = (taken: readonly number[], r: number): readonly number[] | null => {
    for (let i = r; i < taken.length; i++) if ((taken[i] as number) >= (may[i] as number)) return null;
    return taken.map((n, i) => (i >= r ? n + 1 : n));
  };

  /** What the lines before have taken, with the label each ends at. */
  let begun: { readonly taken: readonly number[]; readonly label: number }[] = [
    { taken: slots.map(() => 0), label: -1 },
  ];
  for (const { problem, count, windows } of lines) {
    const { places, firstBy, lastFrom, channel, splice, stock } = problem;
    const [first, last] = channel;
    const span = Math.min(problem.maxSpan, 2 * stock + splice.length);
    const half = splice.length / 2;
    const longest = (slots[0] as Slots).length;
    let from = 0;
    let starts: number[] = [];
    for (let j = 1; j <= count; j++) {
      const [low, high] = windows[j] as readonly [number, number];
      const next: number[] = [];
      let near = from;
      for (let i = low; i <= high; i++) {
        const x = places[i] as number;
        next.push(labels.begin.length);
        if (j === 1) {
          if (x <= firstBy) {
            for (const { taken, label } of begun)
              offer({ taken, begin: first, before: label, splice: NOWHERE });
          }
          keep(i);
          continue;
        }
        while (near < from + starts.length - 1 && (places[near] as number) < x - span) near++;
        const begin = starts[near - from] ?? 0;
        const end = starts[Math.min(i - from, starts.length - 1)] ?? 0;
        for (let k = begin; k < end; k++) {
          if (++work > most) return { layouts: null, work, cut: true };
          const before = places[labels.place[k] as number] as number;
          if (leavesOut(problem, before, x)) continue;
          const at = labels.begin[k] as number;
          const taken = labels.taken[k] as readonly number[];
          if (j === count) {
            if (x < lastFrom) continue;
            for (let r = slots.length - 1; r >= 0; r--) {
              if (last - at > (slots[r] as Slots).length) continue;
              const now = take(taken, r);
              if (now === null) continue;
              offer({ taken: now, begin: 0, before: k, splice: NOWHERE });
              break;
            }
            continue;
          }
          if (last - at <= longest || at + longest + splice.before >= x + half) {
            offer({ taken, begin: at, before: k, splice: NOWHERE });
          }
          if (j === 2) continue;
          let done = NOWHERE;
          for (let r = slots.length - 1; r >= 0; r--) {
            const s = lastSplice(splice, before, x, at + (slots[r] as Slots).length + splice.before);
            if (s <= done) continue;
            const now = take(taken, r);
            if (now === null) continue;
            done = s;
            offer({ taken: now, begin: s + splice.behind, before: k, splice: s });
          }
        }
        keep(i);
      }
      next.push(labels.begin.length);
      starts = next;
      from = low;
    }
    begun = [];
    for (let k = starts[0] ?? 0; k < labels.begin.length; k++) {
      offer({ taken: labels.taken[k] as readonly number[], begin: 0, before: k, splice: NOWHERE });
    }
    for (const { taken, before } of ways) begun.push({ taken, label: before });
    ways.length = 0;
    if (begun.length === 0) return { ...none, work };
  }
  return { layouts: trace(lines, labels, begun[0]?.label ?? -1), work, cut: false };
}

function isNoWorse(a: Way, b: Way): boolean {
  if (a.begin < b.begin) return false;
  for (let i = 0; i < a.taken.length; i++) if ((a.taken[i] as number) > (b.taken[i] as number)) return false;
  return true;
}

/** Back from the last support of the last line to the first of the first. */
function trace(lines: readonly Prepared[], labels: Labels, end: number): readonly LineLayout[] {
  const layouts: LineLayout[] = [];
  let k = end;
  for (const { problem, count } of lines.toReversed()) {
    const supports: number[] = [];
    const splices: number[] = [];
    for (let j = 0; j < count; j++) {
      supports.unshift(problem.places[labels.place[k] as number] as number);
      const at = labels.splice[k] as number;
      if (at !== NOWHERE) splices.unshift(at);
      k = labels.before[k] as number;
    }
    layouts.unshift({ supports, splices, cuts: cutsOf(problem, splices) });
  }
  return layouts;
}
