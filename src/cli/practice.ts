/** `trayhand practice …`: draws, their keys, grading and proofs. */
import { paperPalette } from '../drawing/palette.ts';
import { type Draw, drawOf } from '../practice/draw.ts';
import { type AuthoredFamily, kindsOf } from '../practice/family.ts';
import { isRecord } from '../practice/fileFields.ts';
import { seedFault } from '../practice/generator.ts';
import { gradeDraw } from '../practice/grade.ts';
import { keyOf } from '../practice/key.ts';
import { LAID_OUT_SEEDS, PROOF_SEEDS, proveFamily, seedsFor } from '../practice/prove.ts';
import { showDraw } from '../practice/show.ts';
import { type Language, textOf } from '../practice/words.ts';
import { check } from '../schema/faults.ts';
import { type FileFault, readLibrary } from '../schema/library.ts';
import { type AuthoredPractice, practiceOf } from '../schema/practice.ts';
import { answersInput } from '../schema/sheet.ts';
import { FIRST_LANGUAGE, speaker } from '../schema/words.ts';
import { type Fault, GivenError } from '../trade/given.ts';
import { bad, plain } from './envelope.ts';
import { familyIds, practiceFiles } from './practiceFiles.ts';
import type { Call, Group, Outcome, Verb } from './verb.ts';

/** Form and colours of a figure that goes into a file. */
const how = { form: 'desk', palette: paperPalette } as const;
const MOST_SEEDS = 100_000;

interface Content {
  readonly practice: AuthoredPractice;
  /** Every language of content/words, by its key. */
  readonly languages: ReadonlyMap<string, Language>;
  /** Faults of families that could not be read. */
  readonly faults: readonly FileFault[];
}

/** @param ids  families that are asked for; left out, all */
function readContent(ids?: readonly string[]): Content {
  const { library, faults } = readLibrary(practiceFiles(ids));
  return {
    practice: practiceOf(library),
    languages: new Map([...library.words].map(([lang, words]) => [lang, { lang, speak: speaker(words) }])),
    faults: faults.filter((f) => f.file.startsWith('content/scenarios/')),
  };
}

/** What was made of a part of the call, or every fault of it. */
type Made<T> = { readonly made: T } | { readonly faults: readonly Fault[] };
const faultsIn = (made: Made<unknown>): readonly Fault[] => ('faults' in made ? made.faults : []);

function gatherFaults<T>(work: () => T): Made<T> {
  try {
    return { made: work() };
  } catch (cause) {
    if (cause instanceof GivenError) return { faults: cause.faults };
    throw cause;
  }
}

function familyOf(id: string, { practice, faults }: Content): Made<AuthoredFamily> {
  const family = practice.families.get(id);
  if (family !== undefined) return { made: family };
  const own = faults.filter((f) => f.file === `content/scenarios/${id}.yaml`);
  if (own.length > 0) return { faults: own };
  const alike = sharingWord(id, familyIds());
  const todo = `name one that practice list names${alike.length === 0 ? '' : `, as ${alike.join(', ')}`}`;
  return { faults: [{ field: 'ID', value: id, message: 'there is no such family', todo }] };
}

/** Ids that have a word of this one in them, a few. */
function sharingWord(id: string, ids: readonly string[]): readonly string[] {
  const words = id.toLowerCase().split(/[^a-z0-9]+/);
  return ids.filter((known) => known.split('-').some((word) => words.includes(word))).slice(0, 5);
}

function languageOf(lang: string, { languages }: Content): Made<Language> {
  const language = languages.get(lang);
  if (language !== undefined) return { made: language };
  const todo = `write --lang ${[...languages.keys()].sort().join(' or ')}`;
  const message = 'there are no texts in this language';
  return { faults: [{ field: '--lang', value: lang, message, todo }] };
}

function seedOf(call: Call): Made<string> {
  const field = '--seed';
  const seed = call.text('seed');
  if (seed === undefined)
    return {
      faults: [{ field, message: 'the seed is missing', todo: 'write --seed and a text of 1 to 64 signs' }],
    };
  const wrong = seedFault(seed);
  return wrong === undefined ? { made: seed } : { faults: [{ ...wrong, field }] };
}

interface CalledDraw {
  readonly practice: AuthoredPractice;
  readonly language: Language;
  readonly draw: Draw;
}

/** The draw that a call names. @throws {GivenError} every fault of family, seed and language */
function drawOfCall(call: Call): CalledDraw {
  const [id = ''] = call.words;
  const content = readContent([id]);
  const family = familyOf(id, content);
  const seed = seedOf(call);
  const language = languageOf(call.text('lang') ?? FIRST_LANGUAGE, content);
  if ('faults' in family || 'faults' in seed || 'faults' in language)
    throw new GivenError([family, seed, language].flatMap(faultsIn));
  const { practice } = content;
  return {
    practice,
    language: language.made,
    draw: drawOf(family.made, seed.made, practice.world),
  };
}

const drawOptions = {
  seed: {
    value: 'TEXT',
    needed: true,
    line: 'any text of 1 to 64 signs; the same seed is the same draw everywhere',
  },
  lang: { value: 'LANG', line: `language of the texts; ${FIRST_LANGUAGE} when left out` },
};

