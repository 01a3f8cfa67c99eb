import type { SecondOpinion } from './told.ts';

/** The order of T04, common practice, no source. */
const ORDER = [
  'Find on the drawing which support bears the weight, and which only guide',
  'Mark the plumb line',
  'Fix the top support',
  'Fix the support that bears the weight',
  'Fix the supports between',
  'Bar off the floor below',
  'Take the length up in a sling',
  'Clamp the length at the support that bears the weight',
  'Look whether the cables have places to be tied to',
  'Close the guides so that the length can still slide',
  'Take the sling off',
  'Check both faces with the plumb line',
];

const work: SecondOpinion = ({ asks: [ask] }) => {
  const place = (text: string) => ORDER.indexOf(text);
  const items = [...(ask?.items ?? [])].sort((a, b) => place(a.text) - place(b.text));
  return { order: items.map(({ id }) => id) };
};
export default work;
