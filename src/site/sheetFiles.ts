/** The two files that a sheet travels in, as a page takes them in and hands them out. */
import type { AnswersFile, SetFile, SheetPlace } from '../practice/sheet.ts';
import {
  type OpenSheetFile,
  readAnswersFile,
  readSetFile,
  readSetOrSheetFile,
} from '../practice/sheetFiles.ts';
import { readJson } from '../register/strictJson.ts';
import { GivenError } from '../trade/given.ts';
import type { Given } from './practice.ts';

function json(text: string, todo: string): unknown {
  try {
    return readJson(text);
  } catch (error) {
    throw new GivenError([{ field: 'file', message: (error as Error).message, todo }]);
  }
}

/** @throws {GivenError} not a file of kind `set` */
export const readSet = (text: string): SetFile =>
  readSetFile(json(text, 'give the file that the trainer set'));

/** @throws {GivenError} not a file of kind `set` or `sheet` */
export const readSetOrSheet = (text: string): SetFile | OpenSheetFile =>
  readSetOrSheetFile(json(text, 'give the file that the trainer made'));

/** @throws {GivenError} not a file of kind `answers`; whether its answers are the sheet's, grading finds */
export const readAnswers = (text: string): AnswersFile =>
  readAnswersFile(json(text, 'give the file that the answering device saved'));

export const fileText = (file: SetFile | AnswersFile): string => `${JSON.stringify(file, null, 2)}\n`;

export const setName = ({ sheet, bench, person }: SetFile): string => `set-${sheet}-${bench}-${person}.json`;
export const answersName = ({ sheet, bench, person }: AnswersFile): string =>
  `answers-${sheet}-${bench}-${person}.json`;

/** The answers file of a sheet: every place of it, those left blank with no answers. */
export function answersFile(
  { sheet, bench, person, task, of }: SetFile,
  device: string,
  places: readonly SheetPlace[],
  given: Readonly<Record<number, Given>>,
): AnswersFile {
  const answers = places.map(({ place, family, seed }) => ({ family, seed, answers: given[place] ?? {} }));
  const made = of === undefined ? {} : { of };
  return { v: 1, kind: 'answers', sheet, bench, person, device, task, ...made, answers };
}
