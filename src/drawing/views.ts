/** Views of a whole run: a view is one line of the table. */
import type { ResolvedRun } from '../run/resolved.ts';
import { layBonding } from './bonding/bonding.ts';
import { layIsometric } from './isometric/isometric.ts';
import type { RunGiven } from './runGiven.ts';
import { layRunSection } from './runSection.ts';
import { render, type Sheet } from './svg.ts';
import type { Drawing, How, View } from './types.ts';
import { layUnfolded } from './unfolded/unfolded.ts';

export interface RunView {
  readonly view: View;
  readonly lay: (given: RunGiven, how: How) => Sheet;
  /** Needs tables and catalogue, and is left out without them. */
  readonly judged?: boolean;
}

export const runViews: readonly RunView[] = [
  { view: 'strip', lay: layUnfolded },
  { view: 'isometric', lay: layIsometric },
  { view: 'section', lay: layRunSection, judged: true },
  { view: 'bonding', lay: layBonding, judged: true },
];

export const RUN_VIEWS: readonly View[] = runViews.map(({ view }) => view);

/**
 * Drawings of a run, in the order of the table.
 *
 * @param views  those wanted; left out, all that can be drawn of what is given
 */
export function drawRun(
  resolved: ResolvedRun,
  more: Omit<RunGiven, 'resolved'>,
  how: How,
  views: readonly View[] = RUN_VIEWS,
): readonly Drawing[] {
  return runViews
    .filter(
      ({ view, judged }) => views.includes(view) && (judged !== true || (more.tables && more.catalogue)),
    )
    .map(({ lay }) => render(lay({ ...more, resolved }, how), how));
}
