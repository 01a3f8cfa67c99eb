/**
 * What a calculator's sheet asks, as data: a field is its kind, its words and its limits. `ReadOf` is the type of what a
 * form of such fields reads, so that a sum cannot be handed what its form does not ask.
 */
import type { Ticks } from '../../trade/length.ts';
import type { SiteKey } from '../speak.ts';
import type { TapeReading, TapeScale } from '../tape.ts';
import type { MeasureKind } from './measure.ts';

/** The room of a number; a bound that is left out does not bind. */
export interface Bounds {
  /** Not this itself. */
  readonly above?: number;
  readonly from?: number;
  readonly below?: number;
  readonly upTo?: number;
}

interface Common {
  readonly label: SiteKey;
  /** Words under the entry that belong to it. */
  readonly hint?: SiteKey;
  /** May be left empty. */
  readonly optional?: true;
  /** Asked only while a choice or a truth of the same form reads one of these. */
  readonly only?: { readonly field: string; readonly is: readonly (string | boolean)[] };
}

/** Feet, inches, part inch; `inches` for what is short. */
export interface LengthField extends Common {
  readonly kind: 'length';
  readonly scale: TapeScale;
  readonly from: 'above 0' | 'from 0';
}
/** A length as a text in any form that is read. */
export interface TextField extends Common {
  readonly kind: 'text';
}
/** Several lengths, parted by semicolons. */
export interface LengthsField extends Common {
  readonly kind: 'lengths';
}
/** Any words, as the mark on a piece. */
export interface WordsField extends Common {
  readonly kind: 'words';
}
/** A small size in inches: a decimal, a fraction, or millimetres with their unit. */
export interface SizeField extends Common {
  readonly kind: 'size';
  readonly bounds: Bounds;
}
export interface NumberField extends Common {
  readonly kind: 'number';
  readonly bounds: Bounds;
  /** Its unit, for what it reads in metric. */
  readonly as: MeasureKind;
}
/** A temperature or a difference of two, in °F; written in the degrees of the device. Its label has a place {unit}. */
export interface TemperatureField extends Common {
  readonly kind: 'temperature';
  readonly apart?: true;
}
export interface CountField extends Common {
  readonly kind: 'count';
  readonly from: 0 | 1;
}
type Chosen = string | number | boolean | null;
export interface Option<Value extends Chosen = Chosen> {
  readonly value: Value;
  /** Words; an option without them is its text, or its value as it stands. */
  readonly label?: SiteKey;
  readonly text?: string;
}
export interface ChoiceField extends Common {
  readonly kind: 'choice';
  readonly options: readonly Option[];
  /** The edition of the code: begins as the device is set. */
  readonly edition?: true;
  /** Stands as a list however few the options are. */
  readonly list?: true;
  /** Words of an empty choice; with it the options stand as a list. */
  readonly none?: SiteKey;
}
/** Asked alike wherever an edition decides. */
export const editionField = {
  kind: 'choice',
  label: 'sums.edition',
  edition: true,
  options: [{ value: 2023 }, { value: 2020 }, { value: 2017 }],
} as const satisfies ChoiceField;
export interface TruthField extends Common {
  readonly kind: 'truth';
}
export type PlainField =
  | LengthField
  | TextField
  | LengthsField
  | WordsField
  | SizeField
  | NumberField
  | TemperatureField
  | CountField
  | ChoiceField
  | TruthField;

/** Rows of the same few fields. */
export interface RowsField extends Common {
  readonly kind: 'rows';
  readonly fields: Readonly<Record<string, PlainField>>;
  readonly least: 0 | 1;
  /** Number of the first row; 1 unless given. */
  readonly first?: 0;
  /** Names one row: has the place {number}. */
  readonly row: SiteKey;
  readonly add: SiteKey;
  /** Has the place {number}. */
  readonly takeOut: SiteKey;
  /** What a new row begins with. */
  readonly fresh: Readonly<Record<string, unknown>>;
}

export type Field = PlainField | RowsField;
export type Fields = Readonly<Record<string, Field>>;

type ValueOf<F> = F extends { readonly kind: 'length' | 'text' }
  ? Ticks
  : F extends { readonly kind: 'lengths' }
    ? readonly Ticks[]
    : F extends { readonly kind: 'size' | 'number' | 'temperature' | 'count' }
      ? number
      : F extends { readonly kind: 'truth' }
        ? boolean
        : F extends { readonly kind: 'words' }
          ? string
          : F extends { readonly kind: 'choice'; readonly options: readonly Option<infer Value>[] }
            ? Value
            : F extends { readonly kind: 'rows'; readonly fields: infer Inner }
              ? readonly ReadOf<Inner>[]
              : never;

type Needless = { readonly optional: true } | { readonly only: object };

/** What a form reads: fields that may be empty, or are not always asked, may be undefined. */
export type ReadOf<Fs> = {
  readonly [K in keyof Fs]: Fs[K] extends Needless ? ValueOf<Fs[K]> | undefined : ValueOf<Fs[K]>;
};

/** What stands in one entry, as written. */
export type Written = string | boolean | TapeReading | readonly WrittenRow[];
export interface WrittenRow {
  /** Stays with the row while others come and go. */
  readonly id: number;
  readonly form: Form;
}
/** A form as it stands, by the names of its fields. */
export type Form = Readonly<Record<string, Written>>;
