/**
 * A check sheet: which families, how many draws of each, and when it is passed. Sheet id, bench number and place on
 * the sheet fix every seed, so anyone can compute the draws and grade the answers again (README.md).
 */
import { type Fault, GivenError } from '../trade/given.ts';
import { type Draw, drawOf } from './draw.ts';
import type { Family, Texts } from './family.ts';
import { type Grade, gradeDraw } from './grade.ts';
import type { World } from './model.ts';
import { type Narrowing, narrowed } from './narrow.ts';
import { type Decision, decide } from './passRule/decide.ts';
import { passRuleOf, type SheetRule } from './passRule/rule.ts';
import type { Language } from './words.ts';

export interface Sheet {
  readonly id: string;
  /** As it is called on the floor: "sheet 7, bench 12". */
  readonly number: number;
  readonly title: Texts;
  /** Tasks for which its answers are evidence. */
  readonly tasks: readonly string[];
  readonly families: readonly SheetFamily[];
  /** When it is passed (passRule/README.md); a critical point missed on any draw fails it all the same. */
  readonly rule: SheetRule;
}

export interface SheetFamily {
  readonly family: string;
  readonly draws: number;
  /** Parameters that choose from less than the family does; undefined: as the family draws. */
  readonly narrow?: Narrowing | undefined;
}

/** What is set for a person: file of kind `set`. */
export interface SetFile {
  readonly v: 1;
  readonly kind: 'set';
  readonly sheet: string;
  readonly bench: number;
  readonly person: string;
  readonly task: string;
  /** The sheet itself (sheetForm.ts), where it was made on a page and is no content of the site. */
  readonly of?: Readonly<Record<string, unknown>>;
}

/** What a person answered: file of kind `answers`. */
export interface AnswersFile {
  readonly v: 1;
  readonly kind: 'answers';
  readonly sheet: string;
  readonly bench: number;
  readonly person: string;
  /** Name of the device it was answered on. */
  readonly device: string;
  readonly task: string;
  /** As of the set file. Such answers are practice: no register takes them for evidence. */
  readonly of?: Readonly<Record<string, unknown>>;
  readonly answers: readonly {
    readonly family: string;
    readonly seed: string;
    readonly answers: Readonly<Record<string, unknown>>;
  }[];
}

/** One place on a sheet. */
export interface SheetPlace {
  /** From 1. */
  readonly place: number;
  readonly family: string;
  readonly seed: string;
  /** What the sheet narrows of the family there. */
  readonly narrow?: Narrowing;
}

/** The decision (`held` of `n` draws, with the interval), and what it rests on. */
export interface SheetGrade extends Decision {
  readonly sheet: string;
  readonly bench: number;
  readonly draws: readonly (SheetPlace & Grade)[];
  /** Places on which a critical ask does not hold; of draws after a sequential rule's decision, those answered. */
  readonly criticalMissed: readonly number[];
  /** The result is `pass`: neither refused nor undecided. */
  readonly passed: boolean;
}

/** What it takes to draw and grade: families by id, the tables, and a language for what is said. */
export interface Practice {
  readonly families: ReadonlyMap<string, Family>;
  readonly sheets: ReadonlyMap<string, Sheet>;
  readonly world: World;
}

/** Bench numbers are whole, from 1 to this. */
export const MOST_BENCHES = 9999;

/** The seed at a place: `SHEET/BENCH/PLACE`. */
export function sheetSeed(sheet: string, bench: number, place: number): string {
  return `${sheet}/${bench}/${place}`;
}

/** Every place of a sheet at a bench, in order. */
export function sheetPlaces(sheet: Pick<Sheet, 'id' | 'families'>, bench: number): readonly SheetPlace[] {
  return sheet.families
    .flatMap((part) => Array.from({ length: part.draws }, () => part))
    .map(({ family, narrow }, i) => ({
      place: i + 1,
      family,
      seed: sheetSeed(sheet.id, bench, i + 1),
      ...(narrow === undefined ? {} : { narrow }),
    }));
}

/** The draws of a sheet at a bench. */
export function sheetDraws(
  sheet: Sheet,
  bench: number,
  { families, world }: Practice,
): readonly (SheetPlace & { readonly draw: Draw })[] {
  return sheetPlaces(sheet, bench).map((place) => {
    const family = families.get(place.family);
    if (family === undefined) throw new Error(`${sheet.id}: no family ${place.family}`);
    return { ...place, draw: drawOf(narrowed(family, place.narrow), place.seed, world) };
  });
}

