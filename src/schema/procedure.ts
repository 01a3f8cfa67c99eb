import { z } from 'zod';
import { plainId, taskId } from './ids.ts';

const text = z
  .string()
  .min(1)
  .refine((s) => s === s.trim(), { error: 'space at the head or the end' });

/**
 * A safety panel. `caution`: could hurt; `warning`: could kill or maim; `danger`: will; `notice`: no hurt to people,
 * but loss or a rule (the signal words of ANSI Z535.4).
 */
const panel = z.strictObject({ signal: z.enum(['notice', 'caution', 'warning', 'danger']), text });
export type Panel = z.infer<typeof panel>;

/** A place to stop: who must look, and at what, before the next step. */
const hold = z.strictObject({ who: text, look: text });

const step = z.strictObject({
  title: text,
  /** Stand before the words of the step. */
  cautions: z.array(panel).default([]),
  /** One action a sentence; a paragraph each. */
  do: z.array(text).min(1),
  /** What the balloon with this step's number points at on the form's figure; left out: no balloon. */
  shows: plainId.optional(),
  /** Critical points of the task that this step carries. */
  critical: z.array(plainId).default([]),
  /** Text changed by a revision: its number, and what stood before. */
  changed: z.strictObject({ revision: z.int().min(2), was: text }).optional(),
  /** Looked at after this step, before the next. */
  hold: hold.optional(),
});
export type ProcedureStep = z.infer<typeof step>;

/** Views of one place of a run, of one piece, of a joint; `isometric` and `bonding` show a run as a whole. */
const FIGURE_VIEWS = [
  ...(['strip', 'splice', 'piece'] as const),
  ...(['fitting', 'holes', 'support', 'exploded'] as const),
  ...(['isometric', 'bonding'] as const),
] as const;

/** A figure is a run (content/procedures/runs) plus a view of it, never a picture. */
const figure = z.strictObject({
  view: z.enum(FIGURE_VIEWS),
  run: plainId,
  /** What of the run: a joint, piece, support or leg by its id where the view shows one. */
  of: z.string().min(1).optional(),
  caption: text,
});
export type Figure = z.infer<typeof figure>;

/** A limit of acceptance; its tag on the page is what the source says of itself (standard, common practice, training value). */
const limit = z.strictObject({ what: text, holds: text, source: plainId });

/** One way of doing the task from beginning to end, with its figure and what to lay out. */
const form = z.strictObject({
  id: plainId,
  /** Above the steps, where a procedure has more than one form. */
  title: text,
  lead: text,
  figure,
  /** Shown below it, without balloons of the steps. */
  also: z.array(figure).default([]),
  /** Catalogue items to lay out first, for one joint or piece. */
  hardware: z.array(z.strictObject({ item: plainId, count: z.int().min(1) })).default([]),
  steps: z.array(step).min(1),
  limits: z.array(limit).min(1),
});
export type Form = z.infer<typeof form>;

/** A procedure in one language: content/procedures/LANG/TASK.mdx. The text after the front matter is background reading. */
export const procedureShape = z.strictObject({
  /** The task it teaches; also the name of the file. */
  id: taskId,
  /** Revision of the task that this text is; must be the task's last. */
  revision: z.int().min(1),
  /** What each revision changed, first issue first. */
  changes: z.array(text).min(1),
  /** Before anything else. */
  cautions: z.array(panel).default([]),
  tools: z.array(text).min(1),
  forms: z.array(form).min(1),
  /** What is not the installer's to decide, and whose it is. */
  defer: z.array(z.strictObject({ to: text, what: text })).min(1),
  /** Practice families that exercise it. */
  practice: z.array(plainId).default([]),
  /** Calculators that work out what it needs, as the site names them; left out, the one for cuts. */
  sums: z.array(plainId).default([]),
});
export type Procedure = z.infer<typeof procedureShape>;
