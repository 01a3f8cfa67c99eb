/**
 * The basis of a linear programme whose columns cover rows at least cost: its inverse, the amounts of its columns and
 * the prices of the rows. Rows are wants (at least so much, or exactly) and then limits (at most so much).
 */
import { Columns, longer } from './columns.ts';
import { inverted } from './inverse.ts';

/** Cost of leaving one want open: dearer than any real column. */
const OPEN = 1000;
/**
 * Every row is given a hair more than it is, no two the same: exchanges that lead nowhere, in which the method may go in
 * circles, are rare then. Amounts and cost are handed out without it.
 */
const HAIR = 1e-5;
/** Codes at and below this stand for wants left open; from here to -1 for slacks and surpluses; from 0 for columns. */
export const OPEN_BASE = -1_000_000;

export interface Rows {
  readonly wants: readonly number[];
  readonly limits: readonly number[];
  /** Cost of one want left open. */
  readonly open?: number | undefined;
  /** Wants are met exactly, not exceeded. */
  readonly exactly?: boolean | undefined;
}

export class Basis {
  readonly rows: number;
  readonly wants: number;
  /** Rows before this one have no surplus. */
  readonly firstSlack: number;
  readonly columns: Columns;
  /** What stands in each row, by its code. */
  readonly codes: Int32Array;
  /** What a little more of each row would cost. */
  readonly prices: Float64Array;
  inverse: Float64Array[];
  x: Float64Array;
  /** Columns that may not be used. */
  banned: Uint8Array;
  /** Columns that may, as far as they have been looked at. */
  #usable: number[] = [];
  #looked = 0;
  /** Numbers gone through so far. */
  work = 0;
  readonly #open: number;
  readonly #given: Float64Array;
  readonly #rhs: Float64Array;
  readonly #d: Float64Array;

  constructor(rows: Rows | Basis) {
    if (rows instanceof Basis) {
      this.rows = rows.rows;
      this.wants = rows.wants;
      this.firstSlack = rows.firstSlack;
      this.columns = rows.columns;
      this.codes = rows.codes.slice();
      this.prices = rows.prices.slice();
      this.inverse = rows.inverse.map((row) => row.slice());
      this.x = rows.x.slice();
      this.banned = rows.banned.slice();
      this.#usable = rows.usable().slice();
      this.#looked = rows.#looked;
      this.#open = rows.#open;
      this.#given = rows.#given.slice();
      this.#rhs = rows.#rhs.slice();
      this.#d = new Float64Array(rows.rows);
      return;
    }
    const { wants, limits, open = OPEN, exactly = false } = rows;
    const n = wants.length + limits.length;
    this.rows = n;
    this.wants = wants.length;
    this.firstSlack = exactly ? wants.length : 0;
    this.columns = new Columns();
    this.#open = open;
    this.#given = Float64Array.from([...wants, ...limits]);
    this.#rhs = this.#given.map((v, i) => v + HAIR * (1 + ((i * 0.618034) % 1)));
    this.codes = Int32Array.from({ length: n }, (_, i) => (i < wants.length ? OPEN_BASE - i : -1 - i));
    this.inverse = Array.from({ length: n }, (_, i) => unit(n, i));
    this.x = this.#rhs.slice();
    this.banned = new Uint8Array(256);
    this.#d = new Float64Array(n);
    this.prices = Float64Array.from({ length: n }, (_, i) => (i < wants.length ? open : 0));
  }

  /** Begins anew: every want open, every limit slack. */
  reset(): void {
    for (let i = 0; i < this.rows; i++) {
      this.codes[i] = i < this.wants ? OPEN_BASE - i : -1 - i;
      this.prices[i] = i < this.wants ? this.#open : 0;
    }
    this.inverse = this.inverse.map((_, i) => unit(this.rows, i));
    this.x = this.#rhs.slice();
  }

  ban(column: number): void {
    this.#mark(column);
    if (column < this.#looked) this.#usable = this.#usable.filter((c) => c !== column);
  }

  #mark(column: number): void {
    while (column >= this.banned.length)
      this.banned = longer(this.banned, new Uint8Array(2 * this.banned.length));
    this.banned[column] = 1;
  }

