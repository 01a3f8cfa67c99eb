/** From files that people hand in to first tries, before they are graded. */
import { GivenError } from '../../trade/given.ts';
import { type Attempt, attemptKey, firstTries } from '../attempts.ts';
import { type AttemptsFile, readAttemptsFile } from '../attemptsFile.ts';
import { isRecord } from '../fileFields.ts';
import { GENERATOR } from '../generator.ts';
import type { Narrowing } from '../narrow.ts';
import { type AnswersFile, type Practice, type Sheet, sheetPlaces } from '../sheet.ts';
import { readAnswersFile } from '../sheetFiles.ts';
import { readSheetForm } from '../sheetForm.ts';

/** A file of a kind that answers come in, with the name by which it is spoken of. */
export interface Brought {
  readonly name: string;
  readonly file: AnswersFile | AttemptsFile;
}

/** Why a try is not counted. */
export const LEFT_WHYS = [
  'no such sheet',
  'not of this sheet',
  'no such family',
  'other generator',
  'not drawn',
  'unread',
  'twice',
] as const;
export type LeftWhy = (typeof LEFT_WHYS)[number];

/** The first try of one person at one draw. */
export interface RawTry {
  /** The file's name. */
  readonly name: string;
  /** `person ID`, or `device NAME` where no person is known; but for `personOf` it is only counted. */
  readonly who: string;
  readonly family: string;
  readonly seed: string;
  /** Where it stands on a sheet; the sheet by its key in `sheetsIn`. */
  readonly on?: { readonly sheet: string; readonly bench: number; readonly place: number };
  /** What its sheet narrows. */
  readonly narrow?: Narrowing | undefined;
  readonly answers: Readonly<Record<string, unknown>>;
  /** It cannot be counted, and no grading would tell. */
  readonly left?: LeftWhy;
}

const personNamed = (person: string): string => `person ${person}`;
/** The id of a person, where one is known. */
export const personOf = (who: string): string | undefined => /^person (.+)$/.exec(who)?.[1];

/** @throws {GivenError} every fault of a file, also when it is of another kind */
export function readBrought(given: unknown): Brought['file'] {
  if (isRecord(given) && given['kind'] === 'attempts') return readAttemptsFile(given);
  if (isRecord(given) && given['kind'] === 'answers') return readAnswersFile(given);
  throw new GivenError([
    {
      field: 'kind',
      ...(isRecord(given) && given['kind'] !== undefined ? { value: given['kind'] } : {}),
      message: 'neither answers to a sheet nor tries at practice are in this file',
      todo: 'give what a device saved as answers or as tries',
    },
  ]);
}

/** Sheets by key: those of the site under their id, and those made on a page, which travel in the files. */
export function sheetsIn(brought: readonly Brought[], practice: Practice): ReadonlyMap<string, Sheet> {
  const made = brought.flatMap(({ file }): [string, Sheet][] => {
    if (!isAnswers(file) || file.of === undefined) return [];
    try {
      return [[sheetKey(file), readSheetForm(file.of, practice)]];
    } catch (cause) {
      if (cause instanceof GivenError) return [];
      throw cause;
    }
  });
  return new Map([...practice.sheets, ...made]);
}

const sheetKey = ({ sheet, of }: AnswersFile): string => (of === undefined ? sheet : JSON.stringify(of));

/** Every first try of the files. The order in which files come changes nothing but names. */
export function rawTries(brought: readonly Brought[], sheets: ReadonlyMap<string, Sheet>): readonly RawTry[] {
  return [...answeredIn(brought, sheets), ...attemptedIn(brought)];
}

/** The same text for the same answers to the same draw, whoever gave them. */
export const answersKey = ({ family, seed, answers }: RawTry): string =>
  attemptKey({ family, seed, answers, generator: GENERATOR, at: '' });

