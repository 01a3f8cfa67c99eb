import type { SecondOpinion } from './told.ts';

/** One order of the whole job by the words of its steps (common practice, no source); a draw shows some of them. */
const ORDER = [
  'Look over saw',
  'Choose the length',
  'Support the channel',
  'Clamp it down',
  'Bring the blade',
  'Cut',
  'Let the blade stop',
  'Measure the piece',
  'Try the cut end',
  'Take the burr off',
  'Drill the new holes',
  'Clear away',
  'Treat the cut edge',
  'Write the piece',
];

const work: SecondOpinion = ({ asks: [ask] }) => {
  const place = (text: string) => ORDER.findIndex((head) => text.startsWith(head));
  const items = [...(ask?.items ?? [])].sort((a, b) => place(a.text) - place(b.text));
  return { order: items.map(({ id }) => id) };
};
export default work;
