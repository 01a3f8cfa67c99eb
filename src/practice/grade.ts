/** Grades answers to a draw: a verdict an ask, with the mistake that explains it. Same draw, same answers, same grade. */
import type { Say } from '../trade/answer.ts';
import { fromInches } from '../trade/length.ts';
import { shortLength } from '../trade/shortLength.ts';
import { readAnswers } from './answer.ts';
import { brokenBy, type Cause, leftOutOf, oneMistake, partMistakes, twoMistakes } from './diagnose.ts';
import { askOf, type Draw } from './draw.ts';
import type { Ask, JobAsk, PartAsk } from './family.ts';
import { ruleOf } from './kinds/faults.ts';
import { kindOf } from './kinds/index.ts';
import { type Mark, meet } from './kinds/marks.ts';
import type { NumberForm } from './kinds/number.ts';
import { whatOf } from './kinds/place.ts';
import type { Answer, Answers, World } from './model.ts';
import { type Language, textOf, textsOf } from './words.ts';

export type Verdict = 'holds' | 'near' | 'rework' | 'holds from there' | 'blank';

export interface Finding {
  readonly ask: string;
  readonly verdict: Verdict;
  /** The mistake that explains a wrong answer; two that were made at once are joined by `+`; `null`: none known. */
  readonly mistake: string | null;
  /** A number that is out: above the right one is `long`, below it `short`. */
  readonly direction?: 'long' | 'short';
  /** Place and faults with one right answer: of each mark given, whether it is wanted there. */
  readonly marks?: readonly boolean[];
  /** Job: of each part, whether it holds. */
  readonly parts?: Readonly<Record<string, boolean>>;
  readonly says: string;
}

export interface Grade {
  /** From 0 to 100: the share of asks that hold, or hold from there. */
  readonly score: number;
  /** Every critical ask holds, and the share reaches the family's mark. */
  readonly passed: boolean;
  readonly findings: readonly Finding[];
}

/** What was found on one ask, before it is put into words. */
interface Found {
  readonly verdict: Verdict;
  readonly cause: Cause;
}

/**
 * @param given  answers by ask as they came in; see `readAnswers` for their forms
 * @throws {GivenError} when an answer cannot be read or is to something that was not asked
 */
export function gradeDraw(
  draw: Draw,
  given: Readonly<Record<string, unknown>>,
  world: World,
  language: Language,
): Grade {
  const { family } = draw;
  const answers = readAnswers(draw, given, world);
  const found = new Map<string, Found>();
  for (const ask of family.asks) found.set(ask.id, judge(draw, ask, answers, found, world));

  const findings = family.asks.map((ask) =>
    finding(draw, ask, found.get(ask.id) as Found, answers[ask.id], world, language),
  );
  const held = findings.filter((f) => f.verdict === 'holds' || f.verdict === 'holds from there').length;
  const score = Math.round((100 * held) / findings.length);
  const safe = family.critical.every((id) => found.get(id)?.verdict === 'holds');
  return { score, passed: safe && score >= family.mark, findings };
}

function judge(
  draw: Draw,
  ask: Ask,
  answers: Answers,
  earlier: ReadonlyMap<string, Found>,
  world: World,
): Found {
  const given = answers[ask.id];
  const found = (verdict: Verdict, cause: Cause = []): Found => ({ verdict, cause });
  if (given === undefined) return found('blank');
  if (holds(draw, ask, given, world)) return found('holds');
  if (holdsFromThere(draw, ask, answers, earlier, world)) return found('holds from there');
  const one = oneMistake(draw, ask, given, world);
  if (one.length > 0) return found('rework', one);
  if (kindOf(ask).near(ask, given, draw.right[ask.id] as Answer)) return found('near');
  const parts = partMistakes(draw, ask, given);
  return found('rework', parts.length > 0 ? parts : twoMistakes(draw, ask, given, world));
}

