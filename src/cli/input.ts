/** The JSON that a verb is given: from a file, or from standard input. */
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { text } from 'node:stream/consumers';
import { GivenError } from '../trade/given.ts';

/**
 * A path as the person meant it: npm runs the command in the project's folder, wherever it was called from.
 */
export function pathHere(path: string): string {
  const { npm_lifecycle_event: script, INIT_CWD: calledFrom } = process.env;
  return script === 'trayhand' && calledFrom !== undefined ? resolve(calledFrom, path) : path;
}

/** @throws {GivenError} when the file cannot be read or holds no JSON */
export async function readInput(file: string | undefined): Promise<unknown> {
  if (file !== undefined && file !== '-') return fromJson(fromFile(file), file);
  if (process.stdin.isTTY) process.stderr.write('reading JSON from the keyboard; end it with Ctrl-D\n');
  return fromJson(await text(process.stdin), 'standard input');
}

function fromFile(file: string): string {
  try {
    return readFileSync(pathHere(file), 'utf8');
  } catch (cause) {
    const why =
      (cause as NodeJS.ErrnoException).code === 'ENOENT' ? 'there is no such file' : 'it cannot be read';
    throw new GivenError([
      {
        field: '',
        value: file,
        message: `${file}: ${why}`,
        todo: 'name a file of JSON, or - for standard input',
      },
    ]);
  }
}

function fromJson(given: string, from: string): unknown {
  const json = given.replace(/^\uFEFF/, '');
  if (json.trim() === '')
    throw new GivenError([
      { field: '', message: `${from} is empty`, todo: 'give one JSON object, or an array of them' },
    ]);
  try {
    return JSON.parse(json);
  } catch (cause) {
    const why = cause instanceof Error ? cause.message : String(cause);
    throw new GivenError([
      {
        field: '',
        message: `${from} holds no JSON: ${why}`,
        todo: 'write one JSON object, or an array of them',
      },
    ]);
  }
}
