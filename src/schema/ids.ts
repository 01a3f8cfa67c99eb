/** Fields that hold the name of a thing. */
import { z } from 'zod';
import { PLAIN_ID, TASK_ID } from '../trade/ids.ts';

/** Of a file, an item, a part of either. */
export const plainId = z.string().regex(PLAIN_ID, { error: 'small letters, digits and hyphens' });
/** A task, or safe work that an outside ticket stands for. */
export const workId = z.string().regex(/^(?:T\d\d[a-z]?|W\d)$/, {
  error: 'T and two digits, as T05, a part with a letter more; or W and a digit for safe work',
});
export const taskId = z
  .string()
  .regex(TASK_ID, { error: 'T and two digits, as T05; a part has a letter more, as T08a' });
