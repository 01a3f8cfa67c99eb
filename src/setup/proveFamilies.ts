/** Proves families on every processor at once: this file is also what each worker runs. */
import { availableParallelism } from 'node:os';
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import { contentFiles } from '../cli/contentFiles.ts';
import { paperPalette } from '../drawing/palette.ts';
import { type Proof, proveFamily } from '../practice/prove.ts';
import { readLibrary } from '../schema/library.ts';
import { practiceOf } from '../schema/practice.ts';
import { speaker } from '../schema/words.ts';

/** A family to prove, and over how many seeds. */
export interface ToProve {
  readonly id: string;
  readonly seeds: number;
}

/** What families are drawn and shown with: the project's content, on paper. */
export function proofMeans() {
  const { library } = readLibrary(contentFiles());
  const practice = practiceOf(library);
  const languages = [...library.words].map(([lang, words]) => ({ lang, speak: speaker(words) }));
  const how = { form: 'desk', palette: paperPalette } as const;
  return { practice, means: { world: practice.world, languages, how } };
}

/** Families one after another as workers come free; `each` is told of every one that is done. */
export async function proveAll(families: readonly ToProve[], each: (proof: Proof) => void): Promise<void> {
  const waiting = [...families];
  const threads = Math.min(availableParallelism(), waiting.length);
  await Promise.all(
    Array.from(
      { length: threads },
      () =>
        new Promise<void>((done, failed) => {
          const worker = new Worker(new URL(import.meta.url), { workerData: 'prove' });
          const next = () => {
            const one = waiting.shift();
            if (one === undefined) worker.terminate().then(() => done(), failed);
            else worker.postMessage(one);
          };
          worker.on('message', (proof: Proof) => {
            each(proof);
            next();
          });
          worker.on('error', failed);
          next();
        }),
    ),
  );
}

if (!isMainThread && workerData === 'prove') {
  const { practice, means } = proofMeans();
  parentPort?.on('message', ({ id, seeds }: ToProve) => {
    const family = practice.families.get(id);
    if (family === undefined) throw new Error(`no family ${id}`);
    parentPort?.postMessage(proveFamily(family, seeds, means));
  });
}
