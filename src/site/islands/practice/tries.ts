/** The tries at a family on this device: brought back as far as they can be read today, and kept with what came of them. */
import { type Attempt, type Came, cameOf } from '../../../practice/attempts.ts';
import { type Draw, drawOf } from '../../../practice/draw.ts';
import type { Family } from '../../../practice/family.ts';
import { gradeDraw } from '../../../practice/grade.ts';
import type { World } from '../../../practice/model.ts';
import type { Language } from '../../../practice/words.ts';
import { attemptsOf, keepAttempt, takeAttempts } from '../../device/attempts.ts';
import type { Given } from '../../practice.ts';
import { tried } from '../../tried.ts';

export interface Grading {
  readonly family: Family;
  readonly world: World;
  readonly language: Language;
}

/** What comes of a try, or `undefined` where its answers are none that this edition of the family asks for. */
function cameOfTry({ seed, answers }: Attempt, { family, world, language }: Grading): Came | undefined {
  const grade = tried(() => gradeDraw(drawOf(family, seed, world), answers, world, language));
  return grade.good ? cameOf(grade.value) : undefined;
}

/**
 * The draw to open with, and the tries at it: the one that the address names, else the last one tried here, else the one
 * that the page is built with.
 */
export async function bringBack(
  asked: string | null,
  built: string,
  grading: Grading,
): Promise<{ readonly seed: string; readonly tries: readonly Given[] }> {
  const before = await attemptsOf(grading.family.id);
  await noteWhatCame(before, grading);
  const seed = asked ?? before.at(-1)?.seed ?? built;
  const readable = before.filter((one) => one.seed === seed && cameOfTry(one, grading) !== undefined);
  return { seed, tries: readable.map(({ answers }) => answers as Given) };
}

/** An earlier edition kept no note of what came of a try; the first page that can tell makes it. */
async function noteWhatCame(before: readonly Attempt[], grading: Grading): Promise<void> {
  const noted = before.flatMap((one): Attempt[] => {
    const came = one.came === undefined ? cameOfTry(one, grading) : undefined;
    return came === undefined ? [] : [{ ...one, came }];
  });
  if (noted.length > 0) await takeAttempts(noted);
}

/** Keeps a try at a draw. */
export async function keepTry(draw: Draw, answers: Given, { world, language }: Grading): Promise<void> {
  const came = cameOf(gradeDraw(draw, answers, world, language));
  await keepAttempt({ family: draw.family.id, seed: draw.seed, generator: draw.generator, answers, came });
}
