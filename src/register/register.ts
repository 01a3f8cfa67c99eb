import { type Held, holdFiles, type RegisterFiles } from './held.ts';
import { judge } from './judge.ts';
import type { Asked, Judged } from './judged.ts';
import type { Verify } from './keys.ts';

/** A register as it was opened. */
export interface Register {
  readonly files: RegisterFiles;
  readonly held: Held;
  readonly judged: Judged;
}

/**
 * Opens a register: reads every file, checks every signature, judges every entry.
 * @throws {NoRegister} no beginning is in these files
 */
export async function openRegister(
  files: RegisterFiles,
  asked: Asked & { verify: Verify },
): Promise<Register> {
  const held = await holdFiles(files, asked.verify);
  return { files, held, judged: judge(held, asked) };
}
