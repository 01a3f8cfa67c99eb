import { GivenError } from '../trade/given.ts';
import { canonical, type JsonObject } from './canonical.ts';
import type { RegisterFiles } from './held.ts';
import { isBodyPath, isChainPath, MARKER } from './paths.ts';
import * as shape from './shapes.ts';
import { readJson } from './strictJson.ts';

const bundleShape = shape.record({
  v: shape.oneOf(1),
  kind: shape.oneOf('register'),
  files: shape.table((v) => (typeof v === 'string' ? undefined : 'wants a text')),
});

const belongs = (path: string): boolean =>
  path === MARKER || ((isChainPath(path) || isBodyPath(path)) && !path.split('/').includes('..'));

/** A register's folder as one file; only what belongs to a register goes in. */
export function bundleText(files: RegisterFiles): string {
  const own = Object.fromEntries(Object.entries(files).filter(([path]) => belongs(path)));
  return canonical({ v: 1, kind: 'register', files: own });
}

/**
 * Reads a bundle. What its entries are worth is for `openRegister` to say.
 * @throws {GivenError} not a bundle, or a path in it that no register has
 */
export function readBundle(text: string): RegisterFiles {
  const todo = 'give the file that was carried off a register';
  let files: JsonObject;
  try {
    const value = readJson(text);
    const wrong = bundleShape(value);
    if (wrong !== undefined) throw new Error(wrong);
    files = (value as JsonObject)['files'] as JsonObject;
  } catch (error) {
    throw new GivenError([
      { field: '', message: `not a register in one file (${(error as Error).message})`, todo },
    ]);
  }
  const strange = Object.keys(files).filter((path) => !belongs(path));
  if (strange.length > 0) {
    throw new GivenError(
      strange.map((path) => ({ field: `files.${path}`, message: 'no register has such a file', todo })),
    );
  }
  return files as RegisterFiles;
}
