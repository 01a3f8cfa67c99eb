/** From files that people hand in to first tries, graded again here: nothing in a file says how it was graded. */
import { GivenError } from '../../trade/given.ts';
import { type Attempt, attemptKey, firstTries } from '../attempts.ts';
import { type AttemptsFile, readAttemptsFile } from '../attemptsFile.ts';
import { type Draw, drawOf } from '../draw.ts';
import type { Family } from '../family.ts';
import { isRecord } from '../fileFields.ts';
import { GENERATOR } from '../generator.ts';
import { type Finding, gradeDraw } from '../grade.ts';
import { type AnswersFile, type Practice, sheetPlaces } from '../sheet.ts';
import { readAnswersFile } from '../sheetFiles.ts';
import { type Language, textOf, textsOf } from '../words.ts';

/** A file of a kind that answers come in, with the name by which it is spoken of. */
export interface Brought {
  readonly name: string;
  readonly file: AnswersFile | AttemptsFile;
}

/** One draw that one person tried for the first time. */
export interface Tried {
  /** The person, or the device where no person is known; only ever counted. */
  readonly who: string;
  readonly family: string;
  readonly seed: string;
  /** Where it stands on a sheet. */
  readonly on?: { readonly sheet: string; readonly bench: number; readonly place: number };
  readonly passed: boolean;
  readonly findings: readonly Pick<Finding, 'ask' | 'verdict' | 'mistake'>[];
  /** Mistakes that can be made on this draw, by ask. */
  readonly could: Readonly<Record<string, readonly string[]>>;
  /** What each mistake that was made says, with the draw's own figures. */
  readonly told: Readonly<Record<string, string>>;
}

/** Why a try was not counted. */
export type LeftWhy =
  | 'no such sheet'
  | 'not of this sheet'
  | 'no such family'
  | 'other generator'
  | 'unread'
  | 'twice';
export interface Left {
  /** The file's name. */
  readonly name: string;
  readonly family: string;
  readonly seed: string;
  readonly why: LeftWhy;
}

/** @throws {GivenError} every fault of a file, also when it is of another kind */
export function readBrought(given: unknown): Brought['file'] {
  if (isRecord(given) && given['kind'] === 'attempts') return readAttemptsFile(given);
  if (isRecord(given) && given['kind'] === 'answers') return readAnswersFile(given);
  throw new GivenError([
    {
      field: 'kind',
      ...(isRecord(given) && given['kind'] !== undefined ? { value: given['kind'] } : {}),
      message: 'no answers of practice or of a sheet are in this file',
      todo: 'give what a device saved as answers or as tries',
    },
  ]);
}

/** A try before it is graded. */
interface Raw extends Pick<Tried, 'who' | 'family' | 'seed' | 'on'> {
  readonly name: string;
  readonly answers: Readonly<Record<string, unknown>>;
  readonly left?: LeftWhy;
}

/** Every first try of the files, and what was left out. The order in which files come changes nothing but names. */
export function triesOf(
  brought: readonly Brought[],
  practice: Practice,
  language: Language,
): { readonly tried: readonly Tried[]; readonly left: readonly Left[] } {
  const answered = answeredIn(brought, practice);
  const raws = [...answered, ...attemptedIn(brought)];
  const tried: Tried[] = [];
  const left: Left[] = [];
  for (const raw of raws) {
    const { name, family, seed } = raw;
    const found = raw.left ?? graded(raw, practice, language);
    if (typeof found === 'string') left.push({ name, family, seed, why: found });
    // Nothing entered is no try.
    else if (found.findings.some(({ verdict }) => verdict !== 'blank')) tried.push(found);
  }
  return { tried, left };
}

const isAnswers = (file: Brought['file']): file is AnswersFile => file.kind === 'answers';
const drawKey = (...parts: readonly string[]): string => JSON.stringify(parts);

