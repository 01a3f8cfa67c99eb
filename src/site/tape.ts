/**
 * The entry for a length: three fields, as a tape is read (feet, inches, part of an inch). Turns fields into an exact
 * length and back, takes over a text pasted whole, and says what it cannot read. Pure; the control only shows it.
 */
import {
  type Denominator,
  formatLength,
  roundTo,
  TICKS_PER_MILLIMETRE,
  type Ticks,
  tryLength,
} from '../trade/length.ts';
import type { SiteKey, Values } from './speak.ts';

export interface TapeFields {
  readonly feet: string;
  readonly inches: string;
  /** `0`, or a reduced fraction. */
  readonly part: string;
}

/** The list of the part-inch field: whole sixteenths, reduced. */
export const sixteenths: readonly string[] = [
  ...['0', '1/16', '1/8', '3/16', '1/4', '5/16', '3/8', '7/16'],
  ...['1/2', '9/16', '5/8', '11/16', '3/4', '13/16', '7/8', '15/16'],
];

export interface Message {
  readonly key: SiteKey;
  readonly values?: Values;
  /** Which field it belongs to. */
  readonly field: 'feet' | 'inches';
  /** A reading that was probably meant; the control offers to write it. */
  readonly offer?: Ticks;
}

/** What three fields read: nothing, a length, or a message. */
export type TapeReading =
  | { readonly read: 'blank' }
  | { readonly read: 'length'; readonly length: Ticks }
  | { readonly read: 'not'; readonly message: Message };

/** The length of a reading, or null while there is none. */
export const lengthOf = (reading: TapeReading): Ticks | null =>
  reading.read === 'length' ? reading.length : null;

export const noFields: TapeFields = { feet: '', inches: '', part: '0' };
const finest: Denominator = 64;
const digits = /^\d+$/;

/** Fields that show a length to 1/64 in. `null` is empty fields. */
export function fieldsOf(length: Ticks | null, scale: TapeScale = 'feet'): TapeFields {
  if (length === null) return noFields;
  const [, feet = '', inches = '', part = '0'] =
    /^(\d+)'-(\d+)(?: (\d+\/\d+))?"$/.exec(formatLength(length, finest)) ?? [];
  return scale === 'feet' ? { feet, inches, part } : { feet: '', inches: allInches(feet, inches), part };
}

const allInches = (feet: string, inches: string): string => String(Number(feet) * 12 + Number(inches));

/** Whether the feet field holds a whole text, as pasted, rather than a number of feet. */
export const isWholeText = ({ feet, inches, part }: TapeFields): boolean =>
  feet.trim() !== '' && !digits.test(feet.trim()) && inches.trim() === '' && part === '0';

/** Which fields the entry shows: all three, or inches and part alone for what is short (then inches may be many). */
export type TapeScale = 'feet' | 'inches';

/**
 * What a text may be written in: any unit, or feet and inches alone, where turning one into the other is what is asked.
 */
export type TapeUnits = 'any' | 'own';

export function readFields(
  fields: TapeFields,
  scale: TapeScale = 'feet',
  units: TapeUnits = 'any',
): TapeReading {
  const feet = fields.feet.trim();
  const inches = fields.inches.trim();
  if (feet === '' && inches === '' && fields.part === '0') return { read: 'blank' };
  if (isWholeText(fields)) return readText(feet, units);
  if (feet !== '' && !digits.test(feet)) return not('feet', 'entry.feetWhole');
  if (inches !== '' && !digits.test(inches)) return not('inches', 'entry.inchesWhole');
  const part = fields.part === '0' ? '' : ` ${fields.part}`;
  // Inches alone may be many to the reader of texts; beside the feet field they are a slip of the tape.
  const many = Number(inches) > 11;
  const text = many ? `${inches || '0'}${part}"` : `${feet || '0'}'-${inches || '0'}${part}"`;
  const length = tryLength(text);
  if (typeof length !== 'number') return not('feet', 'entry.tooLong');
  if (!many || scale === 'inches') return { read: 'length', length };
  const whole = tryLength(`${feet || '0'}'`);
  if (typeof whole !== 'number') return not('feet', 'entry.tooLong');
  const offer = (length + whole) as Ticks;
  return not('inches', 'entry.inchesOver', { given: inches, split: formatLength(offer, finest) }, offer);
}

/** Reads a whole text (`63-7-8`, `63' 7 1/2"`, `763.5`, `2350 mm`). Finer than 1/64 in goes to the nearest 1/16. */
export function readText(text: string, units: TapeUnits = 'any'): TapeReading {
  if (units === 'own' && !beginsInFeet.test(text)) return not('feet', 'entry.ownOnly', { text });
  const length = tryLength(text);
  if (typeof length === 'number') {
    const exact = roundTo(length, finest) === length;
    return { read: 'length', length: exact ? length : roundTo(length, 16) };
  }
  const split = length.values['split'];
  const offer = split === undefined ? undefined : tryLength(split);
  if (split !== undefined && typeof offer === 'number') {
    return not('feet', 'entry.splitText', { text, split }, offer);
  }
  const other = units === 'own' ? 'entry.ownOnly' : 'entry.notRead';
  return not('feet', text.includes(',') ? 'entry.comma' : other, { text });
}

/** Whole feet first: `12'-3 1/2"`, `12 ft 3`, `63-7-8`; not `147 1/2`, `12.3 ft`, `3747 mm`. */
const beginsInFeet = /^\s*\d+\s*(?:['’′-]|ft|f(?:oo|ee)t)/i;

function not(field: Message['field'], key: SiteKey, values?: Values, offer?: Ticks): TapeReading {
  return {
    read: 'not',
    message: {
      field,
      key,
      ...(values === undefined ? {} : { values }),
      ...(offer === undefined ? {} : { offer }),
    },
  };
}

/** The read-back: feet and inches as spoken, all inches, millimetres to the nearest whole one. */
export function readBack(length: Ticks): {
  readonly feet: string;
  readonly inches: string;
  readonly part: string;
  readonly allInches: string;
  readonly mm: string;
} {
  const { feet, inches, part } = fieldsOf(length);
  const fraction = part === '0' ? '' : ` ${part}`;
  const mm = String(Math.round(length / TICKS_PER_MILLIMETRE));
  return {
    feet,
    inches: `${inches}${fraction}`,
    part,
    allInches: `${allInches(feet, inches)}${fraction}`,
    mm: mm.replace(/\B(?=(\d{3})+$)/g, '\u00a0'),
  };
}
