/**
 * After columns were taken out or banned, amounts may be below 0, or banned columns in use, while prices still hold: the
 * dual simplex method puts that right, mostly in a few exchanges.
 */
import { type Basis, OPEN_BASE } from './basis.ts';

const EPS = 1e-9;
const PIVOT = 1e-7;

/** @returns false when it was given up; the basis is then to be made anew */
export function repair(basis: Basis): boolean {
  for (let turn = 0; turn < 4 * basis.rows + 50; turn++) {
    const leaving = worst(basis);
    if (leaving < 0) return true;
    const below = (basis.x[leaving] as number) < 0;
    const entering = cheapest(basis, leaving, below ? -1 : 1);
    if (entering === undefined) return false;
    const d = basis.falls(entering);
    if (Math.abs(d[leaving] as number) < PIVOT) return false;
    basis.exchange(entering, leaving, d);
  }
  return false;
}

/** The row farthest below 0, or with most of a banned column. */
function worst({ rows, x, codes, banned }: Basis): number {
  let row = -1;
  let most = EPS;
  for (let i = 0; i < rows; i++) {
    const amount = x[i] as number;
    const code = codes[i] as number;
    const off = amount < 0 ? -amount : code >= 0 && banned[code] === 1 ? amount : 0;
    if (off > most) {
      most = off;
      row = i;
    }
  }
  return row;
}

/** What comes in at least cost for what it puts right; of several alike the one with most. */
function cheapest(basis: Basis, leaving: number, sign: 1 | -1): number | undefined {
  const { columns, rows, wants, firstSlack, prices } = basis;
  const row = basis.inverse[leaving] as Float64Array;
  let least = Number.POSITIVE_INFINITY;
  let most = 0;
  let entering: number | undefined;
  const consider = (code: number, amount: number, reduced: number): void => {
    const a = sign * amount;
    if (a < PIVOT) return;
    const ratio = Math.max(0, reduced) / a;
    if (ratio > least + EPS || (ratio > least - EPS && a <= most)) return;
    least = Math.min(least, ratio);
    most = a;
    entering = code;
  };
  const usable = basis.usable();
  basis.work += 8 * usable.length;
  for (let u = 0; u < usable.length; u++) {
    const j = usable[u] as number;
    const a = columns.times(j, row);
    if (sign * a >= PIVOT) consider(j, a, columns.reducedCost(j, prices));
  }
  for (let i = 0; i < rows; i++) {
    const a = row[i] as number;
    if (i >= firstSlack) consider(-1 - i, i < wants ? -a : a, basis.slackCost(i));
    if (i < wants) consider(OPEN_BASE - i, a, basis.reducedCost(OPEN_BASE - i));
  }
  return entering;
}
