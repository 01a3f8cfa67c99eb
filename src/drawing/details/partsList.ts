/** The list under an exploded view: number, what it is, how many. */
import { textWidth } from '../glyphs.ts';
import { type Plan, SIZES } from '../plan.ts';

export interface PartRow {
  /** Part of the view that its balloon points at. */
  readonly part: string;
  readonly name: string;
  /** Size, hole: a second line. */
  readonly size?: string | undefined;
  readonly count: number;
}

/**
 * Draws rows from `top`, numbered unless the balloons say something else.
 *
 * @returns where the list ends
 */
export function drawPartsList(
  plan: Plan,
  rows: readonly PartRow[],
  {
    width,
    margin,
    top,
    numbered,
    heads,
  }: {
    readonly width: number;
    readonly margin: number;
    readonly top: number;
    readonly numbered: boolean;
    readonly heads: readonly [part: string, count: string];
  },
): number {
  const [left, right] = [margin + 9, width - margin - 9];
  const name = left + (numbered ? 30 : 0);
  const size = SIZES.note;
  plan.line('dimension', [margin, top], [width - margin, top]);
  let y = top + 19;
  plan.text([name, y], heads[0], { size, anchor: 'start', weight: 600, part: 'head' });
  plan.text([right, y], heads[1], { size, anchor: 'end', weight: 600, part: 'head' });
  y += 7;
  plan.line('thin', [left, y], [right, y]);
  rows.forEach(({ name: what, size: detail, count }, i) => {
    y += 19;
    if (numbered) plan.text([left + 2, y], String(i + 1), { size, anchor: 'start', part: 'number' });
    plan.text([right, y], String(count), { size, anchor: 'end', part: 'count' });
    const room = right - name - 34;
    const whole = detail === undefined ? what : `${what}, ${detail}`;
    if (textWidth(whole, size) <= room) plan.text([name, y], whole, { size, anchor: 'start', part: 'row' });
    else {
      plan.text([name, y], what, { size, anchor: 'start', part: 'row' });
      y += 17;
      plan.text([name, y], detail ?? '', { size, anchor: 'start', weight: 600, part: 'row' });
    }
    y += 6;
    plan.line('zone', [left, y], [right, y]);
  });
  return y + 8;
}
