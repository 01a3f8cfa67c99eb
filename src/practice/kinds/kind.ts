/** What a kind of ask means. A new kind is a file here and a line in `index.ts`. */
import type { Ask } from '../family.ts';
import type { Answer, SticksGiven } from '../model.ts';

export interface ShownPart {
  readonly id: string;
  readonly text: string;
}

/** What this draw shows for an ask, against which an answer is read. */
export interface Asked {
  /** Order: the items shown. */
  readonly items: readonly string[];
  /** Place and faults: length of each leg of the run, in inches, by its id. */
  readonly legs: ReadonlyMap<string, number>;
  readonly sticks: SticksGiven | undefined;
}

export type Read<V> =
  /** `null`: blank. */
  { readonly answer: V | null } | { readonly unread: readonly Unread[] };

/** What of an answer cannot be read. */
export interface Unread {
  /** Path inside the answer: `` for the whole of it, `[2].at`, `l1[0].leg`. */
  readonly at: string;
  readonly value: unknown;
  readonly message: string;
  readonly todo: string;
}

/** The whole of an answer cannot be read. */
export const unread = (
  value: unknown,
  message: string,
  todo: string,
): { readonly unread: readonly Unread[] } => ({
  unread: [{ at: '', value, message, todo }],
});

/** How texts come into an ask as it is shown. */
export interface Showing {
  readonly textOf: (part: { readonly text: Readonly<Record<string, string>> }) => string;
  readonly say: (key: string) => string;
  readonly asked: Asked;
}

/** What a kind adds to an ask as it is shown. */
export interface ShownForm {
  readonly unit?: string;
  readonly tolerance?: number;
  readonly options?: readonly ShownPart[];
  readonly items?: readonly ShownPart[];
  readonly parts?: readonly (ShownForm & {
    readonly id: string;
    readonly kind: Ask['kind'];
    readonly prompt: string;
  })[];
}

export interface Kind<A, V> {
  readonly read: (ask: A, value: unknown, asked: Asked) => Read<V>;
  /** Whether an answer is this one, inside the tolerance. */
  readonly same: (ask: A, given: V, wanted: V) => boolean;
  /** Not the same, and within twice the tolerance. */
  readonly near: (ask: A, given: V, wanted: V) => boolean;
  /** Far enough from each other that no answer could be taken for both. */
  readonly apart: (ask: A, one: V, other: V) => boolean;
  /** What makes an answer of a model unfit for this ask, for the proofs; `right`: it is the right one. */
  readonly faults: (ask: A, answer: V, right: boolean, asked: Asked) => readonly string[];
  /**
   * Whether a mistake's answer explains what was given: `whole`, or `part` of it where a given answer can be wrong in
   * several ways at once.
   */
  readonly explains: (ask: A, given: V, mistaken: V, right: V) => 'whole' | 'part' | null;
  readonly show: (ask: A, showing: Showing) => ShownForm;
}

/** Slack for numbers that are no whole binary fraction; far below every tolerance. */
export const SLACK = 1e-9;

export type AnyKind = Kind<Ask, Answer>;
