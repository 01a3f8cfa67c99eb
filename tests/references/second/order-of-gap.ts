import type { SecondOpinion } from './told.ts';

/** One order of all the steps by the words they begin with (common practice, no source); a draw shows some of them. */
const ORDER = [
  'Read hottest, coldest and',
  'See that a support',
  'Hold the thermometer to',
  'Work out the gap',
  'Set the gap with',
  'Tighten only so far',
  'Fit the jumper with',
  'Fix each section at',
  'Write gap, temperature and',
];

const work: SecondOpinion = ({ asks: [ask] }) => {
  const place = (text: string) => {
    const found = ORDER.findIndex((head) => text.startsWith(head));
    if (found === -1) throw new Error(`no such step: ${text}`);
    return found;
  };
  const items = [...(ask?.items ?? [])].sort((a, b) => place(a.text) - place(b.text));
  return { order: items.map(({ id }) => id) };
};
export default work;
