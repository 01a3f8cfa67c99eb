/** First tries graded again here: nothing in a file says how it was graded. */
import { GivenError } from '../../trade/given.ts';
import { type Draw, drawOf, Undrawable } from '../draw.ts';
import { type Finding, gradeDraw } from '../grade.ts';
import { narrowed } from '../narrow.ts';
import type { Practice, Sheet } from '../sheet.ts';
import { textOf, textsOf } from '../words.ts';
import { type Brought, type LeftWhy, type RawTry, rawTries, sheetsIn } from './rawTries.ts';

/** One draw that one person tried for the first time. */
export interface Tried extends Pick<RawTry, 'who' | 'family' | 'seed' | 'on'> {
  readonly passed: boolean;
  /** A critical ask does not hold. */
  readonly criticalMissed: boolean;
  readonly findings: readonly Pick<Finding, 'ask' | 'verdict' | 'mistake'>[];
  /** Mistakes that can be made on this draw, by ask. */
  readonly could: Readonly<Record<string, readonly string[]>>;
  /** What each mistake that was made says, with the draw's own figures. */
  readonly told: Readonly<Record<string, string>>;
  /** What was asked, by ask, with the draw's own figures. */
  readonly asked: Readonly<Record<string, string>>;
}

export interface Left extends Pick<RawTry, 'name' | 'family' | 'seed'> {
  readonly why: LeftWhy;
}

export interface Tries {
  readonly tried: readonly Tried[];
  readonly left: readonly Left[];
  /** Sheets by the key that tries name. */
  readonly sheets: ReadonlyMap<string, Sheet>;
}

/** @param lang  language in which families say their mistakes */
export function triesOf(brought: readonly Brought[], practice: Practice, lang: string): Tries {
  const sheets = sheetsIn(brought, practice);
  return sorted(
    rawTries(brought, sheets).map((raw) => gradedTry(raw, practice, lang)),
    sheets,
  );
}

/** What is counted, and what is not. */
export const sorted = (all: readonly (Tried | Left)[], sheets: Tries['sheets']): Tries => ({
  tried: all.filter((one) => 'findings' in one),
  left: all.filter((one) => 'why' in one),
  sheets,
});

/** One try graded, or why it is not counted. A page calls it one by one, since draws of whole runs take their time. */
export function gradedTry(raw: RawTry, practice: Practice, lang: string): Tried | Left {
  const { name, answers, left, narrow, ...about } = raw;
  const leave = (why: LeftWhy): Left => ({ name, family: raw.family, seed: raw.seed, why });
  if (left !== undefined) return leave(left);
  const family = practice.families.get(raw.family);
  if (family === undefined) return leave('no such family');
  try {
    const draw = drawOf(narrowed(family, narrow), raw.seed, practice.world);
    // What a learner is told is not needed here, so no table of sentences is.
    const { passed, findings, ...grade } = gradeDraw(draw, answers, practice.world, {
      lang,
      speak: () => '',
    });
    const criticalMissed = grade.criticalMissed.length > 0;
    const told = toldOf(draw, findings, lang);
    return {
      ...about,
      passed,
      criticalMissed,
      findings,
      could: couldOf(draw),
      told,
      asked: askedOf(draw, lang),
    };
  } catch (cause) {
    if (cause instanceof Undrawable) return leave('not drawn');
    if (cause instanceof GivenError) return leave('unread');
    throw cause;
  }
}

/** A mistake of an order can be made on every draw of it; of others, those that lead somewhere on this draw. */
function couldOf({ family, wrong }: Draw): Tried['could'] {
  return Object.fromEntries(
    family.asks.map(({ id, kind }) => [
      id,
      family.mistakes
        .filter(({ id: mistake, asks }) =>
          kind === 'order'
            ? asks.includes(id)
            : wrong.some((one) => one.ask === id && one.mistake.id === mistake),
        )
        .map((mistake) => mistake.id),
    ]),
  );
}

/** The mistakes of a finding: two made at once are two. */
export const mistakesOf = ({ mistake }: Pick<Finding, 'mistake'>): readonly string[] =>
  mistake === null ? [] : mistake.split('+');

function toldOf(draw: Draw, findings: readonly Finding[], lang: string): Tried['told'] {
  const made = new Set(findings.flatMap(mistakesOf));
  return Object.fromEntries(
    draw.family.mistakes
      .filter(({ id }) => made.has(id))
      .map(({ id, says }) => [id, textOf(says, lang, textsOf(draw, lang))]),
  );
}

const askedOf = (draw: Draw, lang: string): Tried['asked'] =>
  Object.fromEntries(
    draw.family.asks.map(({ id, prompt }) => [id, textOf(prompt, lang, textsOf(draw, lang))]),
  );
