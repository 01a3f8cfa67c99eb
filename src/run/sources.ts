/**
 * Where the rules of a run stand that are no table: content/sources has the same entries with what they say
 * (tests/run/sources.test.ts holds them equal). Figures come with their sources in `RunTables`.
 */
import type { Source } from '../trade/answer.ts';
import { type Edition, NEWEST } from '../trade/fillTables.ts';
import type { Item } from './catalogue.ts';

/** A place of NFPA 70 in an edition; the newest where none is named. */
export function nfpa(where: string, edition: Edition = NEWEST): Source {
  return {
    id: 'nfpa-70',
    document: 'NFPA 70, National Electrical Code',
    edition: String(edition),
    where,
    seen: edition === 2017 ? 'memory' : 'page',
  };
}

function ve2(where: string): Source {
  return {
    id: 'nema-ve-2',
    document: 'NEMA VE 2, Cable Tray Installation Guidelines',
    edition: '2013',
    where,
    seen: 'memory',
  };
}

function practice(where: string): Source {
  return {
    id: 'run-practice',
    document: 'Rules of a run of channel, common practice',
    edition: 'no edition',
    where,
    seen: 'common practice',
  };
}

export const SPLICE_PLACES: Source = ve2('splices of straight runs');
export const ANCHORS: Source = ve2('anchors between expansion splices');
export const JUMPER_PLACES: Source = ve2('bonding jumpers');
export const NO_STEP: Source = ve2('not a step');

export const ENDS_APART: Source = practice('channel ends do not touch inside a sleeve');
export const SMALL_HOLES: Source = practice('a splice is fastened through the small holes');
export const ONE_METAL: Source = practice('parts are of the metal of the channel');
export const RIGHT_HAND: Source = practice('a reducer keeps the wall straight that is meant to be');
export const POWER_APART: Source = practice('power and signal lie apart, or a barrier stands between them');
export const HALF_SPANS: Source = practice('a support carries half of each span beside it');
export const HARDWARE: Source = practice('hardware of a support');

/** A greatest span that the run itself gives: whoever wrote the run answers for it. */
export const GIVEN_SPAN: Source = {
  id: 'run-given',
  document: 'Given by the run',
  edition: 'no edition',
  where: 'greatest span, limits.maxSpan',
  seen: 'page',
};

/** A figure of a catalogue item: invented for training, or of the works' own catalogue. */
export function catalogueSource({ id, origin }: Pick<Item, 'id' | 'origin'>, what: string): Source {
  const where = `${what} of ${id}`;
  return origin === 'training value'
    ? {
        id: 'practice-catalogue',
        document: 'Practice catalogue, invented for training',
        edition: 'no edition',
        where,
        seen: 'training value',
      }
    : {
        id: 'catalogue',
        document: 'Catalogue of the works',
        edition: 'no edition',
        where,
        seen: 'common practice',
      };
}

/** Where one value of an item comes from: the paper in which the site adopted it, else as its origin says. */
export function valueSource(
  { id, origin, origins, papers }: Pick<Item, 'id' | 'origin' | 'origins' | 'papers'>,
  field: string,
  what: string,
): Source {
  return papers?.[field] ?? catalogueSource({ id, origin: origins?.[field] ?? origin }, what);
}
