/**
 * The two files that a sheet travels in (README.md shows them), read by hand: the command, the pages and the register
 * all call this one reader, and the pages' content policy forbids a reader that compiles code while it runs.
 */
import { LONGEST_SHEET_ID, PLAIN_ID, TASK_ID } from '../trade/ids.ts';
import { anyText, exactly, type Fields, faultsIn, isRecord, refuseIf, textOf } from './fileFields.ts';
import { type AnswersFile, MOST_BENCHES, type SetFile } from './sheet.ts';

const head = {
  v: exactly(1),
  sheet: textOf(
    PLAIN_ID,
    'this is no id of a sheet',
    'write the id of a file of content/sheets',
    LONGEST_SHEET_ID,
  ),
  bench: {
    good: (value) => Number.isInteger(value) && Number(value) >= 1 && Number(value) <= MOST_BENCHES,
    message: 'this is no bench number',
    todo: `write a whole number from 1 to ${MOST_BENCHES}`,
  },
  person: textOf(
    /^[A-Za-z0-9._-]{1,64}$/,
    'this is no id of a person',
    'write 1 to 64 letters, digits, - _ .',
  ),
  task: textOf(TASK_ID, 'this is no id of a task', 'write T and two digits, a part has a letter more'),
  of: {
    good: isRecord,
    message: 'this is no sheet',
    todo: 'leave it as the page made it',
    optional: true,
  },
} satisfies Fields;

const setFields: Fields = { ...head, kind: exactly('set') };
const answersFields: Fields = {
  ...head,
  kind: exactly('answers'),
  device: textOf(/^[A-Za-z0-9-]{1,32}$/, 'this is no name of a device', 'write 1 to 32 letters, digits, -'),
  answers: {
    good: Array.isArray,
    message: 'this is no list of answers',
    todo: 'give one entry a place of the sheet',
  },
};
const entryFields: Fields = {
  family: anyText,
  seed: anyText,
  answers: {
    good: isRecord,
    message: 'these are no answers',
    todo: 'give the answers by the id of their ask',
  },
};

/** A sheet for whoever has it: each writes the bench number. `of` is read by sheetForm.ts. */
export interface OpenSheetFile {
  readonly v: 1;
  readonly kind: 'sheet';
  readonly of: Readonly<Record<string, unknown>>;
}

/** A file of kind `sheet`, or of kind `set`. @throws {GivenError} every fault of it */
export function readSetOrSheetFile(given: unknown): SetFile | OpenSheetFile {
  if (!isRecord(given) || given['kind'] !== 'sheet') return readSetFile(given);
  const { optional: _, ...of } = head.of;
  refuseIf(faultsIn(given, { v: head.v, kind: exactly('sheet'), of }));
  return given as unknown as OpenSheetFile;
}

/** A file of kind `set`. @throws {GivenError} every fault of it */
export function readSetFile(given: unknown): SetFile {
  refuseIf(faultsIn(given, setFields));
  return given as SetFile;
}

/** A file of kind `answers`; whether its draws and answers are the sheet's, grading finds. @throws {GivenError} every fault of its form */
export function readAnswersFile(given: unknown): AnswersFile {
  const entries = isRecord(given) && Array.isArray(given['answers']) ? given['answers'] : [];
  refuseIf([
    ...faultsIn(given, answersFields),
    ...entries.flatMap((entry, k) => faultsIn(entry, entryFields, `answers[${k}]`)),
  ]);
  return given as AnswersFile;
}
