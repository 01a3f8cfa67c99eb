/** Least cost by the primal simplex method, from a basis whose amounts are not below 0. */
import { type Basis, OPEN_BASE } from './basis.ts';
import { longer } from './columns.ts';

/** Reduced costs nearer to 0 than this are 0. */
const WORTH = 1e-8;
/** Off by more than this, the inverse is made anew, so that rounding does not pile up. */
const DRIFT = 1e-7;
/** A reach beyond this says nothing any more: all are set back. */
const FARTHEST = 1e6;

export class Simplex {
  readonly #basis: Basis;
  /** How far a step along each column reaches, as the Devex rule reckons it (Harris, Mathematical Programming 5, 1973). */
  #weights = new Float64Array(256).fill(1);
  readonly #slackWeights: Float64Array;

  constructor(basis: Basis) {
    this.#basis = basis;
    this.#slackWeights = new Float64Array(basis.rows).fill(1);
  }

  /** Goes on until no column at hand lowers the cost. @returns false when it was given up */
  optimise(): boolean {
    const basis = this.#basis;
    while (this.#weights.length < basis.columns.count)
      this.#weights = longer(this.#weights, new Float64Array(2 * this.#weights.length).fill(1));
    let stalled = 0;
    for (let turn = 0; turn < 60 * (basis.rows + 20) + basis.columns.count; turn++) {
      const entering = this.#entering(stalled > 200);
      if (entering === undefined) {
        if (basis.drift() < DRIFT) return true;
        basis.refresh();
        if (this.#entering(false) === undefined) return true;
        continue;
      }
      const d = basis.falls(entering);
      const leaving = this.#leaving(d);
      if (leaving < 0) return false;
      stalled = (basis.x[leaving] as number) < 1e-12 ? stalled + 1 : 0;
      if ((basis.x[leaving] as number) < 0) basis.x[leaving] = 0;
      this.#reweigh(entering, leaving, d[leaving] as number);
      basis.exchange(entering, leaving, d);
    }
    return false;
  }

  /** The code of a column, slack or surplus that lowers the cost most for its reach. */
  #entering(first: boolean): number | undefined {
    const { columns, prices, rows, firstSlack } = this.#basis;
    let worth = 0;
    let entering: number | undefined;
    for (let i = firstSlack; i < rows; i++) {
      const reduced = this.#basis.slackCost(i);
      if (reduced >= -WORTH) continue;
      if (first) return -1 - i;
      const w = (reduced * reduced) / (this.#slackWeights[i] as number);
      if (w > worth) {
        worth = w;
        entering = -1 - i;
      }
    }
    const usable = this.#basis.usable();
    for (let u = 0; u < usable.length; u++) {
      const j = usable[u] as number;
      const reduced = columns.reducedCost(j, prices);
      if (reduced >= -WORTH) continue;
      if (first) return j;
      const w = (reduced * reduced) / (this.#weights[j] as number);
      if (w > worth) {
        worth = w;
        entering = j;
      }
    }
    return entering;
  }

  /** The row that comes to 0 first; of several the one that is divided by most. A banned column may not rise either. */
  #leaving(d: Float64Array): number {
    const { rows, x, codes, banned } = this.#basis;
    let leaving = -1;
    let step = Number.POSITIVE_INFINITY;
    for (let i = 0; i < rows; i++) {
      const di = d[i] as number;
      const code = codes[i] as number;
      if (di < -1e-7 && code >= 0 && banned[code] === 1 && (x[i] as number) < 1e-8) return i;
      if (di <= 1e-8) continue;
      const ratio = Math.max(0, x[i] as number) / di;
      if (ratio < step - 1e-10 || (ratio < step + 1e-10 && di > (d[leaving] as number))) {
        step = Math.min(step, ratio);
        leaving = i;
      }
    }
    return leaving;
  }

  /** The reach of every column after an exchange, reckoned before it. */
  #reweigh(entering: number, leaving: number, pivot: number): void {
    const { columns, rows, inverse, codes } = this.#basis;
    const row = inverse[leaving] as Float64Array;
    const weights = this.#weights;
    const slacks = this.#slackWeights;
    const own = entering >= 0 ? (weights[entering] as number) : (slacks[-1 - entering] as number);
    if (own > FARTHEST) {
      slacks.fill(1);
      weights.fill(1);
      return;
    }
    const scale = own / (pivot * pivot);
    const usable = this.#basis.usable();
    for (let u = 0; u < usable.length; u++) {
      const j = usable[u] as number;
      const a = columns.times(j, row);
      const w = a * a * scale;
      if (w > (weights[j] as number)) weights[j] = w;
    }
    for (let i = 0; i < rows; i++) {
      const a = row[i] as number;
      const w = a * a * scale;
      if (w > (slacks[i] as number)) slacks[i] = w;
    }
    const out = codes[leaving] as number;
    const w = Math.max(scale, 1);
    if (out >= 0) weights[out] = w;
    else if (out > OPEN_BASE) slacks[-1 - out] = w;
  }
}
