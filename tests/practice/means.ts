/** What the tests draw and grade with: the project's own content, read as the command reads it. */
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { paperPalette } from '../../src/drawing/palette.ts';
import { type Draw, drawOf } from '../../src/practice/draw.ts';
import type { AuthoredFamily } from '../../src/practice/family.ts';
import { type Finding, gradeDraw } from '../../src/practice/grade.ts';
import type { Answer, AnyPlan } from '../../src/practice/model.ts';
import { models } from '../../src/practice/models/index.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { practiceOf } from '../../src/schema/practice.ts';
import { speaker } from '../../src/schema/words.ts';

const { library } = readLibrary(contentFiles());
export const practice = practiceOf(library);
export const { families, sheets, world } = practice;
export const language = { lang: 'en', speak: speaker(library.words.get('en') ?? new Map()) };
export const how = { form: 'desk', palette: paperPalette } as const;
export const means = { world, languages: [language], how };

export function family(id: string): AuthoredFamily {
  const found = families.get(id);
  if (found === undefined) throw new Error(`no family ${id}`);
  return found;
}

export const draw = (id: string, seed: string): Draw => drawOf(family(id), seed, world);

export function grade(drawn: Draw, answers: Readonly<Record<string, unknown>>) {
  return gradeDraw(drawn, answers, world, language);
}

/** The finding on one ask, the others answered rightly. */
export function finding(drawn: Draw, ask: string, answer: unknown): Finding {
  const { findings } = grade(drawn, { ...drawn.right, [ask]: answer });
  return findings.find((f) => f.ask === ask) as Finding;
}

/** A job put together from values that a test names, in place of drawn ones; a model's family has its name. */
export function job(model: string, drawn: Readonly<Record<string, unknown>>) {
  const made = models.get(model);
  if (made === undefined) throw new Error(`no model ${model}`);
  const plan = made.plan(drawn, world, family(model));
  return {
    plan,
    answer: (ask: string): Answer => answerOf(ask, plan),
    /** The answer of someone who makes this slip, or null where it cannot be made. */
    slipped: (slip: string, ask: string, told: Readonly<Record<string, string>> = {}): Answer | null => {
      const taken = made.slips[slip]?.(plan as AnyPlan, world, told);
      if (taken === undefined) throw new Error(`no slip ${slip}`);
      return taken === null ? null : answerOf(ask, taken);
    },
  };

  function answerOf(ask: string, of: AnyPlan | null): Answer {
    const found = made?.asks[ask];
    if (found === undefined || of === null) throw new Error(`no ${ask} here`);
    return found.answer(of, world);
  }
}
