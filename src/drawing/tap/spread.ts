/**
 * Moves places along a lane until neighbours stand `pitch` apart, each as near to where it belongs as can be (least
 * squares: those that press on each other are pooled about their mean).
 *
 * @param wanted  in rising order
 */
export function spread(wanted: readonly number[], pitch: number): readonly number[] {
  const pools: { sum: number; count: number }[] = [];
  for (const [i, y] of wanted.entries()) {
    let pool = { sum: y - i * pitch, count: 1 };
    for (let last = pools.at(-1); last !== undefined && mean(last) > mean(pool); last = pools.at(-1)) {
      pool = { sum: last.sum + pool.sum, count: last.count + pool.count };
      pools.pop();
    }
    pools.push(pool);
  }
  const shifts = pools.flatMap((pool) => Array.from({ length: pool.count }, () => mean(pool)));
  return shifts.map((shift, i) => shift + i * pitch);
}

const mean = ({ sum, count }: { sum: number; count: number }) => sum / count;
