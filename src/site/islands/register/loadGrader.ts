import type { AnswersFile } from '../../../practice/sheet.ts';
import { loadPractice } from '../../device/practice.ts';

/** Grading is fetched once the page stands: a page that signs is there before what judges answers is. */
export async function loadGrader() {
  const [{ readAnswers, regradeSheet, regradeWith }, practice] = await Promise.all([
    import('./grader.ts'),
    loadPractice(),
  ]);
  return {
    practice,
    readAnswers,
    /** Grades evidence again, saying what it says in a language. */
    regradeIn: (lang: string) => regradeWith(() => ({ practice, language: practice.languageOf(lang) })),
    gradeIn: (lang: string, file: AnswersFile) => regradeSheet(file, practice, practice.languageOf(lang)),
  };
}
