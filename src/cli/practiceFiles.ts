/** Files of the content that practice is drawn and graded with: reading families that nobody asked for takes most of a call. */
import type { ContentFile } from '../schema/library.ts';
import { contentFiles } from './contentFiles.ts';

/** Only these are read; what others say of them is for content check. */
const NEEDED = /^content\/(?:catalogue|rules|sources|tasks|tickets|scenarios|sheets|words)\//;
const FAMILY = /^content\/scenarios\/(.+)\.yaml$/;

const familyIn = (path: string): string | undefined => FAMILY.exec(path)?.[1];

/** Ids of the families that are there, by their files. */
export const familyIds = (): readonly string[] =>
  contentFiles()
    .flatMap(({ path }) => familyIn(path) ?? [])
    .sort();

/** @param wanted  ids of families, or those that the sheets name: all that evidence can be about; left out, all of them */
export function practiceFiles(wanted?: readonly string[] | 'on sheets'): readonly ContentFile[] {
  const files = contentFiles();
  const ids = wanted === 'on sheets' ? familiesOnSheets(files) : wanted;
  return files.filter(({ path }) => {
    const id = familyIn(path);
    return NEEDED.test(path) && (id === undefined || ids === undefined || ids.includes(id));
  });
}

const familiesOnSheets = (files: readonly ContentFile[]): readonly string[] =>
  files
    .filter(({ path }) => path.startsWith('content/sheets/'))
    .flatMap(({ text }) => [...text.matchAll(/\bfamily: *['"]?([a-z0-9-]+)/g)].map(([, id = '']) => id));
