/** The tries at a family on this device: brought back as far as they can be read today, and kept with what came of them. */
import { readAnswers } from '../../../practice/answer.ts';
import { type Attempt, type Came, cameOf } from '../../../practice/attempts.ts';
import { type Draw, drawOf } from '../../../practice/draw.ts';
import type { Family } from '../../../practice/family.ts';
import { GENERATOR, seedFault } from '../../../practice/generator.ts';
import { gradeDraw } from '../../../practice/grade.ts';
import type { World } from '../../../practice/model.ts';
import type { Language } from '../../../practice/words.ts';
import { attemptsOf, keepAttempt, takeAttempts } from '../../device/attempts.ts';
import { type BegunDraw, begunAt } from '../../device/begunDraws.ts';
import type { Given } from '../../practice.ts';
import { tried } from '../../tried.ts';

export interface Grading {
  readonly family: Family;
  readonly world: World;
  readonly language: Language;
}

/** The seed that an address names, or null: an empty one, or one too long to be drawn, names none. */
export function askedSeed(search: string): string | null {
  const seed = new URLSearchParams(search).get('draw');
  return seed === null || seedFault(seed) !== undefined ? null : seed;
}

/**
 * What comes of tries at one draw, which is drawn once; `undefined` where answers are none that this edition of the family
 * asks for.
 */
export function whatCame(
  seed: string,
  tries: readonly Attempt[],
  { family, world, language }: Grading,
): readonly (Came | undefined)[] {
  if (tries.length === 0) return [];
  const drawn = tried(() => drawOf(family, seed, world));
  return tries.map(({ answers }) => {
    const grade = drawn.good ? tried(() => gradeDraw(drawn.value, answers, world, language)) : drawn;
    return grade.good ? cameOf(grade.value) : undefined;
  });
}

interface Back {
  readonly seed: string;
  /** What was given at this draw, try by try. */
  readonly tries: readonly Given[];
  /** What stands in its entries: what was being answered when the page was left, else what was given last. */
  readonly answers: Given;
  /** Every try at the family. */
  readonly before: readonly Attempt[];
}

/**
 * The draw to open with, and the tries at it: the one that the address names, else the one that is being answered, else
 * the last one tried here, else a fresh one. No other draw is drawn.
 */
export async function bringBack(asked: string | null, fresh: string, grading: Grading): Promise<Back> {
  const { id } = grading.family;
  const [before, begun] = await Promise.all([attemptsOf(id), begunAt(id)]);
  return { before, ...opensWith(asked, fresh, { before, begun }, grading) };
}

export function opensWith(
  asked: string | null,
  fresh: string,
  { before, begun }: { readonly before: readonly Attempt[]; readonly begun?: BegunDraw | undefined },
  grading: Grading,
): Omit<Back, 'before'> {
  const named = begun !== undefined && (asked ?? begun.seed) === begun.seed;
  const now = named && canGoOn(begun, grading) ? begun : undefined;
  const lastTried = before.findLast((one) => seedFault(one.seed) === undefined)?.seed;
  const seed = asked ?? now?.seed ?? lastTried ?? fresh;
  const own = before.filter((one) => one.seed === seed);
  const came = whatCame(seed, own, grading);
  const tries = own.filter((_, i) => came[i] !== undefined).map(({ answers }) => answers as Given);
  return { seed, tries, answers: (now?.answers as Given | undefined) ?? tries.at(-1) ?? {} };
}

/** Whether what was begun is still what this edition of the family asks for. */
function canGoOn({ seed, generator, answers }: BegunDraw, { family, world }: Grading): boolean {
  if (generator !== GENERATOR || seedFault(seed) !== undefined) return false;
  return tried(() => readAnswers(drawOf(family, seed, world), answers, world)).good;
}

/** Tries without a note of what came of them, draw by draw, with the note; a draw a step, for whoever must not stop. */
export function* notes(before: readonly Attempt[], grading: Grading): Generator<readonly Attempt[]> {
  const bare = before.filter(({ came }) => came === undefined);
  for (const [seed, tries] of Map.groupBy(bare, (one) => one.seed)) {
    const came = whatCame(seed, tries, grading);
    yield tries.flatMap((one, i): Attempt[] => {
      const note = came[i];
      return note === undefined ? [] : [{ ...one, came: note }];
    });
  }
}

/**
 * An earlier edition kept no note of what came of a try; the first page that can tell makes it, once it stands.
 * @returns whether any was made
 */
export async function noteWhatCame(before: readonly Attempt[], grading: Grading): Promise<boolean> {
  const noted: Attempt[] = [];
  for (const some of notes(before, grading)) {
    noted.push(...some);
    // A draw, then the page may answer before the next.
    await new Promise((rest) => setTimeout(rest));
  }
  if (noted.length > 0) await takeAttempts(noted);
  return noted.length > 0;
}

/** Whether the draw that is brought back takes the place of what stands: never of answers that were begun, unless the address names another draw. */
export const givesWay = (begun: boolean, asked: string | null, built: string): boolean =>
  !begun || (asked !== null && asked !== built);

/** Keeps a try at a draw. */
export async function keepTry(draw: Draw, answers: Given, { world, language }: Grading): Promise<void> {
  const came = cameOf(gradeDraw(draw, answers, world, language));
  await keepAttempt({ family: draw.family.id, seed: draw.seed, generator: draw.generator, answers, came });
}
