/** Hashes of code and families as they are on disk, and whether the kept proofs still speak of them. */
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Hashes, modelFile, type ProofRecord, proofFaults, proofText } from '../practice/proofs.ts';
import type { FileFault } from '../schema/library.ts';
import { contentFiles } from './contentFiles.ts';
import { root } from './root.ts';

export const PROOFS_FILE = 'content/scenarios/proofs.json';

const sha256 = (text: string) => createHash('sha256').update(text).digest('hex');

/** What is there now. */
export function hashesNow(): Hashes {
  const code = readdirSync(join(root, 'src'), { recursive: true, withFileTypes: true })
    .filter((e) => e.isFile() && e.name.endsWith('.ts'))
    .map((e) => join(e.parentPath, e.name))
    .map((path) => ({
      path: path.slice(root.length).replaceAll('\\', '/'),
      text: readFileSync(path, 'utf8'),
    }));
  const content = contentFiles();
  const shared = sha256(proofText([...code, ...content]));
  const own = new Map(
    code.flatMap(({ path, text }) =>
      path.startsWith('src/practice/models/') ? [[path.slice(path.lastIndexOf('/') + 1), text] as const] : [],
    ),
  );
  return Object.fromEntries(
    content.flatMap(({ path, text }) => {
      const id = /^content\/scenarios\/(.+)\.yaml$/.exec(path)?.[1];
      if (id === undefined) return [];
      const model = /^model: *([a-z0-9-]+)/m.exec(text)?.[1] ?? '';
      return [[id, sha256([shared, own.get(modelFile(model)) ?? '', text].join('\n'))] as const];
    }),
  );
}

/** Faults for content check: families that were not proven as they now are. */
export function staleProofs(): readonly FileFault[] {
  return proofFaults(readRecord(), hashesNow()).map((fault) => ({ file: PROOFS_FILE, ...fault }));
}

/** The kept record; undefined when there is none, or what is there is not one: proving writes it anew. */
export function readRecord(): ProofRecord | undefined {
  const file = join(root, PROOFS_FILE);
  if (!existsSync(file)) return undefined;
  try {
    const record = JSON.parse(readFileSync(file, 'utf8')) as Partial<ProofRecord> | null;
    return record?.v === 2 && typeof record.families === 'object' ? (record as ProofRecord) : undefined;
  } catch {
    return undefined;
  }
}
