import { z } from 'zod';
import { plainId } from './ids.ts';

/** A document for users: content/pages/LANG/ID.mdx; its text is the page. */
export const pageShape = z.strictObject({
  id: plainId,
  /** Sheet number in the title block. */
  sheet: z.string().regex(/^TH-[A-Z]\d\d$/, { error: 'TH-, a letter and two digits, as TH-D01' }),
  title: z.string().min(1),
  /** One line for the list of sheets and the head of the page. */
  lead: z.string().min(1),
  revision: z.int().min(1),
  on: z.iso.date({ error: 'a day, as 2026-01-12' }),
});
export type Page = z.infer<typeof pageShape>;
