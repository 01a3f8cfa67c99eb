/** What of a family a trainer can narrow on a page: parameters that the family's givens have words for. Pure. */
import { type Draw, drawOf } from '../../practice/draw.ts';
import type { Family, GivenLine, Parameter, Texts } from '../../practice/family.ts';
import type { World } from '../../practice/model.ts';
import {
  canNarrow,
  type Narrowing,
  narrowed,
  narrowFaults,
  type Range,
  rangeOf,
  sizeOf,
} from '../../practice/narrow.ts';
import { textsOf } from '../../practice/words.ts';
import { TICKS_PER_INCH, ticks } from '../../trade/length.ts';
import { fillPlaces, placesOf } from '../../trade/say.ts';
import { shortLength } from '../../trade/shortLength.ts';

export interface Stop {
  readonly value: number;
  readonly text: string;
}

export type Narrowable = {
  readonly name: string;
  readonly label: string;
  /** Values that a seed still chooses from. */
  readonly left: number;
} & (
  | { readonly kind: 'range'; readonly stops: readonly Stop[]; readonly from: number; readonly to: number }
  | {
      readonly kind: 'words';
      readonly words: readonly { readonly id: string; readonly text: string; readonly on: boolean }[];
    }
);

/** Places to stop at between two ends; more are too many for a list on a phone. */
const MOST_STOPS = 24;

/** In what the page speaks, and from what it draws to find words. */
export interface Means {
  readonly lang: string;
  readonly world: World;
  /** What the width of the channel is called, where an exercise tells it in its text alone. */
  readonly width: string;
  readonly unitOf: (unit: string) => string;
}

/** Parameters of a family with words for them, in the order of the file, as they are narrowed now. */
export function narrowables(family: Family, narrow: Narrowing, means: Means): readonly Narrowable[] {
  const drawn = drawnOf(family, undefined, means.world);
  return Object.entries(family.parameters).flatMap(([name, own]): Narrowable[] => {
    const label = labelOf(family, name, drawn, means);
    if (label === undefined || !canNarrow(own)) return [];
    const now = narrow[name] ?? own;
    const left = sizeOf(now);
    if ('choice' in own && 'choice' in now) {
      const words = [...new Set(own.choice)].map((id) => ({
        id,
        text: wordOf(family, name, id, means),
        on: now.choice.includes(id),
      }));
      return [{ name, label, left, kind: 'words', words }];
    }
    const [range, chosen] = [rangeOf(own), rangeOf(now)];
    if (range === undefined || chosen === undefined || !drawn.every(isShown(name, range))) return [];
    const { from, to } = chosen;
    const unit = 'length' in own ? '' : unitText(lineOf(family, name)?.unit ?? '', means);
    return [{ name, label, left, kind: 'range', stops: stopsOf(own, range, [from, to], unit), from, to }];
  });
}

/** Whether a family has anything to narrow, without a draw of it. */
export const hasNarrowables = (family: Family): boolean =>
  Object.entries(family.parameters).some(
    ([name, own]) =>
      canNarrow(own) && (lineOf(family, name) !== undefined || (name === 'width' && name in family.words)),
  );

const textOf = (texts: Texts | undefined, lang: string) => texts?.[lang] ?? texts?.['en'];

const lineOf = ({ givens }: Family, name: string): GivenLine | undefined =>
  givens.find(({ fact, each }) => fact === name && each === undefined);

/** A line whose name is a document tells what the document says, not what it is about. */
const DOCUMENT = /\d{3}\.\d/;

function labelOf(
  family: Family,
  name: string,
  drawn: readonly Draw[],
  { lang, width }: Means,
): string | undefined {
  const text = textOf(lineOf(family, name)?.label, lang);
  if (text !== undefined) return DOCUMENT.test(text) ? undefined : filled(text, drawn, lang);
  return name === 'width' && family.words[name] !== undefined ? width : undefined;
}

/** A word as the exercise says it, with the numbers that go with it wherever they are the same in every draw. */
function wordOf(family: Family, name: string, id: string, means: Means): string {
  const word = textOf(family.words[name]?.[id], means.lang);
  if (word !== undefined && placesOf(word).length === 0) return word;
  const line = lineOf(family, name);
  const drawn = drawnOf(family, [name, id], means.world);
  const given = textOf(line?.text, means.lang);
  const text = filled(word ?? given ?? `{${name}}`, drawn, means.lang);
  if (text === OPEN) return id;
  return word === undefined && given === undefined && /\d$/.test(text)
    ? `${text}${unitText(line?.unit ?? '', means)}`
    : text;
}

