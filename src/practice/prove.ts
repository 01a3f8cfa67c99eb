/**
 * Proofs of a family: draws it many times and finds what would make it a bad exercise. Every fault names the seed, so
 * that it can be drawn and looked at.
 */
import type { How } from '../drawing/types.ts';
import { formatLength, inches, tryLength } from '../trade/length.ts';
import { answersApart } from './apart.ts';
import { askOf, type Draw, drawOf } from './draw.ts';
import type { Ask, Family } from './family.ts';
import { gradeDraw } from './grade.ts';
import { keyOf } from './key.ts';
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

/** Draws when nothing else is asked for; the seeds are the numbers from 1. */
export const PROOF_SEEDS = 100;
/** Least share of draws that must differ. */
const LEAST_VARIANTS = 0.9;

export function proveFamily(family: Family, seeds: number, means: ProofMeans): Proof {
  const faults: ProofFault[] = [];
  const seen = new Set<string>();
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
  }
  if (seen.size < LEAST_VARIANTS * drawn)
    faults.push({ seed: '', cause: `only ${seen.size} of ${drawn} draws differ` });
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
  const shown = means.languages.map((language) => showDraw(draw, means.world, language, means.how));
  return [
    ...draw.family.asks.flatMap((ask) => answerFaults(draw, ask)),
    ...(answersApart(draw)
      ? []
      : ['right and wrong answers are not all apart by more than twice the tolerance']),
    ...gradeFaults(draw, means),
    ...shown.flatMap((one) => [...figureFaults(draw, one), ...shownAnswers(draw, one)]),
    ...means.languages.flatMap((language) =>
      keyOf(draw, means.world, language).working.length === 0 ? ['there is no working'] : [],
    ),
  ];
}

/** Right and wrong answers are of the ask's kind; numbers finite, the right one in range. */
function answerFaults(draw: Draw, ask: Ask): readonly string[] {
  const right = draw.right[ask.id] as Answer;
  const wrong = draw.wrong.filter((w) => w.ask === ask.id);
  if (ask.kind === 'number') {
    const { from, to } = ask.range;
    return [
      ...((right as number) >= from && (right as number) <= to
        ? []
        : [`${ask.id}: ${right} is outside ${from} to ${to}`]),
      ...wrong
        .filter((w) => !Number.isFinite(w.answer))
        .map((w) => `${ask.id}: ${w.mistake.id} leads to no number`),
    ];
  }
  if (ask.kind === 'choice') {
    const ids: readonly Answer[] = ask.options.map((o) => o.id);
    return [right, ...wrong.map((w) => w.answer)]
      .filter((answer) => !ids.includes(answer))
      .map((answer) => `${ask.id}: ${String(answer)} is no option`);
  }
  const { shown = [] } = askOf(draw.model, ask.id).order?.(draw.plan) ?? {};
  const same = (answer: Answer) =>
    [...(answer as readonly string[])].sort().join() === [...shown].sort().join();
  return [right, ...wrong.map((w) => w.answer)].every(same) ? [] : [`${ask.id}: an answer has other items`];
}

/** The right answers hold all together; each mistake's answer is found to be that mistake. */
function gradeFaults(draw: Draw, { world, languages }: ProofMeans): readonly string[] {
  const language = languages[0];
  if (language === undefined) return ['no language to grade in'];
  const full = gradeDraw(draw, draw.right, world, language);
  const faults = full.score === 100 && full.passed ? [] : ['the right answers do not all hold'];
  for (const { mistake, ask, answer } of draw.wrong) {
    const { findings, passed } = gradeDraw(draw, { ...draw.right, [ask]: answer }, world, language);
    const found = findings.find((f) => f.ask === ask);
    if (found?.verdict !== 'rework' || found.mistake !== mistake.id)
      faults.push(`${ask}: the answer of ${mistake.id} is graded ${found?.verdict}, ${found?.mistake}`);
    if (passed && draw.family.critical.includes(ask))
      faults.push(`${ask}: ${mistake.id} passes a critical point`);
  }
  return faults;
}

/** A figure is there with its words; each length it is drawn to stands in the words and among the givens. */
function figureFaults(draw: Draw, { figures, givens }: Shown): readonly string[] {
  const faults = figures.length === 0 ? ['there is no figure'] : [];
  if (figures.some((f) => !f.svg.startsWith('<svg') || f.words.trim() === ''))
    faults.push('a figure is empty');
  for (const length of draw.model.figured(draw.plan)) {
    const text = formatLength(length);
    if (!figures.some((f) => f.svg.includes(escaped(text)))) faults.push(`no figure says ${text}`);
    if (!givens.some((g) => g.unit === 'in' && g.value === inches(length)))
      faults.push(`no given says ${text}`);
  }
  return faults;
}

/** As a text stands in SVG. */
const escaped = (text: string) => text.replaceAll('"', '&quot;');

const LENGTHS =
  /\d+ ft \d+(?: \d+\/\d+)? in\b(?!²)|\d+'(?:-\d+(?: \d+\/\d+)?")?|\d+(?: \d+\/\d+|\.\d+)?(?= in\b(?!²)|")/g;
const AREAS = /\d+(?:\.\d+)?(?= in²)/g;

/** Numbers in anything shown that are a right answer. */
function shownAnswers(draw: Draw, shown: Shown): readonly string[] {
  const visible = [
    shown.text,
    ...shown.givens.flatMap((g) => [g.label, g.text]),
    ...shown.figures.flatMap((f) => [f.words, f.svg.replaceAll(/<[^>]*>/g, '\n').replaceAll('&quot;', '"')]),
    ...shown.asks.flatMap((a) => [
      a.prompt,
      ...[...(a.options ?? []), ...(a.items ?? [])].map((p) => p.text),
    ]),
  ].join('\n');
  return draw.family.asks.flatMap((ask) => {
    if (ask.kind !== 'number') return [];
    const numbers =
      ask.unit === 'in' ? lengthsIn(visible) : [...visible.matchAll(AREAS)].map(([n]) => Number(n));
    const right = draw.right[ask.id] as number;
    return numbers.some((n) => Math.abs(n - right) <= ask.tolerance + 1e-9)
      ? [`${ask.id}: the draw shows its answer ${right}`]
      : [];
  });
}

function lengthsIn(text: string): readonly number[] {
  return [...text.matchAll(LENGTHS)].flatMap(([found]) => {
    const length = tryLength(found);
    return typeof length === 'number' ? [inches(length)] : [];
  });
}

/** The author's own seed: the givens he read, and his answers, hold against the program. */
function workedFaults(family: Family, { world, languages, how }: ProofMeans): readonly ProofFault[] {
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
