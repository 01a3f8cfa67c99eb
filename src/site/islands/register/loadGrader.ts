import { loadPractice } from '../../device/practice.ts';

/** Grading is fetched once the page stands: a page that signs is there before what judges answers is. */
export async function loadGrader() {
  const [grader, practice] = await Promise.all([import('./grader.ts'), loadPractice()]);
  return { ...grader, practice };
}
