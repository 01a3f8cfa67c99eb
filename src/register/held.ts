import type { Say } from '../trade/answer.ts';
import { byText, hashOf } from './bytes.ts';
import { canonical, type Json, type JsonObject } from './canonical.ts';
import { type Header, headerFault, idOf, lineOf, signedBytes } from './header.ts';
import type { Verify } from './keys.ts';
import { claimedHash, isBodyPath, isChainPath, MARKER } from './paths.ts';
import * as shape from './shapes.ts';
import { readJson } from './strictJson.ts';

/** A register's folder as texts by path; order does not matter. */
export type RegisterFiles = Readonly<Record<string, string>>;

export const problemCodes = [
  'altered',
  'gap',
  'fork',
  'not-appointed',
  'own-signature',
  'after-retirement',
  'back-dated',
  'unreadable',
  'torn-tail',
  'body-missing',
  'foreign-file',
] as const;
export type ProblemCode = (typeof problemCodes)[number];

/** Something wrong with a register. `settled`: listed, and no longer counted. */
export interface Problem {
  readonly file: string;
  readonly line?: number;
  readonly code: ProblemCode;
  readonly say: Say;
  readonly settled?: true;
}

/** An entry whose bytes are those signed. `file` and `line` say where it was first found. */
export interface Entry {
  readonly id: string;
  readonly header: Header;
  readonly signature: string;
  readonly time: number;
  readonly file: string;
  readonly line: number;
}

/** What a folder holds, before any question of who may sign what. */
export interface Held {
  /** By id. */
  readonly entries: ReadonlyMap<string, Entry>;
  /** Texts by hash. */
  readonly bodies: ReadonlyMap<string, string>;
  /** Hashes whose file holds something else. */
  readonly alteredBodies: ReadonlySet<string>;
  /** Files with text after the last whole line. */
  readonly torn: ReadonlySet<string>;
  /** The `begin` that the folder says it belongs to. */
  readonly marker: string | undefined;
  readonly problems: readonly Problem[];
}

/** Reads every line and body, and checks every signature. Nothing in a folder can make this throw. */
export async function holdFiles(files: RegisterFiles, verify: Verify): Promise<Held> {
  const problems: Problem[] = [];
  const entries = new Map<string, Entry>();
  const torn = new Set<string>();
  const paths = Object.keys(files).sort(byText);

  const lines = paths.filter(isChainPath).flatMap((file) => {
    const text = files[file] as string;
    const whole = text.lastIndexOf('\n') + 1;
    if (whole < text.length) {
      torn.add(file);
      const line = text.slice(0, whole).split('\n').length;
      problems.push({ file, line, code: 'torn-tail', say: { say: 'registerProblem.torn-tail' } });
    }
    const texts = text.slice(0, whole).split('\n').slice(0, -1);
    return texts.map((line, i) => ({ file, line: i + 1, text: line }));
  });
  const read = await Promise.all(lines.map((line) => readLine(line, verify)));
  for (const found of read) {
    if ('code' in found) problems.push(found);
    else if (better(found, entries.get(found.id))) entries.set(found.id, found);
  }

  const bodies = new Map<string, string>();
  const alteredBodies = new Set<string>();
  for (const file of paths.filter(isBodyPath)) {
    const text = files[file] as string;
    const hash = hashOf(text);
    bodies.set(hash, text);
    const claimed = claimedHash(file);
    if (claimed === undefined || claimed === hash) continue;
    alteredBodies.add(claimed);
    problems.push({ file, code: 'altered', say: { say: 'registerProblem.body-altered' } });
  }
  const marker = markerOf(files[MARKER], problems);
  return { entries, bodies, alteredBodies, torn, marker, problems };
}

/** One id may be signed twice over; every copy keeps the smaller signature, so that joined copies are the same. */
const better = (found: Entry, held: Entry | undefined): boolean =>
  held === undefined || found.signature < held.signature;

interface Line {
  readonly file: string;
  readonly line: number;
  readonly text: string;
}

async function readLine({ file, line, text }: Line, verify: Verify): Promise<Entry | Problem> {
  const unreadable = (why: string): Problem => ({
    file,
    line,
    code: 'unreadable',
    say: { say: 'registerProblem.unreadable', values: { why } },
  });
  let value: Json;
  try {
    value = readJson(text);
  } catch (error) {
    return unreadable((error as Error).message);
  }
  const wrong = lineShape(value);
  if (wrong !== undefined) return unreadable(wrong);
  const { header, signature } = value as unknown as { header: Header; signature: string };
  const fault = headerFault(header as unknown as Json);
  if (fault !== undefined) return unreadable(fault);
  if (lineOf(header, signature) !== text)
    return { file, line, code: 'altered', say: { say: 'registerProblem.altered-form' } };
  if (!(await verify(header.signer, signedBytes(header), signature))) {
    return { file, line, code: 'altered', say: { say: 'registerProblem.altered-signature' } };
  }
  return { id: idOf(header), header, signature, time: Date.parse(header.time), file, line };
}

const lineShape = shape.record({ header: shape.anything, signature: shape.hex(64) });
const markerShape = shape.record({ v: shape.oneOf(1), begin: shape.hex(32) });

export const markerText = (begin: string): string => canonical({ v: 1, begin });

function markerOf(text: string | undefined, problems: Problem[]): string | undefined {
  if (text === undefined) return undefined;
  try {
    const value = readJson(text);
    const begin = markerShape(value) === undefined ? ((value as JsonObject)['begin'] as string) : undefined;
    if (begin !== undefined && markerText(begin) === text) return begin;
  } catch {
    // Reported below like any other text that is no marker.
  }
  problems.push({
    file: MARKER,
    code: 'unreadable',
    say: { say: 'registerProblem.unreadable', values: { why: 'wants {"begin":…,"v":1} and nothing more' } },
  });
  return undefined;
}
