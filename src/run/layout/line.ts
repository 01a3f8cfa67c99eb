/** One line as a problem of its own, and an answer to it. Everything is in ticks along the leg. */

/** How a straight splice stands: the tray's own sleeve. */
export interface SpliceRule {
  /** Of the sleeve. */
  readonly length: number;
  /** From the middle of the opening back to the channel before it, and on to the channel behind it. */
  readonly before: number;
  readonly behind: number;
  /** Farthest from its nearest support, as a share of the span. */
  readonly share: number;
  /** Splices stand at whole multiples of it. */
  readonly grain: number;
}

export interface LineProblem {
  /** Where a support may stand: rising, no two alike. */
  readonly places: readonly number[];
  /** The first support stands no farther than this, the last no nearer than that; infinite where no face asks for one. */
  readonly firstBy: number;
  readonly lastFrom: number;
  /** One support at least stands within; its ends bound `firstBy` and `lastFrom` too. */
  readonly must?: readonly [number, number] | undefined;
  /** Where the channel begins and ends; it may go into what is beyond the face. */
  readonly channel: readonly [number, number];
  readonly maxSpan: number;
  /** Longest piece. */
  readonly stock: number;
  readonly splice: SpliceRule;
}

export interface LineLayout {
  readonly supports: readonly number[];
  /** Middles of the openings. */
  readonly splices: readonly number[];
  /** Pieces to cut, along the line. */
  readonly cuts: readonly number[];
}

/** Whether two neighbouring supports would leave out where one must stand. */
export const leavesOut = ({ must }: LineProblem, before: number, x: number): boolean =>
  must !== undefined && before < must[0] && x > must[1];

/** Pieces that splices leave of a line's channel. */
export function cutsOf({ channel, splice }: LineProblem, splices: readonly number[]): readonly number[] {
  const begins = [channel[0], ...splices.map((s) => s + splice.behind)];
  const ends = [...splices.map((s) => s - splice.before), channel[1]];
  return begins.map((begin, i) => (ends[i] as number) - begin);
}

/** The same line travelled the other way. */
export function mirrored({
  places,
  firstBy,
  lastFrom,
  must,
  channel,
  splice,
  ...rest
}: LineProblem): LineProblem {
  return {
    ...rest,
    places: places.map((x) => -x).reverse(),
    firstBy: -lastFrom,
    lastFrom: -firstBy,
    must: must && [-must[1], -must[0]],
    channel: [-channel[1], -channel[0]],
    splice: { ...splice, before: splice.behind, behind: splice.before },
  };
}
