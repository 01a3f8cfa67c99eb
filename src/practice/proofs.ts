/**
 * Whether the proofs that were run still speak of what is there. content/scenarios/proofs.json keeps a hash of the
 * code and one of each family; the hashes are computed by whoever reads the files and passed in.
 */
import type { Fault } from '../trade/given.ts';

export interface ProofRecord {
  readonly v: 1;
  /** Draws each family was proven with. */
  readonly seeds: number;
  /** SHA-256 (hex) of `proofText` of the code. */
  readonly code: string;
  /** SHA-256 (hex) of each family's file. */
  readonly families: Readonly<
    Record<string, { readonly content: string; readonly rejected: number; readonly variants: number }>
  >;
}

export interface Hashes {
  readonly code: string;
  readonly families: Readonly<Record<string, string>>;
}

const PARTS = [
  /^src\/(?:practice|trade|run|drawing)\/.+\.ts$/,
  // What reads a family, the catalogue and the tables, from the text of a file to the core's types.
  /^src\/schema\/(?:scenario|catalogue|rules|source|practice|fields|ids|length|shelves|shelf|library|yaml|words|ranges|tradeTables|rules\/\w+)\.ts$/,
  /^content\/(?:catalogue|rules)\/.+\.yaml$/,
  /^content\/words\/[a-z]+\/(?:drawing|practice|run|steps)\.json$/,
];

/** Whether what a file says can change a draw or its grade; the path begins with `src/` or `content/`. */
export function touchesProofs(path: string): boolean {
  return PARTS.some((part) => part.test(path));
}

/** The files that count as one text to be hashed: by path, each with the length of its text before it. */
export function proofText(files: readonly { readonly path: string; readonly text: string }[]): string {
  return files
    .filter((f) => touchesProofs(f.path))
    .sort((a, b) => (a.path < b.path ? -1 : 1))
    .map(({ path, text }) => `${path}\n${text.length}\n${text}`)
    .join('\n');
}

/** What must be proven again; empty when the record is current. */
export function proofFaults(record: ProofRecord | undefined, { code, families }: Hashes): readonly Fault[] {
  const todo = 'run npm run prove, and keep the file it writes';
  if (record === undefined) return [{ field: '', message: 'the families were never proven', todo }];
  const faults: Fault[] = [];
  if (record.code !== code)
    faults.push({ field: 'code', message: 'the code has changed since the families were proven', todo });
  for (const [id, content] of Object.entries(families)) {
    if (record.families[id]?.content !== content)
      faults.push({ field: `families.${id}`, message: 'this family has changed since it was proven', todo });
  }
  for (const id of Object.keys(record.families)) {
    if (!(id in families)) faults.push({ field: `families.${id}`, message: 'there is no such family', todo });
  }
  return faults;
}