const list: Verb = {
  name: 'list',
  line: 'the families: id, title, tasks and kinds of answers',
  manual: () => ['Comes back: families [{id, title, tasks[], kinds[]}].'],
  run: () => {
    const { practice, faults } = readContent();
    if (faults.length > 0) return { json: bad(faults), exit: 2 };
    const families = [...practice.families.values()].map((family) => ({
      id: family.id,
      title: textOf(family.title, FIRST_LANGUAGE, {}),
      tasks: family.tasks,
      kinds: kindsOf(family),
    }));
    return { json: plain({ families }), exit: 0 };
  },
};

const draw: Verb = {
  name: 'draw',
  line: 'one draw of a family: text, givens, figures, asks; never the answer',
  words: ['ID'],
  options: drawOptions,
  manual: () => [
    'Comes back: id, seed, generator, title, tasks[], text, givens [{id, label, value, unit, text}], figures [{svg, words}],',
    'asks [{id, kind, prompt, unit?, tolerance?, options? [{id, text}], items? [{id, text}], parts? [of a job’s step]}].',
  ],
  run: (call) => {
    const { draw: drawn, practice, language } = drawOfCall(call);
    return { json: plain(showDraw(drawn, practice.world, language, how)), exit: 0 };
  },
};

const key: Verb = {
  name: 'key',
  line: 'the answers of a draw, where each mistake leads, and the working',
  words: ['ID'],
  options: drawOptions,
  manual: () => [
    'Comes back: answers {ask: value}, mistakes [{id, ask, answer, says}], working [text], critical [asks that must hold].',
  ],
  run: (call) => {
    const { draw: drawn, practice, language } = drawOfCall(call);
    return { json: plain(keyOf(drawn, practice.world, language)), exit: 0 };
  },
};

const grade: Verb = {
  name: 'grade',
  line: 'grades answers to a draw and says what went wrong',
  words: ['ID'],
  takesInput: true,
  options: drawOptions,
  manual: () => [
    'In: {"answers": {ask: value}}: number, reading: a number in the unit or a length as text; choice, stop, reading: an option’s id;',
    'order: items’ ids; place: [{leg, at, what}]; faults: [{rule, leg, at}]; sticks: [{from, pieces[]}]; a job’s step: {part: value}.',
    'Comes back: score, passed, findings [{ask, verdict, mistake, direction?, marks?, parts?, says}]; a missing answer is blank.',
    'Verdicts: holds, near, rework, holds from there, blank. Two mistakes made at once are joined by +.',
  ],
  run: async (call) => {
    const { draw: drawn, practice, language } = drawOfCall(call);
    const given = await call.input();
    const form = check(answersInput, given);
    // Answers are read as they came, so that their faults are said beside those of the fields around them.
    const graded = gatherFaults(() => gradeDraw(drawn, answersIn(given), practice.world, language));
    const faults = [...('faults' in form ? form.faults : []), ...faultsIn(graded)];
    if ('faults' in graded || faults.length > 0) return { json: bad(faults), exit: 2 };
    // Which critical asks are missed stands in their findings.
    const { criticalMissed: _, ...made } = graded.made;
    return { json: plain(made), exit: 0 };
  },
};

/** The answers of an input, whatever else is wrong with it. */
function answersIn(given: unknown): Readonly<Record<string, unknown>> {
  const answers = isRecord(given) ? given['answers'] : undefined;
  return isRecord(answers) ? answers : {};
}

/** How many seeds were asked for; `undefined`: as many as the family wants. */
function seedsOf(call: Call): Made<number | undefined> {
  const value = call.text('seeds');
  if (value === undefined) return { made: undefined };
  const seeds = Number(value);
  if (/^\d+$/.test(value) && seeds >= 1 && seeds <= MOST_SEEDS) return { made: seeds };
  const todo = `write a whole number from 1 to ${MOST_SEEDS}`;
  return { faults: [{ field: '--seeds', value, message: 'this is no number of seeds', todo }] };
}

const prove: Verb = {
  name: 'prove',
  line: 'draws families many times and says what would make them bad exercises',
  words: ['ID…'],
  options: {
    seeds: {
      value: 'N',
      line: `draws of each family; ${PROOF_SEEDS} when left out, ${LAID_OUT_SEEDS} where a run is laid out`,
    },
  },
  manual: () => [
    'Without ID: every family. Comes back: families [{id, drawn, rejected, variants, faults [{seed, cause}]}].',
    'Exit 0: no fault. Exit 1: faults (the answer is still ok:true).',
  ],
  run: (call): Outcome => {
    const content = readContent(call.words.length > 0 ? call.words : undefined);
    const seeds = seedsOf(call);
    const ids = call.words.length > 0 ? call.words : [...content.practice.families.keys()];
    const found = ids.map((id) => familyOf(id, content));
    const others = call.words.length > 0 ? [] : content.faults;
    const faults = [...found.flatMap(faultsIn), ...faultsIn(seeds), ...others];
    if ('faults' in seeds || faults.length > 0) return { json: bad(faults), exit: 2 };
    const means = { world: content.practice.world, languages: [...content.languages.values()], how };
    const families = found
      .flatMap((one) => ('made' in one ? [one.made] : []))
      .map((family) => proveFamily(family, seeds.made ?? seedsFor(family, means.world), means));
    return { json: plain({ families }), exit: families.every((f) => f.faults.length === 0) ? 0 : 1 };
  },
};

export const group: Group = {
  name: 'practice',
  line: 'exercises that grade themselves: draws, keys, grades, proofs',
  verbs: [list, draw, key, grade, prove],
};
