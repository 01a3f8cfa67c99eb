/** Grading a check's evidence again on a page: the person's own, about the task that is signed for. */
import { type Practice, regradeSheet } from '../practice/sheet.ts';
import type { Language } from '../practice/words.ts';
import type { Regrade } from '../register/checks.ts';
import { GivenError } from '../trade/given.ts';
import { answersOf } from './sheetFiles.ts';

export function regradeOn(practice: Practice, language: Language): Regrade {
  return (evidence, of) => {
    const file = answersOf(evidence);
    for (const field of ['person', 'task'] as const) {
      if (file[field] === of[field]) continue;
      const todo = `give answers of ${of[field]}`;
      throw new GivenError([{ field, value: file[field], message: 'not whom or what is signed for', todo }]);
    }
    return regradeSheet(file, practice, language).passed;
  };
}
