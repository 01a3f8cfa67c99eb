/** The verbs of the register that write: key, begin, appoint, check. */

import { appoint } from '../register/appoint.ts';
import { begin } from '../register/begin.ts';
import type { Measured, Variant } from '../register/bodies.ts';
import type { Json } from '../register/canonical.ts';
import { type CheckGiven, check } from '../register/check.ts';
import { NoRegister } from '../register/judged.ts';
import { type Chance, keyFileText, makeKey, wrapKey } from '../register/keyFile.ts';
import type { Signer } from '../register/keys.ts';
import { openRegister, type Register } from '../register/register.ts';
import { isObject, orNull, record, text } from '../register/shapes.ts';
import { verifierOf } from '../register/webcrypto.ts';
import type { Writing, Written } from '../register/write.ts';
import { dayIn } from '../schema/dayIn.ts';
import { type Fault, GivenError } from '../trade/given.ts';
import { plain } from './envelope.ts';
import { pathHere } from './input.ts';
import { siteRegrade } from './registerContent.ts';
import { isRegister, readFolder, writeFolder, writeSecret } from './registerFolder.ts';
import { common, Options } from './registerOptions.ts';
import type { Call, Outcome, Verb } from './verb.ts';

const chance: Chance = (bytes) => crypto.getRandomValues(new Uint8Array(bytes));
export const verify = verifierOf(globalThis.crypto.subtle);

/** Opens the register in a folder. @throws {GivenError} there is none, or it has no beginning */
export async function open(
  folder: string,
  now: number,
  more: { readonly knownOn?: string | undefined } = {},
): Promise<Register> {
  try {
    return await openRegister(readFolder(folder), { verify, now, dayIn, ...more });
  } catch (cause) {
    if (!(cause instanceof NoRegister)) throw cause;
    const todo = 'run register verify, and put back what it names';
    throw new GivenError([{ field: 'DIR', value: folder, message: 'its beginning cannot be read', todo }]);
  }
}

/**
 * Opens, writes, and says what was written. What the register has against an entry is said together with what is wrong
 * with the options, as far as it can be judged without them.
 */
async function write(
  folder: string,
  options: Options,
  signer: Signer | undefined,
  now: number,
  act: (register: Register, writing: Writing) => Promise<Written>,
): Promise<Outcome> {
  let entry: string | undefined;
  try {
    // Should another process sign with this key at the same moment, the entry is worked out anew on top of its.
    while (entry === undefined && options.isGood('at', 'map')) {
      const register = await open(folder, now);
      if (signer === undefined) break;
      const written = await act(register, { signer, now, chance, device: options.call.text('device') });
      if (options.faults.length > 0) break;
      if (writeFolder(folder, written, register.files)) entry = written.entry;
    }
  } catch (cause) {
    options.takeNew(cause);
  }
  options.done();
  return { json: plain({ entry }), exit: 0 };
}

export const folderOf = (call: Call): string => pathHere(call.words[0] ?? '');

export const keyVerb: Verb = {
  name: 'key',
  line: 'makes a key for signing, in a new file that only its owner reads',
  options: {
    out: { value: 'FILE', needed: true, line: 'the file to make; one that is there is never overwritten' },
    'pass-file': {
      value: 'FILE',
      line: 'file with a passphrase that wraps the key; left out: the key lies open',
    },
    device: { value: 'NAME', line: 'name of the device; left out: one is made up' },
    at: common.at,
  },
  manual: () => ['Comes back: publicKey (64 hexadecimal digits): hand it to the owner to be appointed.'],
  run: async (call) => {
    const options = new Options(call);
    const out = options.need('out', 'name the file to make');
    options.now();
    const passphrase = options.attempt('pass-file', () => options.passphrase());
    if (passphrase === '') {
      options.faults.push({ field: 'pass-file', message: 'is empty', todo: 'write a passphrase into it' });
    }
    const made = [...chance(4)].map((b) => b.toString(16).padStart(2, '0')).join('');
    const open = options.attempt('device', () => makeKey(call.text('device') ?? `device-${made}`, chance));
    options.done();
    if (open === undefined) throw new Error('options without a fault make a key');
    const key = passphrase === undefined ? open : await wrapKey(open, passphrase, crypto.subtle, chance);
    writeSecret(pathHere(out), keyFileText(key));
    return { json: plain({ publicKey: key.publicKey }), exit: 0 };
  },
};

