/** The ends in an expansion joint: the gap to scale against the whole movement, over the range of temperature. */
import { textWidth } from '../../../drawing/glyphs.ts';
import type { Sheet } from '../../../drawing/svg.ts';
import type { ExpansionResult, ExpansionTable } from '../../../trade/expansion.ts';
import { inches } from '../../../trade/length.ts';
import { measure, tape, temperature } from '../measure.ts';
import type { FigureHow } from '../sum.ts';
import { across, framed, Plan, roomOf, SIZES } from './canvas.ts';

interface GapForm {
  readonly lowF: number;
  readonly highF: number;
  readonly installF: number;
  readonly movementIn?: number | undefined;
}

export function drawGap(
  { gapIn }: ExpansionResult,
  { lowF, highF, installF, movementIn }: GapForm,
  how: FigureHow,
  table: ExpansionTable,
): Sheet | undefined {
  if (gapIn === null) return undefined;
  const { form, letter, tell } = how;
  const { left, right, top } = roomOf(form);
  const plan = new Plan();
  const whole = movementIn ?? inches(table.movement.value);
  const full = form === 'phone' ? 150 : 260;
  const x = left + (right - left - full) / 2;
  const gap = (gapIn / whole) * full;
  const y = top + 52;
  const high = 44;
  for (const [from, to] of [
    [left, x],
    [x + gap, right],
  ] as const) {
    plan.rect({ x: from, y, w: to - from, h: high }, { fill: 'galv' });
    for (const edge of [y, y + high]) plan.line('edge', [from, edge], [to, edge], 'channel');
  }
  for (const end of [x, x + gap]) plan.line('edge', [end, y], [end, y + high], 'channel end');
  for (const end of [left, right]) plan.breakLine(end, y, y + high);
  // How far the right end goes when the metal is coldest.
  plan.line('phantom', [x + full, y - 8], [x + full, y + high + 8], 'open');
  across(plan, x, x + gap, y - 26, letter(tape(gapIn)), { from: y });

  const line = y + high + 46;
  plan.line('thin', [x, line], [x + full, line], 'temperatures');
  for (const at of [x, x + full]) plan.line('thin', [at, line - 8], [at, line + 8]);
  const now = x + gap;
  plan.line('phantom', [now, y + high], [now, line]);
  plan.polygon(
    [
      [now - 7, line + 16],
      [now + 7, line + 16],
      [now, line + 3],
    ],
    { fill: 'mark', part: 'now' },
  );
  const write = (at: number, row: number, text: string, colour: 'ink' | 'mark' = 'ink') => {
    const wide = textWidth(text, SIZES.note) / 2;
    plan.text([Math.min(Math.max(at, left + wide), right - wide), row], text, { size: SIZES.note, colour });
  };
  write(x, line - 14, letter(temperature(highF)));
  write(x + full, line - 14, letter(temperature(lowF)));
  write(now, line + 34, letter(temperature(installF)), 'mark');
  const values = {
    gap: letter(tape(gapIn)),
    movement: letter(measure('inches', whole)),
    high: letter(temperature(highF)),
    low: letter(temperature(lowF)),
  };
  return framed(
    plan,
    line + 44,
    [
      tell('expansionSum.noteClosed', { high: values.high }),
      tell('expansionSum.noteOpen', { low: values.low }),
      tell('expansionSum.noteWhole', { movement: values.movement }),
    ],
    [tell('expansionSum.words', values)],
    how,
  );
}
