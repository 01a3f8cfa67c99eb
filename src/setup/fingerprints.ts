/**
 * `npm run fingerprints [-- --words ID…]`: takes the fingerprints of families that have none yet. A fingerprint that is there
 * stays: a published family's seeds draw the same for ever, on paper sheets, in kept tries and in answers that a witness signed
 * for. With --words the sentences of the named families are taken anew, where their draws are still the same.
 */
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { askOf, type Draw, drawOf } from '../practice/draw.ts';
import type { Ask, Family } from '../practice/family.ts';
import { GENERATOR } from '../practice/generator.ts';
import { gradeDraw } from '../practice/grade.ts';
import { keyOf } from '../practice/key.ts';
import type { Answer, PlacedAt, StickCut, World } from '../practice/model.ts';
import { tellDraw } from '../practice/show.ts';
import type { Language } from '../practice/words.ts';
import { FIRST_LANGUAGE } from '../schema/words.ts';
import { proofMeans } from './proveFamilies.ts';

export const FINGERPRINTS_FILE = 'tests/references/fingerprints.json';
/** Seeds whose draws are held. */
const SEEDS = Array.from({ length: 20 }, (_, k) => String(k + 1));

export interface Fingerprint {
  /**
   * SHA-256 (hex) over what the draws ask, what is right and what passes: numbers, units, tolerances, ids, critical asks, mark,
   * what must come before what, and whether answers a step away from the right one hold.
   */
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
    const held = family.asks.map((ask) => heldOf(draw, ask, world, language));
    draws.update(`${seed}\n${JSON.stringify({ givens, asks, answers, critical, mark, held }, unsaid)}\n`);
    words.update(`${seed}\n${JSON.stringify({ title, text, givens, asks })}\n`);
  }
  return { draws: draws.digest('hex'), words: words.digest('hex') };
}

/** What holds beside the right answer: the precedence of an order; of what is laid out, which answers a step away do. */
function heldOf(draw: Draw, ask: Ask, world: World, language: Language): unknown {
  const precedence = askOf(draw.model, ask.id).order?.(draw.plan).precedence;
  if (precedence !== undefined) return precedence.map((pair) => pair.join('<')).sort();
  return stepsAway(draw.right[ask.id] as Answer).map((given) => {
    const { findings } = gradeDraw(draw, { ...draw.right, [ask.id]: given }, world, language);
    return findings.find(({ ask: id }) => id === ask.id)?.verdict === 'holds';
  });
}

/** Of several things one left out; of marks on a run each moved back by 2 in. */
function stepsAway(right: Answer): readonly Answer[] {
  if (!Array.isArray(right)) return [];
  const all = right as readonly (PlacedAt | StickCut | string)[];
  const moved = all.flatMap((one, k) =>
    typeof one === 'object' && 'at' in one ? [all.with(k, { ...one, at: Math.max(0, one.at - 2) })] : [],
  );
  return [all.slice(1), ...moved].filter(({ length }) => length > 0) as readonly Answer[];
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
