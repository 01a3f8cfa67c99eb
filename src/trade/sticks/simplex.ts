/**
 * Least cost of columns that cover every row: a linear programme with few rows, solved by the primal simplex method
 * with the inverse of the basis at hand. Rows are wants (at least so much) and limits (at most so much). Columns may be
 * added at any time; the prices of the rows say which are worth it.
 */
import { Columns } from './columns.ts';
import { inverted } from './inverse.ts';

/** Cost of leaving one want open: dearer than any real column. */
const OPEN = 1000;
/** Amounts and reduced costs nearer to 0 than this are 0. */
const EPS = 1e-9;
const WORTH = 1e-8;
/** Off by more than this, the inverse is made anew, so that rounding does not pile up. */
const DRIFT = 1e-7;
/**
 * Every row is given a hair more than it is, no two the same: exchanges that lead nowhere, in which the method may go in
 * circles, are rare then. Amounts and cost are handed out without it.
 */
const HAIR = 1e-5;
/** A reach beyond this says nothing any more: all are set back. */
const FARTHEST = 1e6;
/** Codes of the basis at and below this stand for wants left open; from here to -1 for slacks; from 0 for columns. */
const OPEN_BASE = -1_000_000;

export class Simplex {
  readonly #rows: number;
  readonly #wants: number;
  readonly #given: Float64Array;
  readonly #rhs: Float64Array;
  readonly #open: number;
  /** Rows before this one have no surplus. */
  readonly #firstSlack: number;
  readonly #columns = new Columns();
  readonly #basis: Int32Array;
  #inverse: Float64Array[];
  #x: Float64Array;
  readonly #slackWeights: Float64Array;
  readonly #d: Float64Array;
  /** Numbers gone through so far. */
  work = 0;
  /** What a little more of each row would cost. */
  readonly prices: Float64Array;

