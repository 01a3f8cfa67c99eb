import type { SecondOpinion } from './told.ts';

/** One order of all the steps by the words they begin with (common practice, no source); a draw shows some of them. */
const ORDER = [
  'Have it confirmed where',
  'Cover the cables that',
  'Scrape the faces of',
  'Fit the drop-out or',
  'Attach the channel',
  'Set the first support',
  'Fit the jumper from',
  'Feel the path for',
  'Lay the cables over',
  'Secure the cables on',
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
