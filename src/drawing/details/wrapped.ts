import { MARGIN } from '../frame.ts';
import { textWidth } from '../glyphs.ts';
import { SIZES } from '../plan.ts';
import type { Form } from '../types.ts';

/** Notes no longer than a line of the sheet: a longer one goes on in the next. */
export function wrapped(notes: readonly string[], width: number, form: Form): readonly string[] {
  const room = width - 2 * MARGIN[form] - 22;
  return notes.flatMap((note) => {
    const lines: string[] = [];
    for (const word of note.split(' ')) {
      const longer = lines.length === 0 ? word : `${lines.at(-1)} ${word}`;
      if (lines.length > 0 && textWidth(longer, SIZES.note) <= room) lines[lines.length - 1] = longer;
      else lines.push(word);
    }
    return lines;
  });
}
