/** Columns side by side in flat lists, so that going through all of them is quick. */
export class Columns {
  count = 0;
  costs = new Float64Array(256);
  /** How far a step along each column reaches, as the Devex rule reckons it. */
  weights = new Float64Array(256);
  #from = new Int32Array(257);
  #rows = new Int32Array(2048);
  #amounts = new Float64Array(2048);

  add(cost: number, entries: readonly number[]): number {
    const at = this.#from[this.count] as number;
    const end = at + entries.length / 2;
    if (this.count + 1 >= this.costs.length) {
      this.costs = longer(this.costs, new Float64Array(2 * this.costs.length));
      this.weights = longer(this.weights, new Float64Array(2 * this.weights.length));
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
    this.weights[this.count] = 1;
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
    let reduced = this.costs[j] as number;
    const end = this.#from[j + 1] as number;
    for (let k = this.#from[j] as number; k < end; k++)
      reduced -= (this.#amounts[k] as number) * (prices[this.#rows[k] as number] as number);
    return reduced;
  }

  reweigh(row: Float64Array, scale: number): void {
    for (let j = 0; j < this.count; j++) {
      let a = 0;
      const end = this.#from[j + 1] as number;
      for (let k = this.#from[j] as number; k < end; k++)
        a += (this.#amounts[k] as number) * (row[this.#rows[k] as number] as number);
      const w = a * a * scale;
      if (w > (this.weights[j] as number)) this.weights[j] = w;
    }
  }
}

function longer<List extends Float64Array | Int32Array>(list: List, space: List): List {
  space.set(list);
  return space;
}
