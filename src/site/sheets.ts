/**
 * The sheets that the site itself draws (the home sheet, indexes, calculators, practice, the register's pages): their numbers, revisions and
 * dates, as the title block wants them. A change of what such a sheet says or computes raises its revision here.
 */
import { kindsOf } from '../practice/family.ts';
import type { Library } from '../schema/library.ts';
import type { Page } from '../schema/page.ts';
import type { Block } from './block.ts';
import { type GroupId, groups, isOwn } from './calculators/groups.ts';
import { sumPages } from './calculators/pages.ts';
import { type SumId, sumIds } from './calculators/sum.ts';
import { familiesOf, practiceNumber } from './families.ts';
import { pageAt } from './paths.ts';
import { proceduresOf } from './procedures.ts';
import type { SiteKey, Speak, Tell } from './speak.ts';
import type { Lang } from './words.ts';

export type { Block } from './block.ts';

interface OwnSheet {
  readonly number: string;
  readonly revision: number;
  readonly block: (tell: Tell) => Block;
}

/** The day on which the works adopted the sheets that the site draws. */
const ADOPTED = '2026-03-09';

/** A sheet that the site draws, ready to fill its title block; of the works, unless it is this device's own and bears no day. */
const sheet = (
  number: string,
  revision: number,
  status: SiteKey,
  works: SiteKey = 'sheet.ofWorks',
  dated: string | undefined = works === 'deviceSheet.works' ? undefined : ADOPTED,
): OwnSheet => ({
  number,
  revision,
  block: (tell) => ({ number, revision, dated, works: tell(works), status: tell(status) }),
});

/** The sheets of the calculators, by the name of each. */
const sumSheets = Object.fromEntries(
  sumIds.map((id) => [id, sheet(sumPages[id].number, 1, sumPages[id].status)]),
) as Readonly<Record<SumId, OwnSheet>>;

export const ownSheets = {
  ...sumSheets,
  home: sheet('TH-00', 1, 'sheet.sample'),
  install: sheet('TH-I00', 1, 'sheet.sample'),
  cut: sheet('TH-C01', 1, 'sheet.training'),
  fill: sheet('TH-C02', 1, 'sheet.worked'),
  sticks: sheet('TH-C03', 1, 'sheet.arithmetic'),
  settings: sheet('TH-I01', 1, 'deviceSheet.status', 'deviceSheet.works'),
  run: sheet('TH-I02', 1, 'sheet.training', 'deviceSheet.works'),
  practice: sheet('TH-I03', 1, 'sheet.sample'),
  kept: sheet('TH-I04', 1, 'deviceSheet.status', 'deviceSheet.works'),
  teach: sheet('TH-P00', 1, 'sheet.sample'),
  make: sheet('TH-S00', 1, 'sheet.training', 'deviceSheet.works'),
  set: sheet('TH-S01', 1, 'sheet.training', 'deviceSheet.works'),
  answer: sheet('TH-S02', 1, 'sheet.training', 'deviceSheet.works'),
  witness: sheet('TH-S03', 2, 'deviceSheet.status', 'deviceSheet.works'),
  second: sheet('TH-S04', 1, 'deviceSheet.status', 'deviceSheet.works'),
  own: sheet('TH-S05', 1, 'deviceSheet.status', 'deviceSheet.works'),
  answers: sheet('TH-S06', 1, 'deviceSheet.status', 'deviceSheet.works'),
  paper: sheet('TH-W00', 1, 'sheet.sample'),
  assign: sheet('TH-R00', 1, 'sheet.sample'),
  crew: sheet('TH-R01', 1, 'sheet.sample'),
  register: sheet('TH-R02', 1, 'deviceSheet.status', 'deviceSheet.works'),
  ownCrew: sheet('TH-R03', 1, 'deviceSheet.status', 'deviceSheet.works', ''),
} as const;

/** The sheet of a practice family: its number follows from its task. */
export const practiceSheet = (library: Library, family: string): OwnSheet =>
  sheet(practiceNumber(library, family), 1, 'sheet.training');

/** The sheet of a person, by what he goes by in a box; and of a task. */
export const personSheet = (short: string): OwnSheet => sheet(`TH-PS-${short}`, 1, 'person.status');
export const taskSheet = (task: string): OwnSheet => sheet(`TH-TS-${task}`, 1, 'taskSheet.status');

/** A sheet in a list. */
export interface SheetLink {
  readonly href: string;
  readonly number: string;
  readonly name: string;
  readonly line: string;
  readonly revision: string;
}

