/**
 * The register on this device: its files as one value, judged anew whenever it is opened. Names of people are a text
 * apart and never part of what is carried off as the register.
 */
import { bundleText } from '../../register/bundle.ts';
import type { Day } from '../../register/days.ts';
import type { RegisterFiles } from '../../register/held.ts';
import { openRegister, type Register } from '../../register/register.ts';
import { type Written, withWritten } from '../../register/write.ts';
import { GivenError } from '../../trade/given.ts';
import { type Carried, signedHere } from '../drills/carried.ts';
import { type LastNumbers, raised } from '../drills/joined.ts';
import { chainsHere } from './chains.ts';
import { askToKeep, now } from './edge.ts';
import { keepLastNumbers, lastNumbers } from './lastNumbers.ts';
import { openStore } from './store.ts';
import { keepKnown, knownOf } from './verified.ts';
import { dayIn, verify } from './verify.ts';

/** A register as opened, and the moment it was opened at: what is written next is written at that moment. */
export interface Opened extends Register {
  readonly at: number;
}

/** Opens this device's register, or `undefined` when there is none. @throws {NoRegister} what is kept is none */
export async function ownRegister(knownOn?: Day): Promise<Opened | undefined> {
  const files = await (await openStore()).get('register', 'files');
  if (files === undefined) return undefined;
  const at = now();
  const before = await knownOf(files);
  const { known, vouched } = before;
  const opened = await openRegister(files, { now: at, dayIn, verify, knownOn, known, vouched });
  keepKnown(opened, before);
  const { held, judged } = opened;
  return {
    files,
    held,
    judged,
    get verified() {
      return opened.verified;
    },
    at,
  };
}

/**
 * Keeps what an entry added. `before` is the register it was written against.
 * @throws {GivenError} another window has written meanwhile
 */
export async function keepWritten(before: RegisterFiles | undefined, written: Written): Promise<void> {
  await keepFiles(before, withWritten(before ?? {}, written));
}

/**
 * Whether two registers are the same texts. Text by text, which compares bytes where they lie: a count kept beside would
 * be cheaper yet, and blind to a window that an earlier edition of this site has open.
 */
function isSame(a: RegisterFiles | undefined, b: RegisterFiles | undefined): boolean {
  if (a === undefined || b === undefined) return a === b;
  const paths = Object.keys(a);
  return paths.length === Object.keys(b).length && paths.every((path) => a[path] === b[path]);
}

/**
 * Keeps the files that follow on `before`.
 * @throws {GivenError} another window has written meanwhile
 */
export async function keepFiles(before: RegisterFiles | undefined, after: RegisterFiles): Promise<void> {
  const change = (await openStore()).transaction('register', 'readwrite');
  const kept = await change.store.get('files');
  if (!isSame(kept, before)) {
    change.abort();
    await change.done.catch(() => undefined);
    throw new GivenError([
      {
        field: 'register',
        message: 'another window has written meanwhile',
        todo: 'look again, then do it once more',
      },
    ]);
  }
  await change.store.put(after, 'files');
  await change.done;
  // Asked once, when there is first something to lose.
  if (before === undefined) void askToKeep().catch(() => undefined);
}

/** The register as one file, and that it was carried off now. */
export async function carryOff(): Promise<{ readonly name: string; readonly text: string } | undefined> {
  const opened = await ownRegister();
  if (opened === undefined) return undefined;
  const { view } = opened.judged;
  const moment = new Date(opened.at).toISOString();
  const own = signedHere(opened.judged, await chainsHere()).map(({ id }) => id);
  const kept = (await openStore()).transaction('texts', 'readwrite');
  await kept.store.put(moment, 'carried');
  await kept.store.put(JSON.stringify(raised({}, opened.judged.signers)), 'carriedNumbers');
  await kept.store.put(JSON.stringify(own), 'carriedIds');
  await kept.done;
  keepLastNumbers(view.begin.id, raised(lastNumbers(view.begin.id), opened.judged.signers));
  const day = view.dayIn(view.zone, opened.at);
  return { name: `register-${view.begin.id.slice(0, 8)}-${day}.json`, text: bundleText(opened.files) };
}

/** When the register was last carried off this device, and how far that file went. */
export async function lastCarried(): Promise<Carried | undefined> {
  const { store } = (await openStore()).transaction('texts');
  const [at, numbers, ids] = await Promise.all([
    store.get('carried'),
    store.get('carriedNumbers'),
    store.get('carriedIds'),
  ]);
  if (at === undefined) return undefined;
  return {
    at,
    numbers: numbers === undefined ? {} : (JSON.parse(numbers) as LastNumbers),
    ids: ids === undefined ? undefined : new Set(JSON.parse(ids) as readonly string[]),
  };
}

/** The names file as it was brought in, or `undefined`. */
export async function namesText(): Promise<string | undefined> {
  return (await openStore()).get('texts', 'people');
}
export async function keepNames(text: string): Promise<void> {
  await (await openStore()).put('texts', text, 'people');
}
