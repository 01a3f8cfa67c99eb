import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { ContentFile } from '../schema/library.ts';
import { GivenError } from '../trade/given.ts';
import { root } from './root.ts';

/**
 * Every file below content/ with its text, by path; hidden files are left out.
 * @param folder  folder that holds `content/`; the project's own when left out
 * @throws {GivenError} when there is no such folder
 */
export function contentFiles(folder: string = root): readonly ContentFile[] {
  if (!existsSync(join(folder, 'content'))) {
    throw new GivenError([
      {
        field: '--in',
        value: folder,
        message: 'it holds no folder content',
        todo: 'name the folder above content/',
      },
    ]);
  }
  return readdirSync(join(folder, 'content'), { recursive: true, withFileTypes: true })
    .filter((e) => e.isFile() && !e.name.startsWith('.'))
    .map((e) => join(e.parentPath, e.name))
    .map((path) => ({
      path: path.slice(join(folder, '/').length).replaceAll('\\', '/'),
      text: readFileSync(path, 'utf8'),
    }))
    .sort((a, b) => (a.path < b.path ? -1 : 1));
}
