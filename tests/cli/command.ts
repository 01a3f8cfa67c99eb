import { spawn } from 'node:child_process';

/** An envelope as it is printed; which half is there is what the tests look at. */
export interface Printed {
  readonly ok: boolean;
  readonly result: Readonly<Record<string, unknown>>;
  readonly steps: readonly Readonly<Record<string, unknown>>[];
  readonly sources: readonly Readonly<Record<string, unknown>>[];
  readonly errors: readonly {
    readonly field: string;
    readonly value?: unknown;
    readonly message: string;
    readonly todo: string;
  }[];
}

export interface Answer {
  readonly exit: number | null;
  readonly out: string;
  readonly talk: string;
  /** What was printed, when it is one envelope. */
  readonly one: Printed;
  /** What was printed, when it is a list of them. */
  readonly many: readonly Printed[];
}

/** Calls the command as a person does: its own process, words, and text on standard input. */
export function trayhand(
  words: readonly string[],
  given: unknown = '',
  env: Readonly<Record<string, string>> = {},
): Promise<Answer> {
  return new Promise((done, fail) => {
    const child = spawn(process.execPath, ['src/cli/bin.ts', ...words], {
      stdio: 'pipe',
      env: { ...process.env, ...env },
    });
    let [out, talk] = ['', ''];
    // Said before anything is read: a sign of several bytes may be cut in two between one reading and the next.
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      out += text;
    });
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      talk += text;
    });
    child.on('error', fail);
    child.on('close', (exit) => {
      const json = /^[{[]/.test(out) ? JSON.parse(out) : undefined;
      done({ exit, out, talk, one: json, many: json });
    });
    child.stdin.on('error', () => {}); // a command that needs no input may end before it is written
    child.stdin.end(typeof given === 'string' ? given : JSON.stringify(given));
  });
}
