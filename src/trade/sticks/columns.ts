/** Columns of a linear programme side by side in flat lists, so that going through all of them is quick; only ever added to. */
export class Columns {
  count = 0;
  costs = new Float64Array(256);
  #from = new Int32Array(257);
  #rows = new Int32Array(2048);
  #amounts = new Float64Array(2048);

  /** @param entries  row, amount, row, amount … */
  add(cost: number, entries: readonly number[]): number {
    const at = this.#from[this.count] as number;
    const end = at + entries.length / 2;
    if (this.count + 1 >= this.costs.length) {
      this.costs = longer(this.costs, new Float64Array(2 * this.costs.length));
      this.#from = longer(this.#from, new Int32Array(2 * this.#from.length));
    }
    while (end > this.#rows.length) {
      this.#rows = longer(this.#rows, new Int32Array(2 * this.#rows.length));
      this.#amounts = longer(this.#amounts, new Float64Array(2 * this.#amounts.length));
    }
    for (let k = 0; k < entries.length; k += 2) {
      this.#rows[at + k / 2] = entries[k] as number;
      this.#amounts[at + k / 2] = entries[k + 1] as number;
    }
    this.costs[this.count] = cost;
    this.#from[this.count + 1] = end;
    return this.count++;
  }

  entries(j: number): readonly number[] {
    const entries: number[] = [];
    for (let k = this.#from[j] as number; k < (this.#from[j + 1] as number); k++)
      entries.push(this.#rows[k] as number, this.#amounts[k] as number);
    return entries;
  }

  reducedCost(j: number, prices: Float64Array): number {
    return (this.costs[j] as number) - this.times(j, prices);
  }

  /** Sum of amount × the row's number. */
  times(j: number, numbers: Float64Array): number {
    let sum = 0;
    const end = this.#from[j + 1] as number;
    for (let k = this.#from[j] as number; k < end; k++)
      sum += (this.#amounts[k] as number) * (numbers[this.#rows[k] as number] as number);
    return sum;
  }

  /** Whether a column puts more into some row than it may. */
  exceeds(j: number, most: Float64Array): boolean {
    const end = this.#from[j + 1] as number;
    for (let k = this.#from[j] as number; k < end; k++)
      if ((this.#amounts[k] as number) > (most[this.#rows[k] as number] as number) + 1e-6) return true;
    return false;
  }
}

export function longer<List extends Float64Array | Int32Array | Uint8Array>(list: List, space: List): List {
  space.set(list);
  return space;
}
