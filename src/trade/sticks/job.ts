/**
 * The job in whole units. A piece on a bar costs its length and one kerf, and the bar has its length and one kerf to
 * give: n pieces then fit exactly when their lengths and n - 1 kerfs fit.
 */
import { type Fault, GivenError } from '../given.ts';
import { REUSABLE } from '../habits.ts';
import { formatLength, inches, TICKS_PER_INCH, ticks } from '../length.ts';
import type { SticksGiven, Wanted } from './types.ts';

/** Bars of one length that stand side by side. */
export interface Bar {
  /** In units. */
  readonly length: number;
  /** Length and one kerf: what the sizes on it may add up to. */
  readonly room: number;
  /** How many there are; Infinity when there is no end of them. */
  readonly count: number;
  readonly offcut: boolean;
  /** In ticks. */
  readonly ticks: number;
}

/** Pieces of one length. */
export interface Kind {
  /** Length and one kerf, in units. */
  readonly size: number;
  readonly count: number;
  /** In ticks. */
  readonly ticks: number;
  readonly pieces: readonly Wanted[];
}

export interface Job {
  /** Ticks in one unit. */
  readonly grain: number;
  /** Whether pieces and kerf were rounded up to 1/64 in because the exact units would be too fine. */
  readonly rounded: boolean;
  /** Whether several stock lengths or off-cuts were listed; else the bound counts bars. */
  readonly several: boolean;
  /** In units. */
  readonly kerf: number;
  readonly kerfTicks: number;
  readonly reusableTicks: number;
  /** Off-cuts first, short before long, then new stock, short before long. */
  readonly bars: readonly Bar[];
  /** Longest first. */
  readonly kinds: readonly Kind[];
}

/** Above this many units a bar the search would be slow. */
const MOST_UNITS = 200_000;
/** More pieces than any job of the trade; a slip of the finger is refused instead of searched for. */
const MOST_PIECES = 100_000;
const SIXTY_FOURTH = TICKS_PER_INCH / 64;

/**
 * @param lean  where lengths are rounded: pieces and kerf down and bars up, so that no plan of the true lengths is
 *              missed; what is proven of that job is proven of the true one (`honest.ts`)
 * @throws {GivenError} a piece that is longer than every bar; more pieces than can be cut
 */
export function jobOf(given: SticksGiven, lean = false): Job {
  const { stock, offcuts = [], pieces, kerf, minReusable = REUSABLE.length } = given;
  refuse(given);
  const bars = [
    ...together(offcuts.map((o) => ({ ...o, offcut: true }))),
    ...together(
      stock.map(({ length, count = Number.POSITIVE_INFINITY }) => ({ length, count, offcut: false })),
    ),
  ];
  const kinds = new Map<number, Wanted[]>();
  for (const piece of pieces) kinds.set(piece.length, [...(kinds.get(piece.length) ?? []), piece]);
  const longest = Math.max(...bars.map((b) => b.length));
  const exact = [kerf, ...bars.map((b) => b.length), ...kinds.keys()].reduce(divisor, 0);
  const rounded = longest / exact > MOST_UNITS;
  const grain = rounded ? SIXTY_FOURTH : exact;
  const [up, down] = lean ? [Math.floor, Math.ceil] : [Math.ceil, Math.floor];
  // A piece that takes a whole bar still does after rounding: nothing else fits beside it either way.
  const most = down(longest / grain);
  const unitKerf = up(kerf / grain);
  return {
    grain,
    rounded,
    several: stock.length > 1 || offcuts.length > 0,
    kerf: unitKerf,
    kerfTicks: kerf,
    reusableTicks: minReusable,
    bars: bars.map(({ length, count, offcut }) => {
      const whole = down(length / grain);
      // Shorter than the longest by less than a unit: what takes the whole of the longest must not seem to fit here.
      const units = !lean && length < longest && whole === most ? whole - 1 : whole;
      return { length: units, room: units + unitKerf, count, offcut, ticks: length };
    }),
    kinds: [...kinds]
      .map(([ticks, wanted]) => ({
        ticks,
        size: Math.min(up(ticks / grain), Math.max(most, 1)) + unitKerf,
        count: wanted.reduce((n, w) => n + w.count, 0),
        pieces: wanted,
      }))
      .sort((a, b) => b.ticks - a.ticks),
  };
}

function refuse({ stock, offcuts = [], pieces }: SticksGiven): void {
  const longest = Math.max(...[...stock, ...offcuts].map((b) => b.length));
  const faults: Fault[] = pieces.flatMap(({ length }, i) =>
    length <= longest
      ? []
      : [
          {
            field: `pieces[${i}].length`,
            value: inches(length),
            message: `this piece is longer than all stock and off-cuts (${formatLength(ticks(longest), 64)})`,
            todo: 'splice it from shorter pieces, or give longer stock',
          },
        ],
  );
  const count = pieces.reduce((n, p) => n + p.count, 0);
  if (count > MOST_PIECES)
    faults.push({
      field: 'pieces',
      value: count,
      message: `these are more than ${MOST_PIECES} pieces`,
      todo: 'check the counts, or part the job',
    });
  if (faults.length > 0) throw new GivenError(faults);
}

interface Lengths {
  readonly length: number;
  readonly count: number;
  readonly offcut: boolean;
}

/** Bars of one length as one entry, short before long; also those that there are none of. */
function together(bars: readonly Lengths[]): Lengths[] {
  const merged = new Map<number, Lengths>();
  for (const bar of bars) {
    merged.set(bar.length, { ...bar, count: bar.count + (merged.get(bar.length)?.count ?? 0) });
  }
  return [...merged.values()].sort((a, b) => a.length - b.length);
}

export function divisor(a: number, b: number): number {
  let [x, y] = [a, b];
  while (y !== 0) [x, y] = [y, x % y];
  return x;
}
