/** Names of people on a page: as they are spoken of, and the marks they go by in a box. Pure. */
import { type Names, type People, peopleOfText } from '../register/people.ts';
import { GivenError } from '../trade/given.ts';

export type { Names, People } from '../register/people.ts';

export const nobody: People = { ids: [], names: new Map() };

/** The names file as it was kept. One that an earlier version took and this one would not is no names, and is asked for anew. */
export function keptPeople(text: string | undefined): People {
  if (text === undefined) return nobody;
  try {
    return peopleOfText(text);
  } catch (cause) {
    if (cause instanceof GivenError) return nobody;
    throw cause;
  }
}

/** As a person is spoken of: the name where one is known. */
export const spokenName = (id: string, names: Names): string => names.get(id) ?? id;

/** The same with the id beside a name, where it is signed: two people may share a name. @param both  puts the two together */
export const named = (
  id: string,
  names: Names,
  both: (values: { readonly name: string; readonly id: string }) => string,
): string => {
  const name = names.get(id);
  return name === undefined ? id : both({ name, id });
};

/** Names without those of people who were erased: on every page they go by their ids. */
export const withoutErased = (names: Names, erased: ReadonlySet<string>): Names =>
  erased.size === 0 ? names : new Map([...names].filter(([id]) => !erased.has(id)));

/** The ids that go by a name, however its letters are written; none where the text is an id itself. */
export function idsOfName(text: string, { ids, names }: People, known: readonly string[]): readonly string[] {
  const wanted = text.trim();
  if (wanted === '' || known.includes(wanted) || ids.includes(wanted)) return [];
  const plain = (name: string) => name.toLowerCase().split(/\s+/).join(' ');
  return [...names].filter(([, name]) => plain(name) === plain(wanted)).map(([id]) => id);
}

/** Signs up to which an id stands in a box as it is. */
const WHOLE = 5;

/**
 * What a person may go by in a box, the shortest first: of a name its initials, then more letters of its last word,
 * then of the others; of a long id its
 * beginning. The last one is the id, which nobody shares.
 */
function marksFor(id: string, names: Names): readonly string[] {
  const words = (names.get(id) ?? '').split(/[\s-]+/).filter((word) => /^\p{L}/u.test(word));
  const signs = [...id];
  if (words.length < 2) {
    const from = signs.length <= WHOLE ? signs.length : 3;
    return signs.slice(from - 1).map((_, i) => signs.slice(0, from + i).join(''));
  }
  const letters = words.slice(0, 3).map((word) => [...word]);
  const taken = letters.map(() => 1);
  const mark = () =>
    letters
      .map((word, i) => {
        const [first = '', ...others] = word.slice(0, taken[i]);
        return first.toUpperCase() + others.join('');
      })
      .join('');
  const marks = [mark()];
  for (let i = letters.length - 1; i >= 0; i -= 1) {
    while ((taken[i] as number) < (letters[i] as string[]).length) {
      taken[i] = (taken[i] as number) + 1;
      marks.push(mark());
    }
  }
  return [...marks, id];
}

/**
 * A mark each, no two alike: whoever shares one gets a longer one, all of them alike, so that the order of the ids
 * changes nothing. Two people of one name go by their ids.
 */
export function marksOf(ids: Iterable<string>, names: Names): ReadonlyMap<string, string> {
  const people = [...new Set(ids)].map((id) => ({ id, marks: marksFor(id, names), at: 0 }));
  const markOf = ({ marks, at, id }: (typeof people)[number]): string => marks[at] ?? id;
  for (;;) {
    // Capitals and small letters look too alike in a box to tell people apart.
    const groups = Map.groupBy(people, (person) => markOf(person).toLowerCase());
    const grow = [...groups.values()]
      .filter((group) => group.length > 1)
      .flat()
      .filter(({ marks, at }) => at < marks.length - 1);
    if (grow.length === 0) return new Map(people.map((person) => [person.id, markOf(person)]));
    for (const person of grow) person.at += 1;
  }
}
