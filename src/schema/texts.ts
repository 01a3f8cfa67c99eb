/**
 * What every text that a person reads must keep to: words that never appear, and the characters that our two
 * lettering files carry (a character outside them would fall back to another face).
 */
import type { Fault } from '../trade/given.ts';

/** A word that is not ours, what to say instead, and phrases in which it stands in its plain trade sense. */
interface Unsaid {
  readonly word: string;
  readonly instead: string;
  readonly but?: readonly string[];
}

const task = 'say sheet, task or procedure';
const state = 'say shown, not shown, or what remains';
const verdict = 'say holds or rework';

export const unsaid: readonly Unsaid[] = [
  { word: 'correct', instead: verdict, but: ['correct faults'] },
  { word: 'correctly', instead: verdict },
  { word: 'incorrect', instead: verdict },
  { word: 'incorrectly', instead: verdict },
  { word: 'completed', instead: state },
  { word: 'in progress', instead: state },
  { word: 'enrolled', instead: state },
  { word: 'overdue', instead: 'say again on the day, or time passed' },
  { word: 'expired', instead: 'say time passed' },
  { word: 'score', instead: verdict },
  { word: 'scores', instead: verdict },
  { word: 'level', instead: 'say what is meant: true, dead flat, height, or the state by its word' },
  { word: 'levels', instead: 'say what is meant: true, dead flat, height, or the state by its word' },
  { word: 'quiz', instead: task },
  { word: 'quizzes', instead: task },
  { word: 'question bank', instead: task },
  { word: 'module', instead: task },
  { word: 'modules', instead: task },
  { word: 'class code', instead: 'say sheet number and bench number' },
  { word: 'mastery', instead: 'say shown' },
  { word: 'challenge', instead: task },
  { word: 'challenges', instead: task },
  { word: 'deck', instead: task },
  { word: 'practice card', instead: 'say practice catalogue, or a draw' },
];

const characters = /[^\n\x20-\x7E\u00A0áéíóúüñÁÉÍÓÚÜÑ¿¡ªº«»–—‘’“”…·•°×÷±−§©½¼¾²³]/u;

/** The faults of one text; `field` is where it stands. */
export function textFaults(field: string, text: string): readonly Fault[] {
  const faults: Fault[] = [];
  // A place is filled before anybody reads it: its name stands on no page.
  const filledLater = text.replaceAll(/\{[\w-]+\}/g, '');
  for (const { word, instead, but = [] } of unsaid) {
    const rest = but.reduce((t, phrase) => t.replaceAll(new RegExp(phrase, 'gi'), ''), filledLater);
    const found = new RegExp(`(?<![\\p{L}-])${word}(?![\\p{L}-])`, 'iu').exec(rest);
    if (found !== null) {
      faults.push({ field, value: found[0], message: `"${found[0]}" never stands on a page`, todo: instead });
    }
  }
  const strange = characters.exec(text);
  if (strange !== null) {
    faults.push({
      field,
      value: strange[0],
      message: `the lettering has no ${strange[0]} (U+${strange[0].codePointAt(0)?.toString(16).toUpperCase().padStart(4, '0')})`,
      todo: 'write it in words or with a plain character',
    });
  }
  return faults;
}

/** Every text inside a value with the path of its field, as `forms[0].steps[2].title`. */
export function textsIn(value: unknown, path = ''): readonly (readonly [string, string])[] {
  if (typeof value === 'string') return [[path, value]];
  if (Array.isArray(value)) return value.flatMap((v, i) => textsIn(v, `${path}[${i}]`));
  if (value !== null && typeof value === 'object') {
    return Object.entries(value).flatMap(([key, v]) => textsIn(v, path === '' ? key : `${path}.${key}`));
  }
  return [];
}