export const pagesOf = (library: Library, lang: Lang): readonly Page[] =>
  [...library.pages].flatMap(([key, page]) => (key.startsWith(`${lang}/`) ? [page] : []));

export function pageLinks(library: Library, lang: Lang, tell: Tell): readonly SheetLink[] {
  return pagesOf(library, lang).map(({ id, sheet, title, lead, revision }) => ({
    href: pageAt(lang, `about/${id}`),
    number: sheet,
    name: title,
    line: lead,
    revision: tell('sheet.rev', { revision }),
  }));
}

export function procedureLinks(library: Library, lang: Lang, tell: Tell, speak: Speak): readonly SheetLink[] {
  return proceduresOf(library, lang).map(({ id, revision }) => ({
    href: pageAt(lang, `install/${id.toLowerCase()}`),
    number: `TH-${id}`,
    name: speak({ say: `${id}.name` }),
    line: speak({ say: `${id}.purpose` }),
    revision: tell('sheet.rev', { revision }),
  }));
}

/** The calculators, by the part of the job they belong to. */
export interface SumGroup {
  readonly id: GroupId;
  readonly name: string;
  readonly sheets: readonly SheetLink[];
}

export function sumGroups(lang: Lang, tell: Tell): readonly SumGroup[] {
  return groups.map(([id, sums]) => ({
    id,
    name: tell(`sums.${id}`),
    sheets: sums.map((sum) => {
      const own = isOwn(sum);
      return {
        href: pageAt(lang, own ? `install/${sum}` : `install/sums/${sum}`),
        number: ownSheets[sum].number,
        name: own ? tell(`${sum}Sheet.title`) : tell(`${sum}Sum.title`),
        line: own ? tell(`install.${sum}Line`) : tell(`${sum}Sum.line`),
        revision: tell('sheet.rev', { revision: ownSheets[sum].revision }),
      };
    }),
  }));
}

/** The sheet on which a run is built. */
export const runLink = (lang: Lang, tell: Tell): SheetLink => ({
  href: pageAt(lang, 'run'),
  number: ownSheets.run.number,
  name: tell('yourRun.title'),
  line: tell('yourRun.lead'),
  revision: tell('sheet.rev', { revision: ownSheets.run.revision }),
});

/** The sheet on which a device is told how to show figures. */
export const settingsLink = (lang: Lang, tell: Tell): SheetLink => ({
  href: pageAt(lang, 'settings'),
  number: ownSheets.settings.number,
  name: tell('settingsSheet.title'),
  line: tell('settingsSheet.line'),
  revision: tell('sheet.rev', { revision: ownSheets.settings.revision }),
});

/** The practice families of one task, or of one ticket. */
export interface PracticeGroup {
  /** As `T05`, `W3`. */
  readonly task: string;
  readonly name: string;
  readonly sheets: readonly SheetLink[];
}

/** Practice families, each under the first task that it exercises, which its number carries. */
export function practiceGroups(
  library: Library,
  lang: Lang,
  tell: Tell,
  speak: Speak,
): readonly PracticeGroup[] {
  const groups = Map.groupBy(familiesOf(library), ({ tasks }) => tasks[0] ?? '');
  return [...groups].map(([task, families]) => ({
    task,
    name: speak({ say: `${task}.name` }),
    sheets: families.map((family) => ({
      href: pageAt(lang, `practice/${family.id}`),
      number: practiceNumber(library, family.id),
      name: family.title[lang] ?? family.id,
      line: tell('practiceList.kinds', {
        kinds: kindsOf(family)
          .map((kind) => tell(`practiceList.kind-${kind}`))
          .join(', '),
      }),
      revision: '',
    })),
  }));
}

/** Where the practice of a task begins in the list of the practice, as `t05`. */
export const practiceMark = (task: string): string => task.toLowerCase();

/** So many practice sheets stand at the foot of a procedure; the list has them all. */
const BESIDE_STEPS = 3;