function holds(draw: Draw, ask: Ask, given: Answer, world: World): boolean {
  if (ask.kind === 'order') {
    const order = given as readonly string[];
    return leftOutOf(draw, ask, order).length === 0 && brokenBy(draw, ask, order).length === 0;
  }
  const own = askOf(draw.model, ask.id).holds;
  if (own !== undefined) return own(draw.plan, world, given);
  return kindOf(ask).same(ask, given, draw.right[ask.id] as Answer);
}

/** Right for what was answered before, where that did not hold. */
function holdsFromThere(
  draw: Draw,
  ask: Ask,
  answers: Answers,
  earlier: ReadonlyMap<string, Found>,
  world: World,
): boolean {
  const { follows } = askOf(draw.model, ask.id);
  if (follows === undefined || follows.asks.some((id) => answers[id] === undefined)) return false;
  if (follows.asks.every((id) => earlier.get(id)?.verdict === 'holds')) return false;
  const wanted = follows.answer(draw.plan, world, answers);
  return wanted !== null && kindOf(ask).same(ask, answers[ask.id] as Answer, wanted);
}

function finding(
  draw: Draw,
  ask: Ask,
  { verdict, cause }: Found,
  given: Answer | undefined,
  world: World,
  language: Language,
): Finding {
  const mistake = cause.length === 0 ? null : cause.map((m) => m.id).join('+');
  const wrong = verdict === 'near' || verdict === 'rework';
  const out = wrong && isNumber(ask) ? (given as number) - (draw.right[ask.id] as number) : undefined;
  const parts = given === undefined ? {} : partsOf(draw, ask, given, verdict);
  return {
    ask: ask.id,
    verdict,
    mistake,
    ...(out === undefined ? {} : { direction: out > 0 ? 'long' : 'short' }),
    ...parts,
    says: said(draw, ask, { verdict, cause }, given, out, world, language),
  };
}

const isNumber = (ask: Ask | PartAsk): ask is (Ask | PartAsk) & NumberForm => 'unit' in ask;

/** Which of several things in an answer hold: each mark of a run, each part of a step. */
function partsOf(draw: Draw, ask: Ask, given: Answer, verdict: Verdict): Pick<Finding, 'marks' | 'parts'> {
  const right = draw.right[ask.id] as Answer;
  if (ask.kind === 'job') {
    const all = verdict === 'holds' || verdict === 'holds from there';
    return {
      parts: Object.fromEntries(ask.parts.map(({ id }) => [id, all || heldIn(ask, id, given, right)])),
    };
  }
  if (ask.kind !== 'place' && ask.kind !== 'faults') return {};
  // Where many answers hold, only the model's notes can say which mark does not.
  if (askOf(draw.model, ask.id).holds !== undefined) return {};
  const { extra } = setOf(ask, given, right);
  return { marks: (given as readonly Mark[]).map((mark) => !extra.includes(mark)) };
}

function heldIn(ask: JobAsk, id: string, given: Answer, right: Answer): boolean {
  const part = ask.parts.find((one) => one.id === id);
  const [one, other] = [(given as Parts)[id], (right as Parts)[id]];
  return (
    part !== undefined && one !== undefined && other !== undefined && kindOf(part).same(part, one, other)
  );
}
type Parts = { readonly [part: string]: Answer };

function setOf(ask: Extract<Ask, { kind: 'place' | 'faults' }>, given: Answer, right: Answer) {
  const name = (ask.kind === 'place' ? whatOf : ruleOf) as unknown as (mark: Mark) => string;
  return meet(given as readonly Mark[], right as readonly Mark[], ask.tolerance, name);
}

type SayKey = (key: string, values?: Say['values']) => string;

