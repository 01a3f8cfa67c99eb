import { GivenError } from '../trade/given.ts';
import { dropped } from './bodies.ts';
import { byText, hashOf } from './bytes.ts';
import { chainOf, lineOf } from './header.ts';
import { type Entry, type Held, markerText, type RegisterFiles } from './held.ts';
import { judge } from './judge.ts';
import type { Asked } from './judged.ts';
import { bodyPath, chainPath, MARKER } from './paths.ts';

export interface Merged {
  /** Id of the entry that both began with. */
  readonly begin: string;
  readonly files: RegisterFiles;
  /** Entries that the first did not hold. */
  readonly added: number;
  readonly entries: number;
  /** Bodies left out because their person is erased. */
  readonly dropped: number;
  /** Hashes of bodies that are not to be kept, held or not. */
  readonly gone: readonly string[];
}

/**
 * Joins two copies of one register: every entry that either holds, in one order of files and lines, so that it does
 * not matter who joins whom. Lines that are not whole are left behind. Bodies of people who are erased are dropped.
 *
 * @throws {GivenError} the two began differently
 * @throws {NoRegister} the first holds no beginning
 */
export function mergeRegisters(first: Held, second: Held, asked: Asked): Merged {
  const begin = judge(first, asked).view.begin.id;
  const other = judge(second, asked).view.begin.id;
  if (begin !== other) {
    const todo = 'join copies of one register only';
    throw new GivenError([
      { field: 'other', value: other, message: 'another register: it began differently', todo },
    ]);
  }
  const entries = new Map<string, Entry>();
  for (const e of [...first.entries.values(), ...second.entries.values()]) {
    const known = entries.get(e.id);
    const own = (e.header.register ?? e.id) === begin;
    if (own && (known === undefined || e.signature < known.signature)) entries.set(e.id, e);
  }
  const bodies = new Map([...first.bodies, ...second.bodies]);
  const held: Held = {
    ...first,
    entries,
    bodies,
    alteredBodies: new Set(),
    torn: new Set(),
    marker: begin,
    problems: [],
  };
  const { erased } = judge(held, asked).view;
  let left = 0;
  const gone = new Set<string>();
  const files: Record<string, string> = { [MARKER]: markerText(begin) };
  for (const { header } of entries.values()) {
    if (header.body === null) continue;
    const isGone = dropped.includes(header.kind) && header.about !== null && erased.has(header.about);
    if (isGone) gone.add(header.body);
    const text = bodies.get(header.body);
    if (text === undefined || hashOf(text) !== header.body) continue;
    if (isGone) left += 1;
    else files[bodyPath(header.body)] = text;
  }
  return {
    begin,
    files: { ...files, ...chainFiles(entries.values()) },
    added: [...entries.keys()].filter((id) => !first.entries.has(id)).length,
    entries: entries.size,
    dropped: left,
    gone: [...gone].filter((hash) => files[bodyPath(hash)] === undefined),
  };
}

/** Every chain's file, by number and then id: the one text of a set of entries. */
export function chainFiles(entries: Iterable<Entry>): RegisterFiles {
  const chains = Map.groupBy(entries, (e) => chainOf(e.header));
  const files = [...chains.values()].map((list): [string, string] => {
    const [{ header }] = list as [Entry];
    const sorted = list.sort((a, b) => a.header.seq - b.header.seq || byText(a.id, b.id));
    const text = sorted.map((e) => `${lineOf(e.header, e.signature)}\n`).join('');
    return [chainPath(header.signer, header.device), text];
  });
  return Object.fromEntries(files);
}
