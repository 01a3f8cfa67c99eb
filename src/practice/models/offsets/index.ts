import { hingeAngle } from './hingeAngle.ts';
import { offsetStraight } from './offsetStraight.ts';
import { rollingOffset } from './rollingOffset.ts';

/** Offsets, hinges, reducers, whole routes. */
export const offsets = {
  'offset-straight': offsetStraight,
  'rolling-offset': rollingOffset,
  'hinge-angle': hingeAngle,
};
