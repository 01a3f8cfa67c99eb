import type { SecondOpinion } from './told.ts';

/** One order of all the steps by the words they begin with (common practice, no source); a draw shows some of them. */
const ORDER = [
  'Have the run released:',
  'Hold type, number and',
  'Hold the thickest cable',
  'Lay the cables in,',
  'Put power and signal',
  'Fasten the cables on the drops',
  'Fasten the cables on the horizontal',
  'Fit the drop-out and',
  'Leave slack and a',
  'Tag every cable at',
  'Fit the covers',
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
