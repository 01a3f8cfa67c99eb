/**
 * Least cost of columns that cover every row: a linear programme with few rows, solved by the primal simplex method
 * with the inverse of the basis at hand. Rows are wants (at least so much) and limits (at most so much). Columns may be
 * added at any time; the prices of the rows say which are worth it.
 */

/** A column by its rows and what it puts into each: row, amount, row, amount … */
export interface Column {
  readonly cost: number;
  readonly entries: readonly number[];
}

/** Cost of leaving one want open: dearer than any real column. */
const OPEN = 1000;
const EPS = 1e-9;
/** After so many exchanges the inverse is made anew, so that rounding does not pile up. */
const REFRESH = 150;

export class Simplex {
  readonly #rows: number;
  readonly #wants: number;
  readonly #rhs: Float64Array;
  readonly #columns: Column[] = [];
  /** By row: a column from 0; -1 - i the slack of row i; OPEN_BASE - i the open want of row i. */
  readonly #basis: Int32Array;
  #inverse: Float64Array;
  #x: Float64Array;
  readonly prices: Float64Array;
  #exchanges = 0;
  readonly #open: number;

  /**
   * @param wants  at least so much, from 0
   * @param limits  at most so much, from 0
   * @param open  cost of one want left open
   */
  constructor(wants: readonly number[], limits: readonly number[], open = OPEN) {
    const n = wants.length + limits.length;
    this.#rows = n;
    this.#wants = wants.length;
    this.#open = open;
    this.#rhs = Float64Array.from([...wants, ...limits]);
    this.#basis = Int32Array.from({ length: n }, (_, i) => (i < wants.length ? OPEN_BASE - i : -1 - i));
    this.#inverse = new Float64Array(n * n);
    for (let i = 0; i < n; i++) this.#inverse[i * n + i] = 1;
    this.#x = this.#rhs.slice();
    this.prices = Float64Array.from({ length: n }, (_, i) => (i < wants.length ? open : 0));
  }

  /** @returns the place of the column */
  add(column: Column): number {
    this.#columns.push(column);
    return this.#columns.length - 1;
  }

  get columns(): readonly Column[] {
    return this.#columns;
  }

  reducedCost({ cost, entries }: Column): number {
    let reduced = cost;
    for (let k = 0; k < entries.length; k += 2)
      reduced -= (entries[k + 1] as number) * (this.prices[entries[k] as number] as number);
    return reduced;
  }

