/** What keeps a register's folder from being written, told as faults. */
import { type Fault, GivenError } from '../../trade/given.ts';

export const codeOf = (cause: unknown): string => (cause as NodeJS.ErrnoException).code ?? '';

export class NotAFile extends Error {
  constructor(path: string) {
    super(`${path} is no file of its own`);
    this.name = 'NotAFile';
  }
}

export class NotAFolder extends Error {
  constructor(path: string) {
    super(`${path} is no folder of its own`);
    this.name = 'NotAFolder';
  }
}

const told: Readonly<Record<string, readonly [message: string, todo: string]>> = {
  ENOSPC: ['the disk is full', 'make room, then do it again'],
  EDQUOT: ['your share of the disk is full', 'make room, then do it again'],
  EFBIG: ['a file would grow larger than is allowed here', 'raise that limit, then do it again'],
  EROFS: ['it can only be read', 'name a folder that can be written to'],
  EACCES: ['it may not be written by you', 'name a folder that can be written to'],
  EPERM: ['it may not be written by you', 'name a folder that can be written to'],
};

/** What kept a folder from being written, as a fault. */
export function unwritable(folder: string, cause: unknown): GivenError {
  if (cause instanceof GivenError) return cause;
  const [message, todo] = told[codeOf(cause)] ?? [
    `it cannot be written (${(cause as Error).message})`,
    'name a folder that can be written to',
  ];
  const fault: Fault = { field: 'DIR', value: folder, message, todo };
  return new GivenError([fault]);
}

/** Runs what writes, and tells what kept it from writing as a fault. @throws {GivenError} */
export function writingTo<T>(folder: string, work: () => T): T {
  try {
    return work();
  } catch (cause) {
    const ofSystem = codeOf(cause) !== '' || cause instanceof NotAFile || cause instanceof NotAFolder;
    throw ofSystem ? unwritable(folder, cause) : cause;
  }
}
