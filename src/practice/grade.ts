/** Grades answers to a draw: a verdict an ask, with the mistake that explains it. Same draw, same answers, same grade. */
import type { Say } from '../trade/answer.ts';
import { fromInches } from '../trade/length.ts';
import { shortLength } from '../trade/shortLength.ts';
import { readAnswers } from './answer.ts';
import { nearAnswer, sameAnswer } from './apart.ts';
import { brokenBy, type Cause, leftOutOf, oneMistake, twoMistakes } from './diagnose.ts';
import { askOf, type Draw } from './draw.ts';
import type { Ask, NumberAsk } from './family.ts';
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
  const { family, model, plan } = draw;
  const orders = family.asks.flatMap((ask) => {
    const order = askOf(model, ask.id).order?.(plan);
    return order === undefined ? [] : [[ask.id, order.shown] as const];
  });
  const answers = readAnswers(family, Object.fromEntries(orders), given);
  const found = new Map<string, Found>();
  for (const ask of family.asks) found.set(ask.id, judge(draw, ask, answers, found, world));

  const findings = family.asks.map((ask) =>
    finding(draw, ask, found.get(ask.id) as Found, answers[ask.id], language),
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
  if (holds(draw, ask, given)) return found('holds');
  if (holdsFromThere(draw, ask, answers, earlier, world)) return found('holds from there');
  const one = oneMistake(draw, ask, given);
  if (one.length > 0) return found('rework', one);
  if (nearAnswer(ask, given, draw.right[ask.id] as Answer)) return found('near');
  return found('rework', twoMistakes(draw, ask, given, world));
}

function holds(draw: Draw, ask: Ask, given: Answer): boolean {
  if (ask.kind !== 'order') return sameAnswer(ask, given, draw.right[ask.id] as Answer);
  const order = given as readonly string[];
  return leftOutOf(draw, ask, order).length === 0 && brokenBy(draw, ask, order).length === 0;
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
  return wanted !== null && sameAnswer(ask, answers[ask.id] as Answer, wanted);
}

function finding(
  draw: Draw,
  ask: Ask,
  { verdict, cause }: Found,
  given: Answer | undefined,
  language: Language,
): Finding {
  const mistake = cause.length === 0 ? null : cause.map((m) => m.id).join('+');
  const wrong = verdict === 'near' || verdict === 'rework';
  const out = wrong && ask.kind === 'number' ? (given as number) - (draw.right[ask.id] as number) : undefined;
  return {
    ask: ask.id,
    verdict,
    mistake,
    ...(out === undefined ? {} : { direction: out > 0 ? 'long' : 'short' }),
    says: said(draw, ask, { verdict, cause }, given, out, language),
  };
}

function said(
  draw: Draw,
  ask: Ask,
  { verdict, cause }: Found,
  given: Answer | undefined,
  out: number | undefined,
  { lang, speak }: Language,
): string {
  const say = (key: string, values: Say['values'] = {}) => speak({ say: `practice.${key}`, values });
  if (verdict === 'holds') return say('holds');
  if (verdict === 'blank') return say('blank');
  if (verdict === 'holds from there') return say('holdsFromThere');
  if (ask.kind === 'number' && out !== undefined) {
    const amount = amountOf(ask, Math.abs(out), speak);
    if (verdict === 'near') return say(out > 0 ? 'nearLong' : 'nearShort', { amount });
    const text = textOf(out > 0 ? ask.long : ask.short, lang, { amount });
    return [causeSaid(draw, cause, lang, say), text].join(' ');
  }
  if (ask.kind !== 'order') return causeSaid(draw, cause, lang, say);
  return orderSaid(draw, ask, cause, given as readonly string[], lang, say);
}

function causeSaid(
  draw: Draw,
  cause: Cause,
  lang: string,
  say: (key: string, values?: Say['values']) => string,
): string {
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
  say: (key: string, values?: Say['values']) => string,
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

/** How far a number is out: a length to 1/64 in, an area to hundredths. */
function amountOf(ask: NumberAsk, out: number, speak: Language['speak']): string {
  if (ask.unit !== 'in') return `${Number(out.toFixed(2))} ${speak({ say: `unit.${ask.unit}` })}`;
  return shortLength(fromInches(out), 64);
}
