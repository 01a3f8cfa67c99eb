import type { SecondOpinion } from './told.ts';

/** The order of T02, common practice, no source. */
const ORDER = [
  'Add up the whole load a foot, channel and cables',
  'Read the longest span for that load off the table',
  'Set a support beside every fitting and end',
  'Set a support on each side of the expansion splice',
  'Fill in the supports between, evenly',
  'Slide the row until each splice lies between a support and the quarter point',
  'Hold every span against the longest once more',
  'Ask whether this steel may be clamped, welded or drilled',
  'Snap a chalk line along the steel',
  'Mark every support on the steel',
  'Send a copy of the marks as they stand to the one who cuts the strut',
];

const work: SecondOpinion = ({ asks: [ask] }) => {
  const place = (text: string) => ORDER.indexOf(text);
  const items = [...(ask?.items ?? [])].sort((a, b) => place(a.text) - place(b.text));
  return { order: items.map(({ id }) => id) };
};
export default work;
