/** Faults between rules and the sources they name. */
import { citationFaults } from './rules.ts';
import type { FileFault } from './shelf.ts';
import type { Entries, Lost } from './shelves.ts';
import type { Cited } from './source.ts';

export function ruleFaults({ rules, sources }: Entries, lost: Lost): readonly FileFault[] {
  const known = new Map(sources.map((s) => [s.id, s.data]));
  return citationFaults(
    rules.map((r) => r.data),
    known,
  )
    .filter(({ value }) => !lost.sources.has((value as Cited).id))
    .map(({ rule, ...fault }) => ({ file: rules.find((r) => r.id === rule)?.file ?? rule, ...fault }));
}
