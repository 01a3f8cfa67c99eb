/**
 * The sheets that the site itself draws (the home sheet, indexes, calculators, practice): their numbers, revisions and
 * dates, as the title block wants them. A change of what such a sheet says or computes raises its revision here.
 */
import { pageAt } from './paths.ts';
import type { SiteKey, Tell } from './speak.ts';
import type { Lang } from './words.ts';

export interface Block {
  readonly number: string;
  readonly revision: number;
  readonly dated: string;
  readonly works: string;
  readonly status: string;
}

interface OwnSheet {
  readonly number: string;
  readonly revision: number;
  readonly dated: string;
  readonly block: (tell: Tell) => Block;
}

const own = (number: string, revision: number, dated: string, status: SiteKey): OwnSheet => ({
  number,
  revision,
  dated,
  block: (tell) => ({ number, revision, dated, works: tell('sheet.ofWorks'), status: tell(status) }),
});

export const ownSheets = {
  home: own('TH-00', 1, '2026-03-09', 'sheet.sample'),
  install: own('TH-I00', 1, '2026-03-09', 'sheet.sample'),
  teach: own('TH-P00', 1, '2026-03-09', 'sheet.sample'),
  assign: own('TH-R00', 1, '2026-03-09', 'sheet.sample'),
  cut: own('TH-C01', 1, '2026-03-09', 'sheet.training'),
  fill: own('TH-C02', 1, '2026-03-09', 'sheet.worked'),
} as const;

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
        to('install/join-splice', 'home.join'),
        to('install/cut', 'cut.title'),
        to('install/fill', 'fill.title'),
      ],
    },
    {
      place: 'teach',
      name: tell('home.teaching'),
      line: tell('home.teachingLine'),
      links: [to('teach', 'home.practice'), to('set', 'home.set'), to('witness', 'home.witness')],
    },
    {
      place: 'assign',
      name: tell('home.assigning'),
      line: tell('home.assigningLine'),
      links: [to('crew', 'home.crew'), to('register', 'home.register')],
    },
  ];
}
