import { given, inchesOf, lengthOf, type SecondOpinion } from './told.ts';

/** What goes in at an end, and how far the tape goes past the end of what it enters. */
function end(text: string, middles: boolean): number {
  const [, long, deep] = /sleeve splice ([\d /'-]+") long, made for ([\d /'-]+") from/.exec(text) ?? [];
  if (long !== undefined && deep !== undefined)
    return inchesOf(deep) - (middles ? inchesOf(long) / 2 : 0);
  const [, socket] = /([\d /]+") goes in/.exec(text) ?? [];
  return socket === undefined ? 0 : inchesOf(socket);
}

/** Measured to an edge, add what goes in (common practice, no source); held to a middle, half the sleeve comes off. */
const work: SecondOpinion = (told) => {
  const middles = given(told, 'measured').text.includes('middle');
  const ends = ['first', 'second'].map((id) => end(given(told, id).text, middles));
  const cut = ends.reduce((sum, one) => sum + one, lengthOf(told, 'distance'));
  return { cut, left: lengthOf(told, 'stock') - cut - lengthOf(told, 'kerf') };
};
export default work;
