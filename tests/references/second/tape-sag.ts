import { lengthOf, type SecondOpinion } from './told.ts';

/** The straight line as the chord of a circle whose arc is the tape: s = R(1 - cos a), tape = 2 R a; no formula for flat curves. */
const work: SecondOpinion = (told) => {
  const [tape, sag] = [lengthOf(told, 'reading'), lengthOf(told, 'sag')];
  // Half the angle, by halving: the deeper it hangs, the larger.
  let [low, high] = [0, 1];
  for (let i = 0; i < 80; i++) {
    const a = (low + high) / 2;
    if ((tape / (2 * a)) * (1 - Math.cos(a)) < sag) low = a;
    else high = a;
  }
  const straight = (tape / low) * Math.sin(low);
  const excess = tape - straight;
  return { excess, straight, verdict: excess > 1 / 16 ? 'again' : 'take' };
};
export default work;
