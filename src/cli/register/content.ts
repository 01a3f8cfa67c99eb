/**
 * What the register's verbs need of the content: the task map, the sentences, and grading again. The library is only
 * loaded when it is wanted, so that a verb with its own map answers at once.
 */
import may from '../../../content/words/en/may.json' with { type: 'json' };
import words from '../../../content/words/en/register.json' with { type: 'json' };
import type { Practice } from '../../practice/sheet.ts';
import type { Language } from '../../practice/words.ts';
import type { Demands } from '../../register/acts/ownStanding.ts';
import type { Json } from '../../register/canonical.ts';
import type { Regrade } from '../../register/checks.ts';
import type { RegisterFiles } from '../../register/held.ts';
import { isBodyPath } from '../../register/paths.ts';
import type { TaskMap } from '../../register/taskMap.ts';
import { speakerOver } from '../../trade/say.ts';
import { contentFiles } from '../contentFiles.ts';
import { practiceFiles } from '../practiceFiles.ts';

/** The site's own task map. */
export async function siteMap(): Promise<TaskMap> {
  const { readLibrary } = await import('../../schema/library.ts');
  const { taskMapOf } = await import('../../schema/task.ts');
  const files = contentFiles().filter((f) => /^content\/(?:tasks|site)\//.test(f.path));
  return taskMapOf(readLibrary(files).library);
}

/** What the site asks of a witness beyond his appointment. */
export async function siteDemands(): Promise<Demands> {
  const { readLibrary } = await import('../../schema/library.ts');
  const { witnessDemandsOf } = await import('../../schema/witnessDemands.ts');
  const files = contentFiles().filter((f) => /^content\/(?:tasks|site)\//.test(f.path));
  return witnessDemandsOf(readLibrary(files).library);
}

const texts = new Map<string, string>(
  [...Object.entries(words), ...Object.entries(may)].flatMap(([group, keys]) =>
    Object.entries(keys).map(([key, text]) => [`${group}.${key}`, text] as const),
  ),
);

export const registerSpeak = speakerOver((key) => texts.get(key));

/** Grades with the site's own sheets; `undefined` where there is no evidence to grade. */
export async function siteRegrade(files: RegisterFiles, given?: Json): Promise<Regrade | undefined> {
  const kept = Object.entries(files).some(
    ([path, text]) => isBodyPath(path) && text.includes('"evidence":') && !text.includes('"evidence":null'),
  );
  if (!kept && given === undefined) return undefined;
  const { regradeWith } = await import('../../schema/regrade.ts');
  const load = await sitePractice();
  return regradeWith(load);
}

/** What draws and grades the site's own sheets; read when it is called for. */
export async function sitePractice(): Promise<() => { practice: Practice; language: Language }> {
  const { readLibrary } = await import('../../schema/library.ts');
  const { practiceOf } = await import('../../schema/practice.ts');
  const { speaker } = await import('../../schema/words.ts');
  return () => {
    const { library } = readLibrary(practiceFiles('on sheets'));
    const speak = speaker(library.words.get('en') ?? new Map());
    return { practice: practiceOf(library), language: { lang: 'en', speak } };
  };
}
