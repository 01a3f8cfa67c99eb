/** What a register's file brought, what was left behind, and what it lacks. Pure. */
import { byText } from '../../register/bytes.ts';
import { chainOf } from '../../register/header.ts';
import type { Entry, Held, Problem } from '../../register/held.ts';

/** Entries of one chain: how many, and the first and last number among them. */
export interface ChainSpan {
  readonly signer: string;
  readonly device: string;
  readonly count: number;
  readonly from: number;
  readonly to: number;
}

export interface Joined {
  readonly added: readonly ChainSpan[];
  /** Entries held here that the file does not have. */
  readonly lacks: readonly ChainSpan[];
  /** Lines and bodies of the file that are altered or cannot be read. */
  readonly left: readonly Problem[];
  /** Entries of another register that lay in the file. */
  readonly foreign: number;
}

function spans(entries: readonly Entry[]): readonly ChainSpan[] {
  return [...Map.groupBy(entries, ({ header }) => chainOf(header))]
    .sort(([a], [b]) => byText(a, b))
    .map(([, list]) => {
      const [{ header }] = list as [Entry];
      const numbers = list.map((entry) => entry.header.seq);
      const { signer, device } = header;
      return { signer, device, count: list.length, from: Math.min(...numbers), to: Math.max(...numbers) };
    });
}

/**
 * Compares what a file holds with what is here.
 * @param here   what this device held before; `undefined` when it held nothing
 * @param begin  id of the register's beginning
 */
export function joinedOf(here: Held | undefined, there: Held, begin: string): Joined {
  const own = (entry: Entry): boolean => (entry.header.register ?? entry.id) === begin;
  const theirs = [...there.entries.values()];
  const ours = [...(here?.entries.values() ?? [])];
  return {
    added: spans(theirs.filter((entry) => own(entry) && here?.entries.has(entry.id) !== true)),
    lacks: spans(ours.filter((entry) => own(entry) && !there.entries.has(entry.id))),
    left: there.problems,
    foreign: theirs.filter((entry) => !own(entry)).length,
  };
}

/** The last number of every chain that a device once held, by signer and device. */
export type LastNumbers = Readonly<Record<string, number>>;

/** A chain that ends here before the last number that this device once held. */
export interface Fallen {
  readonly signer: string;
  readonly device: string;
  readonly held: number;
  readonly once: number;
}

type LastRow = { readonly id: string; readonly device: string; readonly last: number };

/** What was held once and is not held now: the register was put back to an earlier state. `held` is -1 for nothing. */
export function fallenBack(once: LastNumbers, signers: readonly LastRow[]): readonly Fallen[] {
  const now = new Map(signers.map(({ id, device, last }) => [chainOf({ signer: id, device }), last]));
  return Object.entries(once).flatMap(([chain, number]): readonly Fallen[] => {
    const held = now.get(chain) ?? -1;
    const dot = chain.indexOf('.');
    const of = { signer: chain.slice(0, dot), device: chain.slice(dot + 1) };
    return held < number ? [{ ...of, held, once: number }] : [];
  });
}

/** The highest number of each chain, of those held once and those held now. */
export function raised(once: LastNumbers, signers: readonly LastRow[]): LastNumbers {
  const all: Record<string, number> = { ...once };
  for (const { id, device, last } of signers) {
    const chain = chainOf({ signer: id, device });
    all[chain] = Math.max(last, all[chain] ?? -1);
  }
  return all;
}