export const beginVerb: Verb = {
  name: 'begin',
  line: 'begins a register in a folder',
  words: ['DIR'],
  options: {
    owner: { value: 'KEY', needed: true, line: 'key file of the owner' },
    person: { value: 'ID', line: 'the owner’s own id, where he is one of the people' },
    zone: { value: 'Z', line: 'time zone that days are counted in (UTC)' },
    ...common,
  },
  manual: () => ['Comes back: entry (its id). A register that is there is never overwritten.'],
  run: async (call) => {
    const options = new Options(call);
    const folder = folderOf(call);
    const now = options.now();
    if (call.text('map') !== undefined) await options.map();
    const signer = await options.signer('owner');
    if (isRegister(folder)) {
      const message = 'a register is here, and is never overwritten';
      options.faults.push({ field: 'DIR', value: folder, message, todo: 'name another folder' });
    }
    options.done();
    if (signer === undefined) throw new Error('options without a fault give a signer');
    const given = { zone: call.text('zone') ?? 'UTC', person: call.text('person') };
    const written = await begin(given, { signer, now, chance, device: call.text('device') }, dayIn);
    if (!writeFolder(folder, written, {}))
      throw new Error(`${written.append.path} came up while it was begun`);
    return { json: plain({ entry: written.entry }), exit: 0 };
  },
};

export const appointVerb: Verb = {
  name: 'appoint',
  line: 'the owner appoints a witness for tasks, from a day on',
  words: ['DIR'],
  options: {
    key: { value: 'OWNER', needed: true, line: 'key file of the owner' },
    witness: {
      value: 'PUB',
      needed: true,
      line: 'public key of the witness: 64 digits, or a file that holds it',
    },
    person: { value: 'ID', needed: true, line: 'whose key it is; a key belongs to one person for good' },
    tasks: { value: 'all|IDS', needed: true, line: 'all, or ids with commas' },
    on: { value: 'DATE', needed: true, line: 'first day of the appointment' },
    ...common,
  },
  manual: () => ['Comes back: entry (its id).'],
  run: async (call) => {
    const options = new Options(call);
    const now = options.now();
    const map = await options.map();
    const witness = options.publicKey('witness', options.need('witness', 'give the witness’s public key'));
    const person = options.need('person', 'give the id of the witness');
    const ids = options.need('tasks', 'write all, or ids with commas');
    const on = options.day('on', true) ?? '';
    const signer = await options.signer('key');
    const tasks = ids === 'all' ? ids : ids.split(',');
    return write(folderOf(call), options, signer, now, ({ judged }, writing) =>
      appoint(judged, { witness, person, tasks, on }, map, writing),
    );
  },
};

