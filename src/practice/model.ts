/**
 * What a family's model is: how drawn values become a job, what its right answers are, and how a person slips.
 * A slip changes the job as the person understands it, and the same computation then gives the person's answer; so a
 * wrong value is computed, never typed, and two slips can be put together.
 */
import type { Drawing, How } from '../drawing/types.ts';
import type { Catalogue } from '../run/catalogue.ts';
import type { Say, Step } from '../trade/answer.ts';
import type { FillTables } from '../trade/fill.ts';
import type { Ticks } from '../trade/length.ts';
import type { AskKind, Family, Precedence } from './family.ts';

/** What lies outside a family and its seed: the catalogue and the tables that the site's content holds. */
export interface World {
  readonly catalogue: Catalogue;
  readonly fillTables: FillTables;
}

/** A number in the ask's unit, an option's id, or items' ids in order. */
export type Answer = number | string | readonly string[];

/** Answers by the ask's id. */
export type Answers = Readonly<Record<string, Answer>>;

/** A value that texts and givens may name. */
export type Fact =
  | { readonly kind: 'length'; readonly ticks: Ticks }
  | { readonly kind: 'number'; readonly value: number; readonly text?: string }
  | { readonly kind: 'word'; readonly value: string }
  | { readonly kind: 'rows'; readonly rows: readonly Facts[] };
export type Facts = { readonly [name: string]: Fact };

/** What a model takes of each parameter: its kind, or the words it knows. */
export type Want = 'length' | 'whole' | 'decimal' | 'some' | readonly string[] | { readonly rows: Wants };
export type Wants = { readonly [parameter: string]: Want };

type DrawnOf<W extends Want> = W extends 'length'
  ? Ticks
  : W extends 'whole' | 'decimal'
    ? number
    : W extends 'some'
      ? readonly string[]
      : W extends readonly (infer Word)[]
        ? Word
        : W extends { readonly rows: infer R extends Wants }
          ? readonly Drawn<R>[]
          : never;
/** The drawn values as the model sees them. */
export type Drawn<W extends Wants> = { readonly [K in keyof W]: DrawnOf<W[K]> };

interface AskOf<Plan> {
  readonly answer: (plan: Plan, world: World) => Answer;
  /** The working of the right answer. */
  readonly steps: (plan: Plan, world: World) => readonly Step[];
  /** Earlier asks that this one builds on, and the answer that is right for what the person answered there. */
  readonly follows?: {
    readonly asks: readonly string[];
    readonly answer: (plan: Plan, world: World, earlier: Answers) => Answer | null;
  };
  /** Order asks: what the person is shown, in the order shown, and what must come before what among it. */
  readonly order?: (plan: Plan) => {
    readonly shown: readonly string[];
    readonly precedence: readonly Precedence[];
  };
}
export interface ModelAsk<Plan> extends AskOf<Plan> {
  readonly kind: AskKind;
}

/**
 * A person's slip: the job as he takes it, or `null` where this slip cannot be made or would change nothing.
 * `told` is the mistake's `with` in the family's file.
 */
export type Slip<Plan> = (plan: Plan, world: World, told: Readonly<Record<string, string>>) => Plan | null;

export interface Model<W extends Wants, Plan> {
  readonly wants: W;
  /** The job in these values, or `null` where they make no sound one (drawn again). */
  readonly plan: (drawn: Drawn<W>, world: World, family: Family) => Plan | null;
  readonly facts: (plan: Plan, world: World) => Facts;
  readonly asks: Readonly<Record<string, ModelAsk<Plan>>>;
  readonly slips: Readonly<Record<string, Slip<Plan>>>;
  readonly figures: (plan: Plan, world: World, how: How) => readonly Drawing[];
  /** Lengths that the figures give in words, for the proof that figure and givens agree. */
  readonly figured: (plan: Plan) => readonly Ticks[];
  /** Sentences that the model's steps may say. */
  readonly says: readonly Say['say'][];
}

declare const hidden: unique symbol;
/** A job whose shape only its own model knows. */
export type AnyPlan = { readonly [hidden]: 'plan' };
export type AnyModel = Omit<Model<Wants, AnyPlan>, 'plan'> & {
  readonly plan: (drawn: unknown, world: World, family: Family) => AnyPlan | null;
};

/**
 * Closes a model over its own plan, so that the engine can hold models of every kind in one table. Sound because a
 * plan only ever goes back to the model it came from, and because the reader of families holds each family's
 * parameters against `wants`.
 */
export function model<const W extends Wants, Plan>(made: Model<W, Plan>): AnyModel {
  return made as unknown as AnyModel;
}