  /** Every column that may be used. */
  usable(): readonly number[] {
    for (; this.#looked < this.columns.count; this.#looked++)
      if (this.banned[this.#looked] !== 1) this.#usable.push(this.#looked);
    return this.#usable;
  }

  /** Bans what puts more into a row than the row still wants or allows. */
  banExcess(): void {
    this.#usable = this.usable().filter((column) => {
      if (this.banned[column] === 1) return false;
      if (!this.columns.exceeds(column, this.#given)) return true;
      this.#mark(column);
      return false;
    });
  }

  /** Takes a column out of the rows so many times: they want, or allow, that much less. */
  take(column: number, times: number): void {
    const entries = this.columns.entries(column);
    for (let k = 0; k < entries.length; k += 2) {
      const row = entries[k] as number;
      const less = times * (entries[k + 1] as number);
      this.#given[row] = (this.#given[row] as number) - less;
      this.#rhs[row] = (this.#rhs[row] as number) - less;
    }
    this.x = this.#amounts(this.#rhs);
  }

  costOf(code: number): number {
    if (code <= OPEN_BASE) return this.#open;
    return code >= 0 ? (this.columns.costs[code] as number) : 0;
  }

  /** Row and amount by turns. */
  entries(code: number): readonly number[] {
    if (code >= 0) return this.columns.entries(code);
    if (code <= OPEN_BASE) return [OPEN_BASE - code, 1];
    const row = -1 - code;
    return [row, row < this.wants ? -1 : 1];
  }

  reducedCost(code: number): number {
    if (code >= 0) return this.columns.reducedCost(code, this.prices);
    if (code <= OPEN_BASE) return this.#open - (this.prices[OPEN_BASE - code] as number);
    return this.slackCost(-1 - code);
  }

  /** Reduced cost of the slack of a limit, or the surplus of a want. */
  slackCost(row: number): number {
    const price = this.prices[row] as number;
    return row < this.wants ? price : -price;
  }

  /** How each amount falls when one of a column comes in. The list is used anew at every call. */
  falls(code: number): Float64Array {
    const d = this.#d;
    const entries = this.entries(code);
    this.work += this.rows * this.rows + 8 * this.#usable.length;
    for (let i = 0; i < this.rows; i++) {
      const row = this.inverse[i] as Float64Array;
      let sum = 0;
      for (let k = 0; k < entries.length; k += 2)
        sum += (entries[k + 1] as number) * (row[entries[k] as number] as number);
      d[i] = sum;
    }
    return d;
  }

  /** Puts a column in the place of another. `d` are its falls. */
  exchange(entering: number, leaving: number, d: Float64Array): void {
    const x = this.x;
    const pivot = d[leaving] as number;
    const step = (x[leaving] as number) / pivot;
    const reduced = this.reducedCost(entering);
    const own = this.inverse[leaving] as Float64Array;
    for (let k = 0; k < own.length; k++) own[k] = (own[k] as number) / pivot;
    for (let i = 0; i < this.rows; i++) {
      const di = d[i] as number;
      if (i === leaving || (di < 1e-14 && di > -1e-14)) continue;
      x[i] = (x[i] as number) - step * di;
      subtract(this.inverse[i] as Float64Array, own, di);
    }
    x[leaving] = step;
    this.codes[leaving] = entering;
    subtract(this.prices, own, -reduced);
  }

  /** How far amounts and prices have come off what the basis makes them. */
  drift(): number {
    const rest = this.#rhs.slice();
    let most = 0;
    for (let r = 0; r < this.rows; r++) {
      const code = this.codes[r] as number;
      const entries = this.entries(code);
      for (let k = 0; k < entries.length; k += 2) {
        const row = entries[k] as number;
        rest[row] = (rest[row] as number) - (entries[k + 1] as number) * (this.x[r] as number);
      }
      most = Math.max(most, Math.abs(this.reducedCost(code)));
    }
    for (const left of rest) most = Math.max(most, Math.abs(left));
    return most;
  }

  /** The inverse, the amounts and the prices anew. */
  refresh(): void {
    const n = this.rows;
    const a = Array.from({ length: n }, () => new Float64Array(n));
    for (let r = 0; r < n; r++) {
      const entries = this.entries(this.codes[r] as number);
      for (let k = 0; k < entries.length; k += 2)
        (a[entries[k] as number] as Float64Array)[r] = entries[k + 1] as number;
    }
    this.work += n * n * n;
    const inverse = inverted(a);
    if (inverse === undefined) return;
    this.inverse = inverse;
    this.x = this.#amounts(this.#rhs);
    this.prices.fill(0);
    for (let r = 0; r < n; r++) {
      const cost = this.costOf(this.codes[r] as number);
      if (cost !== 0) subtract(this.prices, inverse[r] as Float64Array, -cost);
    }
  }

  #amounts(rhs: Float64Array): Float64Array {
    return Float64Array.from(this.inverse, (row) => {
      let sum = 0;
      for (let k = 0; k < row.length; k++) sum += (row[k] as number) * (rhs[k] as number);
      return sum;
    });
  }

  /** The cost of what was given, without the hairs. */
  get cost(): number {
    return this.prices.reduce((sum, price, r) => sum + price * (this.#given[r] as number), 0);
  }

  /** How much of the wants is left open. */
  get left(): number {
    return this.#amounts(this.#given).reduce(
      (sum, amount, r) => sum + ((this.codes[r] as number) <= OPEN_BASE ? amount : 0),
      0,
    );
  }

  /** Columns in use with their amounts. */
  used(): readonly (readonly [column: number, amount: number])[] {
    return [...this.#amounts(this.#given)]
      .map((amount, r) => [this.codes[r] as number, amount] as const)
      .filter(([code, amount]) => code >= 0 && amount > 1e-9);
  }
}

function unit(n: number, i: number): Float64Array {
  const row = new Float64Array(n);
  row[i] = 1;
  return row;
}

function subtract(from: Float64Array, row: Float64Array, times: number): void {
  for (let k = 0; k < from.length; k++) from[k] = (from[k] as number) - times * (row[k] as number);
}
