/**
 * What a family's model is: how drawn values become a job, what its right answers are, and how a person slips.
 * A slip changes the job as the person understands it, and the same computation then gives the person's answer; so a
 * wrong value is computed, never typed, and two slips can be put together.
 */
import type { Drawing, How } from '../drawing/types.ts';
import type { Catalogue } from '../run/catalogue.ts';
import type { ResolvedRun } from '../run/resolved.ts';
import type { RunTables } from '../run/tables.ts';
import type { AmpacityTable } from '../trade/ampacity.ts';
import type { Say, Step } from '../trade/answer.ts';
import type { ExpansionTable } from '../trade/expansion.ts';
import type { FillTables } from '../trade/fillTables.ts';
import type { GroundpathTable } from '../trade/groundpath.ts';
import type { Ticks } from '../trade/length.ts';
import type { MarkingRule } from '../trade/marking.ts';
import type { SeparationRule } from '../trade/separation.ts';
import type { OpenGapRule } from '../trade/transition.ts';
import type { Ask, AskKind, Family, Precedence } from './family.ts';
import type { Figured } from './figured.ts';

/** The trade's tables that a model may need beside those a run is judged by. */
export interface PracticeTables extends RunTables {
  readonly groundpath: GroundpathTable;
  readonly expansion: ExpansionTable;
  readonly transition: OpenGapRule;
  readonly ampacity: AmpacityTable;
  readonly marking: MarkingRule;
  readonly separation: SeparationRule;
}

/** The part of the world that is data: the catalogue and the tables of the site's content, nothing adopted. */
export interface WorldData {
  readonly catalogue: Catalogue;
  readonly fillTables: FillTables;
  readonly tables: PracticeTables;
}

/** What lies outside a family and its seed. A page brings no more models than its families name. */
export interface World extends WorldData {
  readonly models: ReadonlyMap<string, AnyModel>;
}

/** Something placed: inches along the leg. */
export interface PlacedAt {
  readonly leg: string;
  readonly at: number;
  readonly what: string;
}
/** A fault that was named: inches along the leg. */
export interface FaultAt {
  readonly leg: string;
  readonly at: number;
  readonly rule: string;
}
/** One length and the pieces cut from it, in inches. */
export interface StickCut {
  readonly from: string;
  readonly pieces: readonly number[];
}

/** A number in the ask's unit, an option's id, items' ids in order, marks on a run, cut lengths; a job's by part. */
export type Answer =
  | number
  | string
  | readonly string[]
  | readonly PlacedAt[]
  | readonly FaultAt[]
  | readonly StickCut[]
  | { readonly [part: string]: Answer };

/** Answers by the ask's id. */
export type Answers = Readonly<Record<string, Answer>>;

/** A value that texts and givens may name. */
export type Fact =
  | { readonly kind: 'length'; readonly ticks: Ticks }
  | { readonly kind: 'number'; readonly value: number; readonly text?: string }
  /** `words`: the family's words that say it, where those do not have the fact's own name. */
  | { readonly kind: 'word'; readonly value: string; readonly words?: string }
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
  /** Place and faults: the run as it is drawn to be answered on. */
  readonly on?: (plan: Plan, world: World) => ResolvedRun;
  /** Sticks: what there is to cut from, what is to be cut, and what the saw takes. */
  readonly sticks?: (plan: Plan, world: World) => SticksGiven;
  /** Where more answers than one hold: whether this one does. Left out, only the right one of `answer` holds. */
  readonly holds?: (plan: Plan, world: World, given: Answer, ask: Ask) => boolean;
  /** Whether it is critical in this draw, where the family counts it among its critical asks; left out, it is. */
  readonly critical?: (plan: Plan, world: World) => boolean;
  /** Whether a slip that was made has anything to do with this ask; left out, it always has. `plan` is the right one. */
  readonly touched?: (taken: Plan, world: World, plan: Plan) => boolean;
  /** Slips that an answer shows which is no slip's own, gravest first. */
  readonly blames?: (plan: Plan, world: World, given: Answer, ask: Ask) => readonly string[];
  /** What is said of an answer that does not hold, beside the mistake; it must not give the right one away. */
  readonly notes?: (plan: Plan, world: World, given: Answer) => readonly Say[];
}

/** What a cutting plan starts from. Lengths in ticks. */
export interface SticksGiven {
  /** Whole lengths and remnants; `many` when there are as many as are wanted. */
  readonly from: readonly { readonly id: string; readonly length: Ticks; readonly many: boolean }[];
  readonly pieces: readonly Ticks[];
  readonly kerf: Ticks;
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
  /** What the figures show of the plan, for the proof that they agree; empty only where there are none. */
  readonly figured: (plan: Plan, world: World) => readonly Figured[];
  /** A run is laid out for each draw: proven over fewer seeds, for what that takes. */
  readonly laidOut?: boolean;
  /** Sentences that the model's steps and notes may say. */
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
