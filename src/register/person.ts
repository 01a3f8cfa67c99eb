/** Everything that a register holds about one person, as one file: what he can ask for. */
import { dropped } from './bodies.ts';
import { byText } from './bytes.ts';
import { canonical, type Json } from './canonical.ts';
import type { Header } from './header.ts';
import type { Judged } from './judged.ts';
import { readJson } from './strictJson.ts';

/** An entry as it stands in the register: its line is the canonical form of header and signature. */
export interface PersonEntry {
  readonly id: string;
  readonly header: Header;
  readonly signature: string;
  /** Where it was found. */
  readonly file: string;
  readonly line: number;
}

/** A body by the hash of its bytes: `body` when the canonical form of it is those bytes, else the text as it lies here. */
export type PersonBody =
  | { readonly hash: string; readonly body: Json }
  | { readonly hash: string; readonly text: string };

export interface PersonFile {
  readonly id: string;
  /** Those whose `about` is the person, of every kind, counted or not; each comes after its past. */
  readonly entries: readonly PersonEntry[];
  /** Bodies of those entries that are held, each once, by hash; of an erased person none that an erase drops. */
  readonly bodies: readonly PersonBody[];
}

/**
 * Everything held about one person; empty lists for an id that nobody has. What he signed about others is theirs and
 * stands in their files: keys of his are named by his appointments.
 */
export function personFile({ view }: Judged, id: string): PersonFile {
  const about = view.order.list.filter((p) => p.header.about === id);
  const gone = (kind: string): boolean => view.erased.has(id) && dropped.includes(kind);
  const hashes = about.flatMap(({ header: { kind, body } }) => (body === null || gone(kind) ? [] : [body]));
  const bodies = [...new Set(hashes)].sort(byText).flatMap((hash): readonly PersonBody[] => {
    const text = view.held.bodies.get(hash);
    return text === undefined ? [] : [bodyOf(hash, text)];
  });
  const entries = about.map(({ id: entry, header, signature, file, line }): PersonEntry => {
    return { id: entry, header, signature, file, line };
  });
  return { id, entries, bodies };
}

function bodyOf(hash: string, text: string): PersonBody {
  try {
    const body = readJson(text);
    if (canonical(body) === text) return { hash, body };
  } catch {
    // No JSON: as it lies here.
  }
  return { hash, text };
}
