/** Things put where they belong on a drawn run. */
import type { PLACED, PlaceAsk } from '../family.ts';
import type { PlacedAt } from '../model.ts';
import type { Kind } from './kind.ts';
import { explainsMarks, marksFaults, meet, meets, readMarks } from './marks.ts';

export const whatOf = ({ what }: PlacedAt) => what;
const SAYS = {
  support: 'whatSupport',
  jumper: 'whatJumper',
  splice: 'whatSplice',
  anchor: 'whatAnchor',
} as const satisfies Record<(typeof PLACED)[number], string>;
export const placedSays = Object.values(SAYS);

export const place: Kind<PlaceAsk, readonly PlacedAt[]> = {
  read: ({ what }, value, asked) => readMarks<PlacedAt>(value, 'what', what, asked),
  same: ({ tolerance }, given, wanted) => meets(meet(given, wanted, tolerance, whatOf)),
  near: ({ tolerance }, given, wanted) => meets(meet(given, wanted, 2 * tolerance, whatOf)),
  apart: ({ tolerance }, one, other) => !meets(meet(one, other, 2 * tolerance, whatOf)),
  faults: ({ what }, answer, _, asked) => marksFaults(answer, whatOf, what, asked),
  explains: ({ tolerance }, given, mistaken, right) =>
    explainsMarks(given, mistaken, right, tolerance, whatOf),
  show: ({ what, tolerance }, { say }) => ({
    tolerance,
    options: what.map((id) => ({ id, text: say(SAYS[id]) })),
  }),
};
