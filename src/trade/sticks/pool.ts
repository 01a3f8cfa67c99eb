/** Patterns found so far, each once to a bar. */
import type { Pattern } from './plan.ts';

/** A pattern on a bar. */
export interface Filled {
  readonly bar: number;
  readonly pattern: Pattern;
  readonly name: string;
}

export class Pool {
  readonly #found = new Map<string, Filled>();

  add(bar: number, pattern: Pattern): void {
    const name = nameOf(bar, pattern);
    if (!this.#found.has(name)) this.#found.set(name, { bar, pattern, name });
  }

  all(): IterableIterator<Filled> {
    return this.#found.values();
  }
}

export function nameOf(bar: number, pattern: Pattern): string {
  return `${bar}:${pattern.join()}`;
}