/** Tries in answers files: one a person and draw; two that differ are both left out. */
function answeredIn(brought: readonly Brought[], { sheets }: Practice): readonly Raw[] {
  const all = brought.flatMap(({ name, file }): Raw[] => {
    if (!isAnswers(file)) return [];
    const sheet = sheets.get(file.sheet);
    const places = sheet === undefined ? [] : sheetPlaces(sheet, file.bench);
    const given = file.answers.filter(({ answers }) => Object.keys(answers).length > 0);
    return given.map(({ family, seed, answers }) => {
      const raw = { name, who: `person ${file.person}`, family, seed, answers };
      const place = places.find((one) => one.family === family && one.seed === seed)?.place;
      if (sheet === undefined) return { ...raw, left: 'no such sheet' };
      if (place === undefined) return { ...raw, left: 'not of this sheet' };
      return { ...raw, on: { sheet: sheet.id, bench: file.bench, place } };
    });
  });
  const byDraw = Map.groupBy(all, ({ who, family, seed }) => drawKey(who, family, seed));
  return [...byDraw.values()].map((same): Raw => {
    const [first] = same as [Raw, ...Raw[]];
    const differ = same.some((one) => answersKey(one) !== answersKey(first));
    return differ ? { ...first, left: 'twice' } : first;
  });
}

/** The same text for the same answers, in whatever order their fields came. */
const answersKey = ({ family, seed, answers }: Raw): string =>
  attemptKey({ family, seed, answers, generator: GENERATOR, at: '' });

/** First tries in attempts files, device by device; what an answers file of the device holds is not counted again. */
function attemptedIn(brought: readonly Brought[]): readonly Raw[] {
  const sheetsOf = Map.groupBy(
    brought.flatMap(({ file }) => (isAnswers(file) ? [file] : [])),
    ({ device }) => device,
  );
  const byDevice = Map.groupBy(
    brought.flatMap(({ name, file }) => (isAnswers(file) ? [] : [{ name, file }])),
    ({ file }) => file.device,
  );
  return [...byDevice].flatMap(([device, files]) => {
    const own = sheetsOf.get(device) ?? [];
    const handed = new Set(own.flatMap(({ answers }) => answers.map((a) => drawKey(a.family, a.seed))));
    const people = [...new Set(own.map(({ person }) => person))];
    const who = people.length === 1 ? `person ${people[0]}` : `device ${device}`;
    const nameOf = (attempt: Attempt) =>
      files.find(({ file }) => file.attempts.some((a) => a.seed === attempt.seed && a.at === attempt.at))
        ?.name;
    return firstTries(files.flatMap(({ file }) => file.attempts))
      .filter(({ family, seed }) => !handed.has(drawKey(family, seed)))
      .map((attempt): Raw => {
        const { family, seed, answers, generator } = attempt;
        const raw = { name: nameOf(attempt) ?? device, who, family, seed, answers };
        return generator === GENERATOR ? raw : { ...raw, left: 'other generator' };
      });
  });
}

function graded({ name: _, answers, ...raw }: Raw, practice: Practice, language: Language): Tried | LeftWhy {
  const family = practice.families.get(raw.family);
  if (family === undefined) return 'no such family';
  const draw = drawOf(family, raw.seed, practice.world);
  try {
    const { passed, findings } = gradeDraw(draw, answers, practice.world, language);
    return { ...raw, passed, findings, could: couldOf(draw), told: toldOf(draw, findings, language) };
  } catch (cause) {
    if (cause instanceof GivenError) return 'unread';
    throw cause;
  }
}

/** A mistake of an order can be made on every draw of it; of others, those that lead somewhere on this draw. */
function couldOf({ family, wrong }: Draw): Tried['could'] {
  return Object.fromEntries(
    family.asks.map(({ id, kind }) => [
      id,
      family.mistakes
        .filter(({ id: mistake, asks }) =>
          kind === 'order'
            ? asks.includes(id)
            : wrong.some((one) => one.ask === id && one.mistake.id === mistake),
        )
        .map((mistake) => mistake.id),
    ]),
  );
}

/** The mistakes of a finding: two made at once are two. */
export const mistakesOf = ({ mistake }: Pick<Finding, 'mistake'>): readonly string[] =>
  mistake === null ? [] : mistake.split('+');

function toldOf(draw: Draw, findings: readonly Finding[], { lang }: Language): Tried['told'] {
  const made = new Set(findings.flatMap(mistakesOf));
  const { mistakes }: Family = draw.family;
  return Object.fromEntries(
    mistakes
      .filter(({ id }) => made.has(id))
      .map(({ id, says }) => [id, textOf(says, lang, textsOf(draw, lang))]),
  );
}
