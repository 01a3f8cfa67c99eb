/** Files that end in mid-line: their whole lines, and what was taken off. Pure. */
import type { RegisterFiles } from '../../register/held.ts';

export interface Mended {
  readonly files: RegisterFiles;
  /** What stood after the last whole line, by file. */
  readonly ends: Readonly<Record<string, string>>;
}

/** Takes off what stands after the last line feed of each torn file, and nothing else. */
export function withoutTorn(files: RegisterFiles, torn: ReadonlySet<string>): Mended {
  const mended: Record<string, string> = { ...files };
  const ends: Record<string, string> = {};
  for (const file of torn) {
    const text = files[file] ?? '';
    const whole = text.lastIndexOf('\n') + 1;
    ends[file] = text.slice(whole);
    mended[file] = text.slice(0, whole);
  }
  return { files: mended, ends };
}
