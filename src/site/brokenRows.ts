/** What was found on an order, taken apart again: the broken precedences a row each, and the rest. Pure. */
import type { ShownPart } from '../practice/show.ts';
import type { Speak } from '../trade/say.ts';

/** Rows as they follow in the text; `rest` is what names no precedence. */
export function brokenRows(
  says: string,
  items: readonly ShownPart[],
  speak: Speak,
): { readonly rows: readonly string[]; readonly rest: string } {
  const sentences = items.flatMap(({ id, text: before }) =>
    items
      .filter((other) => other.id !== id)
      .map(({ text: after }) => speak({ say: 'practice.comesBefore', values: { before, after } })),
  );
  const rows = sentences
    .filter((sentence) => says.includes(sentence))
    .sort((a, b) => says.indexOf(a) - says.indexOf(b));
  const rest = rows.reduce((left, row) => left.replace(row, ''), says);
  return { rows, rest: rest.replaceAll(/\s+/g, ' ').trim() };
}
