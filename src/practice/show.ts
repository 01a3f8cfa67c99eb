/** A draw as it is shown to a person, in one language: never its answer. */
import type { Drawing, How } from '../drawing/types.ts';
import { inches } from '../trade/length.ts';
import { askedIn } from './answer.ts';
import type { Draw } from './draw.ts';
import type { Ask, AskKind, GivenLine } from './family.ts';
import { kindOf } from './kinds/index.ts';
import type { Showing, ShownForm } from './kinds/kind.ts';
import type { Fact, Facts, World } from './model.ts';
import { factText, factTexts, type Language, textOf, textsOf } from './words.ts';

export interface ShownGiven {
  readonly id: string;
  readonly label: string;
  readonly value: number | string;
  /** Of the value; empty for a word or a count. */
  readonly unit: string;
  readonly text: string;
}

export type { ShownPart } from './kinds/kind.ts';

export interface ShownAsk extends ShownForm {
  readonly id: string;
  readonly kind: AskKind;
  readonly prompt: string;
}

export interface Shown {
  readonly id: string;
  readonly seed: string;
  readonly generator: string;
  readonly title: string;
  readonly tasks: readonly string[];
  readonly text: string;
  readonly givens: readonly ShownGiven[];
  readonly figures: readonly { readonly svg: string; readonly words: string }[];
  readonly asks: readonly ShownAsk[];
}

/** A draw with its figures. `how` says for which form and in which colours they are drawn. */
export function showDraw(draw: Draw, world: World, language: Language, how: Omit<How, 'speak'>): Shown {
  const figures = figuresOf(draw, world, language, how);
  return { ...tellDraw(draw, world, language), figures: figures.map(({ svg, words }) => ({ svg, words })) };
}

/**
 * The figures alone: for a page that draws them anew when its form changes.
 *
 * @throws {Error} when the catalogue lacks what the model draws, or the words a sentence: faults of the content, which
 *   its check and the proofs find
 */
export function figuresOf(
  draw: Draw,
  world: World,
  { speak }: Language,
  how: Omit<How, 'speak'>,
): readonly Drawing[] {
  return draw.model.figures(draw.plan, world, { ...how, speak });
}

/** A draw without its figures. */
export function tellDraw(draw: Draw, world: World, language: Language): Shown {
  const { lang } = language;
  const { family, seed, generator } = draw;
  const texts = textsOf(draw, lang);
  return {
    id: family.id,
    seed,
    generator,
    title: textOf(family.title, lang, {}),
    tasks: family.tasks,
    text: textOf(family.text, lang, texts),
    givens: family.givens.flatMap((line) => givenOf(draw, line, lang)),
    figures: [],
    asks: family.asks.map((ask) => shownAsk(draw, ask, world, language, texts)),
  };
}

function givenOf({ family, facts }: Draw, line: GivenLine, lang: string): readonly ShownGiven[] {
  if (line.each === undefined) return [shownGiven(line, line.id, facts, lang)];
  const rows = facts[line.each];
  if (rows?.kind !== 'rows') throw new Error(`${family.id}: ${line.each} has no rows`);
  return rows.rows.map((row, i) => {
    const numbered: Facts = { ...row, number: { kind: 'number', value: i + 1 } };
    return shownGiven(line, `${line.id}-${i + 1}`, numbered, lang);
  });

  function shownGiven(given: GivenLine, id: string, row: Facts, language: string): ShownGiven {
    const fact = row[given.fact];
    if (fact === undefined) throw new Error(`${family.id}: no fact ${given.fact}`);
    const texts = factTexts(family, row, language);
    return {
      id,
      label: textOf(given.label, language, texts),
      ...shownValue(fact, given.unit),
      text:
        given.text === undefined
          ? factText(family, given.fact, fact, language, texts)
          : textOf(given.text, language, texts),
    };
  }
}

function shownValue(fact: Fact, unit: string): { value: number | string; unit: string } {
  if (fact.kind === 'length') return { value: inches(fact.ticks), unit: 'in' };
  if (fact.kind === 'number') return { value: fact.value, unit };
  return { value: fact.kind === 'word' ? fact.value : '', unit };
}

function shownAsk(
  draw: Draw,
  ask: Ask,
  world: World,
  { lang, speak }: Language,
  texts: Readonly<Record<string, string>>,
): ShownAsk {
  const showing: Showing = {
    textOf: ({ text }) => textOf(text, lang, texts),
    say: (key) => speak({ say: `practice.${key}` }),
    asked: askedIn(draw, ask.id, world),
  };
  const base = { id: ask.id, kind: ask.kind, prompt: textOf(ask.prompt, lang, texts) };
  return { ...base, ...kindOf(ask).show(ask, showing) };
}
