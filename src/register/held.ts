import type { Say } from '../trade/answer.ts';
import { byText, type Hash, hashOf } from './bytes.ts';
import { canonical, type JsonObject } from './canonical.ts';
import type { Header } from './header.ts';
import type { Verify } from './keys.ts';
import { altered, type BadLine, coveredBytes, readLine, type SignedLine } from './lines.ts';
import { bodyPath, claimedHash, isBodyPath, isChainPath, MARKER } from './paths.ts';
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

/** What says of a line that its signature was found good: its id, which comes from its bytes, and the signature. */
export const verifiedKey = ({ id, signature }: Pick<Entry, 'id' | 'signature'>): string => id + signature;

/** What an earlier opening vouches for, and needs no looking at again (vouched.ts). */
export interface Vouched {
  /** Ids of a file's first lines, signatures of which are good. */
  readonly ids: ReadonlyMap<string, readonly string[]>;
  /** Paths of bodies whose names say what they are. */
  readonly bodies: ReadonlySet<string>;
}

/** What spares work and changes no answer. */
export interface Spares {
  readonly hash?: Hash | undefined;
  readonly vouched?: Vouched | undefined;
}
const NOTHING: Vouched = { ids: new Map(), bodies: new Set() };

/**
 * Reads every line and body, and checks every signature. Nothing in a folder can make this throw.
 * @param known  lines by `verifiedKey` whose signatures were found good before: they are not checked again
 * @param spares  `hash`: what the engine has to hash with, where that is faster than what works everywhere;
 *                `vouched`: what an earlier opening vouches for (vouched.ts)
 */
export async function holdFiles(
  files: RegisterFiles,
  verify: Verify,
  known: ReadonlySet<string> = new Set(),
  { hash = hashOf, vouched = NOTHING }: Spares = {},
): Promise<Held> {
  const problems: Problem[] = [];
  const entries = new Map<string, Entry>();
  const torn = new Set<string>();
  const paths = Object.keys(files);
  const chains = paths.filter(isChainPath).sort(byText);

  for (const file of chains) {
    const text = files[file] as string;
    const whole = text.lastIndexOf('\n') + 1;
    if (whole === text.length) continue;
    torn.add(file);
    const line = text.slice(0, whole).split('\n').length;
    problems.push({ file, line, code: 'torn-tail', say: { say: 'registerProblem.torn-tail' } });
  }
  const texts = new Map<string, string>();
  const one = (text: string): string => {
    const held = texts.get(text) ?? text;
    texts.set(held, held);
    return held;
  };
  const isGood = (read: SignedLine): boolean | Promise<boolean> =>
    (known.size > 0 && known.has(verifiedKey(read))) ||
    verify(read.header.signer, coveredBytes(read), read.signature);
  const bad = new Counted();
  const take = ({ file, line, read }: Read, good: boolean): void => {
    if ('code' in read || !good) {
      if (bad.count(file) > MOST_TOLD) return;
      problems.push({ file, line, ...('code' in read ? read : altered('signature')) });
      return;
    }
    const { id, header, signature } = read;
    const entry: Entry = { id, header, signature, time: Date.parse(header.time), file, line };
    if (better(entry, entries.get(id))) entries.set(id, entry);
  };
  // While the engine is at the signatures of one batch the next is read; never is more than that in hand.
  let before: Promise<void> | undefined;
  const toRead = linesIn(chains, files, ({ file, text }) => {
    // Past those that are told of, what cannot be a line is counted without being read.
    return bad.of(file) < MOST_TOLD || mayBeLine(text) || bad.count(file) === 0;
  });
  for (const lines of batches(toRead, 500)) {
    const reads = lines.map(({ file, line, text }): Read => {
      const id = vouched.ids.get(file)?.[line - 1];
      return {
        file,
        line,
        read: readLine(text, one, id === undefined ? hash : () => id),
        spared: id !== undefined,
      };
    });
    const good = Promise.all(reads.map(({ read, spared }) => spared || 'code' in read || isGood(read)));
    await before;
    before = good.then((all) => {
      for (const [i, read] of reads.entries()) take(read, all[i] === true);
    });
  }
  await before;
  for (const [file, n] of bad) {
    if (n <= MOST_TOLD) continue;
    const why = `${n - MOST_TOLD} further lines are like those before`;
    problems.push({ file, code: 'unreadable', say: { say: 'registerProblem.unreadable', values: { why } } });
  }

  const bodies = new Map<string, string>();
  const alteredBodies = new Set<string>();
  const wrong: string[] = [];
  for (const file of paths) {
    if (!isBodyPath(file)) continue;
    const text = files[file] as string;
    // What has half of a pair in it stands for bytes that are no UTF-8: those have another hash, and nothing names them.
    const known = vouched.bodies.has(file) ? claimedHash(file) : undefined;
    const found = text.isWellFormed() ? (known ?? hash(text)) : '';
    if (found !== '') bodies.set(found, text);
    if (file === bodyPath(found)) continue;
    const claimed = claimedHash(file);
    if (claimed === undefined) continue;
    alteredBodies.add(claimed);
    wrong.push(file);
  }
  for (const file of wrong.sort(byText)) {
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
interface Read extends Omit<Line, 'text'> {
  readonly read: SignedLine | BadLine;
  readonly spared: boolean;
}

/** So many bad lines of one file are told of one by one: garbage by the megabyte is not worth a row a line. */
const MOST_TOLD = 1000;

/** Every line of this format begins and ends so, and none is shorter: its hashes and signature alone are longer. */
const mayBeLine = (text: string): boolean =>
  text.length > 300 && text.startsWith('{"header":{') && text.endsWith('"}');

/** How many there are of each file. */
class Counted extends Map<string, number> {
  of(file: string): number {
    return this.get(file) ?? 0;
  }
  count(file: string): number {
    this.set(file, this.of(file) + 1);
    return this.of(file);
  }
}

/** Whole lines of all chains' files that are to be read. */
function* linesIn(
  chains: readonly string[],
  files: RegisterFiles,
  isToRead: (line: Line) => boolean,
): Generator<Line> {
  for (const file of chains) {
    const text = files[file] as string;
    let from = 0;
    for (let line = 1, end = text.indexOf('\n'); end >= 0; line += 1, end = text.indexOf('\n', from)) {
      const one = { file, line, text: text.slice(from, end) };
      from = end + 1;
      if (isToRead(one)) yield one;
    }
  }
}

function* batches<T>(items: Iterable<T>, size: number): Generator<readonly T[]> {
  let batch: T[] = [];
  for (const item of items) {
    batch.push(item);
    if (batch.length < size) continue;
    yield batch;
    batch = [];
  }
  if (batch.length > 0) yield batch;
}

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
