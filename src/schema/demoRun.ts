/** A run of the demo works: what a trainer opens to see a run worked through, or to look for what is wrong with it. */
import { z } from 'zod';
import { RULE_IDS } from '../run/inspect/finding.ts';
import type { Run } from '../run/types.ts';
import { count } from './fields.ts';
import { plainId } from './ids.ts';
import { lengthFrom0 } from './length.ts';
import { runShape } from './run.ts';

const wordKey = z.string().regex(/^[a-z]\w*\.[\w-]+$/, { error: 'a key of content/words, as demoRun.wall' });

/** What an inspection finds, and where: `at` as it tells it, null for the whole leg. */
const find = z.strictObject({
  rule: z.enum(RULE_IDS),
  leg: z.string().min(1),
  at: lengthFrom0.nullable(),
});

/** One file of content/demo/runs. */
export const demoRunShape = z.strictObject({
  id: plainId,
  /** Its place in order of difficulty, the easiest 1; no two share one. */
  rank: count,
  /** Keys of its name, and of the one line that says what it teaches. */
  name: wordKey,
  line: wordKey,
  /** Tags of what stands at its start, and at its ends by leg, as its sheets name them. */
  tags: z.strictObject({ start: z.string().min(1), ends: z.record(z.string(), z.string().min(1)) }),
  run: runShape,
  /** All that an inspection finds; left out: nothing. The content check holds the run to it. */
  finds: z.array(find).default([]),
});
export type DemoRun = Omit<z.output<typeof demoRunShape>, 'run'> & { readonly run: Run };
