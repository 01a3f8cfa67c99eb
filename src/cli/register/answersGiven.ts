/**
 * The answers to a sheet, as a person writes them for `register answer`. Plain: `{"1":{"cut":"9'-2 1/4\""},"2":{…}}`, each
 * draw's answers under its place. Or a list, one entry a draw in the order of the places; or the list that an answers
 * file carries, `[{"family"?,"seed","answers"}]`. Any of them may stand under `"answers"`.
 */
import { isRecord } from '../../practice/fileFields.ts';
import type { AnswersFile, SheetPlace } from '../../practice/sheet.ts';
import { type Fault, GivenError } from '../../trade/given.ts';

type Entry = AnswersFile['answers'][number];
type Fields = Readonly<Record<string, unknown>>;

/**
 * Every place of the sheet with what was answered there; a place that is left out is blank. Whether the answers can be
 * read, grading finds.
 * @throws {GivenError} every fault; its `field` begins at the answers (`answers.7`, `answers[2].seed`)
 */
export function answersGiven(given: unknown, places: readonly SheetPlace[]): readonly Entry[] {
  const inner = isRecord(given) && Object.hasOwn(given, 'answers') ? unwrapped(given) : given;
  const faults: Fault[] = [];
  const found = new Map<number, Fields>();
  const take = (field: string, place: SheetPlace | undefined, answers: unknown, value: unknown): void => {
    const wrong = wrongWith(place, answers, found, places);
    if (wrong !== undefined) faults.push({ field, value, ...wrong });
    else if (place !== undefined) found.set(place.place, answers as Fields);
  };
  if (Array.isArray(inner)) {
    for (const [i, entry] of inner.entries()) {
      const field = `answers[${i}]`;
      if (!isCarried(entry)) {
        take(field, places[i], entry, entry);
        continue;
      }
      const place = places.find(
        (p) => p.seed === entry['seed'] && (entry['family'] ?? p.family) === p.family,
      );
      take(`${field}.seed`, place, entry['answers'], entry['seed']);
      const unknown = Object.keys(entry).filter((name) => !['family', 'seed', 'answers'].includes(name));
      faults.push(...unknown.map((name) => noField(`${field}.${name}`, entry[name])));
    }
  } else if (isRecord(inner)) {
    for (const [name, answers] of Object.entries(inner)) {
      const place = places.find((p) => String(p.place) === name || p.seed === name);
      take(`answers.${name}`, place, answers, answers);
    }
  } else {
    const todo = 'write {"1":{"ask":value},"2":{…}}: each draw’s answers under its place';
    faults.push({ field: 'answers', value: inner, message: 'these are no answers', todo });
  }
  if (faults.length > 0) throw new GivenError(faults);
  return places.map(({ place, family, seed }) => ({ family, seed, answers: found.get(place) ?? {} }));
}

/** An entry of the list that an answers file carries. */
const isCarried = (entry: unknown): entry is Fields =>
  isRecord(entry) && Object.hasOwn(entry, 'seed') && Object.hasOwn(entry, 'answers');

const noField = (field: string, value: unknown): Fault => ({
  field,
  value,
  message: 'there is no such field here',
  todo: 'take it out, or mend its spelling',
});

/** @throws {GivenError} anything beside the answers: then it is another kind of file */
function unwrapped(given: Fields): unknown {
  const beside = Object.keys(given).filter((name) => name !== 'answers');
  if (beside.length > 0) throw new GivenError(beside.map((name) => noField(`answers.${name}`, given[name])));
  return given['answers'];
}

function wrongWith(
  place: SheetPlace | undefined,
  answers: unknown,
  found: ReadonlyMap<number, Fields>,
  places: readonly SheetPlace[],
): Pick<Fault, 'message' | 'todo'> | undefined {
  if (place === undefined) {
    const { seed = '' } = places[0] ?? {};
    const todo = `write a place from 1 to ${places.length}, or a seed as ${seed}`;
    return { message: 'this sheet has no such draw at this bench', todo };
  }
  if (found.has(place.place)) return { message: 'this draw is answered twice', todo: 'leave one of the two' };
  if (isRecord(answers)) return undefined;
  return {
    message: 'these are no answers',
    todo: 'write an object, each answer under its ask; {} for a blank',
  };
}
