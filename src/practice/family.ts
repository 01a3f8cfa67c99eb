/**
 * A practice family as data: what a file of content/scenarios holds once it is read. Its arithmetic is not here:
 * `model` and each mistake's `slip` name typed functions (models/). Texts are keyed by language.
 */
import type { Ticks } from '../trade/length.ts';

/** One item that must come before another. */
export type Precedence = readonly [before: string, after: string];

/** One text in every language it has, by language key. */
export type Texts = Readonly<Record<string, string>>;

/** What a seed may choose: each kind draws one value. The order of the file is the order of the draw. */
export type Parameter =
  | { readonly length: { readonly from: Ticks; readonly to: Ticks; readonly step: Ticks } }
  | { readonly whole: { readonly from: number; readonly to: number } }
  | { readonly decimal: { readonly from: number; readonly to: number; readonly step: number } }
  | { readonly choice: readonly string[] }
  | { readonly list: ListParameter }
  | { readonly some: SomeParameter };

/** Between `from` and `to` rows, each with its own parameters. */
export interface ListParameter {
  readonly from: number;
  readonly to: number;
  readonly of: Readonly<Record<string, Parameter>>;
}

/** Between `from` and `to` of the named things, those of `always` among them, in a chance order. */
export interface SomeParameter {
  readonly from: number;
  readonly to: number;
  readonly of: readonly string[];
  readonly always: readonly string[];
}

/** A line of what the person is told. `fact` names a fact of the model; with `each`, one line a row of that fact. */
export interface GivenLine {
  readonly id: string;
  readonly label: Texts;
  readonly fact: string;
  readonly each?: string | undefined;
  readonly unit: string;
  /** Template; the fact's own text when left out. */
  readonly text?: Texts | undefined;
}

/** Units of numbers: of answers, and of what is given. Lengths may be written as a length text too. */
export const UNITS = [
  'in',
  'in2',
  'ft',
  'mm',
  'lb',
  'lbPerFt',
  'deg',
  'degF',
  'degC',
  'A',
  'ohm',
  'count',
  'percent',
  'hour',
  'minute',
] as const;
export type Unit = (typeof UNITS)[number];

interface AskBase {
  readonly id: string;
  readonly prompt: Texts;
}
export interface Part {
  readonly id: string;
  readonly text: Texts;
}

interface NumberForm extends AskBase {
  readonly unit: Unit;
  /** In the unit. An answer holds when it is no farther than this from the right one. */
  readonly tolerance: number;
  /** Where a right answer may lie, in the unit; the proofs hold every draw against it. */
  readonly range: { readonly from: number; readonly to: number };
  /** What it means when the answer is above the right one, and below it. */
  readonly long: Texts;
  readonly short: Texts;
}
interface ChoiceForm extends AskBase {
  readonly options: readonly Part[];
}

export interface NumberAsk extends NumberForm {
  readonly kind: 'number';
}

export interface ChoiceAsk extends ChoiceForm {
  readonly kind: 'choice';
}

/** Something read off a figure: a number, or one of several. */
export type ReadingAsk = (NumberForm | ChoiceForm) & { readonly kind: 'reading' };

/** Go on, ask first, or stop the job. */
export interface StopAsk extends AskBase {
  readonly kind: 'stop';
}

export interface OrderAsk extends AskBase {
  readonly kind: 'order';
  /** In one order that holds. */
  readonly items: readonly Part[];
  /** What comes directly before what; what lies further apart follows from it. */
  readonly precedence: readonly Precedence[];
}

/** What is placed on a drawn run. */
export const PLACED = ['support', 'jumper', 'splice', 'anchor'] as const;
export type Placed = (typeof PLACED)[number];

/** Things put where they belong on a drawn run. */
export interface PlaceAsk extends AskBase {
  readonly kind: 'place';
  readonly what: readonly Placed[];
  /** Inches along the leg. */
  readonly tolerance: number;
}

/** What is wrong with a drawn run, and where. */
export interface FaultsAsk extends AskBase {
  readonly kind: 'faults';
  /** The rules that may be named. */
  readonly rules: readonly Part[];
  /** Inches along the leg. */
  readonly tolerance: number;
}

/** Which pieces are cut from which lengths. */
export interface SticksAsk extends AskBase {
  readonly kind: 'sticks';
}

/** A part of a step: an ask that stands alone. */
export type PartAsk = NumberAsk | ChoiceAsk | StopAsk | ReadingAsk | PlaceAsk | SticksAsk;

/** One step of a job, answered as a whole; later steps are marked from what was answered here. */
export interface JobAsk extends AskBase {
  readonly kind: 'job';
  readonly parts: readonly PartAsk[];
}

export type Ask =
  | NumberAsk
  | ChoiceAsk
  | ReadingAsk
  | StopAsk
  | OrderAsk
  | PlaceAsk
  | FaultsAsk
  | SticksAsk
  | JobAsk;
export type AskKind = Ask['kind'];

/** A mistake people make: the slip that leads to its answer, the asks on which it is looked for, and what is said. */
export interface Mistake {
  readonly id: string;
  readonly asks: readonly string[];
  /** Name of the model's slip, or of the two that are made together (the first goes first). */
  readonly slip: string | readonly [string, string];
  /** What the slip is told, where it needs telling. */
  readonly with?: Readonly<Record<string, string>> | undefined;
  readonly says: Texts;
}

/** One seed worked by hand by the author, independently of the program. */
export interface Worked {
  readonly seed: string;
  /** Givens as the author read them: a length text, a number or a word, by the given's id. */
  readonly givens: Readonly<Record<string, string | number>>;
  readonly answers: Readonly<Record<string, unknown>>;
  /** The sum as the author wrote it, a line each. */
  readonly sum: readonly string[];
}

export interface Family {
  readonly id: string;
  /** Of its sheet among those of its first task; never given away again. */
  readonly number: number;
  readonly title: Texts;
  readonly tasks: readonly string[];
  readonly model: string;
  /** Least share of asks that hold, in hundredths. */
  readonly mark: number;
  /** Asks that must hold, whatever the rest. */
  readonly critical: readonly string[];
  readonly parameters: Readonly<Record<string, Parameter>>;
  readonly text: Texts;
  /** Words of a fact that is a word: fact, then value, then language. */
  readonly words: Readonly<Record<string, Readonly<Record<string, Texts>>>>;
  readonly givens: readonly GivenLine[];
  readonly asks: readonly Ask[];
  readonly mistakes: readonly Mistake[];
}

/** A family as its author hands it in: with a seed that he has worked, which only the proofs ask for. */
export interface AuthoredFamily extends Family {
  readonly worked: Worked;
}

/** The kinds of a family's asks, each once, in the order of the asks. */
export function kindsOf(family: Family): readonly AskKind[] {
  return [...new Set(family.asks.map((a) => a.kind))];
}
