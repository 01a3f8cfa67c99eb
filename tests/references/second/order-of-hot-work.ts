import type { SecondOpinion } from './told.ts';

/** One order of all the steps by the words they begin with (29 CFR 1910.252(a)(2) for distance and watch, from memory; the rest common practice, no source); a draw shows some of them. */
const ORDER = [
  'Have the permit',
  'Move or shield',
  'Cover the openings',
  'Set a full',
  'Post the watch',
  'Cut',
  'Take up filings',
  'Keep the watch',
  'Write the times',
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
