import { Fragment } from 'react';

/** A length of several parts: `63-7-8`, `12'-3 1/2"`, `63' 7 1/2"`. */
const parted = /(\d+(?:-\d+){1,2}|\d+'[- ]\d+(?:[ \u00a0]\d+\/\d+)?"?)/;

/** A text whose parted lengths do not break at the end of a line. What is copied from it stays as written. */
export function OnePiece({ text }: { text: string }) {
  return text.split(parted).map((part, k) =>
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
