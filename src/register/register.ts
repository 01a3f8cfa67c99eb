import { seenOf } from './checks.ts';
import { type Held, holdFiles, type RegisterFiles, type Spares, verifiedKey } from './held.ts';
import { judge } from './judge.ts';
import type { Asked, Judged } from './judged.ts';
import type { Verify } from './keys.ts';

/** A register as it was opened. */
export interface Register {
  readonly files: RegisterFiles;
  readonly held: Held;
  readonly judged: Judged;
  /** What to hand over as `known` when the same register, or one grown from it, is opened again. */
  readonly verified: ReadonlySet<string>;
}

/**
 * Opens a register: reads every file, checks every signature, judges every entry.
 * @param asked.known  `verified` of an earlier opening: those signatures are not checked again. Ids are always worked
 *                     out from the bytes, so a set that is stale or lost costs time and nothing else
 * @param asked.hash   SHA-256 of the engine's own, where it has one that answers at once: the same, and faster
 * @param asked.vouched  what an earlier opening vouches for: neither hashed nor checked again (vouched.ts)
 * @throws {NoRegister} no beginning is in these files
 */
export async function openRegister(
  files: RegisterFiles,
  asked: Asked & Spares & { verify: Verify; known?: ReadonlySet<string> | undefined },
): Promise<Register> {
  const held = await holdFiles(files, asked.verify, asked.known, asked);
  const judged = judge(held, asked);
  // Boards, sheets and questions start from it.
  seenOf(judged);
  return {
    files,
    held,
    judged,
    get verified() {
      return new Set([...held.entries.values()].map(verifiedKey));
    },
  };
}
