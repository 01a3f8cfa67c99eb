/** Grading is fetched once the page stands: a page that signs is there before what judges answers is. */
export const loadGrader = () => import('./grader.ts');
