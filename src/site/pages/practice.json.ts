/** Every family, sheet and table that sheets are set and graded with, and the words of it. */
import { practiceSays } from '../../practice/says.ts';
import { worldDataOf } from '../../schema/practice.ts';
import { familiesOf } from '../families.ts';
import { library } from '../library.ts';
import { writePracticeData } from '../practiceData.ts';
import { groupsSaidBy } from '../saidGroups.ts';
import { languages, wordsOf } from '../words.ts';

export const GET = (): Response => {
  const families = familiesOf(library);
  const own = practiceSays.map((key) => key.split('.')[0] ?? '');
  const groups = [...new Set([...own, ...families.flatMap(groupsSaidBy)])];
  const words = Object.fromEntries(languages.map((lang) => [lang, wordsOf(lang, groups)]));
  // The author's own seed is for the proofs alone.
  const drawn = families.map(({ worked: _, ...family }) => family);
  const data = { families: drawn, sheets: [...library.sheets.values()], world: worldDataOf(library), words };
  return new Response(writePracticeData(data), { headers: { 'content-type': 'application/json' } });
};
