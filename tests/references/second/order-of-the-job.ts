import type { SecondOpinion } from './told.ts';

/** One order of all the steps by the words they begin with (NFPA 70, 392.18(B) for cables last, the rest common practice, no source); a draw shows some of them. */
const ORDER = [
  'Walk the route',
  'Lay out',
  'Set the supports',
  'Measure and',
  'Cut the',
  'Join',
  'Set the gaps',
  'Fit the',
  'Work out',
  'Lay and tie',
  'Hand the',
  'Inspect',
  'Put right',
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