export const checkVerb: Verb = {
  name: 'check',
  line: 'a witness signs what he saw a person do',
  words: ['DIR'],
  options: {
    key: { value: 'KEY', needed: true, line: 'key file of the witness' },
    person: { value: 'ID', needed: true, line: 'who did it' },
    task: { value: 'ID', needed: true, line: 'the task; a heading is signed by its parts' },
    outcome: { value: 'shown|not-yet', needed: true, line: 'what it came to' },
    variant: { value: 'k=v,k=v', line: 'pairs that are not plain' },
    manner: { value: 'performed|simulated|observed|talked', line: 'how it was done (performed)' },
    'help-given': { value: 'alone|with-help', line: 'whether help was given (alone)' },
    'in-sight': { value: 'yes|no', line: 'whether the witness saw all of it (yes)' },
    stopped: { line: 'stopped for safety: kept, and never counts against anyone; with not-yet only' },
    revision: { value: 'N', line: 'revision of the task (the one in force on the day)' },
    on: { value: 'DATE', needed: true, line: 'the day it was seen' },
    evidence: { value: 'FILE', line: 'the answers to a sheet; they are graded again' },
    measured: { value: 'FILE', line: 'JSON list of {what, wanted, got, tool?}' },
    ...common,
  },
  manual: () => ['Comes back: entry (its id).'],
  run: async (call) => {
    const options = new Options(call);
    const now = options.now();
    const map = await options.map();
    const person = options.need('person', 'give the id of who did it');
    const task = options.need('task', 'give the id of the task');
    const outcome = options.need('outcome', 'write shown or not-yet') as CheckGiven['outcome'];
    const on = options.day('on', true) ?? '';
    const given: CheckGiven = {
      person,
      task,
      outcome,
      on,
      variant: variantOf(options),
      manner: call.text('manner') as CheckGiven['manner'],
      help: call.text('help-given') as CheckGiven['help'],
      inSight: inSightOf(options),
      stopped: call.has('stopped'),
      revision: revisionOf(options),
      measured: measuredOf(options),
      evidence: evidenceOf(options),
    };
    const signer = await options.signer('key');
    return write(folderOf(call), options, signer, now, async ({ files, judged }, writing) =>
      check(judged, given, map, writing, await siteRegrade(files, given.evidence)),
    );
  },
};

function variantOf({ call, faults }: Options): Variant | undefined {
  const given = call.text('variant');
  if (given === undefined) return undefined;
  const pairs = given.split(',').map((part) => part.split('='));
  const names = pairs.map(([name]) => name);
  for (const [i, pair] of pairs.entries()) {
    const twice = names.indexOf(pair[0]) < i;
    if (pair.length === 2 && pair.every((side) => side !== '') && !twice) continue;
    const message = twice ? `${pair[0]} stands twice` : 'no pair with its value';
    faults.push({
      field: 'variant',
      value: given,
      message,
      todo: 'write pairs with commas: width=6,metal=stainless',
    });
    return undefined;
  }
  return Object.fromEntries(pairs);
}

function inSightOf({ call, faults }: Options): boolean | undefined {
  const given = call.text('in-sight');
  if (given === undefined || given === 'yes' || given === 'no')
    return given === undefined ? undefined : given === 'yes';
  faults.push({ field: 'in-sight', value: given, message: 'no such choice', todo: 'write yes or no' });
  return undefined;
}

function revisionOf({ call, faults }: Options): number | undefined {
  const given = call.text('revision');
  if (given === undefined) return undefined;
  if (/^[1-9]\d{0,8}$/.test(given)) return Number(given);
  faults.push({
    field: 'revision',
    value: given,
    message: 'no number of a revision',
    todo: 'write a whole number from 1',
  });
  return undefined;
}

function measuredOf(options: Options): readonly Measured[] | undefined {
  const given = options.json('measured');
  if (given === undefined) return undefined;
  const list: readonly Json[] = Array.isArray(given) ? given : [];
  const faults: Fault[] = [];
  if (!Array.isArray(given)) {
    const todo = 'write [{"what","wanted","got","tool"?}]';
    faults.push({ field: 'measured', value: given, message: 'no list', todo });
  }
  const read = list.map((row, i): Measured | undefined => {
    const full = isObject(row) ? { tool: null, ...row } : row;
    const wrong = measuredShape(full);
    if (wrong === undefined) return full as unknown as Measured;
    const todo = 'write {"what","wanted","got"} as texts, "tool" where one was used';
    faults.push({ field: `measured[${i}]`, value: row, message: wrong, todo });
    return undefined;
  });
  options.faults.push(...faults);
  return faults.length > 0 ? undefined : read.filter((row) => row !== undefined);
}

function evidenceOf(options: Options): Json | undefined {
  const given = options.json('evidence');
  if (given === null) {
    const todo = 'name the file of the answers, or leave it out';
    options.faults.push({ field: 'evidence', value: given, message: 'no answers', todo });
  }
  return given;
}

const measuredShape = record({ what: text, wanted: text, got: text, tool: orNull(text) });
