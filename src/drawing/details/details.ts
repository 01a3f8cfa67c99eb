/** The views of one place of a run: a view is one line of the table. */
import type { DetailView } from './detail.ts';
import { explodedPlaces, layExploded } from './exploded.ts';
import { fittingPlaces, layFitting } from './fitting.ts';
import { holesPlaces, layHoles } from './holes.ts';
import { expansionPlaces, layExpansion, laySpliceDetail, splicePlaces } from './spliceDetail.ts';
import { laySupport, supportPlaces } from './support.ts';

export const detailViews: readonly DetailView[] = [
  { view: 'splice', places: splicePlaces, lay: laySpliceDetail },
  { view: 'expansion', places: expansionPlaces, lay: layExpansion },
  { view: 'fitting', places: fittingPlaces, lay: layFitting },
  { view: 'holes', places: holesPlaces, lay: layHoles },
  { view: 'support', places: supportPlaces, lay: laySupport },
  { view: 'exploded', places: explodedPlaces, lay: layExploded },
];
