import type { SecondOpinion } from './told.ts';

/** The order of T03, common practice, no source. */
const ORDER = [
  'Check that anchor or clamp is the one for what it goes into',
  'Cut the strut',
  'Take the burr off the strut',
  'Touch up the zinc on the cut ends',
  'Fix the first and the last support',
  'Stretch the string between them',
  'Fix the supports between, to the string',
  'Bring each support to its height, flat and square to the run',
  'Tighten all to the stated torque',
  'Mark each fastener that is tight',
  'Write on the sheet that the row is set',
];

const work: SecondOpinion = ({ asks: [ask] }) => {
  const place = (text: string) => ORDER.indexOf(text);
  const items = [...(ask?.items ?? [])].sort((a, b) => place(a.text) - place(b.text));
  return { order: items.map(({ id }) => id) };
};
export default work;
