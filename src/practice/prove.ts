/**
 * Proofs of a family: draws it many times and finds what would make it a bad exercise. Every fault names the seed, so
 * that it can be drawn and looked at.
 */
import type { How } from '../drawing/types.ts';
import { formatLength, inches, tryLength } from '../trade/length.ts';
import { askedIn } from './answer.ts';
import { answersApart } from './apart.ts';
import { criticalIn, type Draw, drawOf, numbersAsked } from './draw.ts';
import type { Ask, AuthoredFamily, Family, Parameter } from './family.ts';
import { givenBy, notFigured } from './figures/faults.ts';
import { numbersIn, textIn } from './figures/texts.ts';
import { gradeDraw } from './grade.ts';
import { keyOf } from './key.ts';
import { kindOf } from './kinds/index.ts';
import type { Answer, World } from './model.ts';
import { type Shown, showDraw } from './show.ts';
import type { Language } from './words.ts';

export interface ProofFault {
  /** Seed of the draw; empty for the family as a whole. */
  readonly seed: string;
  readonly cause: string;
}

export interface Proof {
  readonly id: string;
  readonly drawn: number;
  /** Tries that the draws passed over. */
  readonly rejected: number;
  /** Draws that differ from each other. */
  readonly variants: number;
  readonly faults: readonly ProofFault[];
}

export interface ProofMeans {
  readonly world: World;
  readonly languages: readonly Language[];
  readonly how: Omit<How, 'speak'>;
}

/** Draws when nothing else is asked for; the seeds are the numbers from 1. Laying out a run takes longer. */
export const PROOF_SEEDS = 500;
export const LAID_OUT_SEEDS = 100;
export const seedsFor = (family: Family, { models }: World): number =>
  models.get(family.model)?.laidOut === true ? LAID_OUT_SEEDS : PROOF_SEEDS;

/** Draws that must differ where numbers vary, and where only words do; fewer seeds can show no more. */
const LEAST_VARIANTS = { numbers: 200, words: 8 } as const;
const LEAST_SHARE = 0.9;

/** Whether a seed chooses numbers, so that people side by side have different ones. */
function numbersVary(parameters: Readonly<Record<string, Parameter>>): boolean {
  return Object.values(parameters).some((one) => {
    if ('length' in one) return one.length.from < one.length.to;
    if ('decimal' in one) return one.decimal.from < one.decimal.to;
    if ('whole' in one) return one.whole.to - one.whole.from > 9;
    return 'list' in one ? numbersVary(one.list.of) : false;
  });
}

export function proveFamily(family: AuthoredFamily, seeds: number, means: ProofMeans): Proof {
  const faults: ProofFault[] = [];
  const seen = new Set<string>();
  const made = new Set<string>();
  let rejected = 0;
  let drawn = 0;
  for (let n = 1; n <= seeds; n++) {
    const seed = String(n);
    const { draw, causes } = tryDraw(family, seed, means);
    faults.push(...causes.map((cause) => ({ seed, cause })));
    if (draw === undefined) continue;
    drawn += 1;
    rejected += draw.rejected;
    seen.add(JSON.stringify([draw.facts, draw.right]));
    for (const { mistake } of draw.wrong) made.add(mistake.id);
  }
  const least = LEAST_VARIANTS[numbersVary(family.parameters) ? 'numbers' : 'words'];
  if (seen.size < Math.min(least, LEAST_SHARE * drawn))
    faults.push({ seed: '', cause: `only ${seen.size} of ${drawn} draws differ` });
  // Few seeds may happen to pass a rare mistake by.
  if (drawn >= LAID_OUT_SEEDS)
    faults.push(
      ...family.mistakes
        .filter(({ id }) => !made.has(id))
        .map(({ id }) => ({ seed: '', cause: `${id}: no draw allows this mistake` })),
    );
  faults.push(...workedFaults(family, means));
  return { id: family.id, drawn, rejected, variants: seen.size, faults };
}

function tryDraw(
  family: Family,
  seed: string,
  means: ProofMeans,
): { draw?: Draw; causes: readonly string[] } {
  try {
    const draw = drawOf(family, seed, means.world);
    return { draw, causes: drawFaults(draw, means) };
  } catch (cause) {
    return { causes: [cause instanceof Error ? cause.message : String(cause)] };
  }
}

function drawFaults(draw: Draw, means: ProofMeans): readonly string[] {
  const shown = means.languages.map((language) => ({
    language,
    one: showDraw(draw, means.world, language, means.how),
  }));
  return [
    ...draw.family.asks.flatMap((ask) => answerFaults(draw, ask, means)),
    ...(answersApart(draw)
      ? []
      : ['right and wrong answers are not all apart by more than twice the tolerance']),
    ...gradeFaults(draw, means),
    ...shown.flatMap(({ language: { speak }, one }) => [
      ...figureFaults(draw, one, { world: means.world, speak }),
      ...shownAnswers(draw, one),
    ]),
    ...means.languages.flatMap((language) =>
      keyOf(draw, means.world, language).working.length === 0 ? ['there is no working'] : [],
    ),
  ];
}

