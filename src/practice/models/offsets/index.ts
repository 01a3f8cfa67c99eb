import { elbowHand } from './elbowHand.ts';
import { hingeAngle } from './hingeAngle.ts';
import { offsetStraight } from './offsetStraight.ts';
import { radiusOfFitting } from './radiusOfFitting.ts';
import { reducerHand } from './reducerHand.ts';
import { rollingOffset } from './rollingOffset.ts';
import { seatToMark } from './seatToMark.ts';

/** Offsets, hinges, reducers, whole routes. */
export const offsets = {
  'offset-straight': offsetStraight,
  'rolling-offset': rollingOffset,
  'hinge-angle': hingeAngle,
  'reducer-hand': reducerHand,
  'elbow-hand': elbowHand,
  'seat-to-mark': seatToMark,
  'radius-of-fitting': radiusOfFitting,
};