/**
 * Grades what was answered on a sheet. A place without answers is blank throughout.
 *
 * @throws {GivenError} every fault: a draw that this sheet does not have at this bench, one answered twice, an answer
 *   that cannot be read
 */
export function gradeSheet(
  sheet: Sheet,
  bench: number,
  answers: AnswersFile['answers'],
  practice: Practice,
  language: Language,
): SheetGrade {
  const draws = sheetDraws(sheet, bench, practice);
  const faults: Fault[] = [];
  answers.forEach(({ family, seed }, i) => {
    const known = draws.some((d) => d.family === family && d.seed === seed);
    if (!known)
      faults.push({
        field: `answers[${i}].seed`,
        value: seed,
        message: `sheet ${sheet.number} has no draw of ${family} with this seed at bench ${bench}`,
        todo: 'take the answers from the device again; nothing on them is changed by hand',
      });
    else if (answers.findIndex((a) => a.seed === seed) < i)
      faults.push({
        field: `answers[${i}].seed`,
        value: seed,
        message: 'this draw is answered twice',
        todo: 'leave one of the two',
      });
  });
  const graded = draws.map(({ draw, ...place }) => {
    const at = answers.findIndex((a) => a.family === place.family && a.seed === place.seed);
    try {
      return { ...place, ...gradeDraw(draw, answers[at]?.answers ?? {}, practice.world, language) };
    } catch (cause) {
      if (!(cause instanceof GivenError)) throw cause;
      faults.push(...cause.faults.map((f) => ({ ...f, field: `answers[${at}].${f.field}` })));
      return undefined;
    }
  });
  if (faults.length > 0) throw new GivenError(faults);
  const all = graded.filter((g) => g !== undefined);
  const { criticalMissed, ...decision } = decideSheet(sheet, all);
  return {
    sheet: sheet.id,
    bench,
    draws: all,
    criticalMissed,
    ...decision,
    passed: decision.result === 'pass',
  };
}

type Graded = SheetPlace & Grade;

/** What one draw is to the rule: one trial, held when the draw is passed (passRule/README.md says why). */
function decideSheet(sheet: Sheet, graded: readonly Graded[]) {
  const rule = passRuleOf(sheet.rule);
  // A sequential sheet is answered in its order: what is blank after the last answer was not asked.
  const asked = rule.kind === 'sequential' ? graded.slice(0, graded.findLastIndex(answered) + 1) : graded;
  const outcomes = asked.map((g) => g.passed);
  const decision = decide(rule, outcomes, false);
  const criticalMissed = graded
    .filter((g) => (g.place <= decision.n || answered(g)) && g.criticalMissed.length > 0)
    .map((g) => g.place);
  return { ...(criticalMissed.length > 0 ? decide(rule, outcomes, true) : decision), criticalMissed };
}

const answered = ({ findings }: Graded): boolean => findings.some(({ verdict }) => verdict !== 'blank');

/**
 * Grades an answers file again, as the witness's device and `register check --evidence` do: nothing in the file says
 * how it was graded, everything follows from sheet, bench number and answers.
 *
 * @throws {GivenError} an unknown sheet, a task that the sheet is no evidence for, and all that `gradeSheet` finds
 */
export function regradeSheet(file: AnswersFile, practice: Practice, language: Language): SheetGrade {
  if (file.of !== undefined)
    throw new GivenError([
      {
        field: 'of',
        value: file.sheet,
        message: 'this sheet was made on a page, and is none of the site’s own',
        todo: 'keep its YAML in content/sheets first, and set it anew',
      },
    ]);
  const sheet = practice.sheets.get(file.sheet);
  if (sheet === undefined) {
    const known = [...practice.sheets.keys()].join(', ');
    throw new GivenError([
      {
        field: 'sheet',
        value: file.sheet,
        message: 'there is no such sheet here',
        todo: `name one of ${known}`,
      },
    ]);
  }
  if (!sheet.tasks.includes(file.task))
    throw new GivenError([
      {
        field: 'task',
        value: file.task,
        message: `this sheet says nothing about ${file.task}`,
        todo: `it is evidence for ${sheet.tasks.join(', ')}`,
      },
    ]);
  return gradeSheet(sheet, file.bench, file.answers, practice, language);
}
