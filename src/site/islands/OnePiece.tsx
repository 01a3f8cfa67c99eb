import { Fragment } from 'react';

/** Feet, inches and sixteenths written with hyphens, as `63-7-8` or `12'-3`. */
const hyphened = /(\d+'?-\d+(?:-\d+)?)/;

/** A text whose hyphened lengths do not break at the end of a line. What is copied from it stays as written. */
export function OnePiece({ text }: { text: string }) {
  return text.split(hyphened).map((part, k) =>
    k % 2 === 0 ? (
      // biome-ignore lint/suspicious/noArrayIndexKey: the parts have no identity but their order
      <Fragment key={k}>{part}</Fragment>
    ) : (
      // biome-ignore lint/suspicious/noArrayIndexKey: as above
      <span key={k} className="one-piece">
        {part}
      </span>
    ),
  );
}
