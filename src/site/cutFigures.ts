/** The figures that the cut sheet begins with, and what the source of each says of it. Pure. */
import type { HoleRow, Origin } from '../run/catalogue.ts';
import type { Seen } from '../trade/answer.ts';
import { INSERTION, KERF, OPENING, STOCK } from '../trade/habits.ts';
import { shortLength } from '../trade/shortLength.ts';
import type { SiteKey, Tell, Values } from './speak.ts';

interface Begun {
  readonly key: SiteKey;
  readonly values: Values;
  readonly seen: Seen | Origin;
}

const called = {
  'common practice': 'seen.practice',
  'training value': 'seen.training',
  'adopted by the site': 'seen.adopted',
  page: 'seen.page',
  memory: 'seen.memory',
} as const satisfies Readonly<Record<Seen | Origin, SiteKey>>;

const habits = [
  ['cutSheet.beginsInsertion', INSERTION],
  ['cutSheet.beginsStock', STOCK],
  ['cutSheet.beginsKerf', KERF],
  ['cutSheet.beginsGap', OPENING],
] as const;

/**
 * A sentence for each kind of source, with the figures that come from it.
 *
 * @param holes  the row of holes that cuts are held against, and its origin in the catalogue
 */
export function cutFigures(
  holes: { readonly row: HoleRow; readonly origin: Origin },
  tell: Tell,
): readonly string[] {
  const { width, first, pitch } = holes.row;
  const figures: readonly Begun[] = [
    ...habits.map(([key, { length, source }]) => ({
      key,
      values: { length: shortLength(length) },
      seen: source.seen,
    })),
    {
      key: 'cutSheet.beginsHoles',
      values: { width: shortLength(width), first: shortLength(first), pitch: shortLength(pitch) },
      seen: holes.origin,
    },
  ];
  return [...new Set(figures.map(({ seen }) => seen))].map((kind) => {
    const list = figures.filter(({ seen }) => seen === kind).map(({ key, values }) => tell(key, values));
    return tell('cutSheet.begins', { seen: tell(called[kind]), list: list.join('; ') });
  });
}
