/**
 * Reads a length from text. The text becomes a row of tokens, the row a *shape* (`4'-3 1/2"` has the shape
 * `N'-NF"`), and the shape is looked up in two tables: what is read, and what is refused and why. What
 * stands in neither is refused as an unknown form; nothing is guessed.
 */
import type { Refusal } from './lengthWords.ts';
import {
  DENOMINATORS,
  LONGEST_TICKS,
  TICKS_PER_FOOT,
  TICKS_PER_INCH,
  TICKS_PER_MILLIMETRE,
} from './units.ts';

/** An exact quotient of whole numbers, so that no decimal is lost before the one rounding. */
interface Ratio {
  readonly top: bigint;
  readonly bottom: bigint;
}

interface Token {
  /** N whole number, D decimal number, F fraction, ' feet, " inches, M metric, - hyphen, blank space. */
  readonly kind: string;
  readonly text: string;
}

const VULGAR: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅐': '1/7',
  '⅑': '1/9',
  '⅒': '1/10',
};
const METRIC: Readonly<Record<string, number>> = {
  mm: TICKS_PER_MILLIMETRE,
  cm: 10 * TICKS_PER_MILLIMETRE,
  m: 1000 * TICKS_PER_MILLIMETRE,
};
const WORDS: Readonly<Record<string, string>> = {
  ...Object.fromEntries(["'", '′', '’', 'ft', 'foot', 'feet'].map((word) => [word, "'"])),
  ...Object.fromEntries(['"', '″', '”', 'in', 'inch', 'inches'].map((word) => [word, '"'])),
  ...Object.fromEntries(Object.keys(METRIC).map((word) => [word, 'M'])),
};

