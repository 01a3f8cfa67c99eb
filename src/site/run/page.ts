/** What the page of a run is built with: groups of words, names of tasks, the demo works' runs. Build time only. */
import { runJson } from '../../run/writeRun.ts';
import type { Library } from '../../schema/library.ts';
import type { Speak } from '../speak.ts';

/** Groups that the page, the core's working and the figures say. */
export const runWords = [
  'handing',
  'yourRun',
  'sums',
  'measure',
  'sheet',
  'date',
  'entry',
  'file',
  'unit',
  'seen',
  'drawing',
  'rundrawing',
  'run',
  'inspect',
  'takeoff',
  'layout',
  'sticks',
  'fill',
  'jumper',
  'radius',
] as const;

/** Tasks that a job card can demand. */
export const runTasks = [
  ...['T03', 'T04', 'T05', 'T06', 'T07', 'T08a', 'T08b', 'T08c', 'T08d', 'T08e'],
  ...['T09', 'T10', 'T11', 'T12'],
] as const;

export function runExamples(library: Library, speak: Speak) {
  return [...library.demoRuns.values()]
    .sort((a, b) => a.rank - b.rank)
    .map(({ id, rank, name, tags, run }) => ({
      id,
      number: `ALD-R${rank}`,
      name: speak({ say: name }),
      tags,
      json: runJson(run),
    }));
}