/** What practises a procedure's task: what the procedure names, then what its task has, then the way to all of it. */
export function practiceBeside(
  library: Library,
  lang: Lang,
  tell: Tell,
  speak: Speak,
  { id, practice }: { readonly id: string; readonly practice: readonly string[] },
): readonly SheetLink[] {
  const groups = practiceGroups(library, lang, tell, speak);
  const all = groups.flatMap(({ sheets }) => sheets);
  const named = practice.flatMap((family) =>
    all.filter(({ href }) => href === pageAt(lang, `practice/${family}`)),
  );
  const own = groups.find(({ task }) => task === id)?.sheets ?? [];
  const toAll: SheetLink = {
    ...practiceLink(lang, tell, 'practice'),
    href: `${pageAt(lang, 'practice')}#${practiceMark(id)}`,
    name: tell('procedure.allPractice', { id }),
    line: tell('procedure.allPracticeLine'),
  };
  return [...[...new Set([...named, ...own])].slice(0, BESIDE_STEPS), ...(own.length === 0 ? [] : [toAll])];
}

/** The list of the practice, and the sheet on which its tries are carried off or cleared. */
const practised = { practice: 'practice', kept: 'practice/kept' } as const;
export const practiceLink = (lang: Lang, tell: Tell, which: keyof typeof practised): SheetLink => ({
  href: pageAt(lang, practised[which]),
  number: ownSheets[which].number,
  name: tell(which === 'practice' ? 'practiceList.title' : 'keptPractice.title'),
  line: tell(which === 'practice' ? 'practiceList.line' : 'keptPractice.line'),
  revision: '',
});

/** The sheets of teaching, each with its address below the language. */
const taught = {
  make: 'sheet',
  set: 'set',
  answer: 'answer',
  witness: 'witness',
  second: 'witness/second',
  own: 'witness/own',
  answers: 'teach/answers',
  paper: 'witness/paper',
} as const;
type Taught = keyof typeof taught;

export function teachLinks(
  lang: Lang,
  tell: Tell,
  paths: readonly Taught[] = Object.keys(taught) as Taught[],
): readonly SheetLink[] {
  return paths.map((path) => ({
    href: pageAt(lang, taught[path]),
    number: ownSheets[path].number,
    name: tell(`teach.${path}`),
    line: tell(`teach.${path}Line`),
    revision: '',
  }));
}

export function assignLinks(lang: Lang, tell: Tell): readonly SheetLink[] {
  const to = (path: 'crew' | 'register'): SheetLink => ({
    href: pageAt(lang, path),
    number: ownSheets[path].number,
    name: tell(`assignPage.${path}`),
    line: tell(`assignPage.${path}Line`),
    revision: '',
  });
  return [to('crew'), to('register')];
}

/** Sheets of the demo's people, as a list of links: what each goes by, and the name. */
export const peopleLinks = (
  lang: Lang,
  tell: Tell,
  people: readonly {
    readonly id: string;
    readonly short: string;
    readonly name: string;
    readonly line: string;
  }[],
): readonly SheetLink[] =>
  people.map(({ id, short, name, line }) => ({
    href: pageAt(lang, `crew/person/${id}`),
    number: short,
    name: tell('person.sheetOf', { person: name }),
    line,
    revision: '',
  }));

/** Sheets of the tasks for the demo's crew. */
export const taskLinks = (library: Library, lang: Lang, speak: Speak): readonly SheetLink[] =>
  [...library.tasks.keys()].sort().map((id) => ({
    href: pageAt(lang, `crew/task/${id}`),
    number: id,
    name: speak({ say: `${id}.name` }),
    line: speak({ say: `${id}.purpose` }),
    revision: '',
  }));

export interface Door {
  readonly place: 'install' | 'teach' | 'assign';
  readonly name: string;
  readonly line: string;
  readonly links: readonly { readonly href: string; readonly text: string }[];
}

/** The three doors of the home sheet with the sheets most asked for behind each. */
export function homeDoors(lang: Lang, tell: Tell): readonly Door[] {
  const to = (path: string, text: SiteKey) => ({ href: pageAt(lang, path), text: tell(text) });
  return [
    {
      place: 'install',
      name: tell('home.installing'),
      line: tell('home.installingLine'),
      links: [
        to('install/t07', 'home.join'),
        to('install/cut', 'cutSheet.title'),
        to('install/fill', 'fillSheet.title'),
        to('practice', 'home.practice'),
      ],
    },
    {
      place: 'teach',
      name: tell('home.teaching'),
      line: tell('home.teachingLine'),
      links: [to('sheet', 'home.make'), to('set', 'home.set'), to('witness', 'home.witness')],
    },
    {
      place: 'assign',
      name: tell('home.assigning'),
      line: tell('home.assigningLine'),
      links: [to('crew', 'home.crew'), to('register', 'home.register')],
    },
  ];
}
