/**
 * `npm run prove [-- ID…] [-- --all]`: proves the families that have changed since they were proven (those named, or all
 * with --all) and keeps in content/scenarios/proofs.json what was proven. A family with a fault is not kept.
 * Runs that are laid out are drawn as often as the rest here: `npm test` has no time for it.
 */
import { writeFileSync } from 'node:fs';
import { hashesNow, PROOFS_FILE, readRecord } from '../cli/proofHashes.ts';
import { type ProofRecord, type ProvenFamily, staleFamilies } from '../practice/proofs.ts';
import { PROOF_SEEDS } from '../practice/prove.ts';
import { proofMeans, proveAll } from './proveFamilies.ts';

const asked = process.argv.slice(2);
const hashes = hashesNow();
const before = readRecord();
const { families, world } = proofMeans().practice;
const laidOut = (id: string) => world.models.get(families.get(id)?.model ?? '')?.laidOut === true;
const wanted = asked.includes('--all')
  ? Object.keys(hashes)
  : asked.length > 0
    ? asked
    : staleFamilies(before, hashes);

const unread = wanted.filter((id) => !families.has(id));
for (const id of unread) console.log(`${id}: is not there, or cannot be read; content check says why`);
const kept: Record<string, ProvenFamily> = Object.fromEntries(
  Object.entries(before?.families ?? {}).filter(([id]) => id in hashes && !wanted.includes(id)),
);
let faulty = unread.length;
await proveAll(
  wanted
    .filter((id) => families.has(id))
    .map((id) => ({ id, seeds: PROOF_SEEDS }))
    // Those whose runs are laid out take longest: begun first, none is left alone at the end.
    .sort((a, b) => Number(laidOut(b.id)) - Number(laidOut(a.id))),
  ({ id, drawn, rejected, variants, faults }) => {
    console.log(
      `${id}: ${drawn} drawn, ${rejected} passed over, ${variants} differ, ${faults.length} faults`,
    );
    for (const { seed, cause } of faults.slice(0, 20)) console.log(`  seed ${seed || '(all)'}: ${cause}`);
    if (faults.length > 0) faulty += 1;
    else kept[id] = { hash: hashes[id] ?? '', seeds: PROOF_SEEDS, rejected, variants };
  },
);

const sorted = Object.fromEntries(Object.entries(kept).sort(([a], [b]) => (a < b ? -1 : 1)));
const record: ProofRecord = { v: 2, families: sorted };
writeFileSync(new URL(`../../${PROOFS_FILE}`, import.meta.url), `${JSON.stringify(record, null, 2)}\n`);
console.log(`${wanted.length - faulty} proven, ${faulty} not, ${Object.keys(hashes).length} families in all`);
if (faulty > 0) process.exitCode = 1;
