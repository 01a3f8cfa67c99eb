import { fromInches, type Ticks } from '../../../src/trade/length.ts';
import type { SticksGiven } from '../../../src/trade/sticks/types.ts';

/** The five numbers of a plan: new stock, from off-cuts, longest reusable, set-ups, stop settings; lengths in ticks. */
export type Five = readonly [number, number, number, number, number];

interface Opened {
  readonly entry: number;
  readonly length: Ticks;
  readonly offcut: boolean;
  readonly pieces: number[];
}

/**
 * The best five numbers of all plans, by putting every piece onto every bar; null when no plan holds them. For a
 * handful of pieces; shares no code with the search.
 */
export function bestByTrying({ stock, offcuts = [], pieces, kerf, minReusable }: SticksGiven): Five | null {
  const list = pieces
    .flatMap(({ length, count }) => new Array<number>(count).fill(length))
    .sort((a, b) => b - a);
  const entries = [
    ...stock.map((s) => ({ length: s.length, count: s.count ?? list.length, offcut: false })),
    ...offcuts.map((o) => ({ length: o.length, count: o.count, offcut: true })),
  ];
  const least = minReusable ?? fromInches(12);
  const opened: Opened[] = [];
  let best: Five | null = null;

  const finish = (): void => {
    const patterns = new Map(opened.map(({ pieces: cut }) => [cut.join(), new Set(cut).size]));
    const lefts = opened
      .map((bar) => bar.length - bar.pieces.reduce((sum, p) => sum + p + kerf, 0))
      .filter((left) => left >= least);
    const five: Five = [
      sum(opened.filter((b) => !b.offcut).map((b) => b.length)),
      sum(opened.filter((b) => b.offcut).flatMap((b) => b.pieces)),
      Math.max(0, ...lefts),
      patterns.size,
      sum([...patterns.values()]),
    ];
    if (best === null || isBetter(five, best)) best = five;
  };
  const put = (index: number): void => {
    const piece = list[index];
    if (piece === undefined) {
      finish();
      return;
    }
    for (const bar of opened) {
      if (sum(bar.pieces) + piece + kerf * bar.pieces.length > bar.length) continue;
      bar.pieces.push(piece);
      put(index + 1);
      bar.pieces.pop();
    }
    entries.forEach(({ length, count, offcut }, entry) => {
      if (piece > length || opened.filter((b) => b.entry === entry).length >= count) return;
      opened.push({ entry, length, offcut, pieces: [piece] });
      put(index + 1);
      opened.pop();
    });
  };
  put(0);
  return best;
}

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);

/** Less stock, more from off-cuts, longer remainder, fewer set-ups, fewer settings. */
function isBetter(a: Five, b: Five): boolean {
  const [first] = [a[0] - b[0], b[1] - a[1], b[2] - a[2], a[3] - b[3], a[4] - b[4]].filter((d) => d !== 0);
  return first !== undefined && first < 0;
}
