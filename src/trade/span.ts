/** How far apart the supports of a channel may stand. */

/** One row of a load table: the uniform load that a simple span of this length carries. */
export interface LoadRow {
  readonly spanFt: number;
  readonly lbPerFt: number;
}

/** Room for what a sum of decimals loses on its way. */
const HAIR = 1e-9;

/**
 * The longest listed span that carries a load, in feet; null when none does. Nothing is read between rows.
 * @param loadLbPerFt  uniform load, the channel's own weight included
 * @param pointLb      one weight at the middle of the span; at each span L it counts as 2P/L more of uniform load,
 *                     which makes the same moment
 */
export function spanByTable(table: readonly LoadRow[], loadLbPerFt: number, pointLb = 0): number | null {
  const carried = table.filter(
    ({ spanFt, lbPerFt }) => loadLbPerFt + (2 * pointLb) / spanFt <= lbPerFt + HAIR,
  );
  return carried.length === 0 ? null : Math.max(...carried.map((row) => row.spanFt));
}
