/** The witness sheets that are printed, one a task: their numbers, what each asks for, by whose word a showing is good. */
import type { Library } from '../schema/library.ts';
import { adoptedOf } from '../schema/site.ts';
import type { Block } from './block.ts';
import { pageAt } from './paths.ts';
import type { SheetLink } from './sheets.ts';
import type { Speak, Tell } from './speak.ts';
import type { WitnessTask } from './witness.ts';
import { witnessTasksOf } from './witnessPage.ts';
import type { Lang } from './words.ts';

/** Rows for measures where the task asks for none: something may still be measured. */
const SPARE = 2;

export interface WitnessPaper {
  readonly task: WitnessTask;
  readonly name: string;
  readonly block: Block;
  /** How long a showing is good for, and who says so. */
  readonly good: string;
  /** That length of time is a training value. */
  readonly training: boolean;
  readonly measureRows: number;
}

/** Every task that can be shown. */
export function witnessPapers(library: Library, tell: Tell, speak: Speak): readonly WitnessPaper[] {
  const { months } = adoptedOf(library.site.values());
  return witnessTasksOf(library)
    .filter(({ parts }) => parts.length === 0)
    .map((task) => {
      const adopted = months.get(task.id);
      const last = task.revisions.at(-1);
      const training = adopted === undefined;
      return {
        task,
        name: `${task.id} ${speak({ say: `${task.id}.name` })}`,
        block: {
          number: `TH-W${task.id.slice(1)}`,
          revision: last?.n ?? 1,
          dated: last?.on ?? '',
          works: tell('sheet.ofWorks'),
          status: tell(training ? 'sheet.training' : 'sheet.sample'),
        },
        good: tell('paperSheet.good', {
          months: task.months ?? 0,
          origin: training
            ? tell('paperSheet.goodTraining')
            : tell('paperSheet.goodAdopted', { by: adopted.source.where }),
        }),
        training,
        measureRows: Math.max(task.measures, SPARE),
      };
    });
}

export const paperAt = (lang: Lang, task: string): string =>
  pageAt(lang, `witness/paper/${task.toLowerCase()}`);

export const paperLinks = (library: Library, lang: Lang, tell: Tell, speak: Speak): readonly SheetLink[] =>
  witnessPapers(library, tell, speak).map(({ task, name, block }) => ({
    href: paperAt(lang, task.id),
    number: block.number,
    name,
    line: tell(task.second ? 'paperSheet.lineSecond' : 'paperSheet.line', {
      count: task.critical?.length ?? 0,
      measures: task.measures,
    }),
    revision: tell('sheet.rev', { revision: block.revision }),
  }));
