/** What a job card says of a run: all of it, on one sheet of paper where that holds it, else with a numbered list behind. */
import type { RunFile } from '../../run/edit/file.ts';
import type { Finding } from '../../run/inspect/finding.ts';
import type { ResolvedRun } from '../../run/resolved.ts';
import type { Takeoff } from '../../run/takeoff.ts';
import { type CardStep, needsOf, stepsOf } from './card/needs.ts';
import { hold, listSheets, type Setting } from './card/room.ts';
import { type CardRows, type CardWords, rowsOf } from './card/rows.ts';

export interface JobCard {
  readonly setting: Setting;
  readonly rows: CardRows;
  readonly fittings: readonly { readonly item: string; readonly count: number }[];
  /** Tasks that the run demands of the crew, in the order of the job. */
  readonly needs: readonly string[];
  readonly steps: readonly CardStep[];
  /** What found no room, on the sheets that follow; none where the card holds everything. */
  readonly lists: readonly CardRows[];
}

/**
 * @param about  what stands under the heading
 * @param strip  height of the strip across the sheet, mm
 */
export function jobCard(
  resolved: ResolvedRun,
  takeoff: Takeoff,
  findings: readonly Finding[],
  file: Pick<RunFile, 'run' | 'crew' | 'tags'>,
  words: CardWords,
  { about, strip }: { readonly about: readonly string[]; readonly strip: number | null },
): JobCard {
  const needs = needsOf(resolved, takeoff);
  const steps = stepsOf(resolved, takeoff);
  const fitted = new Set<string>(resolved.fittings.map(({ item }) => `fitting:${item.id}`));
  const tasks = needs.map((task) => `${task} ${words.speak({ say: `${task}.name` })}`);
  const { setting, shown, rest } = hold(rowsOf(resolved, takeoff, findings, file, words), {
    steps: steps.length,
    tasks,
    about,
    strip,
  });
  return {
    setting,
    rows: shown,
    fittings: takeoff.hardware.flatMap(({ item, count }) => (fitted.has(item) ? [{ item, count }] : [])),
    needs,
    steps,
    lists: listSheets(rest),
  };
}
