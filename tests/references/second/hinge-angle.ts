import { lengthOf, type SecondOpinion, sixteenth } from './told.ts';

/** Rise over run is the tangent of the angle from level, the slope the long side (plane geometry). */
const work: SecondOpinion = (told) => {
  const [rise, run] = [lengthOf(told, 'rise'), lengthOf(told, 'run')];
  const slope = Math.hypot(rise, run);
  return {
    angle: Math.round((Math.atan2(rise, run) * 1800) / Math.PI) / 10,
    slope,
    cut: sixteenth(slope - 2 * lengthOf(told, 'take-out') + 2 * lengthOf(told, 'insertion')),
  };
};
export default work;
