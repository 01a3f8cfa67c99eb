/**
 * What a computation hands out: the result, the working that a person can follow, and where its figures come from.
 * The words of a step are not here: `say` names an entry of content/words, `values` fill its places.
 */

/** A sentence by its key in content/words (`group.key`) and the values for its `{places}`. */
export interface Say {
  readonly say: string;
  readonly values?: Readonly<Record<string, string | number>>;
}

/** One line of the working; `value` and `unit` where the line ends in a number. */
export interface Step extends Say {
  readonly value?: string | number;
  readonly unit?: string;
}

/** How we know a figure: read on a page, remembered, trade habit without a document, or invented for training. */
export type Seen = 'page' | 'memory' | 'common practice' | 'training value';

export interface Source {
  readonly id: string;
  readonly document: string;
  readonly edition: string;
  readonly where: string;
  readonly seen: Seen;
}

export interface Answered<Result> {
  readonly result: Result;
  readonly steps: readonly Step[];
  readonly sources: readonly Source[];
}
