/**
 * `npm run prove`: proves every family and keeps in content/scenarios/proofs.json what was proven. Writes nothing
 * while a family has a fault.
 */
import { writeFileSync } from 'node:fs';
import { contentFiles } from '../cli/contentFiles.ts';
import { hashesNow, PROOFS_FILE } from '../cli/proofHashes.ts';
import { paperPalette } from '../drawing/palette.ts';
import type { ProofRecord } from '../practice/proofs.ts';
import { PROOF_SEEDS, proveFamily } from '../practice/prove.ts';
import { readLibrary } from '../schema/library.ts';
import { practiceOf } from '../schema/practice.ts';
import { speaker } from '../schema/words.ts';

const { library } = readLibrary(contentFiles());
const { families, world } = practiceOf(library);
const languages = [...library.words].map(([lang, words]) => ({ lang, speak: speaker(words) }));
const how = { form: 'desk', palette: paperPalette } as const;

const hashes = hashesNow();
const proofs = [...families.values()].map((family) =>
  proveFamily(family, PROOF_SEEDS, { world, languages, how }),
);
for (const { id, drawn, rejected, variants, faults } of proofs) {
  console.log(`${id}: ${drawn} drawn, ${rejected} passed over, ${variants} differ, ${faults.length} faults`);
  for (const { seed, cause } of faults) console.log(`  seed ${seed || '(all)'}: ${cause}`);
}
const unread = Object.keys(hashes.families).filter((id) => !families.has(id));
for (const id of unread) console.log(`${id}: cannot be read; content check says why`);

if (unread.length === 0 && proofs.every((p) => p.faults.length === 0)) {
  const record: ProofRecord = {
    v: 1,
    seeds: PROOF_SEEDS,
    code: hashes.code,
    families: Object.fromEntries(
      proofs.map(({ id, rejected, variants }) => [
        id,
        { content: hashes.families[id] ?? '', rejected, variants },
      ]),
    ),
  };
  writeFileSync(new URL(`../../${PROOFS_FILE}`, import.meta.url), `${JSON.stringify(record, null, 2)}\n`);
} else process.exitCode = 1;
