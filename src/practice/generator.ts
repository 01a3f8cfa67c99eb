/**
 * The generator behind every draw: a seed text and a family id fix a stream of 32-bit numbers, on every device and
 * for ever. SEED.md describes it byte by byte, with vectors; nothing here may change while a draw of it is in use.
 */

import type { Fault } from '../trade/given.ts';

/** Name of this generator; written into every draw, so that a later one can stand beside it. */
export const GENERATOR = 'trayhand seed 1';

/** Most signs (Unicode code points) a seed text may have. */
export const SEED_SIGNS = 64;

type Words = [number, number, number, number];

/** FNV-1a over bytes, 32 bits. Source: Fowler/Noll/Vo hash, IETF draft-eastlake-fnv (from memory). */
function fnv1a(bytes: Iterable<number>): number {
  let hash = 0x811c9dc5;
  for (const byte of bytes) hash = Math.imul(hash ^ byte, 0x01000193) >>> 0;
  return hash;
}

/** Spreads every bit of a word over the whole word. Source: the 32-bit finalizer of MurmurHash3 (from memory). */
function spread(word: number): number {
  let w = word;
  w = Math.imul(w ^ (w >>> 16), 0x85ebca6b);
  w = Math.imul(w ^ (w >>> 13), 0xc2b2ae35);
  return (w ^ (w >>> 16)) >>> 0;
}

/**
 * The four words that a family id and a seed text begin with (SEED.md §1).
 * Both are taken as they stand: nothing is trimmed, folded or normalised.
 */
export function firstWords(family: string, seed: string): Words {
  const utf8 = new TextEncoder();
  const text = [...utf8.encode(family), 0x0a, ...utf8.encode(seed)];
  const word = (lane: number) => spread(fnv1a([lane, ...text]));
  const words: Words = [word(0), word(1), word(2), word(3)];
  return words.every((w) => w === 0) ? [1, 2, 3, 4] : words;
}

const turn = (word: number, left: number) => (word << left) | (word >>> (32 - left));

/** A stream of numbers from four 32-bit words, not all zero. */
export class Generator {
  readonly #words: Words;

  constructor(words: Readonly<Words>) {
    this.#words = [words[0], words[1], words[2], words[3]];
  }

  /** The stream of a family and a seed. */
  static of(family: string, seed: string): Generator {
    return new Generator(firstWords(family, seed));
  }

  /**
   * The next whole number from 0 to 2³² − 1: xoshiro128++ (SEED.md §2).
   * Source: D. Blackman, S. Vigna, "Scrambled linear pseudorandom number generators", 2021 (from memory).
   */
  next(): number {
    const w = this.#words;
    const out = (turn(w[0] + w[3], 7) + w[0]) >>> 0;
    const shifted = w[1] << 9;
    w[2] ^= w[0];
    w[3] ^= w[1];
    w[1] ^= w[2];
    w[0] ^= w[3];
    w[2] ^= shifted;
    w[3] = turn(w[3], 11);
    return out;
  }

  /**
   * A whole number from 0 to n − 1, each equally likely: numbers beyond the last whole multiple of n are drawn again.
   * @param n whole, 1 to 2³²
   */
  below(n: number): number {
    const limit = 2 ** 32 - (2 ** 32 % n);
    let drawn = this.next();
    while (drawn >= limit) drawn = this.next();
    return drawn % n;
  }

  /** A whole number from `low` to `high`, both included. */
  between(low: number, high: number): number {
    return low + this.below(high - low + 1);
  }

  /** One element of a list that has at least one. */
  pick<T>(list: readonly T[]): T {
    return list[this.below(list.length)] as T;
  }

  /** The elements in a chance order: from the last place down to the second, each swaps with one at or before it. */
  shuffle<T>(list: readonly T[]): T[] {
    const order = [...list];
    for (let i = order.length - 1; i > 0; i--) {
      const j = this.below(i + 1);
      [order[i], order[j]] = [order[j] as T, order[i] as T];
    }
    return order;
  }
}

/** What is wrong with a seed text, or undefined. */
export function seedFault(seed: string): Fault | undefined {
  const bad = (message: string, todo: string): Fault => ({ field: 'seed', value: seed, message, todo });
  if (seed === '') return bad('the seed is empty', `write any text of 1 to ${SEED_SIGNS} signs`);
  if ([...seed].length > SEED_SIGNS)
    return bad(`the seed has ${[...seed].length} signs`, `write a text of at most ${SEED_SIGNS} signs`);
  // Half of a pair has no bytes in UTF-8, so two devices could not agree on it.
  return seed.isWellFormed() ? undefined : bad('the seed holds half a sign', 'type it again');
}
