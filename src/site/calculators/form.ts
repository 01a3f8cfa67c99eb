/** A form of fields: what it begins with, what it reads, and what it cannot read, each in words. Pure. */
import { inches, type Ticks, tryLength } from '../../trade/length.ts';
import { shortLength } from '../../trade/shortLength.ts';
import type { Settings } from '../settings.ts';
import type { SiteKey, Values } from '../speak.ts';
import { readText, type TapeReading } from '../tape.ts';
import type { Bounds, ChoiceField, Field, Fields, Form, PlainField, Written, WrittenRow } from './fields.ts';
import { celsius, fahrenheit } from './measure.ts';

export interface Message {
  readonly key: SiteKey;
  readonly values?: Values;
}

export type Read = { readonly value: unknown } | { readonly blank: true } | { readonly message: Message };

export interface ReadForm {
  /** What was read, or undefined while something is missing or cannot be read. */
  readonly given: Readonly<Record<string, unknown>> | undefined;
  /** By the name of the field; within rows `name.id.field`. */
  readonly messages: Readonly<Record<string, Message>>;
}

/** Whether a field is asked, as the form stands. */
export const isAsked = ({ only }: Field, form: Form): boolean =>
  only === undefined || only.is.some((value) => form[only.field] === value);

/** Reads every field that is asked. */
export function readForm(fields: Fields, form: Form, settings: Settings): ReadForm {
  const given: Record<string, unknown> = {};
  const messages: Record<string, Message> = {};
  let whole = true;
  for (const [name, field] of Object.entries(fields)) {
    if (!isAsked(field, form)) continue;
    const written = form[name];
    if (field.kind === 'rows') {
      const rows = rowsOf(written).map(({ id, form: row }) => {
        const read = readForm(field.fields, row, settings);
        for (const [inner, message] of Object.entries(read.messages))
          messages[`${name}.${id}.${inner}`] = message;
        return read.given;
      });
      if (rows.includes(undefined)) whole = false;
      given[name] = rows;
      continue;
    }
    const read = readField(field, written, settings);
    if ('value' in read) given[name] = read.value;
    else if ('message' in read) {
      whole = false;
      messages[name] = read.message;
    } else if (field.optional !== true) {
      whole = false;
      if (field.kind !== 'length') messages[name] = { key: 'sums.blank' };
    }
  }
  return { given: whole ? given : undefined, messages };
}

export const rowsOf = (written: Written | undefined): readonly WrittenRow[] =>
  Array.isArray(written) ? (written as readonly WrittenRow[]) : [];
export const textOf = (written: Written | undefined): string => (typeof written === 'string' ? written : '');
const readingOf = (written: Written | undefined): TapeReading =>
  typeof written === 'object' && 'read' in written ? written : { read: 'blank' };

/** What one entry reads, alone. */
export function readField(field: PlainField, written: Written | undefined, { degrees }: Settings): Read {
  if (field.kind === 'truth') return { value: written === true };
  if (field.kind === 'choice') return readChoice(field, textOf(written));
  if (field.kind === 'length') return readTape(readingOf(written), field.from);
  const text = textOf(written).trim();
  if (text === '') return { blank: true };
  if (field.kind === 'words') return { value: text };
  if (field.kind === 'text') return readTape(readText(text), 'from 0');
  if (field.kind === 'lengths') return readLengths(text);
  if (field.kind === 'size') return readSize(text, field.bounds);
  const n = plainNumber(text);
  if (n === undefined) return not(text.includes(',') ? 'sums.comma' : 'sums.notNumber', { text });
  if (field.kind === 'count') {
    if (!Number.isInteger(n)) return not('sums.whole');
    return bounded(n, { from: field.from });
  }
  if (field.kind === 'number') return bounded(n, field.bounds);
  if (degrees === 'F') return { value: n };
  return { value: field.apart === true ? (n * 9) / 5 : fahrenheit(n) };
}

const not = (key: SiteKey, values?: Values): Read => ({
  message: values === undefined ? { key } : { key, values },
});

