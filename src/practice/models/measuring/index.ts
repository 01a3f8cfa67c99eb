import { betweenWorkingPoints } from './betweenWorkingPoints.ts';
import { cutWithInsertion } from './cutWithInsertion.ts';
import { faceToFace } from './faceToFace.ts';
import { fromLadderRail } from './fromLadderRail.ts';
import { lastPiece } from './lastPiece.ts';
import { readFeetInch } from './readFeetInch.ts';
import { reducerRun } from './reducerRun.ts';
import { routeTotal } from './routeTotal.ts';
import { verticalDrop } from './verticalDrop.ts';

/** Reading, measuring, working out lengths. */
export const measuring = {
  'between-working-points': betweenWorkingPoints,
  'cut-with-insertion': cutWithInsertion,
  'face-to-face': faceToFace,
  'from-ladder-rail': fromLadderRail,
  'last-piece': lastPiece,
  'read-feet-inch': readFeetInch,
  'reducer-run': reducerRun,
  'route-total': routeTotal,
  'vertical-drop': verticalDrop,
};
