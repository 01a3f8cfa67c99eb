import { given, inchesOf, numberIn, rowsOf, type SecondOpinion } from './told.ts';

/** Rod in by its diameter, locknut, strap at a beam clamp, torque as stated (common practice, no source). */
const work: SecondOpinion = (told) => {
  const diameter = inchesOf(/of ([\d/]+)-in rod/.exec(told.text)?.[1] ?? '');
  const stated = numberIn(given(told, 'torque').text);
  const found = rowsOf(told, 'hanger').map(({ text }, i) => {
    const [rod = '', locknut, strap = '', torque = ''] = text.split(', ');
    const engaged = inchesOf(rod.replace(/^rod /, '').replace(/ in$/, ''));
    if (engaged < diameter) return [`hanger-${i + 1}`, 'rod'];
    if (locknut === 'no locknut') return [`hanger-${i + 1}`, 'locknut'];
    if (strap === 'beam clamp without a strap') return [`hanger-${i + 1}`, 'strap'];
    return [`hanger-${i + 1}`, numberIn(torque) < stated ? 'torque' : 'holds'];
  });
  return Object.fromEntries(found);
};
export default work;
