/** Notes of a drawing: inside its frame, under the view, parted from it by a rule. */
import type { Plan } from './plan.ts';
import { Plan as Lines, SIZES } from './plan.ts';
import type { Form } from './types.ts';

/**
 * Draws notes in a band from `top`.
 *
 * @returns where the band ends: the bottom of the inner frame
 */
export function drawNotes(
  plan: Plan,
  notes: readonly string[],
  { form, width, margin, top }: { form: Form; width: number; margin: number; top: number },
): number {
  if (notes.length === 0) return top;
  const room = width - 2 * margin - 18;
  // One line under the view where lettering of 14 px or more allows it; the phone has two.
  const sizes = form === 'phone' ? [SIZES.note] : [SIZES.text, 15, SIZES.note];
  const size = sizes.find((s) => Lines.lines(notes, room, s).length === 1) ?? SIZES.note;
  const lines = Lines.lines(notes, room, size);
  plan.line('dimension', [margin, top], [width - margin, top]);
  lines.forEach((text, i) => {
    plan.text([margin + 9, top + 15 + size * 0.6 + i * (size + 6)], text, {
      size,
      anchor: 'start',
      part: 'note',
    });
  });
  return top + 15 + lines.length * (size + 6) + 4;
}
