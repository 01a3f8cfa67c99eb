/**
 * A line laid into what is left of stock lengths that other pieces are cut from: each room takes one piece, and fresh
 * lengths are opened as few as need be. As in cheapest.ts, but a label holds which rooms are taken.
 */
import type { Prepared } from './cheapest.ts';
import { cutsOf, type LineLayout } from './line.ts';
import { lastSplice, NOWHERE } from './spliceAt.ts';

/** Rooms of one size. The first entry is the fresh stock length; its count is the most that may be opened. */
export interface Room {
  readonly length: number;
  readonly count: number;
}

export interface Filled {
  readonly layout: LineLayout;
  /** For each piece along the line, which entry of `rooms` it takes. */
  readonly taken: readonly number[];
}

/** More labels than this at one place are not followed up: the search may miss a way, never find a wrong one. */
const MOST_LABELS = 64;

export function fill({ problem, count, windows }: Prepared, rooms: readonly Room[]): Filled | null {
  const { places, firstBy, lastFrom, channel, splice, stock } = problem;
  const [first, last] = channel;
  const span = Math.min(problem.maxSpan, 2 * stock + splice.length);
  const half = splice.length / 2;
  // A label's code counts the rooms taken, a digit for each entry.
  const unit: number[] = [];
  let codes = 1;
  for (const room of rooms) {
    unit.push(codes);
    codes *= room.count + 1;
  }
  const takes = (code: number, r: number) =>
    Math.floor(code / (unit[r] as number)) % ((rooms[r] as Room).count + 1);
  const free = (code: number, r: number) => takes(code, r) < (rooms[r] as Room).count;
  const fresh = (code: number) => takes(code, 0);
  const longest = (code: number) => {
    for (let r = 0; r < rooms.length; r++) if (free(code, r)) return (rooms[r] as Room).length;
    return 0;
  };
  /** Channel that can still be cut, were every room filled to the end. */
  const left = (code: number) =>
    rooms.reduce((sum, { length, count: n }, r) => sum + (n - takes(code, r)) * length, 0);

  const labelCode: number[] = [];
  const labelBegin: number[] = [];
  const labelPlace: number[] = [];
  const labelBefore: number[] = [];
  const labelSplice: number[] = [];
  const labelRoom: number[] = [];
  const best = new Map<number, { begin: number; before: number; splice: number; room: number }>();
  const offer = (code: number, begin: number, before: number, at: number, room: number) => {
    const known = best.get(code);
    if (known === undefined || known.begin < begin) best.set(code, { begin, before, splice: at, room });
  };
  const keep = (place: number) => {
    let kept = [...best];
    if (kept.length > MOST_LABELS) {
      kept = kept
        .sort(([a, x], [b, y]) => fresh(a) - fresh(b) || y.begin - x.begin || a - b)
        .slice(0, MOST_LABELS);
    }
    for (const [code, { begin, before, splice: at, room }] of kept) {
      labelCode.push(code);
      labelBegin.push(begin);
      labelPlace.push(place);
      labelBefore.push(before);
      labelSplice.push(at);
      labelRoom.push(room);
    }
    best.clear();
  };

  let from = 0;
  let starts: number[] = [];
  for (let j = 1; j <= count; j++) {
    const [begun, ended] = windows[j] as readonly [number, number];
    const next: number[] = [];
    let low = from;
    for (let i = begun; i <= ended; i++) {
      const x = places[i] as number;
      next.push(labelCode.length);
      if (j === 1) {
        if (x <= firstBy) offer(0, first, -1, NOWHERE, -1);
        keep(i);
        continue;
      }
      while (low < from + starts.length - 1 && (places[low] as number) < x - span) low++;
      const begin = starts[low - from] ?? 0;
      const end = starts[Math.min(i - from, starts.length - 1)] ?? 0;
      for (let k = begin; k < end; k++) {
        const code = labelCode[k] as number;
        const at = labelBegin[k] as number;
        if (j === count) {
          if (x < lastFrom) continue;
          for (let r = rooms.length - 1; r >= 0; r--) {
            if (!free(code, r) || last - at > (rooms[r] as Room).length) continue;
            offer(code + (unit[r] as number), at, k, NOWHERE, r);
            break;
          }
          continue;
        }
        if (at + longest(code) + splice.before >= Math.min(x + half, last)) {
          offer(code, at, k, NOWHERE, -1);
        }
        if (j === 2) continue;
        const before = places[labelPlace[k] as number] as number;
        for (let r = 0; r < rooms.length; r++) {
          if (!free(code, r)) continue;
          const s = lastSplice(splice, before, x, at + (rooms[r] as Room).length + splice.before);
          if (s === NOWHERE) break;
          const taken = code + (unit[r] as number);
          if (left(taken) >= last - s - splice.behind) offer(taken, s + splice.behind, k, s, r);
        }
      }
      keep(i);
    }
    next.push(labelCode.length);
    starts = next;
    from = begun;
  }

  let found = -1;
  for (let k = starts[0] ?? 0; k < labelCode.length; k++) {
    if (found < 0 || fresh(labelCode[k] as number) < fresh(labelCode[found] as number)) found = k;
  }
  if (found < 0) return null;
  const supports: number[] = [];
  const splices: number[] = [];
  const taken: number[] = [];
  for (let k = found; k >= 0; k = labelBefore[k] as number) {
    supports.push(places[labelPlace[k] as number] as number);
    const at = labelSplice[k] as number;
    if (at !== NOWHERE) splices.push(at);
    if ((labelRoom[k] as number) >= 0) taken.push(labelRoom[k] as number);
  }
  supports.reverse();
  splices.reverse();
  return { layout: { supports, splices, cuts: cutsOf(problem, splices) }, taken: taken.reverse() };
}
