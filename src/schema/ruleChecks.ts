/** Faults between rules and the sources they name. */
import { citationFaults } from './rules.ts';
import type { FileFault } from './shelf.ts';
import type { Entries } from './shelves.ts';

export function ruleFaults({ rules, sources }: Entries): readonly FileFault[] {
  const known = new Map(sources.map((s) => [s.id, s.data]));
  return citationFaults(
    rules.map((r) => r.data),
    known,
  ).map(({ rule, ...fault }) => ({ file: rules.find((r) => r.id === rule)?.file ?? rule, ...fault }));
}