function said(
  draw: Draw,
  ask: Ask,
  { verdict, cause }: Found,
  given: Answer | undefined,
  out: number | undefined,
  world: World,
  { lang, speak }: Language,
): string {
  const say: SayKey = (key, values = {}) => speak({ say: `practice.${key}`, values });
  if (verdict === 'holds') return say('holds');
  if (verdict === 'blank' || given === undefined) return say('blank');
  if (verdict === 'holds from there') return say('holdsFromThere');
  if (isNumber(ask) && out !== undefined) {
    const amount = amountOf(ask, Math.abs(out), speak);
    if (verdict === 'near') return say(out > 0 ? 'nearLong' : 'nearShort', { amount });
    const text = textOf(out > 0 ? ask.long : ask.short, lang, { amount });
    return [causeSaid(draw, cause, lang, say), text].join(' ');
  }
  if (ask.kind === 'order') return orderSaid(draw, ask, cause, given as readonly string[], lang, say);
  const notes = (askOf(draw.model, ask.id).notes?.(draw.plan, world, given) ?? []).map((note) => speak(note));
  const own = askOf(draw.model, ask.id).holds !== undefined;
  const counted =
    !own && (ask.kind === 'place' || ask.kind === 'faults')
      ? [setSaid(ask, given, draw.right[ask.id] as Answer, say)]
      : [];
  const first =
    verdict === 'near'
      ? say('nearAll')
      : cause.length > 0 || (notes.length === 0 && counted.length === 0)
        ? causeSaid(draw, cause, lang, say)
        : '';
  return [first, ...notes, ...counted].filter((text) => text !== '').join(' ');
}

/** How many of what was wanted are there; never which are missing. */
function setSaid(
  ask: Extract<Ask, { kind: 'place' | 'faults' }>,
  given: Answer,
  right: Answer,
  say: SayKey,
): string {
  const { missing, extra } = setOf(ask, given, right);
  const of = (right as readonly Mark[]).length;
  return say(ask.kind === 'place' ? 'placed' : 'found', {
    hits: of - missing.length,
    of,
    extra: extra.length,
  });
}

function causeSaid(draw: Draw, cause: Cause, lang: string, say: SayKey): string {
  if (cause.length === 0) return say('notRecognised');
  return cause.map((m) => textOf(m.says, lang, textsOf(draw, lang))).join(` ${say('andAlso')} `);
}

/** The mistake, or else every precedence that is broken; and what was left out. */
function orderSaid(
  draw: Draw,
  ask: Extract<Ask, { kind: 'order' }>,
  cause: Cause,
  given: readonly string[],
  lang: string,
  say: SayKey,
): string {
  const name = (id: string) => {
    const item = ask.items.find((i) => i.id === id);
    return item === undefined ? id : textOf(item.text, lang, {});
  };
  const named = cause.map((m) => textOf(m.says, lang, {}));
  const done = cause.map((m) => `${m.with?.['late']}<${m.with?.['early']}`);
  const broken = closest(brokenBy(draw, ask, given))
    .filter(([before, after]) => !done.includes(`${before}<${after}`))
    .map(([before, after]) => say('comesBefore', { before: name(before), after: name(after) }));
  const left = leftOutOf(draw, ask, given);
  const out = left.length === 0 ? [] : [say('leftOut', { items: left.map(name).join('; ') })];
  return [...named, ...broken, ...out].join(' ');
}

/** Broken pairs with no other broken pair between them: a<b and b<c say what a<c would. */
function closest(broken: readonly (readonly [string, string])[]): readonly (readonly [string, string])[] {
  return broken.filter(
    ([before, after]) =>
      !broken.some(([b, c]) => b === before && broken.some(([d, e]) => d === c && e === after)),
  );
}

/** How far a number is out: a length to 1/64 in, all else to hundredths. */
function amountOf(ask: NumberForm, out: number, speak: Language['speak']): string {
  // Below a hundredth, as an ohm often is, its first digits.
  const amount = Number(out < 0.01 ? out.toPrecision(2) : out.toFixed(2));
  if (ask.unit !== 'in') return `${amount} ${speak({ say: `unit.${ask.unit}` })}`;
  return shortLength(fromInches(out), 64);
}
