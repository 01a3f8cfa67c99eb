import type { SecondOpinion } from './told.ts';

/** One order of all the steps by the words they begin with (29 CFR 1910.147(d) and 1910.333(b)(2), from memory); a draw shows some of them. */
const ORDER = [
  'Tell everyone',
  'Shut it down',
  'Open the switch',
  'Put on your own',
  'Let out or block',
  'Prove the tester on a',
  'Test that',
  'Prove the tester once',
  'Begin',
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
