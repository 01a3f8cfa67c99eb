/** Who holds a lock: what its file says, and whether that process lives. */
import { readFileSync } from 'node:fs';
import { isObject } from '../../register/shapes.ts';
import { readJson } from '../../register/strictJson.ts';
import { codeOf } from './folderFaults.ts';

export interface Holder {
  readonly at: string;
  readonly host: string;
  readonly life: string | null;
  readonly process: number;
}

/** `undefined` where the text is no lock of ours. */
export function holderOf(text: string): Holder | undefined {
  try {
    const value = readJson(text);
    if (!isObject(value)) return undefined;
    const { at, host, life, process: pid } = value as unknown as Holder;
    const good = typeof at === 'string' && typeof host === 'string' && Number.isSafeInteger(pid) && pid > 0;
    return good ? { at, host, life: typeof life === 'string' ? life : null, process: pid } : undefined;
  } catch {
    return undefined;
  }
}

/** When a process began, as the system tells it; '' when it lives and the system does not; `undefined`: it is gone. */
export function lifeOf(pid: number): string | undefined {
  try {
    process.kill(pid, 0);
  } catch (cause) {
    if (codeOf(cause) === 'ESRCH') return undefined;
  }
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
    // The name of the command stands in brackets and may hold anything; the 20th field after it is the time.
    const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
    return fields[0] === 'Z' ? undefined : (fields[19] ?? '');
  } catch {
    return '';
  }
}
