/**
 * The two files that a sheet travels in, read on a page. The command reads them with src/schema/sheet.ts; here the plain
 * shapes of the register do it, because the schema's own engine compiles code while it runs, which the pages' policy forbids.
 */
import { type AnswersFile, MOST_BENCHES, type SetFile, type SheetPlace } from '../practice/sheet.ts';
import * as shape from '../register/shapes.ts';
import { isObject, type Shape } from '../register/shapes.ts';
import { readJson } from '../register/strictJson.ts';
import { GivenError } from '../trade/given.ts';
import type { Given } from './practice.ts';

const bench: Shape = (v) =>
  shape.count(1)(v) ?? ((v as number) > MOST_BENCHES ? `wants at most ${MOST_BENCHES}` : undefined);
const head = { v: shape.oneOf(1), sheet: shape.text, bench, person: shape.personId, task: shape.taskId };
const setShape = shape.record({ ...head, kind: shape.oneOf('set') });
const answersShape = shape.record({
  ...head,
  kind: shape.oneOf('answers'),
  device: shape.deviceName,
  answers: shape.list(
    shape.record({
      family: shape.text,
      seed: shape.text,
      answers: (v) => (isObject(v) ? undefined : 'wants answers by ask'),
    }),
  ),
});

function read(text: string, of: Shape, todo: string): unknown {
  let wrong: string | undefined;
  try {
    const value = readJson(text);
    wrong = of(value);
    if (wrong === undefined) return value;
  } catch (error) {
    wrong = (error as Error).message;
  }
  throw new GivenError([{ field: 'file', message: wrong, todo }]);
}

/** @throws {GivenError} not a file of kind `set` */
export const readSet = (text: string): SetFile =>
  read(text, setShape, 'give the file that the trainer set') as SetFile;

/** @throws {GivenError} not a file of kind `answers`; whether its answers are the sheet's, grading finds */
export const readAnswers = (text: string): AnswersFile =>
  read(text, answersShape, 'give the file that the answering device saved') as AnswersFile;

/** Evidence as it stands in a register, in the form that grading takes. @throws {GivenError} it has no such form */
export const answersOf = (evidence: unknown): AnswersFile => readAnswers(JSON.stringify(evidence));

export const fileText = (file: SetFile | AnswersFile): string => `${JSON.stringify(file, null, 2)}\n`;

export const setName = ({ sheet, bench, person }: SetFile): string => `set-${sheet}-${bench}-${person}.json`;
export const answersName = ({ sheet, bench, person }: AnswersFile): string =>
  `answers-${sheet}-${bench}-${person}.json`;

/** The answers file of a sheet: every place of it, those left blank with no answers. */
export function answersFile(
  { sheet, bench, person, task }: SetFile,
  device: string,
  places: readonly SheetPlace[],
  given: Readonly<Record<number, Given>>,
): AnswersFile {
  const answers = places.map(({ place, family, seed }) => ({ family, seed, answers: given[place] ?? {} }));
  return { v: 1, kind: 'answers', sheet, bench, person, device, task, answers };
}
