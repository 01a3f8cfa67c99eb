/** The inverse of a square matrix by Gauss and Jordan, rows of its largest entries first; undefined when it has none. `a` is used up. */
export function inverted(a: Float64Array[]): Float64Array[] | undefined {
  const n = a.length;
  const b = a.map((_, i) => {
    const row = new Float64Array(n);
    row[i] = 1;
    return row;
  });
  for (let c = 0; c < n; c++) {
    let pivot = c;
    const size = (r: number): number => Math.abs((a[r] as Float64Array)[c] as number);
    for (let r = c + 1; r < n; r++) if (size(r) > size(pivot)) pivot = r;
    if (size(pivot) < 1e-11) return undefined;
    swap(a, pivot, c);
    swap(b, pivot, c);
    const [own, made] = [a[c] as Float64Array, b[c] as Float64Array];
    const p = own[c] as number;
    for (let k = 0; k < n; k++) {
      own[k] = (own[k] as number) / p;
      made[k] = (made[k] as number) / p;
    }
    for (let r = 0; r < n; r++) {
      const row = a[r] as Float64Array;
      const f = row[c] as number;
      if (r === c || f === 0) continue;
      const other = b[r] as Float64Array;
      for (let k = c; k < n; k++) row[k] = (row[k] as number) - f * (own[k] as number);
      for (let k = 0; k < n; k++) other[k] = (other[k] as number) - f * (made[k] as number);
    }
  }
  return b;
}

function swap(rows: Float64Array[], i: number, j: number): void {
  const row = rows[i] as Float64Array;
  rows[i] = rows[j] as Float64Array;
  rows[j] = row;
}