/** Digits with a point, a sign as typed or as printed, thousands apart by a space. */
export function plainNumber(text: string): number | undefined {
  const plain = text.replace(/^[−-]\s*/, '-').replace(/(\d)[ \u00a0](?=\d{3}(?!\d))/g, '$1');
  return /^-?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : undefined;
}

function bounded(n: number, { above, from, below, upTo }: Bounds): Read {
  if (above !== undefined && n <= above)
    return not(betweenKey(below, 'sums.above'), { above, below: below ?? '' });
  if (from !== undefined && n < from) return not('sums.from', { from });
  if (below !== undefined && n >= below)
    return above === undefined ? not('sums.below', { below }) : not('sums.between', { above, below });
  if (upTo !== undefined && n > upTo) return not('sums.upTo', { upTo });
  return { value: n };
}

const betweenKey = (below: number | undefined, or: SiteKey): SiteKey =>
  below === undefined ? or : 'sums.between';

function readSize(text: string, bounds: Bounds): Read {
  const plain = plainNumber(text);
  if (plain !== undefined) return bounded(plain, bounds);
  const length = tryLength(text);
  if (typeof length === 'number') return bounded(inches(length), bounds);
  return not(text.includes(',') ? 'sums.comma' : 'sums.notSize', { text });
}

function readTape(reading: TapeReading, from: 'above 0' | 'from 0'): Read {
  if (reading.read === 'blank') return { blank: true };
  if (reading.read === 'not') {
    const { key, values } = reading.message;
    return not(key, values);
  }
  return from === 'above 0' && reading.length === 0 ? not('sums.lengthAbove0') : { value: reading.length };
}

function readLengths(text: string): Read {
  const read = text.split(';').map((one) => readTape(readText(one.trim()), 'from 0'));
  const wrong = read.find((one) => 'message' in one);
  return wrong ?? { value: read.flatMap((one) => ('value' in one ? [one.value] : [])) };
}

function readChoice({ options }: ChoiceField, text: string): Read {
  const option = options.find(({ value }) => String(value) === text);
  return option === undefined ? { blank: true } : { value: option.value };
}

/** The form that reads as these values do; what is undefined stays empty. */
export function formOf(fields: Fields, values: Readonly<Record<string, unknown>>, settings: Settings): Form {
  return Object.fromEntries(
    Object.entries(fields).map(([name, field]) => [name, writtenOf(field, values[name], settings)]),
  );
}

export function writtenOf(field: Field, value: unknown, settings: Settings): Written {
  if (field.kind === 'rows') {
    const rows = (value ?? []) as readonly Readonly<Record<string, unknown>>[];
    return rows.map((row, k) => ({ id: k + 1, form: formOf(field.fields, row, settings) }));
  }
  if (field.kind === 'truth') return value === true;
  if (field.kind === 'length')
    return value === undefined ? { read: 'blank' } : { read: 'length', length: value as Ticks };
  if (value === undefined) return '';
  if (field.kind === 'text') return shortLength(value as Ticks);
  if (field.kind === 'lengths') return (value as readonly Ticks[]).map((one) => shortLength(one)).join('; ');
  if (field.kind === 'temperature' && settings.degrees === 'C')
    return tenths(field.apart === true ? (Number(value) * 5) / 9 : celsius(Number(value)));
  return String(value);
}

const tenths = (n: number): string => String(Number(n.toFixed(1)));

/**
 * The form once the device's settings are known: degrees that were written in °F are written in °C, the edition is
 * the device's. Everything else stays as it is.
 */
export function restated(fields: Fields, form: Form, from: Settings, to: Settings): Form {
  return Object.fromEntries(
    Object.entries(form).map(([name, written]) => {
      const field = fields[name];
      if (field?.kind === 'choice' && field.edition === true && written === String(from.edition))
        return [name, String(to.edition)];
      if (field?.kind !== 'temperature' || from.degrees === to.degrees) return [name, written];
      const read = readField(field, written, from);
      return [name, 'value' in read ? writtenOf(field, read.value, to) : written];
    }),
  );
}
