/** The shape of an act that the register's page can sign: data for one form. Pure. */
import type { Regrade } from '../../register/checks.ts';
import type { Judged } from '../../register/judged.ts';
import type { Writing, Written } from '../../register/write.ts';
import type { Fault } from '../../trade/given.ts';
import type { SiteKey } from '../speak.ts';
import type { Looking, Option } from './looking.ts';

/** What is written in the form, by field; every value is a text, empty until it is given. */
export type Values = Readonly<Record<string, string>>;

export interface ActField {
  /** As the faults of the act call it. */
  readonly name: string;
  readonly label: string;
  readonly hint?: string;
  /**
   * `public`: a public key from its file. `file`: the text of a JSON file. `moment`: day and time, `2026-03-09T06:00`, as a
   * clock in the register's zone shows them.
   */
  readonly is: 'line' | 'text' | 'pick' | 'public' | 'file' | 'moment';
  /** What a pick may be. */
  readonly options?: readonly Option[];
  /** What it is until somebody writes something else. */
  readonly start?: string;
}

/** What an act needs beside the register. */
export interface Means {
  /** Grades answers again; undefined until it is fetched, and then an act that grades has no form yet. */
  readonly regrade: Regrade | undefined;
}

export interface Act {
  readonly id: string;
  readonly title: SiteKey;
  readonly button: SiteKey;
  /** It grades answers again. */
  readonly grades?: true;
  readonly done: SiteKey;
  /** Why it cannot be signed on this device now; `undefined` when it can. */
  readonly bar: (looking: Looking) => SiteKey | undefined;
  readonly fields: (looking: Looking, values: Values) => readonly ActField[];
  /** What is said before the passphrase. */
  readonly before?: (looking: Looking, values: Values) => readonly string[];
  readonly faults: (judged: Judged, values: Values, writing: Writing, means: Means) => readonly Fault[];
  readonly write: (judged: Judged, values: Values, writing: Writing, means: Means) => Promise<Written>;
}

/** Ties an act of the register to what its form gives. */
export function signs<Given>(
  given: (values: Values, judged: Judged) => Given,
  faults: (judged: Judged, given: Given, writing: Writing, means: Means) => readonly Fault[],
  write: (judged: Judged, given: Given, writing: Writing, means: Means) => Promise<Written>,
): Pick<Act, 'faults' | 'write'> {
  return {
    faults: (judged, values, writing, means) => faults(judged, given(values, judged), writing, means),
    write: (judged, values, writing, means) => write(judged, given(values, judged), writing, means),
  };
}

/**
 * What stands in the fields: what was written, else what each starts with. What a pick no longer offers was chosen for
 * something else (an entry of another person, of another key): it stands for nothing.
 */
export const valuesOf = (fields: readonly ActField[], written: Values): Values =>
  Object.fromEntries(
    fields.map(({ name, is, options = [], start = '' }) => {
      const text = written[name]?.trim() ?? start;
      const offered = is !== 'pick' || options.some(({ value }) => value === text);
      return [name, offered ? text : start];
    }),
  );
