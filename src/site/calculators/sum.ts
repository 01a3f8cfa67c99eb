/**
 * A calculator's sheet as data: what is asked, the example it opens with, the core's function, how the answer is said,
 * what is drawn. `islands/SumSheet.tsx` is the one sheet that shows them all.
 */
import type { Sheet } from '../../drawing/svg.ts';
import type { How } from '../../drawing/types.ts';
import type { Answered } from '../../trade/answer.ts';
import type { SiteKey, Tell } from '../speak.ts';
import type { Fields, ReadOf } from './fields.ts';
import type { Measure } from './measure.ts';

/** The calculators that have a sheet of this kind, in the order of the job. */
export const sumIds = [
  'length',
  'offset',
  'arc',
  'mark',
  'mitre',
  'notch',
  'span',
  'equivalent',
  'vertical',
  'beam',
  'section',
  'expansion',
  'transition',
  'jumper',
  'groundpath',
  'radius',
  'ampacity',
  'separation',
  'marking',
] as const;
export type SumId = (typeof sumIds)[number];

/** A sentence of the page; a figure in it is written as the device is set. */
export interface Line {
  readonly key: SiteKey;
  readonly values?: Readonly<Record<string, string | number | Measure>>;
}

/** A row of the list under the answer. */
export interface ResultRow {
  readonly label: Line;
  readonly value: Line | Measure | string;
}

/** How an answer is said. */
export interface Said {
  /** What was asked, small, above. */
  readonly asked?: Line;
  /** The answer, in trade words, large. */
  readonly huge: Line;
  /** What else belongs to it. */
  readonly more?: readonly Line[];
  readonly rows?: readonly ResultRow[];
}

/** What a figure is drawn with. */
export interface FigureHow extends How {
  readonly tell: Tell;
  /** A figure with its unit as a drawing letters it. */
  readonly letter: (measure: Measure) => string;
}

/** A fault between entries: the path of the one that says it, and its words. */
export type Clash = readonly [path: string, message: Line];

interface Spec<Fs extends Fields, Result extends object, Data> {
  readonly id: SumId;
  readonly fields: Fs;
  readonly example: ReadOf<Fs>;
  /** The fields with what the content adds to them, as the trays of the catalogue. */
  readonly fit?: (fields: Fields, data: Data) => Fields;
  /** What does not go together though each entry reads: path of the field (`points[0].at`), and words. */
  readonly check?: (given: ReadOf<Fs>) => readonly Clash[];
  /** The core's function over what the form read. May refuse with GivenError. */
  readonly work: (given: ReadOf<Fs>, data: Data) => Answered<Result>;
  readonly say: (result: Result, given: ReadOf<Fs>, data: Data) => Said;
  /** The figure in one form, or undefined where this answer has none. */
  readonly figure?: (result: Result, given: ReadOf<Fs>, how: FigureHow, data: Data) => Sheet | undefined;
  /** Under the figure: what is to scale. */
  readonly caption?: SiteKey;
}

type Given = Readonly<Record<string, unknown>>;

/** A sum whose own types are closed: only its own `work` meets what its own fields read. */
export interface Sum<Data = never> {
  readonly id: SumId;
  readonly fields: Fields;
  readonly example: Given;
  readonly fit?: (fields: Fields, data: Data) => Fields;
  readonly check?: (given: Given) => readonly Clash[];
  readonly work: (given: Given, data: Data) => Answered<object>;
  readonly say: (result: object, given: Given, data: Data) => Said;
  readonly figure?: (result: object, given: Given, how: FigureHow, data: Data) => Sheet | undefined;
  readonly caption?: SiteKey;
}

/** Ties fields, example, function and words together. `Data` is what the page hands the sheet from content. */
export const sum =
  <Data = undefined>() =>
  <const Fs extends Fields, Result extends object>(spec: Spec<Fs, Result, Data>): Sum<Data> =>
    spec as unknown as Sum<Data>;

export const line = (key: SiteKey, values?: Line['values']): Line =>
  values === undefined ? { key } : { key, values };
