/** The modules of `src` as a browser takes them: as they lie, their types taken off. No built site is needed. */
import { readFileSync } from 'node:fs';
import { stripTypeScriptTypes } from 'node:module';

const imports = {
  '@noble/curves/': '/node_modules/@noble/curves/',
  '@noble/hashes/': '/node_modules/@noble/hashes/',
  idb: '/node_modules/idb/build/index.js',
};

/** An empty page whose scripts may import them by their paths. @param script  a module that it runs */
export const modulePage = (title: string, script = ''): string =>
  `<!doctype html><title>${title}</title><script type="importmap">${JSON.stringify({ imports })}</script>` +
  `<script type="module">${script}</script>`;

/** The text of a module by its path from the root of the project; `undefined` for what is none. */
export function moduleText(path: string): string | undefined {
  if (!/^\/(?:src|tests|node_modules)\/[\w@./-]+\.(?:ts|js)$/.test(path) || path.includes('..'))
    return undefined;
  const text = readFileSync(new URL(`../..${path}`, import.meta.url), 'utf8');
  return path.endsWith('.ts') ? stripTypeScriptTypes(text) : text;
}
