/** What reads answers and grades them again, as one part that a page fetches later. */
export { regradeSheet } from '../../../practice/sheet.ts';
export { regradeWith } from '../../../schema/regrade.ts';
export { readAnswers } from '../../sheetFiles.ts';
