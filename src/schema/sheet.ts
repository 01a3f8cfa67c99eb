/** Check sheets (content/sheets/ID.yaml), and what the command takes to grade. The files that a sheet travels in: src/practice/sheetFiles.ts. */
import { z } from 'zod';
import { sheetRuleFaults } from '../practice/passRule/rule.ts';
import type { Sheet } from '../practice/sheet.ts';
import { MOST_OF_FAMILY, tooMany } from '../practice/sheetForm.ts';
import { LONGEST_SHEET_ID } from '../trade/ids.ts';
import { count } from './fields.ts';
import { plainId, taskId } from './ids.ts';
import { parameter, texts } from './scenario.ts';

const sheetId = plainId.max(LONGEST_SHEET_ID);

/** Of shares and chances, what they may be is the rule's own to say (`ruleFaults`). */
const chance = z.number();

const countRule = z.strictObject({ need: count, of: count });
const boundRule = z.strictObject({
  /** Passed when the draws show at this confidence (one-sided) that the person holds this share of such draws. */
  bound: z.strictObject({ confidence: chance, share: chance }),
});
const sequentialRule = z.strictObject({
  /** Wald's test, draw by draw: p0 must not pass, p1 should; undecided at the ceiling, the number of draws. */
  sequential: z.strictObject({ p0: chance, p1: chance, alpha: chance, beta: chance, ceiling: count }),
});

export const sheetShape = z
  .strictObject({
    id: sheetId,
    /** As it is called on the floor. */
    number: count,
    title: texts,
    /** Tasks for which its answers are evidence. */
    tasks: z.array(taskId).min(1),
    /** In the order of the sheet. */
    families: z
      .array(
        z.strictObject({
          family: z.string(),
          draws: count.lte(MOST_OF_FAMILY),
          /** Parameters of the family, by name, that choose from less on this sheet. */
          narrow: z.record(z.string(), parameter).optional(),
        }),
      )
      .min(1),
    /** When it is passed: all of its draws hold, or a rule with a stated error; never with a critical point missed. */
    rule: z.union([countRule, boundRule, sequentialRule]),
  })
  .superRefine(({ families, rule }, context) => {
    const add = (path: string, message: string, todo: string) =>
      context.addIssue({ code: 'custom', path: ['rule', ...path.split('.')], message, params: { todo } });
    const draws = families.reduce((sum, f) => sum + f.draws, 0);
    for (const { field, message, todo } of tooMany(draws))
      context.addIssue({ code: 'custom', path: [field], message, params: { todo } });
    for (const { field, message, todo } of sheetRuleFaults(rule, draws)) add(field, message, todo);
  });

/** What `practice grade` takes: answers by ask. */
export const answersInput = z.strictObject({ answers: z.record(z.string(), z.unknown()) });

export type SheetFile = z.output<typeof sheetShape>;
const asSheet = (file: SheetFile): Sheet => file;
void asSheet;
