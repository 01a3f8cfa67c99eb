/** What sheets are set, answered and graded with, fetched once a page: the content as JSON, and the models. */
import type { Practice } from '../../practice/sheet.ts';
import { fileAt } from '../paths.ts';
import { readPracticeData } from '../practiceData.ts';

let loading: Promise<Practice> | undefined;

/** One and the same for all who ask; asked for again after a failure. */
export function loadPractice(): Promise<Practice> {
  loading ??= fetchPractice().catch((error: unknown) => {
    loading = undefined;
    throw error;
  });
  return loading;
}

async function fetchPractice(): Promise<Practice> {
  const [answer, { models }] = await Promise.all([
    fetch(fileAt('practice.json')),
    import('../../practice/models/index.ts'),
  ]);
  if (!answer.ok) throw new Error(`practice.json: ${answer.status}`);
  const { families, sheets, world } = readPracticeData(await answer.text());
  return {
    families: new Map(families.map((family) => [family.id, family])),
    sheets: new Map(sheets.map((sheet) => [sheet.id, sheet])),
    world: { ...world, models },
  };
}
