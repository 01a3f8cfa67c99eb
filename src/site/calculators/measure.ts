/**
 * Figures with their unit, and how they are written: in the trade's own units, in metric beside them, or in metric
 * instead, as the device is set. Pure.
 */
import { type Denominator, TICKS_PER_MILLIMETRE, type Ticks, ticks } from '../../trade/length.ts';
import { shortLength } from '../../trade/shortLength.ts';
import type { Settings } from '../settings.ts';
import type { SiteKey, Tell } from '../speak.ts';

interface Kind {
  /** `{n}` and its unit, in the trade's units. */
  readonly own: SiteKey;
  readonly metric?: { readonly key: SiteKey; readonly from: (own: number) => number };
}

const times = (factor: number) => (own: number) => own * factor;

/**
 * Exact: 1 in = 25.4 mm, 1 lb = 0.45359237 kg (international yard and pound, 1959); 1 lbf = 4.4482216152605 N from the
 * standard gravity 9.80665 m/s².
 */
const POUND = 0.45359237;
const FORCE = 4.4482216152605;
const kinds = {
  inches: { own: 'measure.in', metric: { key: 'measure.mm', from: times(25.4) } },
  feet: { own: 'measure.ft', metric: { key: 'measure.m', from: times(0.3048) } },
  in2: { own: 'measure.in2', metric: { key: 'measure.mm2', from: times(25.4 ** 2) } },
  in3: { own: 'measure.in3', metric: { key: 'measure.cm3', from: times(2.54 ** 3) } },
  in4: { own: 'measure.in4', metric: { key: 'measure.cm4', from: times(2.54 ** 4) } },
  lb: { own: 'measure.lb', metric: { key: 'measure.kg', from: times(POUND) } },
  lbPerFt: { own: 'measure.lbPerFt', metric: { key: 'measure.kgPerM', from: times(POUND / 0.3048) } },
  /** Moments are handed over in lb-in and said in lb-ft, as a table of beams prints them. */
  lbFt: { own: 'measure.lbFt', metric: { key: 'measure.nm', from: times(FORCE * 0.3048) } },
  psi: { own: 'measure.psi', metric: { key: 'measure.mpa', from: times(FORCE / 25.4 ** 2) } },
  density: { own: 'measure.lbIn3', metric: { key: 'measure.kgM3', from: times(POUND / 0.0254 ** 3) } },
  degrees: { own: 'measure.deg' },
  amperes: { own: 'measure.amperes' },
  volts: { own: 'measure.volts' },
  percent: { own: 'measure.percent' },
  plain: { own: 'measure.plain' },
} as const satisfies Readonly<Record<string, Kind>>;

export type MeasureKind = keyof typeof kinds;

/** A figure with its unit; a length is written as a tape reads it, a temperature as the device is set. */
export type Measure =
  | { readonly of: MeasureKind; readonly value: number }
  | { readonly of: 'tape'; readonly value: number; readonly to: Denominator }
  | { readonly of: 'temperature' | 'degreesApart'; readonly value: number };

/** A length in inches, as a tape reads it to the nearest sixteenth, or to another part of an inch. */
export const tape = (inches: number, to: Denominator = 16): Measure => ({ of: 'tape', value: inches, to });
/** A greatest length, rounded down to what a tape shows: never above it. */
export const tapeAtMost = (inches: number, to: Denominator = 16): Measure =>
  tape(Math.floor(inches * to + 1e-6) / to, to);
/** A least length, rounded up to what a tape shows: never below it. */
export const tapeAtLeast = (inches: number, to: Denominator = 16): Measure =>
  tape(Math.ceil(inches * to - 1e-6) / to, to);
export const measure = (of: MeasureKind, value: number): Measure => ({ of, value });
/** A temperature in °F. */
export const temperature = (degF: number): Measure => ({ of: 'temperature', value: degF });
/** A difference of temperatures in °F. */
export const degreesApart = (degF: number): Measure => ({ of: 'degreesApart', value: degF });

/** Four figures at least, never fewer than the whole number has; no trailing zeros. */
export function written(n: number): string {
  const whole = n === 0 ? 1 : Math.max(0, Math.floor(Math.log10(Math.abs(n))) + 1);
  const small = n === 0 || whole > 0 ? 0 : -Math.floor(Math.log10(Math.abs(n))) - 1;
  const text = String(Number(n.toFixed(Math.min(12, Math.max(0, 4 - whole) + small))));
  return text.startsWith('-') ? `−${text.slice(1)}` : text;
}

const grouped = (n: string): string => {
  const [whole = '', part] = n.split('.');
  const parted = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, '\u00a0') : whole;
  return part === undefined ? parted : `${parted}.${part}`;
};

/** A number and its unit do not part at the end of a line. */
const together = (text: string): string => text.replace(' ', '\u00a0');

/** A length in inches, halves away from zero to the nearest tick. */
const asTicks = (inches: number): Ticks => ticks(Math.round(inches * 25.4 * TICKS_PER_MILLIMETRE));

/** Millimetres to a tenth below 100, else whole. */
const millimetresOf = (inches: number): string => {
  const mm = inches * 25.4;
  return grouped(written(Number(mm.toFixed(Math.abs(mm) < 100 ? 1 : 0))));
};

export const celsius = (degF: number): number => ((degF - 32) * 5) / 9;
export const fahrenheit = (degC: number): number => (degC * 9) / 5 + 32;

/** The figure with its unit, in words of the page. */
export function measureText(given: Measure, { metric, degrees }: Settings, tell: Tell): string {
  const { value } = given;
  if (given.of === 'temperature') {
    const shown = degrees === 'C' ? celsius(value) : value;
    return tell(`measure.deg${degrees}`, { n: written(Number(shown.toFixed(1))) });
  }
  if (given.of === 'degreesApart') {
    const shown = degrees === 'C' ? (value * 5) / 9 : value;
    return tell(`measure.apart${degrees}`, { n: written(Number(shown.toFixed(1))) });
  }
  const [own, other] =
    given.of === 'tape' ? tapeTexts(value, given.to, tell) : kindTexts(given.of, value, tell);
  if (other === undefined || metric === 'none') return own;
  return metric === 'instead' ? other : tell('measure.beside', { own, metric: other });
}

/** As a drawing letters it: one unit only, so that a dimension stays short. */
export const lettered = (given: Measure, settings: Settings, tell: Tell): string =>
  measureText(given, settings.metric === 'beside' ? { ...settings, metric: 'none' } : settings, tell);

const tapeTexts = (inches: number, to: Denominator, tell: Tell): readonly [string, string] => [
  shortLength(asTicks(inches), to).replace(/^-/, '−'),
  together(tell('measure.mm', { n: millimetresOf(inches) })),
];

function kindTexts(of: MeasureKind, value: number, tell: Tell): readonly [string, string | undefined] {
  const { own, metric }: Kind = kinds[of];
  return [
    together(tell(own, { n: grouped(written(value)) })),
    metric === undefined
      ? undefined
      : together(tell(metric.key, { n: grouped(written(metric.from(value))) })),
  ];
}