const isAnswers = (file: Brought['file']): file is AnswersFile => file.kind === 'answers';
const drawKey = (...parts: readonly string[]): string => JSON.stringify(parts);

/** Tries in answers files: one a person and draw; two that differ are both left out. */
function answeredIn(brought: readonly Brought[], sheets: ReadonlyMap<string, Sheet>): readonly RawTry[] {
  const all = brought.flatMap(({ name, file }) => (isAnswers(file) ? answeredOn(name, file, sheets) : []));
  const byDraw = Map.groupBy(all, ({ who, on, family, seed }) => drawKey(who, on?.sheet ?? '', family, seed));
  return [...byDraw.values()].map((same): RawTry => {
    const [first] = same as [RawTry, ...RawTry[]];
    const differ = same.some((one) => answersKey(one) !== answersKey(first));
    return differ ? { ...first, left: 'twice' } : first;
  });
}

/** A draw with nothing entered is no try. */
function answeredOn(name: string, file: AnswersFile, sheets: ReadonlyMap<string, Sheet>): readonly RawTry[] {
  const key = sheetKey(file);
  const sheet = sheets.get(key);
  const places = sheet === undefined ? [] : sheetPlaces(sheet, file.bench);
  const given = file.answers.filter(({ answers }) => Object.keys(answers).length > 0);
  return given.map(({ family, seed, answers }): RawTry => {
    const raw = { name, who: personNamed(file.person), family, seed, answers };
    if (sheet === undefined) return { ...raw, left: 'no such sheet' };
    const found = places.find((one) => one.family === family && one.seed === seed);
    if (found === undefined) return { ...raw, left: 'not of this sheet' };
    const { narrow, place } = found;
    return { ...raw, narrow, on: { sheet: key, bench: file.bench, place } };
  });
}

/** First tries in attempts files, device by device; what an answers file of the device holds is not counted again. */
function attemptedIn(brought: readonly Brought[]): readonly RawTry[] {
  const sheetsOf = Map.groupBy(
    brought.flatMap(({ file }) => (isAnswers(file) ? [file] : [])),
    ({ device }) => device,
  );
  const byDevice = Map.groupBy(
    brought.flatMap(({ name, file }) => (isAnswers(file) ? [] : [{ name, file }])),
    ({ file }) => file.device,
  );
  return [...byDevice].flatMap(([device, files]) => [
    ...attemptedOn(device, files, sheetsOf.get(device) ?? []),
    ...files.flatMap(({ name, file }) => unreadIn(name, device, file)),
  ]);
}

/** Tries of a file that are none: not counted, and not dropped in silence. */
const unreadIn = (name: string, device: string, { left = [] }: AttemptsFile): readonly RawTry[] =>
  left.map(({ family, seed }) => {
    return { name, who: `device ${device}`, family, seed, answers: {}, left: 'unread' as const };
  });

function attemptedOn(
  device: string,
  files: readonly { readonly name: string; readonly file: AttemptsFile }[],
  handed: readonly AnswersFile[],
): readonly RawTry[] {
  const known = new Set(handed.flatMap(({ answers }) => answers.map((a) => drawKey(a.family, a.seed))));
  const people = [...new Set(handed.map(({ person }) => person))];
  const [person] = people;
  const who = person !== undefined && people.length === 1 ? personNamed(person) : `device ${device}`;
  const nameOf = ({ seed, at }: Attempt) =>
    files.find(({ file }) => file.attempts.some((a) => a.seed === seed && a.at === at))?.name ?? device;
  return firstTries(files.flatMap(({ file }) => file.attempts))
    .filter(
      ({ family, seed, answers }) => !known.has(drawKey(family, seed)) && Object.keys(answers).length > 0,
    )
    .map((attempt): RawTry => {
      const { family, seed, answers, generator } = attempt;
      const raw = { name: nameOf(attempt), who, family, seed, answers };
      return generator === GENERATOR ? raw : { ...raw, left: 'other generator' };
    });
}
