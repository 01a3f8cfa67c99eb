/** Check sheets (content/sheets/ID.yaml), and what the command takes to grade. The files that a sheet travels in: src/practice/sheetFiles.ts. */
import { z } from 'zod';
import type { Sheet } from '../practice/sheet.ts';
import { LONGEST_SHEET_ID } from '../trade/ids.ts';
import { count } from './fields.ts';
import { plainId, taskId } from './ids.ts';
import { texts } from './scenario.ts';

const sheetId = plainId.max(LONGEST_SHEET_ID);

export const sheetShape = z
  .strictObject({
    id: sheetId,
    /** As it is called on the floor. */
    number: count,
    title: texts,
    /** Tasks for which its answers are evidence. */
    tasks: z.array(taskId).min(1),
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
