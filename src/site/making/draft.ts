/** What a trainer has chosen for a sheet, and the sheet that it comes to. Pure. */
import type { Family } from '../../practice/family.ts';
import type { Narrowing } from '../../practice/narrow.ts';
import { FEWEST_TRIALS, type SheetRule } from '../../practice/passRule/rule.ts';
import type { Sheet } from '../../practice/sheet.ts';
import { MOST_OF_FAMILY, tooMany } from '../../practice/sheetForm.ts';
import { TASK_ID } from '../../trade/ids.ts';

export interface Picked {
  readonly draws: number;
  readonly narrow: Narrowing;
}

/** `all` of them; a bound; Wald's test with the number of draws as its ceiling. */
export type RuleKind = 'all' | 'bound' | 'sequential';

export interface Draft {
  readonly number: number;
  readonly benches: number;
  readonly tasks: readonly string[];
  /** By family. One that is not here is not on the sheet. */
  readonly picks: Readonly<Record<string, Picked>>;
  readonly rule: RuleKind;
  readonly bound: { readonly confidence: number; readonly share: number };
  readonly wald: {
    readonly p0: number;
    readonly p1: number;
    readonly alpha: number;
    readonly beta: number;
  };
}

/** Figures that a trainer may start from (common practice, no source): a half must not pass, nine of ten should. */
export const newDraft = (number: number): Draft => ({
  number,
  benches: 12,
  tasks: [],
  picks: {},
  rule: 'all',
  bound: { confidence: 0.95, share: 0.8 },
  wald: { p0: 0.5, p1: 0.9, alpha: 0.05, beta: 0.1 },
});

/** Most draws of one family, and most benches that are printed at once. */
export const MOST_DRAWS = MOST_OF_FAMILY;
export const MOST_PRINTED = 40;

/** Families that exercise a task of the draft, in the order they came. */
export const familiesOf = (draft: Draft, families: Iterable<Family>): readonly Family[] =>
  [...families].filter(({ tasks }) => tasks.some((task) => draft.tasks.includes(task)));

/** Families that are on the sheet. */
const pickedOf = (draft: Draft, families: Iterable<Family>): readonly Family[] =>
  familiesOf(draft, families).filter(({ id }) => (draft.picks[id]?.draws ?? 0) > 0);

/** Rules that can be chosen for so many draws: nothing statistical is said of fewer than 14. */
export const rulesFor = (draws: number): readonly RuleKind[] =>
  draws < FEWEST_TRIALS ? ['all'] : ['all', 'bound', 'sequential'];

function ruleOf(draft: Draft, draws: number): SheetRule {
  const kind = rulesFor(draws).includes(draft.rule) ? draft.rule : 'all';
  if (kind === 'bound') return { bound: draft.bound };
  if (kind === 'sequential') return { sequential: { ...draft.wald, ceiling: draws } };
  return { need: draws, of: draws };
}

/** The id that a sheet of this number goes by: it stands in every seed of it. */
export const sheetIdOf = (number: number): string => `sheet-${number}`;

/**
 * Tasks that the exercises on the sheet are about: those of the draft, or, where it names safe work alone, the tasks
 * that its exercises come with. Empty when there are none: a sheet is for a task, and safe work (W1 …) is no task.
 */
function tasksOf(draft: Draft, picked: readonly Family[]): readonly string[] {
  const about = [...new Set(picked.flatMap(({ tasks }) => tasks))].filter((id) => TASK_ID.test(id)).sort();
  const chosen = about.filter((id) => draft.tasks.includes(id));
  return chosen.length > 0 ? chosen : about;
}

/** What a draft lacks to be a sheet: a task, an exercise, or, with safe work alone on it, an exercise of a task; or fewer draws. */
export type Lack = 'task' | 'exercise' | 'work' | 'fewer';

/**
 * The sheet, or what it lacks.
 * @param families  of the site, in its order: the order of the sheet
 * @param title  in the language of the page
 */
export function sheetOf(
  draft: Draft,
  families: Iterable<Family>,
  title: Readonly<Record<string, string>>,
): { readonly sheet: Sheet } | { readonly lacks: Lack } {
  if (draft.tasks.length === 0) return { lacks: 'task' };
  const picked = pickedOf(draft, families);
  if (picked.length === 0) return { lacks: 'exercise' };
  const tasks = tasksOf(draft, picked);
  if (tasks.length === 0) return { lacks: 'work' };
  const parts = picked.map(({ id }) => {
    const { draws = 0, narrow = {} } = draft.picks[id] ?? {};
    return { family: id, draws, ...(Object.keys(narrow).length === 0 ? {} : { narrow }) };
  });
  const { number } = draft;
  const draws = drawsOf({ families: parts });
  if (tooMany(draws).length > 0) return { lacks: 'fewer' };
  const rule = ruleOf(draft, draws);
  return { sheet: { id: sheetIdOf(number), number, title, tasks, families: parts, rule } };
}

export const drawsOf = ({ families }: Pick<Sheet, 'families'>): number =>
  families.reduce((sum, { draws }) => sum + draws, 0);

/** Takes a task on or off; what was picked of a family that no task asks for any more is taken off too. */
export function withTask(draft: Draft, task: string, families: Iterable<Family>): Draft {
  const tasks = draft.tasks.includes(task)
    ? draft.tasks.filter((one) => one !== task)
    : [...draft.tasks, task].sort();
  const next = { ...draft, tasks };
  const left = new Set(familiesOf(next, families).map(({ id }) => id));
  const picks = Object.fromEntries(Object.entries(draft.picks).filter(([id]) => left.has(id)));
  return { ...next, picks };
}

export const withPick = (draft: Draft, family: string, change: Partial<Picked>): Draft => {
  const old = draft.picks[family] ?? { draws: 0, narrow: {} };
  return { ...draft, picks: { ...draft.picks, [family]: { ...old, ...change } } };
};
