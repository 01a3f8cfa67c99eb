import type { FileFault } from './library.ts';

const lineOf = ({ file, field, value, message, todo }: FileFault): string =>
  `${file}${field === '' ? '' : `\n  ${field}`}: ${value === undefined ? '' : `${JSON.stringify(value)}: `}${message}\n  ${todo}`;

/** Refuses content that does not hold, with every fault of every file in one text. @throws Error when there is one */
export function refuseFaults(faults: readonly FileFault[]): void {
  if (faults.length === 0) return;
  throw new Error(`content: ${faults.length} to mend\n${faults.map(lineOf).join('\n')}`);
}