/** Order matters: a fraction before its numbers. Words and marks (kind W) get their kind from WORDS. */
const TOKENS: readonly (readonly [kind: string, pattern: RegExp])[] = [
  [' ', /\s+/y],
  ['F', /\d+[/⁄∕]\d+/y],
  ['F', /[½¼¾⅛⅜⅝⅞⅓⅔⅕⅖⅗⅘⅙⅚⅐⅑⅒]/y],
  ['D', /\d*\.\d+/y],
  ['N', /\d+/y],
  ['W', /['′’"″”]/y],
  ['W', /\p{L}+(?:\.(?!\d))?/uy],
  ['-', /[-‐‑]/y],
];

/** Signs of the longest text that is looked at; no length has as many. */
const LONGEST_TEXT = 100;

function tokensOf(text: string): Token[] | Refusal {
  const tokens: Token[] = [];
  let at = 0;
  while (at < text.length) {
    const found = tokenAt(text, at);
    if ('refused' in found) return found;
    tokens.push(found);
    at += found.text.length;
  }
  return tokens;
}

function tokenAt(text: string, at: number): Token | Refusal {
  for (const [kind, pattern] of TOKENS) {
    pattern.lastIndex = at;
    const hit = pattern.exec(text)?.[0];
    if (hit === undefined) continue;
    if (kind !== 'W') return { kind, text: hit };
    const unit = WORDS[hit.toLowerCase().replace('.', '')];
    return unit === undefined ? refuse('word', { word: hit }) : { kind: unit, text: hit };
  }
  const sign = String.fromCodePoint(text.codePointAt(at) ?? 0);
  return sign === ',' ? refuse('comma') : refuse('sign', { sign });
}

function refuse(refused: Refusal['refused'], values: Refusal['values'] = {}): Refusal {
  return { refused, values };
}

const whole = (token: Token | undefined): bigint => BigInt(token?.text ?? 0);

function decimal(text: string): Ratio {
  const [before = '', after = ''] = text.split('.');
  return { top: BigInt(before + after), bottom: 10n ** BigInt(after.length) };
}

function fraction(token: Token): Ratio {
  const [top = '0', bottom = '0'] = (VULGAR[token.text] ?? token.text).split(/[/⁄∕]/);
  return { top: BigInt(top), bottom: BigInt(bottom) };
}

/** Nearest whole tick of `amount` units, halves up (signs are put on afterwards). */
function toTicks({ top, bottom }: Ratio, unit: number): number | Refusal {
  const count = Number((2n * top * BigInt(unit) + bottom) / (2n * bottom));
  return count <= LONGEST_TICKS ? count : refuse('tooLong');
}

/** `12'-3 1/2"` of exact parts; used to offer what was probably meant. */
function written(feet: bigint, inch: bigint, part?: Ratio): string {
  let { top, bottom } = part ?? { top: 0n, bottom: 1n };
  const all = feet * 12n + inch + top / bottom;
  top %= bottom;
  while (top !== 0n && top % 2n === 0n && bottom % 2n === 0n) {
    top /= 2n;
    bottom /= 2n;
  }
  return `${all / 12n}'-${all % 12n}${top === 0n ? '' : ` ${top}/${bottom}`}"`;
}

/** Feet, whole inches and a fraction, each checked; `alone` when no feet are written, so inches may be many. */
function imperial(feet: bigint, inch: bigint, part: Token | undefined, marks: 'alone' | 'beside feet') {
  const ratio = part === undefined ? { top: 0n, bottom: 1n } : fraction(part);
  if (part !== undefined && !DENOMINATORS.some((d) => BigInt(d) === ratio.bottom))
    return refuse('denominator', { bottom: String(ratio.bottom) });
  const split = written(feet, inch, ratio);
  if (marks === 'beside feet' && inch >= 12n) return refuse('manyInches', { split });
  return { ratio, split, top: (feet * 12n + inch) * ratio.bottom + ratio.top };
}

function feetAndInches(feet: bigint, inch: bigint, part: Token | undefined, marks: 'alone' | 'beside feet') {
  const sum = imperial(feet, inch, part, marks);
  if ('refused' in sum) return sum;
  const { top, bottom } = sum.ratio;
  if (top >= bottom)
    return refuse('improper', { top: String(top), bottom: String(bottom), split: sum.split });
  return toTicks({ top: sum.top, bottom }, TICKS_PER_INCH);
}

function metric(numbers: readonly Token[], unit: Token): number | Refusal {
  const [first, ...rest] = numbers.map((n) => n.text);
  const grouped =
    rest.every((g) => /^\d{3}(\.\d+)?$/.test(g)) && (rest.length === 0 || /^\d{1,3}$/.test(first ?? ''));
  if (!grouped) return refuse('thousands');
  return toTicks(
    decimal(numbers.map((n) => n.text).join('')),
    METRIC[unit.text.toLowerCase().replace('.', '')] ?? 0,
  );
}

function sixteenths(feet: bigint, inch: bigint, parts: bigint): number | Refusal {
  const split = written(feet, inch, { top: parts, bottom: 16n });
  if (inch >= 12n) return refuse('manyInches', { split });
  if (parts >= 16n) return refuse('manySixteenths', { split });
  return toTicks({ top: (feet * 12n + inch) * 16n + parts, bottom: 16n }, TICKS_PER_INCH);
}

type Reader = (numbers: readonly Token[], tokens: readonly Token[]) => number | Refusal;

/** Shapes that are read. Blanks before a mark are taken out first; `[- ]?` is what may part two parts. */
const READ: readonly (readonly [shape: RegExp, reader: Reader])[] = [
  [/^[ND]'$/, ([a]) => toTicks(decimal(a?.text ?? ''), TICKS_PER_FOOT)],
  [/^[ND]"?$/, ([a]) => toTicks(decimal(a?.text ?? ''), TICKS_PER_INCH)],
  [/^N'[- ]?N"?$/, ([a, b]) => feetAndInches(whole(a), whole(b), undefined, 'beside feet')],
  [/^N'[- ]?N[- ]?F"?$/, ([a, b, f]) => feetAndInches(whole(a), whole(b), f, 'beside feet')],
  [/^N-N"?$/, ([a, b]) => feetAndInches(whole(a), whole(b), undefined, 'beside feet')],
  [/^N-N[- ]?F"?$/, ([a, b, f]) => feetAndInches(whole(a), whole(b), f, 'beside feet')],
  [/^N-N-N$/, ([a, b, c]) => sixteenths(whole(a), whole(b), whole(c))],
  [/^N[- ]?F"?$/, ([a, f]) => feetAndInches(0n, whole(a), f, 'alone')],
  [
    /^F"?$/,
    ([f]) => {
      const sum = imperial(0n, 0n, f, 'alone');
      return 'refused' in sum ? sum : toTicks({ top: sum.top, bottom: sum.ratio.bottom }, TICKS_PER_INCH);
    },
  ],
  [/^(?:N )*[ND]M$/, (numbers, tokens) => metric(numbers, tokens.at(-1) as Token)],
];

/** Shapes that people write and that are refused with a better reason than "unknown form". */
const REFUSED: readonly (readonly [shape: RegExp, refused: Refusal['refused']])[] = [
  [/ -|- /, 'minus'],
  [/^N''/, 'twoMarks'],
  [/M/, 'metricAlone'],
  [/^D'.+/, 'decimalFeet'],
  [/^(?:N[- ]?)?F'/, 'fractionFeet'],
  [/^N'[- ]?D/, 'decimalInches'],
  [/^(?:D-[ND]|N-D)/, 'decimalInches'],
  [/^N'[- ]?F"?$/, 'bareFraction'],
  [/^N N/, 'bareRow'],
];

/** The values that a refused shape's sentences speak of. */
function spokenOf(numbers: readonly Token[]): Record<string, string> {
  const [a, b, f] = numbers;
  const feet = a?.kind === 'N' ? a.text : '0';
  const part = b?.kind === 'F' ? fraction(b) : undefined;
  const text = part === undefined ? '' : `${part.top}/${part.bottom}`;
  const mark = f?.kind === 'F' ? ` ${f.text}` : '';
  return {
    zero: `${feet}'-0 ${text}"`,
    inches: `${feet} ${text}"`,
    marked: b?.kind === 'N' && Number(b.text) < 12 ? `${feet}'-${b.text}${mark}"` : '7\'-3 5/8"',
  };
}

/** Ticks of a text, below zero when it begins with a minus sign; or why it is refused. */
export function readLengthText(given: string, signed: boolean): number | Refusal {
  const text = given.trim();
  if (text === '') return refuse('empty');
  if (text.length > LONGEST_TEXT) return refuse('tooLong');
  const below = /^[-−]\S/.test(text);
  if (below && !signed) return refuse('negative');
  const tokens = tokensOf(below ? text.slice(1) : text);
  if (!Array.isArray(tokens)) return tokens;
  const shape = tokens
    .map((t) => t.kind)
    .join('')
    .replaceAll(/ (?=['"M])/g, '');
  const numbers = tokens.filter((t) => 'NDF'.includes(t.kind));
  for (const [form, reader] of READ) {
    if (!form.test(shape)) continue;
    const count = reader(numbers, tokens);
    return typeof count === 'number' && below ? -count : count;
  }
  const known = REFUSED.find(([form]) => form.test(shape));
  return refuse(known?.[1] ?? 'form', spokenOf(numbers));
}
