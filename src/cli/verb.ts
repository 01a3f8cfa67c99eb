/** What a group of the command is made of. A file of a group exports `group: Group`; bin.ts finds it by its name. */

/** An option of a verb: `--name VALUE`, or a switch when `value` is left out. */
export interface Option {
  /** How the value is named in the manual, as `TEXT`. */
  readonly value?: string;
  readonly line: string;
  /** The verb cannot do without it; its help shows it without brackets. */
  readonly needed?: boolean;
  /** May stand more than once. */
  readonly many?: true;
}

/** How a verb was called: its words and options are known to be the ones it takes. */
export interface Call {
  /** Words after the verb, without the file of the input. */
  readonly words: readonly string[];
  /** Value of an option, or undefined when it was not given. */
  text(option: string): string | undefined;
  /** Every value of an option that may stand more than once, in order. */
  all(option: string): readonly string[];
  /** Whether a switch was given. */
  has(option: string): boolean;
  /** The JSON of the file named last, or of standard input. @throws {GivenError} when it cannot be read */
  input(): Promise<unknown>;
}

/** What is printed, and the exit: 0 answered, 1 a check found something (few verbs), 2 bad input. */
export interface Outcome {
  readonly json: unknown;
  readonly exit: 0 | 1 | 2;
}

export interface Verb {
  readonly name: string;
  /** One line for the list of verbs. */
  readonly line: string;
  /** Names of the words it needs, in order; a last one that ends in `…` stands for any number, none included. */
  readonly words?: readonly string[];
  /** Takes JSON from a file named after the words, or from standard input (`-`, or nothing). */
  readonly takesInput?: true;
  readonly options?: Readonly<Record<string, Option>>;
  /** Further lines of the manual: fields of the input, what comes back. */
  readonly manual?: () => readonly string[];
  /** @throws {GivenError} what cannot be used; it becomes `ok:false` with all faults and exit 2 */
  run(call: Call): Outcome | Promise<Outcome>;
}

export interface Group {
  readonly name: string;
  readonly line: string;
  readonly verbs: readonly Verb[];
}
