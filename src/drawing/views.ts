/** Views of a run: a view is one line of a table, here of the whole run, in details/details.ts of one place of it. */
import type { Catalogue } from '../run/catalogue.ts';
import type { ResolvedRun } from '../run/resolved.ts';
import type { RunTables } from '../run/tables.ts';
import { type Fault, GivenError } from '../trade/given.ts';
import { layBonding } from './bonding/bonding.ts';
import { detailViews } from './details/details.ts';
import { layIsometric } from './isometric/isometric.ts';
import type { RunGiven } from './runGiven.ts';
import { layRunSection } from './runSection.ts';
import { render, type Sheet } from './svg.ts';
import type { Drawing, How, View } from './types.ts';
import { layUnfolded } from './unfolded/unfolded.ts';

export interface RunView {
  readonly view: View;
  readonly lay: (given: RunGiven, how: How) => Sheet;
}

/** Views of the whole run; all can be drawn of any run. */
export const runViews: readonly RunView[] = [
  { view: 'strip', lay: layUnfolded },
  { view: 'isometric', lay: layIsometric },
  { view: 'section', lay: layRunSection },
  { view: 'bonding', lay: layBonding },
];

/** All views, in the order in which they are drawn. */
export const VIEWS: readonly View[] = [...runViews, ...detailViews].map(({ view }) => view);

export interface DrawGiven extends Omit<RunGiven, 'resolved'> {
  readonly tables: RunTables;
  readonly catalogue: Catalogue;
  /** Views wanted; left out, all that this run has something to show in. */
  readonly views?: readonly View[] | undefined;
  /** The place that a view shows: a leg, joint, piece or support by its name; left out, the view's own choice. */
  readonly of?: string | undefined;
}

/**
 * Drawings of a run, in the order of the tables.
 *
 * @throws {GivenError} a view asked for shows nothing of this run; `of` names no place of it
 */
export function drawRun(
  resolved: ResolvedRun,
  { views, of, ...more }: DrawGiven,
  how: How,
): readonly Drawing[] {
  const given = { ...more, resolved };
  const shown = detailViews.filter((v) => v.places(given).length > 0);
  const faults = (views ?? []).flatMap((view): readonly Fault[] =>
    runViews.some((v) => v.view === view) || shown.some((v) => v.view === view)
      ? []
      : [
          {
            field: 'view',
            value: view,
            message: 'the run has nothing that this view shows',
            todo: `name one of ${[...runViews, ...shown].map((v) => v.view).join(' ')}`,
          },
        ],
  );
  if (faults.length > 0) throw new GivenError(faults);
  const wanted = ({ view }: { readonly view: View }) => views === undefined || views.includes(view);
  return [
    ...runViews
      .filter(wanted)
      .map(({ view, lay }) => lay(view === 'section' ? { ...given, leg: of ?? given.leg } : given, how)),
    ...shown.filter(wanted).map(({ lay }) => lay({ ...given, of }, how)),
  ].map((sheet) => render(sheet, how));
}
