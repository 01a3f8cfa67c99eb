/** Finds the mistake, or the two together, that lead to a wrong answer. */
import { askOf, type Draw, goingOn, slip } from './draw.ts';
import type { Ask, Mistake, Precedence } from './family.ts';
import { kindOf } from './kinds/index.ts';
import { isNumber } from './kinds/number.ts';
import type { Answer, Answers, World } from './model.ts';

/** Mistakes that together give this answer: one, or two that were made at once. Empty when none is recognised. */
export type Cause = readonly Mistake[];

/** The mistake whose answer this is, inside the tolerance. */
export function mistakeOf(draw: Draw, ask: Ask, given: Answer): Cause {
  if (ask.kind === 'order') return earlyStep(draw, ask, given as readonly string[]);
  return explaining(draw, ask, given, 'whole').slice(0, 1);
}

/** The mistake that was made on what was answered before: its slip in the sum that goes on from there. */
export function carriedMistake(draw: Draw, ask: Ask, answers: Answers, world: World): Cause {
  const given = answers[ask.id] as Answer;
  const right = draw.right[ask.id] as Answer;
  const made = draw.family.mistakes.find((mistake) => {
    if (!mistake.asks.includes(ask.id)) return false;
    const taken = slip(draw.model, mistake, draw.plan, world);
    const answer = taken === null ? null : goingOn(draw, ask, taken, answers, world);
    return answer !== null && kindOf(ask).explains(ask, given, answer, right) === 'whole';
  });
  return made === undefined ? [] : [made];
}

/** The mistake that the model blames for an answer which is no mistake's own. */
export function blamedFor(draw: Draw, ask: Ask, given: Answer, world: World): Cause {
  const blamed = askOf(draw.model, ask.id).blames?.(draw.plan, world, given, ask) ?? [];
  const blame = draw.family.mistakes.find(
    ({ slip: name, asks }) => asks.includes(ask.id) && typeof name === 'string' && blamed.includes(name),
  );
  return blame === undefined ? [] : [blame];
}

/** Of an answer that can be wrong in several ways at once, the mistakes that each account for a part, at most two. */
export const partMistakes = (draw: Draw, ask: Ask, given: Answer): Cause =>
  explaining(draw, ask, given, 'part').slice(0, 2);

function explaining(draw: Draw, ask: Ask, given: Answer, how: 'whole' | 'part'): readonly Mistake[] {
  const right = draw.right[ask.id] as Answer;
  return draw.wrong
    .filter((w) => w.ask === ask.id && kindOf(ask).explains(ask, given, w.answer, right) === how)
    .map(({ mistake }) => mistake);
}

/** Kinds of answers on which two mistakes can be put together and looked for as one answer. */
const PAIRED: ReadonlySet<Ask['kind']> = new Set(['number', 'choice', 'reading', 'stop', 'job']);

/** Where more than one number in so many fits some pair, naming one would be a guess. */
const ONE_IN = 20;

/**
 * Two mistakes made at once, in the order of the family's file, where they alone of all pairs fit. Pairs that trainers meet
 * often are mistakes of their own in the family's file; this finds the others.
 */
export function twoMistakes(draw: Draw, ask: Ask, given: Answer, world: World): Cause {
  // Of a count nearly every number is some pair of slips.
  if (!PAIRED.has(ask.kind) || ('unit' in ask && ask.unit === 'count')) return [];
  const pairs = pairsOn(draw, ask, world);
  if (isNumber(ask) && pairs.length * 2 * ask.tolerance * ONE_IN > ask.range.to - ask.range.from) return [];
  const right = draw.right[ask.id] as Answer;
  const fitting = pairs.filter(({ answer }) => kindOf(ask).explains(ask, given, answer, right) === 'whole');
  return fitting.length === 1 ? (fitting[0]?.cause ?? []) : [];
}

interface Pair {
  readonly cause: Cause;
  readonly answer: Answer;
}

/** Every two mistakes of an ask that can be made at once, and where they lead. */
function pairsOn(draw: Draw, ask: Ask, world: World): readonly Pair[] {
  const here = draw.family.mistakes.filter((m) => m.asks.includes(ask.id));
  return here.flatMap((first, i) =>
    here.slice(i + 1).flatMap((second): Pair[] => {
      const answer = both(draw, ask, first, second, world) ?? both(draw, ask, second, first, world);
      return answer === null ? [] : [{ cause: [first, second], answer }];
    }),
  );
}

function both(draw: Draw, ask: Ask, first: Mistake, second: Mistake, world: World): Answer | null {
  const once = slip(draw.model, first, draw.plan, world);
  const twice = once === null ? null : slip(draw.model, second, once, world);
  return twice === null ? null : askOf(draw.model, ask.id).answer(twice, world);
}

/** Every precedence that an order breaks, among the items it has. */
export function brokenBy(draw: Draw, ask: Ask, given: readonly string[]): readonly Precedence[] {
  const { precedence = [] } = askOf(draw.model, ask.id).order?.(draw.plan) ?? {};
  return precedence.filter(
    ([before, after]) =>
      given.includes(before) && given.includes(after) && given.indexOf(before) > given.indexOf(after),
  );
}

/** Items of an order ask that were left out of the answer. */
export function leftOutOf(draw: Draw, ask: Ask, given: readonly string[]): readonly string[] {
  const { shown = [] } = askOf(draw.model, ask.id).order?.(draw.plan) ?? {};
  return shown.filter((item) => !given.includes(item));
}

/** The first mistake of the file, gravest first, whose two steps stand the wrong way round. */
function earlyStep(draw: Draw, ask: Ask, given: readonly string[]): Cause {
  const broken = brokenBy(draw, ask, given);
  const found = draw.wrong.find(
    ({ mistake, ask: on }) =>
      on === ask.id &&
      broken.some(
        ([before, after]) => before === mistake.with?.['late'] && after === mistake.with?.['early'],
      ),
  );
  return found === undefined ? [] : [found.mistake];
}
