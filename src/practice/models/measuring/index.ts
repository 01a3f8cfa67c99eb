import { addLengths } from './addLengths.ts';
import { betweenWorkingPoints } from './betweenWorkingPoints.ts';
import { cutWithInsertion } from './cutWithInsertion.ts';
import { decimalElevations } from './decimalElevations.ts';
import { dropBetweenElevations } from './dropBetweenElevations.ts';
import { faceToFace } from './faceToFace.ts';
import { fromLadderRail } from './fromLadderRail.ts';
import { lastPiece } from './lastPiece.ts';
import { metricDrawing } from './metricDrawing.ts';
import { readDrawing } from './readDrawing.ts';
import { readFeetInch } from './readFeetInch.ts';
import { readTape } from './readTape.ts';
import { reducerRun } from './reducerRun.ts';
import { referencePoints } from './referencePoints.ts';
import { routeTotal } from './routeTotal.ts';
import { verticalDrop } from './verticalDrop.ts';

/** Reading, measuring, working out lengths. */
export const measuring = {
  'add-lengths': addLengths,
  'between-working-points': betweenWorkingPoints,
  'cut-with-insertion': cutWithInsertion,
  'decimal-elevations': decimalElevations,
  'drop-between-elevations': dropBetweenElevations,
  'face-to-face': faceToFace,
  'from-ladder-rail': fromLadderRail,
  'last-piece': lastPiece,
  'metric-drawing': metricDrawing,
  'read-drawing': readDrawing,
  'read-feet-inch': readFeetInch,
  'read-tape': readTape,
  'reducer-run': reducerRun,
  'reference-points': referencePoints,
  'route-total': routeTotal,
  'vertical-drop': verticalDrop,
};
