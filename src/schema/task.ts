import { z } from 'zod';
import type { MapTask, TaskMap } from '../register/taskMap.ts';
import { plainId, taskId } from './ids.ts';
import { adoptedOf, type SitePaper } from './site.ts';

const ticketId = z.string().regex(/^W\d$/, { error: 'W and a digit, as W4' });
const day = z.iso.date({ error: 'a day, as 2026-01-12' });
const months = z.int().min(1).max(120);

/** The pairs that tell one way of doing a task from another. A new pair is a change of the register's words. */
export const pairs = ['width', 'metal', 'position', 'joint', 'place', 'area'] as const;

/** A dated issue of a task; `showAgain` asks everyone who showed an earlier one to show it again. */
const revision = z.strictObject({ n: z.int().min(1), on: day, showAgain: z.boolean() });

const revisions = z
  .array(revision)
  .min(1)
  .superRefine((list, ctx) => {
    for (const [i, r] of list.entries()) {
      const before = list[i - 1];
      if (r.n !== i + 1) {
        ctx.addIssue({
          code: 'custom',
          path: [i, 'n'],
          message: `revision ${i + 1} stands here`,
          params: { todo: `number them from 1 without a hole: write ${i + 1}` },
        });
      }
      if (before !== undefined && r.on <= before.on) {
        ctx.addIssue({
          code: 'custom',
          path: [i, 'on'],
          message: `not later than revision ${before.n} (${before.on})`,
          params: { todo: 'give the day from which this revision is in force' },
        });
      }
    }
  });

/**
 * Evidence a task wants. K: `n` of `n` fresh computed answers hold, every critical point among them;
 * P: performed in the witness's sight; M: `n` pieces or positions measured, with value, instrument and measurer.
 */
const evidence = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('K'), n: z.int().min(1) }),
  z.strictObject({ kind: z.literal('P') }),
  z.strictObject({ kind: z.literal('M'), n: z.int().min(1) }),
]);

/** One task of the map. Its name, purpose and the text of its critical points are in content/words, group by its id. */
export const taskShape = z.strictObject({
  id: taskId,
  /** Parts that are shown one by one; with parts the task is a heading and is never signed itself. */
  parts: z.array(taskId).default([]),
  /** Tasks that come before this one on a run. */
  after: z.array(taskId).default([]),
  /** Tasks a person has shown before being taught this one. */
  prerequisites: z.array(taskId).default([]),
  /** Outside tickets the work wants. */
  tickets: z.array(ticketId).default([]),
  /** Pairs that matter to this task with their values; the first value is the plain one. */
  variants: z.partialRecord(z.enum(pairs), z.array(plainId).min(2)).default({}),
  evidence: z.array(evidence),
  /** Months that a showing is good for (common practice, no source; a site adopts its own). */
  months,
  /** Whether a second witness is wanted. */
  second: z.boolean(),
  /** Hours to train one person to show it (training value). */
  trainHours: z.number().positive(),
  /** Critical points: missing one fails the attempt. `null`: they come with the task's procedure. */
  critical: z.array(plainId).min(1).nullable(),
  revisions,
});
export type Task = z.infer<typeof taskShape>;

/** A ticket issued outside: the register keeps issuer, number and last day, and assesses nothing. */
export const ticketShape = z.strictObject({
  id: ticketId,
  /** What a look at the work should find; texts in content/words. */
  critical: z.array(plainId).min(1),
  /** Sources of critical points that state a figure or a rule of law; the others are common practice. */
  sources: z.record(plainId, plainId).default({}),
  /** Months it is commonly given for, or `null` where each site sets them; they run from the ticket, never from our clock. */
  months: months.nullable(),
});

/** What the register needs of the task map, in order of the ids. What the site has adopted (months, a second witness) stands in it. */
export function taskMapOf(library: {
  readonly tasks: ReadonlyMap<string, Task>;
  readonly site: ReadonlyMap<string, SitePaper>;
}): TaskMap {
  const adopted = adoptedOf(library.site.values());
  const tasks = [...library.tasks.values()].map(
    ({ id, months, second, tickets, variants, revisions, parts, trainHours }): MapTask => ({
      id,
      months: adopted.months.get(id)?.value ?? months,
      second: adopted.second.get(id)?.value ?? second,
      tickets,
      variants: variants as MapTask['variants'],
      revisions,
      parts,
      trainHours,
    }),
  );
  return { tasks: tasks.sort((a, b) => (a.id < b.id ? -1 : 1)) };
}
