/** Keys of content/words that something else in the project says; a language without one of them is at fault. */
import { drawingSays } from '../drawing/says.ts';
import { practiceSays } from '../practice/says.ts';
import { maySays, registerSays } from '../register/says.ts';
import { runSays } from '../run/says.ts';
import { tradeSays } from '../trade/says.ts';
import type { Entries } from './shelves.ts';

/** Who says a key, for the message. */
export interface Demand {
  readonly key: string;
  readonly by: string;
}

/** Keys that each pure room says. */
const rooms: Readonly<Record<string, readonly string[]>> = {
  trade: tradeSays,
  run: runSays,
  drawing: drawingSays,
  practice: practiceSays,
  register: [...registerSays, ...maySays],
};

/** Every key that must be there, with who says it. */
export function demands({
  tasks,
  tickets,
  rules,
  demoRuns,
}: Pick<Entries, 'tasks' | 'tickets' | 'rules' | 'demoRuns'>): readonly Demand[] {
  return [
    ...Object.entries(rooms).flatMap(([room, keys]) =>
      keys.map((key) => ({ key, by: `src/${room}/says.ts` })),
    ),
    ...rules.flatMap(({ file, data }) =>
      data.kind === 'edition changes'
        ? data.changes.map(({ what }) => ({ key: `changed.${what}`, by: file }))
        : [],
    ),
    ...demoRuns.flatMap(({ file, data }) => [data.name, data.line].map((key) => ({ key, by: file }))),
    ...tasks.flatMap(({ id, file, data }) =>
      ['name', 'purpose', ...(data.critical ?? []).map((c) => `critical-${c}`)]
        .map((key) => `${id}.${key}`)
        .concat(
          Object.entries(data.variants)
            .flatMap(([pair, values]) => [pair, ...values.map((v) => `${pair}-${v}`)])
            .map((key) => `variant.${key}`),
        )
        .map((key) => ({ key, by: file })),
    ),
    ...tickets.flatMap(({ id, file, data }) =>
      ['name', 'purpose', ...data.critical.map((c) => `critical-${c}`)].map((key) => ({
        key: `${id}.${key}`,
        by: file,
      })),
    ),
  ];
}
