import { betweenWorkingPoints } from './betweenWorkingPoints.ts';
import { cutWithInsertion } from './cutWithInsertion.ts';
import { faceToFace } from './faceToFace.ts';
import { fromLadderRail } from './fromLadderRail.ts';
import { readFeetInch } from './readFeetInch.ts';
import { verticalDrop } from './verticalDrop.ts';

/** Reading, measuring, working out lengths. */
export const measuring = {
  'between-working-points': betweenWorkingPoints,
  'cut-with-insertion': cutWithInsertion,
  'face-to-face': faceToFace,
  'from-ladder-rail': fromLadderRail,
  'read-feet-inch': readFeetInch,
  'vertical-drop': verticalDrop,
};
