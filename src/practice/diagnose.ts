/** Finds the mistake, or the two together, that lead to a wrong answer. */
import { sameAnswer } from './apart.ts';
import { askOf, type Draw, slip } from './draw.ts';
import type { Ask, Mistake, Precedence } from './family.ts';
import type { Answer, World } from './model.ts';

/** Mistakes that together give this answer: one, or two that were made at once. Empty when none is recognised. */
export type Cause = readonly Mistake[];

/** The single mistake whose answer this is, inside the tolerance. */
export function oneMistake(draw: Draw, ask: Ask, given: Answer): Cause {
  if (ask.kind === 'order') return earlyStep(draw, ask, given as readonly string[]);
  const found = draw.wrong.find((w) => w.ask === ask.id && sameAnswer(ask, given, w.answer));
  return found === undefined ? [] : [found.mistake];
}

/** Two mistakes made at once, in the order of the family's file; the first pair that fits. */
export function twoMistakes(draw: Draw, ask: Ask, given: Answer, world: World): Cause {
  if (ask.kind === 'order') return [];
  const here = draw.family.mistakes.filter((m) => m.asks.includes(ask.id));
  for (const [i, first] of here.entries()) {
    for (const second of here.slice(i + 1)) {
      const answer = both(draw, ask, first, second, world) ?? both(draw, ask, second, first, world);
      if (answer !== null && sameAnswer(ask, given, answer)) return [first, second];
    }
  }
  return [];
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
