import { catalogueFaults } from './catalogueChecks.ts';
import { demoRunFaults } from './demoRunChecks.ts';
import { practiceFaults } from './practice.ts';
import { procedureFaults, runFaults } from './procedureChecks.ts';
import { ruleFaults } from './ruleChecks.ts';
import { sheetFaults } from './sheetChecks.ts';
import type { Entry, FileFault } from './shelf.ts';
import { type Entries, type Lost, prose } from './shelves.ts';
import { siteFaults } from './siteChecks.ts';
import { taskFaults, ticketFaults } from './taskChecks.ts';
import { textFaults, textsIn } from './texts.ts';
import { wordFaults } from './wordChecks.ts';

type Check = (entries: Entries, lost: Lost) => readonly FileFault[];

/** Words and characters of everything a person reads. */
const proseFaults: Check = (entries) =>
  prose.flatMap((key) =>
    (entries[key] as readonly Entry<unknown>[]).flatMap(({ file, data, body }) =>
      [...textsIn(data), ['text', body] as const].flatMap(([field, text]) =>
        textFaults(field, text).map((fault) => ({ file, ...fault })),
      ),
    ),
  );

const checks: readonly Check[] = [
  practiceFaults,
  sheetFaults,
  taskFaults,
  ticketFaults,
  ruleFaults,
  siteFaults,
  catalogueFaults,
  runFaults,
  demoRunFaults,
  procedureFaults,
  wordFaults,
  proseFaults,
];

/**
 * Faults that no single field shows: what one file names must be in another, and texts keep to our words.
 * A file that could not be read has been reported; what names it is not at fault for that.
 */
export function crossFaults(entries: Entries, lost: Lost): readonly FileFault[] {
  return checks.flatMap((check) => check(entries, lost));
}
