/**
 * The texts of content/ that are written in MDX. Their front matter is checked by src/schema (library.ts), where every
 * fault of every file is found at once, so these collections only render the text after it.
 */
import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'zod';

/** `en/T07`, as the library names it. */
const generateId = ({ entry }: { entry: string }): string => entry.replace(/\.mdx$/, '');
const texts = (folder: string) =>
  defineCollection({
    loader: glob({ base: `./content/${folder}`, pattern: '*/*.mdx', generateId }),
    schema: z.looseObject({}),
  });

export const collections = { procedures: texts('procedures'), pages: texts('pages') };