  /** Goes on until no column at hand lowers the cost. @returns false when it was given up */
  optimise(): boolean {
    let stalled = 0;
    for (let turn = 0; turn < 50 * (this.#rows + 20) + this.#columns.length; turn++) {
      const entering = this.#entering(stalled > 30);
      if (entering === undefined) return true;
      const step = this.#exchange(entering);
      if (step < 0) return false;
      stalled = step < 1e-12 ? stalled + 1 : 0;
    }
    return false;
  }

  /** The code of a column, slack or surplus that lowers the cost. */
  #entering(first: boolean): number | undefined {
    let least = -EPS * 10;
    let entering: number | undefined;
    for (let i = 0; i < this.#rows; i++) {
      const price = this.prices[i] as number;
      const reduced = i < this.#wants ? price : -price;
      if (reduced < least) {
        least = reduced;
        entering = -1 - i;
      }
    }
    if (first && entering !== undefined) return entering;
    for (let j = 0; j < this.#columns.length; j++) {
      const reduced = this.reducedCost(this.#columns[j] as Column);
      if (reduced < least) {
        least = reduced;
        entering = j;
        if (first) return j;
      }
    }
    return entering;
  }

  #entries(code: number): readonly number[] {
    if (code >= 0) return (this.#columns[code] as Column).entries;
    const row = -1 - code;
    return [row, row < this.#wants ? -1 : 1];
  }

  #exchange(entering: number): number {
    const n = this.#rows;
    const inverse = this.#inverse;
    const x = this.#x;
    const entries = this.#entries(entering);
    const d = new Float64Array(n);
    for (let k = 0; k < entries.length; k += 2) {
      const row = entries[k] as number;
      const amount = entries[k + 1] as number;
      for (let i = 0; i < n; i++) d[i] = (d[i] as number) + amount * (inverse[i * n + row] as number);
    }
    let leaving = -1;
    let step = Number.POSITIVE_INFINITY;
    for (let i = 0; i < n; i++) {
      const di = d[i] as number;
      if (di <= 1e-8) continue;
      const ratio = Math.max(0, x[i] as number) / di;
      if (ratio < step - 1e-10 || (ratio < step + 1e-10 && di > (d[leaving] as number))) {
        step = Math.min(step, ratio);
        leaving = i;
      }
    }
    if (leaving < 0) return -1;
    const cost = entering >= 0 ? (this.#columns[entering] as Column).cost : 0;
    const reduced = entering >= 0 ? this.reducedCost({ cost, entries }) : this.#slackCost(entering);
    this.#pivot(leaving, d, step);
    this.#basis[leaving] = entering;
    const at = leaving * n;
    for (let k = 0; k < n; k++)
      this.prices[k] = (this.prices[k] as number) + reduced * (this.#inverse[at + k] as number);
    this.#exchanges++;
    if (this.#exchanges % REFRESH === 0) this.#refresh();
    return step;
  }

  #slackCost(code: number): number {
    const row = -1 - code;
    const price = this.prices[row] as number;
    return row < this.#wants ? price : -price;
  }

  #pivot(leaving: number, d: Float64Array, step: number): void {
    const n = this.#rows;
    const inverse = this.#inverse;
    const x = this.#x;
    const at = leaving * n;
    const pivot = d[leaving] as number;
    for (let k = 0; k < n; k++) inverse[at + k] = (inverse[at + k] as number) / pivot;
    for (let i = 0; i < n; i++) {
      const di = d[i] as number;
      if (i === leaving || di === 0) continue;
      x[i] = (x[i] as number) - step * di;
      const to = i * n;
      for (let k = 0; k < n; k++)
        inverse[to + k] = (inverse[to + k] as number) - di * (inverse[at + k] as number);
    }
    x[leaving] = step;
  }

  /** The inverse, the amounts and the prices anew from the basis. */
  #refresh(): void {
    const n = this.#rows;
    const a = new Float64Array(n * n);
    for (let r = 0; r < n; r++) {
      const code = this.#basis[r] as number;
      const entries = code <= OPEN_BASE ? [OPEN_BASE - code, 1] : this.#entries(code);
      for (let k = 0; k < entries.length; k += 2)
        a[(entries[k] as number) * n + r] = entries[k + 1] as number;
    }
    const inverse = inverted(a, n);
    if (inverse === undefined) return;
    this.#inverse = inverse;
    for (let i = 0; i < n; i++) {
      let sum = 0;
      for (let k = 0; k < n; k++) sum += (inverse[i * n + k] as number) * (this.#rhs[k] as number);
      this.#x[i] = sum;
    }
    this.prices.fill(0);
    for (let r = 0; r < n; r++) {
      const cost = this.#costOf(this.#basis[r] as number);
      if (cost === 0) continue;
      for (let k = 0; k < n; k++)
        this.prices[k] = (this.prices[k] as number) + cost * (inverse[r * n + k] as number);
    }
  }

  #costOf(code: number): number {
    if (code <= OPEN_BASE) return this.#open;
    return code >= 0 ? (this.#columns[code] as Column).cost : 0;
  }

  get cost(): number {
    let sum = 0;
    for (let r = 0; r < this.#rows; r++)
      sum += this.#costOf(this.#basis[r] as number) * (this.#x[r] as number);
    return sum;
  }

  /** How much of the wants is left open. */
  get left(): number {
    let sum = 0;
    for (let r = 0; r < this.#rows; r++)
      if ((this.#basis[r] as number) <= OPEN_BASE) sum += this.#x[r] as number;
    return sum;
  }

  /** Columns in use with their amounts. */
  used(): readonly (readonly [column: number, amount: number])[] {
    const used: [number, number][] = [];
    for (let r = 0; r < this.#rows; r++) {
      const code = this.#basis[r] as number;
      if (code >= 0 && (this.#x[r] as number) > EPS) used.push([code, this.#x[r] as number]);
    }
    return used;
  }
}

const OPEN_BASE = -1_000_000;

/** The inverse of a matrix by Gauss and Jordan; undefined when it has none. */
function inverted(a: Float64Array, n: number): Float64Array | undefined {
  const b = new Float64Array(n * n);
  for (let i = 0; i < n; i++) b[i * n + i] = 1;
  for (let c = 0; c < n; c++) {
    let pivot = c;
    for (let r = c + 1; r < n; r++)
      if (Math.abs(a[r * n + c] as number) > Math.abs(a[pivot * n + c] as number)) pivot = r;
    const p = a[pivot * n + c] as number;
    if (Math.abs(p) < 1e-11) return undefined;
    if (pivot !== c) swapRows(a, b, n, pivot, c);
    for (let k = 0; k < n; k++) {
      a[c * n + k] = (a[c * n + k] as number) / p;
      b[c * n + k] = (b[c * n + k] as number) / p;
    }
    for (let r = 0; r < n; r++) {
      const f = a[r * n + c] as number;
      if (r === c || f === 0) continue;
      for (let k = c; k < n; k++) a[r * n + k] = (a[r * n + k] as number) - f * (a[c * n + k] as number);
      for (let k = 0; k < n; k++) b[r * n + k] = (b[r * n + k] as number) - f * (b[c * n + k] as number);
    }
  }
  return b;
}

function swapRows(a: Float64Array, b: Float64Array, n: number, r: number, s: number): void {
  for (const m of [a, b]) {
    for (let k = 0; k < n; k++) {
      const t = m[r * n + k] as number;
      m[r * n + k] = m[s * n + k] as number;
      m[s * n + k] = t;
    }
  }
}
