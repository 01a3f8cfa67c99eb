/**
 * `npm run fingerprints [-- --words ID…]`: takes the fingerprints of families that have none yet. A fingerprint that is there
 * stays: a published family's seeds draw the same for ever, on paper sheets, in kept tries and in answers that a witness signed
 * for. With --words the sentences of the named families are taken anew, where their draws are still the same.
 */
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { drawOf } from '../practice/draw.ts';
import type { Family } from '../practice/family.ts';
import { GENERATOR } from '../practice/generator.ts';
import { keyOf } from '../practice/key.ts';
import type { World } from '../practice/model.ts';
import { tellDraw } from '../practice/show.ts';
import type { Language } from '../practice/words.ts';
import { FIRST_LANGUAGE } from '../schema/words.ts';
import { proofMeans } from './proveFamilies.ts';

export const FINGERPRINTS_FILE = 'tests/references/fingerprints.json';
/** Seeds whose draws are held. */
const SEEDS = Array.from({ length: 20 }, (_, k) => String(k + 1));

export interface Fingerprint {
  /** SHA-256 (hex) over what the draws ask, what is right and what passes: numbers, units, tolerances, ids, critical asks, mark. */
  readonly draws: string;
  /** SHA-256 (hex) over how they say it in the first language. */
  readonly words: string;
}

export interface Fingerprints {
  readonly v: 1;
  readonly generator: string;
  /** By family. One that was withdrawn stays, so that its id is never given to another. */
  readonly families: Readonly<Record<string, Fingerprint>>;
}

/** Fields that only say something. */
const SAYING = new Set(['title', 'text', 'label', 'prompt']);
const unsaid = (name: string, value: unknown): unknown => (SAYING.has(name) ? undefined : value);

/** Of the draws of seeds 1 to 20, without their figures. */
export function fingerprintOf(family: Family, world: World, language: Language): Fingerprint {
  const [draws, words] = [createHash('sha256'), createHash('sha256')];
  for (const seed of SEEDS) {
    const draw = drawOf(family, seed, world);
    const { title, text, givens, asks } = tellDraw(draw, world, language);
    const { answers, critical } = keyOf(draw, world, language);
    const { mark } = family;
    draws.update(`${seed}\n${JSON.stringify({ givens, asks, answers, critical, mark }, unsaid)}\n`);
    words.update(`${seed}\n${JSON.stringify({ title, text, givens, asks })}\n`);
  }
  return { draws: draws.digest('hex'), words: words.digest('hex') };
}

const place = new URL(`../../${FINGERPRINTS_FILE}`, import.meta.url);

export function keptFingerprints(): Fingerprints {
  if (!existsSync(place)) return { v: 1, generator: GENERATOR, families: {} };
  return JSON.parse(readFileSync(place, 'utf8')) as Fingerprints;
}

/** The kept ones with those of families that have none yet; and with the words of `reworded`, whose draws are the same. */
export function withNew(
  kept: Fingerprints,
  families: Iterable<Family>,
  take: (family: Family) => Fingerprint,
  reworded: ReadonlySet<string> = new Set(),
): Fingerprints {
  const next: Record<string, Fingerprint> = { ...kept.families };
  for (const family of families) {
    const known = kept.families[family.id];
    if (known !== undefined && !reworded.has(family.id)) continue;
    const taken = take(family);
    if (known === undefined || known.draws === taken.draws) next[family.id] = taken;
  }
  const sorted = Object.entries(next).sort(([a], [b]) => (a < b ? -1 : 1));
  return { ...kept, families: Object.fromEntries(sorted) };
}

if (import.meta.main) {
  const [flag, ...named] = process.argv.slice(2);
  const { practice, means } = proofMeans();
  const language = means.languages.find(({ lang }) => lang === FIRST_LANGUAGE);
  if (language === undefined) throw new Error(`there are no words in ${FIRST_LANGUAGE}`);
  const kept = keptFingerprints();
  const next = withNew(
    kept,
    practice.families.values(),
    (family) => fingerprintOf(family, practice.world, language),
    new Set(flag === '--words' ? named : []),
  );
  writeFileSync(place, `${JSON.stringify(next, null, 2)}\n`);
  for (const [id, { draws, words }] of Object.entries(next.families)) {
    const before = kept.families[id];
    if (before === undefined) console.log(`${id}: taken`);
    else if (before.words !== words) console.log(`${id}: its words are taken anew`);
    else if (named.includes(id)) console.log(`${id}: stays as it is (${draws.slice(0, 8)})`);
  }
  console.log(`${Object.keys(next.families).length} families have a fingerprint`);
}
