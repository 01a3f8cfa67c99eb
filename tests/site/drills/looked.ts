/** A register as the register's page looks at it, with the words of the pages. */
import drills from '../../../content/words/en/drills.json' with { type: 'json' };
import pages from '../../../content/words/en/pages-register.json' with { type: 'json' };
import register from '../../../content/words/en/register.json' with { type: 'json' };
import site from '../../../content/words/en/site.json' with { type: 'json' };
import tasks from '../../../content/words/en/tasks.json' with { type: 'json' };
import type { Looking } from '../../../src/site/drills/looking.ts';
import { speaker, teller, type WordTable } from '../../../src/site/speak.ts';
import { at, type Book, map } from '../../register/book.ts';

const names = Object.fromEntries(
  [...map.tasks.map(({ id }) => id), ...[1, 2, 3, 4, 5, 6, 7, 8].map((n) => `W${n}`)].map((id) => [
    id,
    { name: `work ${id}` },
  ]),
);
const words: WordTable = { ...site, ...pages, ...register, ...drills, variant: tasks.variant, ...names };
export const speak = speaker(words);
export const tell = teller(words);

/** @param on  the day, or the instant, that the page is opened at */
export async function looked(book: Book, me: string | undefined, on = '2026-03-01'): Promise<Looking> {
  const judged = await book.judged({ now: at(on) });
  const people = new Map([['P1', 'Dana Mott']]);
  return { judged, map, names: people, me, now: at(on), speak, tell };
}