  /**
   * @param wants  at least so much, from 0
   * @param limits  at most so much, from 0
   * @param open  cost of one want left open
   * @param exactly  wants are met exactly, not exceeded
   */
  constructor(
    wants: readonly number[],
    limits: readonly number[],
    { open = OPEN, exactly = false }: { readonly open?: number; readonly exactly?: boolean } = {},
  ) {
    const n = wants.length + limits.length;
    this.#rows = n;
    this.#wants = wants.length;
    this.#open = open;
    this.#firstSlack = exactly ? wants.length : 0;
    this.#given = Float64Array.from([...wants, ...limits]);
    this.#rhs = this.#given.map((v, i) => v + HAIR * (1 + ((i * 0.618034) % 1)));
    this.#basis = Int32Array.from({ length: n }, (_, i) => (i < wants.length ? OPEN_BASE - i : -1 - i));
    this.#inverse = Array.from({ length: n }, (_, i) => {
      const row = new Float64Array(n);
      row[i] = 1;
      return row;
    });
    this.#x = this.#rhs.slice();
    this.#slackWeights = new Float64Array(n).fill(1);
    this.#d = new Float64Array(n);
    this.prices = Float64Array.from({ length: n }, (_, i) => (i < wants.length ? open : 0));
  }

  /**
   * @param entries  row, amount, row, amount …
   * @returns the place of the column
   */
  add(cost: number, entries: readonly number[]): number {
    return this.#columns.add(cost, entries);
  }

  /** Goes on until no column at hand lowers the cost. @returns false when it was given up */
  optimise(): boolean {
    let stalled = 0;
    for (let turn = 0; turn < 60 * (this.#rows + 20) + this.#columns.count; turn++) {
      const entering = this.#entering(stalled > 200);
      if (entering === undefined) {
        if (this.#drift() < DRIFT) return true;
        this.#refresh();
        if (this.#entering(false) === undefined) return true;
        continue;
      }
      const step = this.#exchange(entering);
      if (step < 0) return false;
      stalled = step < 1e-12 ? stalled + 1 : 0;
    }
    return false;
  }

  /** The code of a column, slack or surplus that lowers the cost most for its reach (Harris, Mathematical Programming 5, 1973). */
  #entering(first: boolean): number | undefined {
    let worth = 0;
    let entering: number | undefined;
    for (let i = this.#firstSlack; i < this.#rows; i++) {
      const reduced = this.#slackCost(i);
      if (reduced >= -WORTH) continue;
      if (first) return -1 - i;
      const w = (reduced * reduced) / (this.#slackWeights[i] as number);
      if (w > worth) {
        worth = w;
        entering = -1 - i;
      }
    }
    const columns = this.#columns;
    for (let j = 0; j < columns.count; j++) {
      const reduced = columns.reducedCost(j, this.prices);
      if (reduced >= -WORTH) continue;
      if (first) return j;
      const w = (reduced * reduced) / (columns.weights[j] as number);
      if (w > worth) {
        worth = w;
        entering = j;
      }
    }
    return entering;
  }

  /** Reduced cost of the slack of a limit, or the surplus of a want. */
  #slackCost(row: number): number {
    const price = this.prices[row] as number;
    return row < this.#wants ? price : -price;
  }

  /** Row and amount by turns of whatever stands in the basis. */
  #entries(code: number): readonly number[] {
    if (code >= 0) return this.#columns.entries(code);
    if (code <= OPEN_BASE) return [OPEN_BASE - code, 1];
    const row = -1 - code;
    return [row, row < this.#wants ? -1 : 1];
  }

  /** Takes a column into the basis. @returns how far it went; below 0 when nothing holds it back */
  #exchange(entering: number): number {
    const n = this.#rows;
    this.work += n * n + 8 * this.#columns.count;
    const d = this.#d.fill(0);
    const entries = this.#entries(entering);
    for (let i = 0; i < n; i++) {
      const row = this.#inverse[i] as Float64Array;
      let sum = 0;
      for (let k = 0; k < entries.length; k += 2)
        sum += (entries[k + 1] as number) * (row[entries[k] as number] as number);
      d[i] = sum;
    }
    const leaving = this.#leaving(d);
    if (leaving < 0) return -1;
    const step = Math.max(0, this.#x[leaving] as number) / (d[leaving] as number);
    const reduced =
      entering >= 0 ? this.#columns.reducedCost(entering, this.prices) : this.#slackCost(-1 - entering);
    this.#reweigh(entering, leaving, d[leaving] as number);
    this.#pivot(leaving, d, step);
    this.#basis[leaving] = entering;
    const row = this.#inverse[leaving] as Float64Array;
    for (let k = 0; k < n; k++) this.prices[k] = (this.prices[k] as number) + reduced * (row[k] as number);
    return step;
  }

  /** The row that comes to 0 first; of several the one that is divided by most. */
  #leaving(d: Float64Array): number {
    let leaving = -1;
    let step = Number.POSITIVE_INFINITY;
    for (let i = 0; i < this.#rows; i++) {
      const di = d[i] as number;
      if (di <= 1e-8) continue;
      const ratio = Math.max(0, this.#x[i] as number) / di;
      if (ratio < step - 1e-10 || (ratio < step + 1e-10 && di > (d[leaving] as number))) {
        step = Math.min(step, ratio);
        leaving = i;
      }
    }
    return leaving;
  }

  /** The reach of every column after an exchange, reckoned before it. */
  #reweigh(entering: number, leaving: number, pivot: number): void {
    const row = this.#inverse[leaving] as Float64Array;
    const { weights } = this.#columns;
    const own = entering >= 0 ? (weights[entering] as number) : (this.#slackWeights[-1 - entering] as number);
    if (own > FARTHEST) {
      this.#slackWeights.fill(1);
      weights.fill(1);
      return;
    }
    const scale = own / (pivot * pivot);
    this.#columns.reweigh(row, scale);
    for (let i = 0; i < this.#rows; i++) {
      const a = row[i] as number;
      const w = a * a * scale;
      if (w > (this.#slackWeights[i] as number)) this.#slackWeights[i] = w;
    }
    const out = this.#basis[leaving] as number;
    const w = Math.max(scale, 1);
    if (out >= 0) weights[out] = w;
    else if (out > OPEN_BASE) this.#slackWeights[-1 - out] = w;
  }

  #pivot(leaving: number, d: Float64Array, step: number): void {
    const n = this.#rows;
    const x = this.#x;
    const pivot = d[leaving] as number;
    const own = this.#inverse[leaving] as Float64Array;
    for (let k = 0; k < n; k++) own[k] = (own[k] as number) / pivot;
    for (let i = 0; i < n; i++) {
      const di = d[i] as number;
      if (i === leaving || (di < 1e-14 && di > -1e-14)) continue;
      x[i] = (x[i] as number) - step * di;
      subtract(this.#inverse[i] as Float64Array, own, di);
    }
    x[leaving] = step;
  }

  /** How far amounts and prices have come off what the basis makes them. */
  #drift(): number {
    const rest = this.#rhs.slice();
    let most = 0;
    for (let r = 0; r < this.#rows; r++) {
      const code = this.#basis[r] as number;
      const entries = this.#entries(code);
      let reduced = this.#costOf(code);
      for (let k = 0; k < entries.length; k += 2) {
        const row = entries[k] as number;
        const amount = entries[k + 1] as number;
        rest[row] = (rest[row] as number) - amount * (this.#x[r] as number);
        reduced -= amount * (this.prices[row] as number);
      }
      most = Math.max(most, Math.abs(reduced));
    }
    for (const left of rest) most = Math.max(most, Math.abs(left));
    return most;
  }

  /** The inverse, the amounts and the prices anew from the basis. */
  #refresh(): void {
    const n = this.#rows;
    const a = Array.from({ length: n }, () => new Float64Array(n));
    for (let r = 0; r < n; r++) {
      const entries = this.#entries(this.#basis[r] as number);
      for (let k = 0; k < entries.length; k += 2)
        (a[entries[k] as number] as Float64Array)[r] = entries[k + 1] as number;
    }
    const inverse = inverted(a);
    if (inverse === undefined) return;
    this.#inverse = inverse;
    this.#x = this.#amounts(this.#rhs);
    this.prices.fill(0);
    for (let r = 0; r < n; r++) {
      const cost = this.#costOf(this.#basis[r] as number);
      if (cost !== 0) subtract(this.prices, inverse[r] as Float64Array, -cost);
    }
  }

  #costOf(code: number): number {
    if (code <= OPEN_BASE) return this.#open;
    return code >= 0 ? (this.#columns.costs[code] as number) : 0;
  }

  /** The amount of each row's column. */
  #amounts(rhs: Float64Array): Float64Array {
    return Float64Array.from(this.#inverse, (row) =>
      row.reduce((sum, v, k) => sum + v * (rhs[k] as number), 0),
    );
  }

  get cost(): number {
    return this.prices.reduce((sum, price, r) => sum + price * (this.#given[r] as number), 0);
  }

  reducedCost(column: number): number {
    return this.#columns.reducedCost(column, this.prices);
  }

  /** How much of the wants is left open. */
  get left(): number {
    return this.#amounts(this.#given).reduce(
      (sum, amount, r) => sum + ((this.#basis[r] as number) <= OPEN_BASE ? amount : 0),
      0,
    );
  }

  /** Columns in use with their amounts. */
  used(): readonly (readonly [column: number, amount: number])[] {
    return [...this.#amounts(this.#given)]
      .map((amount, r) => [this.#basis[r] as number, amount] as const)
      .filter(([code, amount]) => code >= 0 && amount > EPS);
  }
}

function subtract(from: Float64Array, row: Float64Array, times: number): void {
  for (let k = 0; k < from.length; k++) from[k] = (from[k] as number) - times * (row[k] as number);
}
