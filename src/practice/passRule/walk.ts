/** Every way in which a sheet can end, with its chance: over (draws asked, draws held), until a line or the ceiling. */
import type { Lines } from './lines.ts';

/** "Undecided" is a result. */
export type Result = 'pass' | 'refuse' | 'undecided';

export interface End {
  readonly n: number;
  readonly held: number;
  readonly result: Result;
}

/** What the lines say after `n` draws of which `held` hold. */
export function resultAt(lines: Lines, n: number, held: number): Result {
  const { passFrom, refuseTo } = lines.at(n);
  if (held >= passFrom) return 'pass';
  return held <= refuseTo ? 'refuse' : 'undecided';
}

/** Walks the outcomes in their order, up to the first decision. */
export function walk(lines: Lines, outcomes: readonly boolean[]): End {
  let held = 0;
  let n = 0;
  for (const outcome of outcomes.slice(0, lines.ceiling)) {
    n += 1;
    if (outcome) held += 1;
    const result = resultAt(lines, n, held);
    if (result !== 'undecided') return { n, held, result };
  }
  return { n, held, result: 'undecided' };
}

/** @param p  chance that a draw holds, the same for each and independent */
export function ends(lines: Lines, p: number): readonly (End & { readonly chance: number })[] {
  const found: (End & { chance: number })[] = [];
  // Chance of standing undecided after n draws, by the number held.
  let standing = new Map<number, number>([[0, 1]]);
  for (let n = 1; n <= lines.ceiling; n++) {
    const next = new Map<number, number>();
    for (const [held, chance] of standing) {
      next.set(held, (next.get(held) ?? 0) + chance * (1 - p));
      next.set(held + 1, (next.get(held + 1) ?? 0) + chance * p);
    }
    standing = new Map();
    for (const [held, chance] of next) {
      const result = resultAt(lines, n, held);
      if (result === 'undecided' && n < lines.ceiling) standing.set(held, chance);
      else found.push({ n, held, result, chance });
    }
  }
  return found;
}
