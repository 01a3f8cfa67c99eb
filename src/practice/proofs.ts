/**
 * Whether the proofs that were run still speak of what is there. content/scenarios/proofs.json keeps a hash of
 * each family: of its file, its model's file, and the code and content that all share. Whoever reads the files computes
 * the hashes and passes them in. So a family costs nothing until it, or what it rests on, changes.
 */
import type { Fault } from '../trade/given.ts';

export interface ProofRecord {
  readonly v: 2;
  readonly families: Readonly<Record<string, ProvenFamily>>;
}
export interface ProvenFamily {
  /** SHA-256 (hex) of the family's file, its model's, and what all families share. */
  readonly hash: string;
  /** Draws it was proven with. */
  readonly seeds: number;
  readonly rejected: number;
  readonly variants: number;
}

/** Of each family that is there, the hash as `ProvenFamily` keeps it. */
export type Hashes = Readonly<Record<string, string>>;

/** What draws nothing: sheets and their rules, tries and what is counted of them. */
const APART =
  /^src\/practice\/(?:passRule|statistics)\/|^src\/practice\/(?:attempts|attemptsFile|comingBack|fileFields|narrow|narrowTried|proofs|sheet|sheetFiles|sheetForm)\.ts$/;

const PARTS = [
  /^src\/(?:practice|trade|run|drawing)\/.+\.ts$/,
  // What reads a family, the catalogue and the tables, from the text of a file to the core's types.
  /^src\/schema\/(?:scenario|scenarioChecks|catalogue|rules|source|practice|fields|ids|length|shelves|shelf|library|yaml|words|ranges|tradeTables|rules\/\w+)\.ts$/,
  /^content\/(?:catalogue|rules)\/.+\.yaml$/,
  // Every sentence that a draw, its working or a verdict says; tests/practice/proofTexts.test.ts finds one that is not here.
  /^content\/words\/[a-z]+\/(?:drawing|geometry|inspect|mechanics|practice(?:-[a-z]+)?|rundrawing|steps|tables|unit)\.json$/,
];

/** A model's own file touches the families that name it, and no other; which models there are changes nothing of any. */
const MODEL = /^src\/practice\/models\/(?:(?!parts\/)[a-z]+\/[A-Za-z0-9]+|index)\.ts$/;

/** The name of a model's file: `cut-with-insertion` is in `cutWithInsertion.ts`. */
export function modelFile(model: string): string {
  return `${model.replaceAll(/-([a-z0-9])/g, (_, letter: string) => letter.toUpperCase())}.ts`;
}

/** Whether what a file says can change the draws of every family; the path begins with `src/` or `content/`. */
export function touchesProofs(path: string): boolean {
  return PARTS.some((part) => part.test(path)) && !MODEL.test(path) && !APART.test(path);
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
export function proofFaults(record: ProofRecord | undefined, now: Hashes): readonly Fault[] {
  const todo = 'run npm run prove, and keep the file it writes';
  if (record === undefined) return [{ field: '', message: 'the families were never proven', todo }];
  const stale = staleFamilies(record, now).map((id) => ({
    field: `families.${id}`,
    message: 'this family, or what it rests on, has changed since it was proven',
    todo,
  }));
  const gone = Object.keys(record.families)
    .filter((id) => !(id in now))
    .map((id) => ({ field: `families.${id}`, message: 'there is no such family', todo }));
  return [...stale, ...gone];
}

/** Families that were not proven as they now are. */
export function staleFamilies(record: ProofRecord | undefined, now: Hashes): readonly string[] {
  return Object.entries(now).flatMap(([id, hash]) => (record?.families[id]?.hash === hash ? [] : [id]));
}
