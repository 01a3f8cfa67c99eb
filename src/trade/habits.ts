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

/** A figure of the invented catalogue, until the site adopts its own. */
function training(where: string): Source {
  return {
    id: 'practice-catalogue',
    document: 'Practice catalogue, invented for training',
    edition: 'no edition',
    where,
    seen: 'training value',
  };
}

function practice(where: string): Source {
  return {
    id: 'common-practice',
    document: 'Common practice of the trade; no document states it',
    edition: 'no edition',
    where,
    seen: 'common practice',
  };
}

/** That an inserted end adds its insertion to the clear length. */
export const INSERTED: Source = practice('every end that goes into a splice adds its insertion');
/** Added at every inserted end when no insertion is given, until the site adopts its own. */
export const INSERTION = { length: fromInches(5), source: practice('5 in of channel go into a splice') };
/** One length of channel as it comes, when no stock is given. */
export const STOCK = { length: fromInches(240), source: practice('one length of channel is 20 ft') };
/** That a cut keeps clear of the holes. */
export const HOLES: Source = practice('a cut keeps clear of the holes');
/** The clear metal between a cut and the edge of a hole, when none is given: the width of the hole. */
export const HOLE_CLEARANCE: Source = practice('a cut stays one hole width clear of a hole');
/** What a blade takes where nothing is said of it. */
export const KERF = { length: fromInches(1 / 8), source: practice('a saw cut takes 1/8 in') };
/** The shortest remainder of a stick that is kept, when nothing is said of it. */
export const REUSABLE = { length: fromInches(12), source: practice('a remainder of 12 in or more is kept') };
/** What a sleeve of the practice catalogue leaves between the ends when both go in fully. */
export const OPENING = { length: fromInches(1 / 8), source: training('sleeve') };
/** How far channel goes into the socket of a ladder tray, tray or instrument. */
export const SOCKET = { length: fromInches(1.5), source: training('socket') };
/** What an expansion splice takes up between the coldest and the hottest metal. */
export const MOVEMENT = {
  length: fromInches(1),
  source: {
    id: 'nema-ve-2',
    document: 'NEMA VE 2, Cable Tray Installation Guidelines',
    edition: '2013',
    where: 'movement of an expansion splice',
    seen: 'memory',
  } satisfies Source,
};
