/** A register in one file, as browsers carry it off (FORMAT.md "Bundle"): read wherever a register is only read. */
import { readBundle } from '../../register/bundle.ts';
import type { RegisterFiles } from '../../register/held.ts';
import { GivenError } from '../../trade/given.ts';
import { bytesOf, textOf } from './folderDisk.ts';

/**
 * @param field  what the file was named by, and `name` as it was named
 * @throws {GivenError} it cannot be read, or is no register
 */
export function readBundleFile(path: string, field: string, name: string): RegisterFiles {
  const bytes = bytesOf(path);
  if ('why' in bytes) {
    throw new GivenError([{ field, value: name, message: bytes.why, todo: 'name a copy of the register' }]);
  }
  try {
    return readBundle(textOf(bytes).replace(/^\uFEFF/, ''));
  } catch (cause) {
    if (!(cause instanceof GivenError)) throw cause;
    throw new GivenError(
      cause.faults.map((f) => ({
        field,
        value: name,
        message: f.field === '' ? f.message : `${f.field}: ${f.message}`,
        todo: f.todo,
      })),
    );
  }
}
