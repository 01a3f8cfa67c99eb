import { type Practice, regradeSheet } from '../practice/sheet.ts';
import { readAnswersFile } from '../practice/sheetFiles.ts';
import type { Language } from '../practice/words.ts';
import type { Regrade } from '../register/checks.ts';
import { type Fault, GivenError } from '../trade/given.ts';

/**
 * Grades a check's evidence (an answers file) again. It has to be the person's own, and about the task signed for.
 * @param load  families, sheets, and a language; asked for once, when the first evidence comes
 */
export function regradeWith(load: () => { practice: Practice; language: Language }): Regrade {
  let loaded: ReturnType<typeof load> | undefined;
  return (evidence, of) => {
    const file = readAnswersFile(evidence);
    const faults: Fault[] = [];
    for (const field of ['person', 'task'] as const) {
      if (file[field] === of[field]) continue;
      const todo = 'take the answers that were given for this check';
      faults.push({
        field,
        value: file[field],
        message: `these answers are for ${file[field]}, not ${of[field]}`,
        todo,
      });
    }
    if (faults.length > 0) throw new GivenError(faults);
    loaded ??= load();
    return regradeSheet(file, loaded.practice, loaded.language).passed;
  };
}
