/** Edits one after the other, each with what it did, and the way back and forth over them. */

/** `W` says what an edit did, so that undoing can name it. */
export interface History<T, W> {
  readonly past: readonly { readonly value: T; readonly what: W }[];
  readonly now: T;
  readonly ahead: readonly { readonly value: T; readonly what: W }[];
}

/** Edits further back are forgotten. */
const MOST = 200;

export const begun = <T, W>(now: T): History<T, W> => ({ past: [], now, ahead: [] });

/** A new value; what was undone before it can no longer be redone. */
export function edited<T, W>({ past, now }: History<T, W>, value: T, what: W): History<T, W> {
  return { past: [...past, { value: now, what }].slice(-MOST), now: value, ahead: [] };
}

/** A value in place of the newest edit, where an edit goes on: the strokes of one field are one edit. */
export const amended = <T, W>(history: History<T, W>, value: T): History<T, W> => ({
  ...history,
  now: value,
  ahead: [],
});

export function undone<T, W>(history: History<T, W>): History<T, W> {
  const last = history.past.at(-1);
  if (last === undefined) return history;
  return {
    past: history.past.slice(0, -1),
    now: last.value,
    ahead: [{ value: history.now, what: last.what }, ...history.ahead],
  };
}

export function redone<T, W>(history: History<T, W>): History<T, W> {
  const [next, ...ahead] = history.ahead;
  if (next === undefined) return history;
  return { past: [...history.past, { value: history.now, what: next.what }], now: next.value, ahead };
}
