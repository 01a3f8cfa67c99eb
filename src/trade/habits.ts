/**
 * Figures of the trade that no document states, and the one exact conversion. Each stands once, with its source; the
 * entries of the same ids in content/sources say more about it (tests/trade/habits.test.ts holds them equal).
 */
import type { Source } from './answer.ts';
import { fromInches } from './length.ts';

export const INCH: Source = {
  id: 'inch-1959',
  document: 'International yard and pound agreement',
  edition: '1959',
  where: '1 in = 25.4 mm, exactly',
  seen: 'memory',
};

function practice(where: string): Source {
  return {
    id: 'common-practice',
    document: 'Common practice of the trade; no document states it',
    edition: 'no edition',
    where,
    seen: 'common practice',
  };
}

/** Added to the clear length at every end that goes into a splice, until the site adopts its own. */
export const INSERTION = { length: fromInches(5), source: practice('5 in of channel go into a splice') };

/** One length of channel as it comes. */
export const STOCK = { length: fromInches(240), source: practice('one length of channel is 20 ft') };

/** The clear width kept between a cut and the edge of a hole, when nobody asked for another. */
export const HOLE_CLEARANCE = { source: practice('a cut stays one hole width clear of a hole') };
