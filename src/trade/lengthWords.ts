/**
 * Why a text is not taken as a length, and what to write instead. `{places}` are filled from the refusal.
 * A refusal is known by its key, so that a page can say it in its own language.
 */

const FORMS = 'feet and inches as 12\'-3 1/2", inches as 147 1/2, or metric as 3747 mm';

export const LENGTH_REFUSALS = {
  empty: { message: 'nothing is written here', todo: `write a length: ${FORMS}` },
  noNumber: { message: 'this is not a number', todo: 'write a number of inches, or a length as text' },
  form: { message: 'this is not a form of length that is read here', todo: `write ${FORMS}` },
  sign: { message: 'the sign {sign} has no place in a length', todo: `write ${FORMS}` },
  word: { message: 'the word {word} is no unit of length here', todo: `write ${FORMS}` },
  comma: {
    message: 'a comma may part thousands or decimals, so it is not read',
    todo: 'write decimals with a point, and thousands of millimetres with a space or together',
  },
  negative: { message: 'a length below zero has no meaning here', todo: 'write it without the minus sign' },
  minus: {
    message: 'a hyphen with a space beside it reads as a minus sign',
    todo: 'let the hyphen touch both parts, as 4\'-3", or leave it out, as 4\' 3"',
  },
  manyInches: { message: 'beside feet the inches stay below 12', todo: 'write {split}' },
  manySixteenths: {
    message: 'in feet-inches-sixteenths the last part stays below 16',
    todo: 'write {split}',
  },
  denominator: {
    message: 'a tape has no 1/{bottom} in',
    todo: 'write the fraction in halves, 4ths, 8ths, 16ths, 32nds or 64ths, or the inches as a decimal number',
  },
  improper: {
    message: 'beside whole inches the fraction stays below 1, and {top}/{bottom} does not',
    todo: 'write {split}',
  },
  decimalFeet: {
    message: 'decimal feet stand alone',
    todo: 'write whole feet and inches, as 112\'-9", or decimal feet without inches, as 112.75 ft',
  },
  decimalInches: {
    message: 'beside feet the inches are whole, or whole and a fraction',
    todo: 'write the part of an inch as a fraction, as 4\'-3 1/2", or the whole length in inches, as 51.5',
  },
  bareFraction: {
    message: 'beside feet a fraction needs its whole inches',
    todo: 'write {zero} for feet and part of an inch, or {inches} when no feet are meant',
  },
  fractionFeet: {
    message: 'a fraction before the foot mark may mean part of a foot or part of an inch',
    todo: 'write feet as a decimal, as 1.5 ft, or feet and inches, as 1\'-6"',
  },
  twoMarks: { message: 'two foot marks stand in a row', todo: 'write " for inches, and \' once for feet' },
  bareRow: {
    message: 'numbers in a row without marks may mean several lengths',
    todo: 'write feet and inches with their marks, as {marked}, or one number without a space',
  },
  metricAlone: {
    message: 'a metric length is one number with one unit',
    todo: 'write the whole length in one unit, as 2350 mm or 2.35 m',
  },
  thousands: {
    message: 'a space in a metric length parts thousands, three figures after each',
    todo: 'write 2 350 mm or 2350 mm',
  },
  tooLong: {
    message: 'no length on a job is so long',
    todo: 'check the number and its unit',
  },
} as const satisfies Record<string, { message: string; todo: string }>;

/** A length that was not taken, by key, with the values of its sentences. */
export interface Refusal {
  readonly refused: keyof typeof LENGTH_REFUSALS;
  readonly values: Readonly<Record<string, string>>;
}
