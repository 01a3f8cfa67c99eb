/** From a family and a seed to one job with its right and wrong answers: the part of a draw that no language touches. */
import { GivenError } from '../trade/given.ts';
import { inches } from '../trade/length.ts';
import { answersApart } from './apart.ts';
import type { Ask, Family, Mistake, NumberAsk } from './family.ts';
import { GENERATOR, Generator } from './generator.ts';
import type { Answer, Answers, AnyModel, AnyPlan, Fact, Facts, ModelAsk, World } from './model.ts';
import { drawValues } from './parameters.ts';

/** Where a mistake leads on one ask. */
export interface Wrong {
  readonly mistake: Mistake;
  readonly ask: string;
  readonly answer: Answer;
}

export interface Draw {
  readonly family: Family;
  readonly seed: string;
  readonly generator: typeof GENERATOR;
  readonly model: AnyModel;
  readonly plan: AnyPlan;
  readonly facts: Facts;
  readonly right: Answers;
  /** Every mistake that this draw allows, in the order of the family's file. */
  readonly wrong: readonly Wrong[];
  /** Tries that came before and could not be used. */
  readonly rejected: number;
}

/** After so many tries a family is at fault, not the seed. */
export const MOST_TRIES = 2000;

/** No try of a seed can be used: what narrows the family leaves nothing that can be asked. */
export class Undrawable extends GivenError {
  constructor(family: string, seed: string) {
    super([
      {
        field: 'seed',
        value: seed,
        message: `none of ${MOST_TRIES} tries of ${family} can be used`,
        todo: 'narrow the family less',
      },
    ]);
    this.name = 'Undrawable';
  }
}

/**
 * The draw of a seed: the same on every device (SEED.md).
 * @throws {Undrawable} no try can be used: of a whole family its proofs find that first, of a narrowed one nothing does
 */
export function drawOf(family: Family, seed: string, world: World): Draw {
  const model = modelOf(family, world);
  const generator = Generator.of(family.id, seed);
  for (let rejected = 0; rejected < MOST_TRIES; rejected++) {
    const plan = model.plan(drawValues(family.parameters, generator), world, family);
    if (plan === null) continue;
    const draw = { family, seed, generator: GENERATOR, model, plan, rejected } as const;
    const full = { ...draw, ...answersOf(family, model, plan, world) };
    if (!answerGiven(full) && answersApart(full) && !wrongHolds(full, world)) return full;
  }
  throw new Undrawable(family.id, seed);
}

/** @throws {Error} when the world was brought without this family's model */
export function modelOf(family: Family, { models }: Pick<World, 'models'>): AnyModel {
  const model = models.get(family.model);
  if (model === undefined) throw new Error(`${family.id}: no model ${family.model}`);
  return model;
}

export function askOf(model: AnyModel, id: string): ModelAsk<AnyPlan> {
  const ask = model.asks[id];
  if (ask === undefined) throw new Error(`no ask ${id} in the model`);
  return ask;
}

/**
 * What is right on an ask for whoever goes on from what he answered before; null where the ask builds on no other, one of
 * those is blank, or nothing follows.
 * @param plan  the job as he takes it from there
 */
export function goingOn(
  { model }: Pick<Draw, 'model'>,
  { id }: Pick<Ask, 'id'>,
  plan: AnyPlan,
  answers: Answers,
  world: World,
): Answer | null {
  const { follows } = askOf(model, id);
  if (follows === undefined || follows.asks.some((one) => answers[one] === undefined)) return null;
  return follows.answer(plan, world, answers);
}

function answersOf(family: Family, model: AnyModel, plan: AnyPlan, world: World) {
  const right: Record<string, Answer> = {};
  for (const { id } of family.asks) right[id] = askOf(model, id).answer(plan, world);
  const wrong = family.mistakes.flatMap((mistake): Wrong[] => {
    const taken = slip(model, mistake, plan, world);
    if (taken === null) return [];
    return mistake.asks
      .filter((ask) => askOf(model, ask).touched?.(taken, world, plan) ?? true)
      .map((ask) => ({ mistake, ask, answer: askOf(model, ask).answer(taken, world) }));
  });
  return { facts: model.facts(plan, world), right, wrong };
}

/** The job as someone takes it who makes this mistake. */
export function slip(model: AnyModel, mistake: Mistake, plan: AnyPlan, world: World): AnyPlan | null {
  let taken: AnyPlan | null = plan;
  for (const name of [mistake.slip].flat()) {
    const made = model.slips[name];
    if (made === undefined) throw new Error(`no slip ${name} in the model`);
    taken = taken === null ? null : made(taken, world, mistake.with ?? {});
  }
  return taken;
}

/** Whether a mistake's answer holds by chance, where more answers than one do. */
function wrongHolds({ family, model, plan, wrong }: Draw, world: World): boolean {
  return wrong.some(({ ask: id, answer }) => {
    const ask = family.asks.find((one) => one.id === id);
    return ask !== undefined && (askOf(model, id).holds?.(plan, world, answer, ask) ?? false);
  });
}

/** Asks that must hold in this draw. */
export const criticalIn = ({ family, model, plan }: Draw, world: World): readonly string[] =>
  family.critical.filter((id) => askOf(model, id).critical?.(plan, world) ?? true);

interface NumberAsked {
  /** `cut`, or of a job `cuts.l1`. */
  readonly at: string;
  readonly ask: NumberAsk;
  readonly right: number;
}

/** The numbers that a draw asks for, the parts of a job among them. */
export const numbersAsked = ({ family, right }: Pick<Draw, 'family' | 'right'>): readonly NumberAsked[] =>
  family.asks.flatMap((ask): readonly NumberAsked[] => {
    if (ask.kind === 'number') return [{ at: ask.id, ask, right: right[ask.id] as number }];
    if (ask.kind !== 'job') return [];
    return ask.parts.flatMap((part) =>
      part.kind === 'number'
        ? [{ at: `${ask.id}.${part.id}`, ask: part, right: (right[ask.id] as Answers)[part.id] as number }]
        : [],
    );
  });

/** Whether a given shows a right number as it stands. */
function answerGiven(draw: Draw): boolean {
  const { family, facts } = draw;
  return numbersAsked(draw).some(({ ask, right }) => {
    // A count is a small number that any other may happen to be.
    if (ask.unit === 'count') return false;
    return family.givens.some((given) =>
      numbersOf(facts[given.each ?? given.fact], given.fact, given.unit).some(
        ({ value, unit }) => unit === ask.unit && Math.abs(value - right) <= ask.tolerance + 1e-9,
      ),
    );
  });
}

/** The numbers that a fact shows, with their unit. */
export function numbersOf(
  fact: Fact | undefined,
  name: string,
  unit: string,
): { value: number; unit: string }[] {
  if (fact === undefined || fact.kind === 'word') return [];
  if (fact.kind === 'length') return [{ value: inches(fact.ticks), unit: 'in' }];
  if (fact.kind === 'number') return [{ value: fact.value, unit }];
  return fact.rows.flatMap((row) => numbersOf(row[name], name, unit));
}
