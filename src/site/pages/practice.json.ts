/** Every family, sheet and table that sheets are set and graded with. */
import { worldDataOf } from '../../schema/practice.ts';
import { familiesOf } from '../families.ts';
import { library } from '../library.ts';
import { writePracticeData } from '../practiceData.ts';

export const GET = (): Response => {
  const families = familiesOf(library);
  const data = { families, sheets: [...library.sheets.values()], world: worldDataOf(library) };
  return new Response(writePracticeData(data), { headers: { 'content-type': 'application/json' } });
};
