/** Tells of texts that no entry names: an erase cannot know whose they are. They are told of and never taken away. */
import { unnamedFiles } from '../../register/bodyFiles.ts';
import type { Register } from '../../register/register.ts';

/** So many are told of one by one. */
const TOLD = 100;

export function tellUnnamed({ files, held, judged }: Pick<Register, 'files' | 'held' | 'judged'>): void {
  const unnamed = unnamedFiles(files, held, judged.view.begin.id);
  for (const path of unnamed.slice(0, TOLD)) {
    process.stderr.write(
      `${path}: no entry here names it, so no erase reaches it; take the file away, unless its entry may still come from another device\n`,
    );
  }
  if (unnamed.length > TOLD)
    process.stderr.write(`${unnamed.length - TOLD} more files below bodies are like those\n`);
}
