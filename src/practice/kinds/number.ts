/** A number in a unit; lengths may come as a length text. */
import { inches, lengthRefusal, tryLength } from '../../trade/length.ts';
import type { NumberAsk, Unit } from '../family.ts';
import { type Kind, SLACK, unread } from './kind.ts';

/** Inches in one of the unit, for the units of length. */
const LENGTHS: Partial<Record<Unit, number>> = { in: 1, ft: 12, mm: 1 / 25.4 };

/** How the units are called in the faults of an answer. */
const CALLED: Readonly<Record<Unit, string>> = {
  in: 'inches',
  in2: 'square inches',
  ft: 'feet',
  mm: 'millimetres',
  lb: 'pounds',
  lbPerFt: 'pounds a foot',
  deg: 'degrees',
  degF: 'degrees Fahrenheit',
  degC: 'degrees Celsius',
  A: 'amperes',
  ohm: 'ohms',
  count: 'things counted',
  percent: 'per cent',
  hour: 'hours',
  minute: 'minutes',
};

export type NumberForm = Omit<NumberAsk, 'kind'>;

/** Whether an ask is answered by a number, of whichever kind. */
export const isNumber = <A extends { readonly id: string }>(ask: A): ask is A & NumberForm => 'unit' in ask;

const noLength = (value: unknown, refusal: Parameters<typeof lengthRefusal>[0]) => {
  const { message, todo } = lengthRefusal(refusal);
  return unread(value, message, todo);
};

const within = (ask: NumberForm, one: number, other: number, times = 1) =>
  Math.abs(one - other) <= times * ask.tolerance + SLACK;

export const number: Kind<NumberForm, number> = {
  read: ({ unit }, value) => {
    const inch = LENGTHS[unit];
    if (typeof value === 'number' && inch !== undefined) {
      const length = tryLength(value * inch, { signed: true });
      return typeof length === 'number' ? { answer: value } : noLength(value, length);
    }
    if (typeof value === 'string' && inch !== undefined) {
      const length = tryLength(value, { signed: true });
      return typeof length === 'number' ? { answer: inches(length) / inch } : noLength(value, length);
    }
    if (typeof value === 'number' && Number.isFinite(value)) return { answer: value };
    return inch === undefined
      ? unread(value, 'this is no number', `write a number of ${CALLED[unit]}, as 1.25`)
      : unread(value, 'this is no length', `write ${CALLED[unit]} as a number, or a text as 7'-3 5/8"`);
  },
  same: (ask, given, wanted) => within(ask, given, wanted),
  near: (ask, given, wanted) => !within(ask, given, wanted) && within(ask, given, wanted, 2),
  apart: (ask, one, other) => !within(ask, one, other, 2),
  faults: ({ range }, answer, right) => {
    if (!Number.isFinite(answer)) return ['leads to no number'];
    return right && (answer < range.from || answer > range.to)
      ? [`${answer} is outside ${range.from} to ${range.to}`]
      : [];
  },
  explains: (ask, given, mistaken) => (within(ask, given, mistaken) ? 'whole' : null),
  show: ({ unit, tolerance }) => ({ unit, tolerance }),
};
