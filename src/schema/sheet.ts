/** Check sheets (content/sheets/ID.yaml), and what the command takes to grade. The files that a sheet travels in: src/practice/sheetFiles.ts. */
import { z } from 'zod';
import type { Sheet } from '../practice/sheet.ts';
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

/** What `practice grade` takes: answers by ask. */
export const answersInput = z.strictObject({ answers: z.record(z.string(), z.unknown()) });

export type SheetFile = z.output<typeof sheetShape>;
const asSheet = (file: SheetFile): Sheet => file;
void asSheet;