/** Right and wrong answers are fit for the ask's kind; numbers finite, the right one in range. */
function answerFaults(draw: Draw, ask: Ask, { world }: ProofMeans): readonly string[] {
  const kind = kindOf(ask);
  const asked = askedIn(draw, ask.id, world);
  const right = kind.faults(ask, draw.right[ask.id] as Answer, true, asked);
  const wrong = draw.wrong
    .filter((w) => w.ask === ask.id)
    .flatMap((w) => kind.faults(ask, w.answer, false, asked).map((cause) => `${w.mistake.id} ${cause}`));
  return [...right, ...wrong].map((cause) => `${ask.id}: ${cause}`);
}

/** The right answers hold all together; each mistake's answer is found to be that mistake. */
function gradeFaults(draw: Draw, { world, languages }: ProofMeans): readonly string[] {
  const language = languages[0];
  if (language === undefined) return ['no language to grade in'];
  const full = gradeDraw(draw, draw.right, world, language);
  const faults = full.score === 100 && full.passed ? [] : ['the right answers do not all hold'];
  const blank = gradeDraw(draw, {}, world, language);
  if (blank.passed || blank.score > 0 || blank.findings.some((f) => f.verdict !== 'blank'))
    faults.push('nothing answered is not blank');
  for (const { mistake, ask, answer } of draw.wrong) {
    const { findings, passed } = gradeDraw(draw, { ...draw.right, [ask]: answer }, world, language);
    const found = findings.find((f) => f.ask === ask);
    if (found?.verdict !== 'rework' || found.mistake !== mistake.id)
      faults.push(`${ask}: the answer of ${mistake.id} is graded ${found?.verdict}, ${found?.mistake}`);
    if (passed && criticalIn(draw, world).includes(ask))
      faults.push(`${ask}: ${mistake.id} passes a critical point`);
  }
  return faults;
}

/** What is drawn has its words, and shows what the model says of it; what it letters as a given is one. */
export function figureFaults(
  draw: Draw,
  { figures, givens }: Pick<Shown, 'figures' | 'givens'>,
  { world, speak }: Pick<ProofMeans, 'world'> & Pick<Language, 'speak'>,
): readonly string[] {
  const empty = figures.some((f) => !f.svg.startsWith('<svg') || f.words.trim() === '');
  const figured = draw.model.figured(draw.plan, world);
  return [
    ...(empty ? ['a figure is empty'] : []),
    ...(figures.length > 0 && figured.length === 0 ? ['nothing is said of what its figures show'] : []),
    ...notFigured(
      figured,
      figures.map(({ svg }) => svg),
      speak,
    ),
    ...figured
      .flatMap(givenBy)
      .filter((length) => !givens.some((g) => g.unit === 'in' && g.value === inches(length)))
      .map((length) => `no given says ${formatLength(length)}`),
  ];
}

/** Numbers in anything shown that are a right answer. */
function shownAnswers(draw: Draw, shown: Shown): readonly string[] {
  const visible = [
    shown.text,
    ...shown.givens.flatMap((g) => [g.label, g.text]),
    ...shown.figures.flatMap((f) => [f.words, textIn(f.svg)]),
    ...shown.asks.flatMap((a) => [
      a.prompt,
      ...[...(a.options ?? []), ...(a.items ?? [])].map((p) => p.text),
      ...(a.parts ?? []).map((part) => part.prompt),
    ]),
  ].join('\n');
  return numbersAsked(draw).flatMap(({ at, ask, right }) =>
    numbersIn(visible, ask.unit).some((n) => Math.abs(n - right) <= ask.tolerance + 1e-9)
      ? [`${at}: the draw shows its answer ${right}`]
      : [],
  );
}

/** What an ask, or a part of one, asks: of scenes, what the author read stands there. */
const askedAs = ({ asks }: Shown, id: string): string | undefined =>
  asks.flatMap((ask) => [ask, ...(ask.parts ?? [])]).find((one) => one.id === id)?.prompt;

/** The author's own seed: the givens and words he read, and his answers, hold against the program. */
function workedFaults(family: AuthoredFamily, { world, languages, how }: ProofMeans): readonly ProofFault[] {
  const { seed, givens, answers } = family.worked;
  const fault = (cause: string): ProofFault => ({ seed, cause: `worked by hand: ${cause}` });
  const language = languages[0];
  if (language === undefined) return [fault('no language')];
  try {
    const draw = drawOf(family, seed, world);
    const shown = showDraw(draw, world, language, how);
    const grade = gradeDraw(draw, answers, world, language);
    return [
      ...Object.entries(givens).flatMap(([id, worked]) => {
        const given = shown.givens.find((g) => g.id === id);
        const asked = given === undefined ? askedAs(shown, id) : undefined;
        if (asked !== undefined)
          return asked.includes(String(worked)) ? [] : [fault(`${id} asks “${asked}”, not “${worked}”`)];
        const length = given?.unit === 'in' && typeof worked === 'string' ? tryLength(worked) : undefined;
        const value = typeof length === 'number' ? inches(length) : worked;
        return given !== undefined && (given.value === value || given.text === worked)
          ? []
          : [fault(`given ${id} is ${given?.text ?? 'not there'}, not ${worked}`)];
      }),
      ...grade.findings
        .filter((f) => f.verdict !== 'holds')
        .map((f) => fault(`${f.ask} is graded ${f.verdict}: the program has ${String(draw.right[f.ask])}`)),
    ];
  } catch (cause) {
    return [fault(cause instanceof Error ? cause.message : String(cause))];
  }
}
