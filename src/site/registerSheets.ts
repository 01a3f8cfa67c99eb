/** The sheets of the register's pages, as the title block wants them, and the groups of words that they speak. */
import type { Library } from '../schema/library.ts';
import type { Block } from './sheets.ts';
import type { SiteKey, Tell } from './speak.ts';

const sheet = (number: string, revision: number, works: SiteKey, status: SiteKey) => ({
  block: (tell: Tell): Block => ({
    number,
    revision,
    dated: '2026-03-09',
    works: tell(works),
    status: tell(status),
  }),
});

export const registerSheets = {
  set: sheet('TH-S01', 1, 'deviceSheet.works', 'sheet.training'),
  answer: sheet('TH-S02', 1, 'deviceSheet.works', 'sheet.training'),
  witness: sheet('TH-W01', 1, 'deviceSheet.works', 'deviceSheet.status'),
  register: sheet('TH-R02', 1, 'deviceSheet.works', 'deviceSheet.status'),
  ownCrew: sheet('TH-R03', 1, 'deviceSheet.works', 'deviceSheet.status'),
  crew: sheet('TH-R01', 1, 'sheet.ofWorks', 'sheet.sample'),
} as const;

/** Groups that a draw needs to be shown, answered and graded. */
export const sheetWords = [
  'practicePage',
  'practice',
  'entry',
  'unit',
  'drawing',
  'run',
  'cut',
  'fill',
] as const;

/** Groups of the tasks' own words, one a task. */
export const taskGroups = (library: Library): readonly string[] => [...library.tasks.keys()].sort();
