/** One thing wrong with what was given: where, what value, why, and what to write instead. */
export interface Fault {
  /** Path of the field, as `pieces[2].length`; empty for the whole input. */
  readonly field: string;
  readonly value?: unknown;
  readonly message: string;
  readonly todo: string;
}

/** Thrown when what was given cannot be used; carries every fault found, never only the first. */
export class GivenError extends Error {
  readonly faults: readonly Fault[];

  constructor(faults: readonly Fault[]) {
    super(faults.map((f) => `${f.field}: ${f.message} (${f.todo})`).join('\n'));
    this.name = 'GivenError';
    this.faults = faults;
  }
}
