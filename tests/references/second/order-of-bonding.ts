import type { SecondOpinion } from './told.ts';

/** One order of all the steps by the words they begin with (common practice, no source); a draw shows some of them. */
const ORDER = [
  'Walk the run and',
  'Find the size by',
  'Prove the tester, test',
  'Scrape both faces to',
  'Fit lug, washer and',
  'Tighten to the stated',
  'Coat again what was',
  'Measure across the joint',
  'Write reading and place',
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
