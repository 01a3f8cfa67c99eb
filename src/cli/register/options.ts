/** Reads the options of the register's verbs, and gathers everything that is wrong with them. */
import { readFileSync } from 'node:fs';
import type { Demands } from '../../register/acts/ownStanding.ts';
import type { Json } from '../../register/canonical.ts';
import { isDay, readInstant } from '../../register/days.ts';
import { readKeyFile, readPublicKey, unwrapKey } from '../../register/keyFile.ts';
import type { Signer } from '../../register/keys.ts';
import { JsonError, readJson } from '../../register/strictJson.ts';
import { readTaskMap, type TaskMap } from '../../register/taskMap.ts';
import { type Fault, GivenError } from '../../trade/given.ts';
import { pathHere } from '../input.ts';
import type { Call, Option, Verb } from '../verb.ts';
import { siteDemands, siteMap } from './content.ts';

/** Options that more than one verb takes. */
export const common = {
  at: { value: 'INSTANT', line: 'now, with an offset or Z; left out: the clock' },
  device: { value: 'NAME', line: 'the device that writes; left out: the key file’s' },
  map: { value: 'FILE', line: 'a task map as "register tasks" prints it; left out: the site’s' },
  'pass-file': { value: 'FILE', line: 'file with the passphrase of a wrapped key' },
} satisfies Record<string, Option>;

/** Collects faults while options are read; a value with a fault is `undefined` until `done` throws. */
export class Options {
  readonly call: Call;
  readonly faults: Fault[] = [];

  constructor(call: Call) {
    this.call = call;
  }

  /** @throws {GivenError} when anything was wrong */
  done(): void {
    if (this.faults.length > 0) throw new GivenError(this.faults);
  }

  /** Runs what may throw faults; those without a field of their own get the option's. */
  attempt<T>(field: string, what: () => T): T | undefined {
    try {
      return what();
    } catch (cause) {
      this.take(field, cause);
      return undefined;
    }
  }

  take(field: string, cause: unknown): void {
    if (!(cause instanceof GivenError)) throw cause;
    const named: Readonly<Record<string, string>> = {
      '': field,
      key: field,
      publicKey: field,
      passphrase: 'pass-file',
    };
    this.faults.push(...cause.faults.map((f) => ({ ...f, field: named[f.field] ?? f.field })));
  }

  /** Takes the faults of fields that have none so far: what was read wrong is not told of twice. */
  takeNew(cause: unknown): void {
    if (!(cause instanceof GivenError)) throw cause;
    this.takeNewFaults(cause.faults);
  }

  takeNewFaults(faults: readonly Fault[]): void {
    this.faults.push(...faults.filter((f) => this.isGood(nameOf(f))));
  }

  /** Whether nothing was wrong with some options so far. */
  isGood(...fields: readonly string[]): boolean {
    return !this.faults.some((f) => fields.includes(nameOf(f)));
  }

  /** A text that has to be there. */
  need(field: string, todo: string): string {
    const text = this.call.text(field) ?? '';
    if (text === '') this.faults.push({ field, message: 'is missing', todo });
    return text;
  }

  now(): number {
    const text = this.call.text('at');
    const at = text === undefined ? Date.now() : readInstant(text);
    if (at === undefined) {
      this.faults.push({
        field: 'at',
        value: text,
        message: 'no instant with seconds and an offset',
        todo: 'write it so: 2026-03-09T12:00:00Z, or with +01:00 in place of Z',
      });
    }
    return at ?? 0;
  }

  /** The instant that is now, for a verb that needs nothing of the task map: one that is named is still read. */
  async setting(): Promise<number> {
    if (this.call.text('map') !== undefined) await this.map();
    return this.now();
  }

  day(field: string, needed: boolean): string | undefined {
    const text = needed ? this.need(field, 'write a day: 2026-03-09') : this.call.text(field);
    if (text === undefined || (needed && text === '')) return undefined;
    if (!isDay(text)) {
      const todo = 'write it so: 2026-03-09';
      this.faults.push({ field, value: text, message: 'no day of the calendar', todo });
    }
    return text;
  }

  async map(): Promise<TaskMap> {
    const file = this.call.text('map');
    if (file === undefined) return siteMap();
    const json = this.attempt('map', () => jsonFile('map', file));
    if (json === undefined) return { tasks: [] };
    try {
      return readTaskMap(json);
    } catch (cause) {
      if (!(cause instanceof GivenError)) throw cause;
      this.faults.push(...cause.faults.map((f) => ({ ...f, field: `map.${f.field}` })));
      return { tasks: [] };
    }
  }

  /** What the site asks of a witness; nothing where another map than the site's stands in its place. */
  async demands(): Promise<Demands | undefined> {
    return this.call.text('map') === undefined ? siteDemands() : undefined;
  }

  json(field: string): Json | undefined {
    const file = this.call.text(field);
    return file === undefined ? undefined : this.attempt(field, () => jsonFile(field, file));
  }

  /** A public key: 64 hexadecimal digits, or a file that holds one. */
  publicKey(field: string, text: string): string {
    const read = () => readPublicKey(/^[0-9a-fA-F]{64}$/.test(text) ? text : fileText(field, text));
    return (text === '' ? undefined : this.attempt(field, read)) ?? '';
  }

  /** The signer of a key file, opened for one act. */
  async signer(field: string): Promise<Signer | undefined> {
    const file = this.need(field, 'give the key file of who signs');
    if (file === '') return undefined;
    try {
      return await unwrapKey(readKeyFile(fileText(field, file)), this.passphrase(), globalThis.crypto.subtle);
    } catch (cause) {
      this.take(field, cause);
      return undefined;
    }
  }

  /** The passphrase in `--pass-file`: the file's text without the line end. */
  passphrase(): string | undefined {
    const file = this.call.text('pass-file');
    if (file === undefined) return undefined;
    return fileText('pass-file', file).replace(/\r?\n$/, '');
  }
}

/**
 * A verb whose faults name its options as they are written on the command line: `--on`, `--map.tasks[0].id`. Inside,
 * and in the register's own room, fields go by their bare names.
 */
export function asWritten(verb: Verb): Verb {
  const run: Verb['run'] = async (call) => {
    try {
      return await verb.run(call);
    } catch (cause) {
      if (!(cause instanceof GivenError)) throw cause;
      const isOption = (fault: Fault) => Object.hasOwn(verb.options ?? {}, nameOf(fault));
      throw new GivenError(cause.faults.map((f) => (isOption(f) ? { ...f, field: `--${f.field}` } : f)));
    }
  };
  return { ...verb, run };
}

/** The option that a fault is about: `map` of `map.tasks[0].id`. */
const nameOf = (fault: Fault): string => fault.field.split(/[.[]/)[0] ?? '';

export function fileText(field: string, file: string): string {
  try {
    return readFileSync(pathHere(file), 'utf8');
  } catch (cause) {
    const missing = (cause as NodeJS.ErrnoException).code === 'ENOENT';
    const message = missing ? 'there is no such file' : 'it cannot be read';
    throw new GivenError([{ field, value: file, message, todo: 'name a file that can be read' }]);
  }
}

export function jsonFile(field: string, file: string): Json {
  const text = fileText(field, file);
  try {
    return readJson(text.replace(/^\uFEFF/, ''));
  } catch (cause) {
    if (!(cause instanceof JsonError)) throw cause;
    const todo = `mend the file at sign ${cause.at + 1}`;
    throw new GivenError([{ field, value: file, message: `no JSON: ${cause.message}`, todo }]);
  }
}
