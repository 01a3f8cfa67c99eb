/** Check sheets (content/sheets/ID.yaml), and the two files that a sheet travels in: set for a person, and answered. */
import { z } from 'zod';
import { type AnswersFile, MOST_BENCHES, type SetFile, type Sheet } from '../practice/sheet.ts';
import { type Checked, check } from './faults.ts';
import { count } from './fields.ts';
import { texts } from './scenario.ts';

const task = z.string().regex(/^T\d\d[a-z]?$/, { error: 'a task is T and two digits' });
/** A sheet's id stands in every seed of it, so it stays short. */
const sheetId = z
  .string()
  .regex(/^[a-z0-9][a-z0-9-]*$/, { error: 'small letters, digits and hyphens' })
  .max(40);

export const sheetShape = z
  .strictObject({
    id: sheetId,
    /** As it is called on the floor. */
    number: count,
    title: texts,
    /** Tasks for which its answers are evidence. */
    tasks: z.array(task).min(1),
    /** In the order of the sheet. */
    families: z.array(z.strictObject({ family: z.string(), draws: count })).min(1),
    /** Passed when `need` of its `of` draws are, and no critical point is missed on any. */
    rule: z.strictObject({ need: count, of: count }),
  })
  .superRefine(({ families, rule }, context) => {
    const add = (path: string, message: string, todo: string) =>
      context.addIssue({ code: 'custom', path: ['rule', path], message, params: { todo } });
    const draws = families.reduce((sum, f) => sum + f.draws, 0);
    if (rule.of !== draws) add('of', `the sheet has ${draws} draws`, `write ${draws}`);
    if (rule.need > draws) add('need', 'more than there are', `write ${draws} or less`);
  });

const head = {
  v: z.literal(1),
  sheet: sheetId,
  bench: z.int().min(1).max(MOST_BENCHES),
  person: z.string().regex(/^[A-Za-z0-9._-]{1,64}$/, { error: '1 to 64 letters, digits, - _ .' }),
  task,
};

const setShape = z.strictObject({ ...head, kind: z.literal('set') });

const answersShape = z.strictObject({
  ...head,
  kind: z.literal('answers'),
  device: z.string().regex(/^[A-Za-z0-9-]{1,32}$/, { error: '1 to 32 letters, digits, -' }),
  answers: z.array(
    z.strictObject({
      family: z.string(),
      seed: z.string(),
      /** By ask; each in the form of its kind, read when it is graded. */
      answers: z.record(z.string(), z.unknown()),
    }),
  ),
});

/** What `practice grade` takes: answers by ask. */
export const answersInput = z.strictObject({ answers: z.record(z.string(), z.unknown()) });

/** A file of kind `set`, or every fault of it. */
export function readSetFile(given: unknown): Checked<SetFile> {
  return check(setShape, given);
}

/** A file of kind `answers`, or every fault of its form; whether its draws and answers are the sheet's, grading finds. */
export function readAnswersFile(given: unknown): Checked<AnswersFile> {
  return check(answersShape, given);
}

export type SheetFile = z.output<typeof sheetShape>;
const asSheet = (file: SheetFile): Sheet => file;
void asSheet;
