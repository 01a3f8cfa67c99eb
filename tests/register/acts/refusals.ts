/** What an act says against being signed, in a few words each. */
import type { Judged } from '../../../src/register/judged.ts';
import type { Signer } from '../../../src/register/keys.ts';
import type { Writing, Written } from '../../../src/register/write.ts';
import { GivenError } from '../../../src/trade/given.ts';
import type { Book } from '../book.ts';

export type Act = (judged: Judged, writing: Writing) => Promise<Written>;

/** Faults as `field: message`, in order; an act that is signed has none. A refused one leaves every file as it was. */
export async function refusals(
  book: Book,
  signer: Signer,
  act: Act,
  device?: string,
): Promise<readonly string[]> {
  const before = book.files;
  try {
    await book.sign(signer, act, device);
    return [];
  } catch (error) {
    if (!(error instanceof GivenError)) throw error;
    if (book.files !== before) throw new Error('a refused act changed the register');
    for (const { todo } of error.faults) if (todo === '') throw new Error('a fault without what to do');
    return error.faults.map(({ field, message }) => `${field}: ${message}`);
  }
}

/** Takes the line of an entry out of its chain. */
export function lose(book: Book, id: string): void {
  const { signer, device, seq } = book.header(id);
  const path = book.file({ publicKey: signer, device, sign: async () => new Uint8Array(64) });
  book.edit(path, (text) =>
    text
      .split('\n')
      .filter((line) => !line.includes(`"seq":${seq},"signer":"${signer}","target"`))
      .join('\n'),
  );
}

/** Lets two copies go on alone, and brings the lines of both together. */
export async function apart<A, B>(
  book: Book,
  one: (b: Book) => Promise<A>,
  two: (b: Book) => Promise<B>,
): Promise<[A, B]> {
  const base = book.files;
  const [left, right] = [book.copy(), book.copy()];
  const made: [A, B] = [await one(left), await two(right)];
  const files: Record<string, string> = { ...left.files };
  for (const [path, text] of Object.entries(right.files)) {
    const known = base[path] ?? '';
    if (path.startsWith('headers/')) files[path] = (files[path] ?? '') + text.slice(known.length);
    else files[path] ??= text;
  }
  book.files = files;
  return made;
}
