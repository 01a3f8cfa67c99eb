/** What of a family a trainer can narrow on a page: parameters that the family's givens have words for. Pure. */
import type { Family, Parameter, Texts } from '../../practice/family.ts';
import { canNarrow, type Narrowing, narrowFaults, sizeOf } from '../../practice/narrow.ts';
import { TICKS_PER_INCH, ticks } from '../../trade/length.ts';
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

/** Parameters of a family with words for them, in the order of the file, as they are narrowed now. */
export function narrowables(family: Family, narrow: Narrowing, lang: string): readonly Narrowable[] {
  return Object.entries(family.parameters).flatMap(([name, own]): Narrowable[] => {
    const label = labelOf(family, name, lang);
    if (label === undefined || !canNarrow(own)) return [];
    const now = narrow[name] ?? own;
    const left = sizeOf(now);
    if ('choice' in own && 'choice' in now) {
      const words = [...new Set(own.choice)].map((id) => {
        const text = textOf(family.words[name]?.[id], lang);
        return {
          id,
          text: text === undefined || text.includes('{') ? id : text,
          on: now.choice.includes(id),
        };
      });
      return [{ name, label, left, kind: 'words', words }];
    }
    const [range, chosen] = [rangeOf(own), rangeOf(now)];
    if (range === undefined || chosen === undefined) return [];
    return [
      { name, label, left, kind: 'range', stops: stopsOf(own, range), from: chosen.from, to: chosen.to },
    ];
  });
}

const textOf = (texts: Texts | undefined, lang: string) => texts?.[lang] ?? texts?.['en'];

function labelOf({ givens }: Family, name: string, lang: string): string | undefined {
  const text = textOf(givens.find(({ fact, each }) => fact === name && each === undefined)?.label, lang);
  return text === undefined || text.includes('{') ? undefined : text;
}

interface Range {
  readonly from: number;
  readonly to: number;
  readonly step: number;
}

function rangeOf(parameter: Parameter): Range | undefined {
  if ('length' in parameter) return parameter.length;
  if ('decimal' in parameter) return parameter.decimal;
  return 'whole' in parameter ? { ...parameter.whole, step: 1 } : undefined;
}

/** On the family's own steps, whole feet where there are enough of them, both ends among them. */
function stopsOf(parameter: Parameter, { from, to, step }: Range): readonly Stop[] {
  const isLength = 'length' in parameter;
  const text = (value: number) => (isLength ? shortLength(ticks(value)) : String(round(value)));
  const foot = 12 * TICKS_PER_INCH;
  const coarse = isLength && to - from >= 3 * foot && foot % step === 0 && from % step === 0 ? foot : step;
  const count = Math.floor((to - from) / coarse + 1e-9);
  const every = Math.max(1, Math.ceil(count / MOST_STOPS)) * coarse;
  const first = coarse === foot ? Math.ceil(from / foot) * foot : from;
  const inside: number[] = [];
  for (let value = first; value <= to + 1e-9; value += every) inside.push(round(value));
  const last = round(from + step * Math.floor((to - from) / step + 1e-9));
  return [...new Set([from, ...inside, last])].map((value) => ({ value, text: text(value) }));
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
