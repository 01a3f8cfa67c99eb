/**
 * What the page of a sum is built with, beside the sum itself: its number, the words its working says, what it is handed
 * of the content, its cautions. Build time only; none of it goes to the browser but what `data` hands over.
 */
import type { Library } from '../../schema/library.ts';
import type { TradeTables } from '../../schema/tradeTables.ts';
import type { ChangeTopic } from '../../trade/editions.ts';
import type { SiteKey, Tell } from '../speak.ts';
import { spanData } from './spanData.ts';
import type { SumId } from './sum.ts';

interface SumPage {
  readonly number: string;
  readonly status: SiteKey;
  /** Begins with values that no works has adopted: its print says NOT FOR CONSTRUCTION. */
  readonly training?: true;
  /** Groups of words that the core's working and the figure say, beside the sum's own. */
  readonly words: readonly string[];
  readonly data?: (library: Library, tables: TradeTables, tell: Tell) => unknown;
  readonly safety?: 'caution' | 'warning';
  /** What the editions of the code changed that bears on it. */
  readonly changes?: ChangeTopic;
}

const arithmetic = { status: 'sheet.arithmetic' } as const;
const training = { status: 'sheet.training', training: true } as const;
const estimate = { status: 'sheet.estimate', safety: 'warning' } as const;
const byCode = { status: 'sheet.worked' } as const;

export const sumPages: Readonly<Record<SumId, SumPage>> = {
  length: { number: 'TH-C04', ...arithmetic, words: ['length', 'drawing'] },
  offset: { number: 'TH-C05', ...arithmetic, words: ['offset'] },
  arc: { number: 'TH-C06', ...arithmetic, words: ['arc'] },
  mark: { number: 'TH-C07', ...training, words: ['mark'] },
  mitre: { number: 'TH-C08', ...arithmetic, safety: 'warning', words: ['mitre'] },
  notch: { number: 'TH-C09', ...arithmetic, safety: 'warning', words: ['notch'] },
  span: {
    number: 'TH-C10',
    ...training,
    safety: 'warning',
    words: ['span', 'metal', 'sectionSum'],
    data: spanData,
  },
  equivalent: { number: 'TH-C11', ...estimate, words: ['equivalent'] },
  vertical: { number: 'TH-C12', ...estimate, words: ['vertical'] },
  beam: { number: 'TH-C13', ...estimate, words: ['beam', 'metal'] },
  section: { number: 'TH-C14', ...estimate, words: ['section'] },
  expansion: {
    number: 'TH-C15',
    ...training,
    safety: 'caution',
    words: ['expansion', 'metal', 'rests'],
    data: (_, { expansion }) => expansion,
    changes: 'expansion',
  },
  transition: {
    number: 'TH-C16',
    ...byCode,
    safety: 'caution',
    words: ['transition'],
    data: (_, { transition }) => transition,
    changes: 'transition',
  },
  jumper: {
    number: 'TH-C17',
    ...byCode,
    safety: 'warning',
    words: ['jumper', 'metal'],
    data: (_, { jumper }) => jumper,
    changes: 'jumper',
  },
  groundpath: {
    number: 'TH-C18',
    ...byCode,
    safety: 'warning',
    words: ['groundpath', 'metal'],
    data: (_, { groundpath }) => groundpath,
    changes: 'groundpath',
  },
  radius: {
    number: 'TH-C19',
    ...byCode,
    safety: 'caution',
    words: ['radius'],
    data: (_, { radius }) => radius,
    changes: 'radius',
  },
  ampacity: {
    number: 'TH-C20',
    ...byCode,
    safety: 'caution',
    words: ['ampacity'],
    data: (_, { ampacity }) => ampacity,
    changes: 'ampacity',
  },
  separation: {
    number: 'TH-C21',
    ...byCode,
    safety: 'warning',
    words: ['separation'],
    data: (_, { separation }) => separation,
    changes: 'separation',
  },
  marking: {
    number: 'TH-C22',
    ...byCode,
    safety: 'warning',
    words: ['marking'],
    data: (_, { marking }) => marking,
    changes: 'marking',
  },
};
