/**
 * What is said of an answer: what it means that it is out and by how much, the mistake, what a model notes. Of what is chosen,
 * ordered or laid out it never gives the right one away; of a number the amount is said, as a tape would show it.
 */
import type { Say } from '../trade/answer.ts';
import { fromInches } from '../trade/length.ts';
import { shortLength } from '../trade/shortLength.ts';
import { brokenBy, type Cause, leftOutOf } from './diagnose.ts';
import { askOf, type Draw } from './draw.ts';
import type { Ask } from './family.ts';
import type { Mark } from './kinds/marks.ts';
import { isNumber, type NumberForm } from './kinds/number.ts';
import { setOf } from './kinds/setOf.ts';
import type { Answer, World } from './model.ts';
import { type Language, textOf, textsOf } from './words.ts';

export type Verdict = 'holds' | 'near' | 'rework' | 'holds from there' | 'blank';

/** What was found on one ask, before it is put into words. */
export interface Found {
  readonly verdict: Verdict;
  readonly cause: Cause;
}

/** An answer, and what it is an answer to. */
export interface Answered {
  readonly draw: Draw;
  readonly ask: Ask;
  readonly given: Answer | undefined;
  /** How far a number is above the right one; below it, less than 0. */
  readonly out: number | undefined;
  /** Job: of each part, whether it holds. */
  readonly parts: Readonly<Record<string, boolean>> | undefined;
  readonly world: World;
}

type SayKey = (key: string, values?: Say['values']) => string;

export function said(
  { draw, ask, given, out, parts, world }: Answered,
  { verdict, cause }: Found,
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
  const held = parts === undefined || verdict !== 'rework' ? [] : [partsSaid(Object.values(parts), say)];
  const first =
    verdict === 'near'
      ? say(ask.kind === 'job' ? 'nearParts' : 'nearAll')
      : cause.length > 0 || (notes.length === 0 && counted.length === 0)
        ? causeSaid(draw, cause, lang, say)
        : '';
  return [first, ...notes, ...counted, ...held].filter((text) => text !== '').join(' ');
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

/** How many parts of a step hold. */
const partsSaid = (parts: readonly boolean[], say: SayKey): string =>
  say('partsHold', { held: parts.filter(Boolean).length, of: parts.length });

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
  if (ask.unit === 'count') return String(amount);
  if (ask.unit !== 'in') return `${amount} ${speak({ say: `unit.${ask.unit}` })}`;
  return shortLength(fromInches(out), 64);
}