const unitText = (unit: string, { unitOf }: Means): string =>
  unit === '' || unit === 'count' ? '' : ` ${unitOf(unit)}`;

/** Seeds of the draws that show what an exercise says. */
const SHOWN = ['a', 'b', 'c', 'd'] as const;

/** Kept for each family: one of a whole run takes its time. */
const kept = new WeakMap<Family, Map<string, readonly Draw[]>>();

/** @param only  a parameter and the one word that it draws */
function drawnOf(
  family: Family,
  only: readonly [name: string, id: string] | undefined,
  world: World,
): readonly Draw[] {
  const known = kept.get(family) ?? new Map<string, readonly Draw[]>();
  kept.set(family, known);
  const of = only?.join(' ') ?? '';
  const old = known.get(of);
  if (old !== undefined) return old;
  const less = narrowed(family, only === undefined ? undefined : { [only[0]]: { choice: [only[1]] } });
  const drawn = SHOWN.flatMap((seed) => {
    try {
      return [drawOf(less, seed, world)];
    } catch {
      return [];
    }
  });
  known.set(of, drawn);
  return drawn;
}

/** A text with its places filled out of draws; what differs from draw to draw stays open. */
function filled(text: string, drawn: readonly Draw[], lang: string): string {
  const places = placesOf(text);
  if (places.length === 0) return text;
  const all = drawn.map((draw) => textsOf(draw, lang));
  const value = (place: string) => {
    const [first, ...others] = new Set(all.map((texts) => texts[place]));
    return others.length > 0 || first === undefined ? OPEN : first;
  };
  return fillPlaces(text, Object.fromEntries(places.map((place) => [place, value(place)])));
}

const OPEN = '…';

/** Whether what is told under a parameter's name is what was chosen: not worked out of it, as a temperature of a share is. */
const isShown =
  (name: string, { from, to }: Range) =>
  ({ facts }: Draw): boolean => {
    const fact = facts[name];
    const value = fact?.kind === 'length' ? fact.ticks : fact?.kind === 'number' ? fact.value : undefined;
    return value === undefined || (value >= from - 1e-9 && value <= to + 1e-9);
  };

/**
 * On the family's own steps, whole feet where there are enough of them, both ends among them, and what is chosen now: a
 * draft of an older release may stand between two stops.
 */
function stopsOf(
  parameter: Parameter,
  { from, to, step }: Range,
  now: readonly number[],
  unit: string,
): readonly Stop[] {
  const isLength = 'length' in parameter;
  const text = (value: number) => (isLength ? shortLength(ticks(value)) : `${round(value)}${unit}`);
  const foot = 12 * TICKS_PER_INCH;
  const coarse = isLength && to - from >= 3 * foot && foot % step === 0 && from % step === 0 ? foot : step;
  const count = Math.floor((to - from) / coarse + 1e-9);
  const every = Math.max(1, Math.ceil(count / MOST_STOPS)) * coarse;
  const first = coarse === foot ? Math.ceil(from / foot) * foot : from;
  const inside: number[] = [];
  for (let value = first; value <= to + 1e-9; value += every) inside.push(round(value));
  const last = round(from + step * Math.floor((to - from) / step + 1e-9));
  return [...new Set([from, ...inside, last, ...now])]
    .filter((value) => value <= last)
    .sort((a, b) => a - b)
    .map((value) => ({ value, text: text(value) }));
}

const round = (n: number) => Math.round(n * 1e6) / 1e6;

/** A narrowing with another range, or other words; the whole of what the family draws is no narrowing. */
export function withNarrow(
  family: Family,
  narrow: Narrowing,
  name: string,
  change: { readonly from: number; readonly to: number } | { readonly choice: readonly string[] },
): Narrowing {
  const own = family.parameters[name];
  if (own === undefined) return narrow;
  const { [name]: _, ...others } = narrow;
  const next = changed(own, change);
  const whole = next === undefined || sizeOf(next) === sizeOf(own);
  if (whole || narrowFaults(family, { [name]: next }).length > 0) return others;
  return { ...others, [name]: next };
}

function changed(
  own: Parameter,
  change: { readonly from: number; readonly to: number } | { readonly choice: readonly string[] },
): Parameter | undefined {
  if ('choice' in change)
    return 'choice' in own && change.choice.length > 0
      ? { choice: own.choice.filter((word) => change.choice.includes(word)) }
      : undefined;
  const { from, to } = change;
  if ('length' in own) return { length: { ...own.length, from: ticks(from), to: ticks(to) } };
  if ('decimal' in own) return { decimal: { ...own.decimal, from, to } };
  return 'whole' in own ? { whole: { from, to } } : undefined;
}
