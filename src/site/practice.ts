/** How a practice page speaks of a draw: the tries, the verdict in one line, answers as a person reads them. Pure. */
import type { Finding, Grade, Verdict } from '../practice/grade.ts';
import type { Answer, FaultAt, PlacedAt, StickCut } from '../practice/model.ts';
import type { ShownAsk } from '../practice/show.ts';
import { formatLength, fromInches } from '../trade/length.ts';
import { shortLength } from '../trade/shortLength.ts';
import { type SiteKey, type Tell, unbroken } from './speak.ts';

/** Answers as the engine takes them: a number in the ask's unit, an option's id, items in order. A blank is left out. */
export type Given = Readonly<Record<string, Answer>>;

/** "first try", "second try" … */
export function tryText(tell: Tell, number: number): string {
  const named: readonly SiteKey[] = ['practicePage.try1', 'practicePage.try2', 'practicePage.try3'];
  const key = named[number - 1];
  return key === undefined ? tell('practicePage.tryMore', { number }) : tell(key);
}

/** A draw's text: what it is about, and line by line what has to hold in it. */
export function textParts(text: string): { readonly lead: string; readonly rules: readonly string[] } {
  const [lead = '', ...rules] = text.split('\n');
  return { lead, rules };
}

/** What is asked, without where to measure from: that is for whoever answers in writing, not on the figure. */
export const question = ({ prompt }: Pick<ShownAsk, 'prompt'>): string => unbroken(textParts(prompt).lead);

const countOf = (grade: Grade, verdict: Verdict): number =>
  grade.findings.filter((finding) => finding.verdict === verdict).length;

/** The verdict in one line, and a second line that counts the rest. */
export function verdictText(tell: Tell, grade: Grade): { readonly line: string; readonly rest: string } {
  const of = grade.findings.length;
  const counts = {
    holds: countOf(grade, 'holds'),
    from: countOf(grade, 'holds from there'),
    near: countOf(grade, 'near'),
    rework: countOf(grade, 'rework'),
    blank: countOf(grade, 'blank'),
  };
  const first = (['rework', 'near', 'blank', 'from'] as const).find((name) => counts[name] > 0);
  const line =
    first === undefined
      ? tell(of === 1 ? 'practicePage.holdsOne' : 'practicePage.holdsAll', { of })
      : tell(`practicePage.${first}Of`, { count: counts[first], of });
  const rest = (['holds', 'from', 'near', 'rework', 'blank'] as const)
    .filter((name) => name !== first && counts[name] > 0 && counts[name] < of)
    .map((name) => tell(`practicePage.${name}Count`, { count: counts[name] }));
  return { line, rest: rest.join(' ') };
}

/** An answer as a person reads it: one row, or of several things set down, named or laid out a row each; none for a blank. */
export function answerRows(tell: Tell, ask: ShownAsk, answer: Given[string] | undefined): readonly string[] {
  if (answer === undefined) return [];
  if (typeof answer === 'number') {
    if (ask.unit === 'in') return [formatLength(fromInches(answer), 64)];
    return [ask.unit === 'count' ? String(answer) : `${answer} ${tell(`unit.${ask.unit}` as SiteKey)}`];
  }
  if (typeof answer === 'string') return [named(ask, answer)];
  if (Array.isArray(answer)) return answer.flatMap((one) => rowText(tell, ask, one));
  return (ask.parts ?? []).flatMap((part) => {
    const text = answerText(tell, part, (answer as Given)[part.id]);
    return text === '' ? [] : [tell('asks.part', { prompt: question(part), answer: text })];
  });
}

/** The same in one line. */
export const answerText = (tell: Tell, ask: ShownAsk, answer: Given[string] | undefined): string =>
  answerRows(tell, ask, answer).join(ask.kind === 'job' ? ' ' : '; ');

const named = ({ options }: ShownAsk, id: string): string =>
  options?.find((option) => option.id === id)?.text ?? id;

/** A thing set down, a fault named, a length with what is cut from it; nothing of an item of an order. */
function rowText(tell: Tell, ask: ShownAsk, row: string | PlacedAt | FaultAt | StickCut): readonly string[] {
  if (typeof row === 'string') return [];
  if ('from' in row) {
    const pieces = row.pieces.map((piece) => shortLength(fromInches(piece))).join(', ');
    return [tell('asks.cutFrom', { from: named(ask, row.from), pieces })];
  }
  const where = { leg: row.leg, at: shortLength(fromInches(row.at)) };
  return 'rule' in row
    ? [tell('asks.fault', { ...where, rule: named(ask, row.rule) })]
    : [tell('asks.placed', { ...where, what: named(ask, row.what) })];
}

/** What one ask came to, with the number of its note when it is rework. */
export interface Outcome {
  readonly ask: ShownAsk;
  readonly finding: Finding;
  readonly rows: readonly string[];
  readonly note: number | null;
  /** Of a step of a job, its parts. */
  readonly parts: readonly PartOutcome[];
}

export interface PartOutcome {
  readonly id: string;
  readonly prompt: string;
  readonly rows: readonly string[];
  readonly holds: boolean;
}

export function outcomes(
  tell: Tell,
  asks: readonly ShownAsk[],
  grade: Grade,
  given: Given,
): readonly Outcome[] {
  let note = 0;
  return grade.findings.flatMap((finding) => {
    const ask = asks.find(({ id }) => id === finding.ask);
    if (ask === undefined) return [];
    if (finding.verdict === 'rework') note += 1;
    return [
      {
        ask,
        finding,
        rows: answerRows(tell, ask, given[ask.id]),
        parts: (ask.parts ?? []).map((part) => ({
          id: part.id,
          prompt: question(part),
          rows: answerRows(tell, part, (given[ask.id] as Given | undefined)?.[part.id]),
          holds: finding.parts?.[part.id] ?? false,
        })),
        note: finding.verdict === 'rework' ? note : null,
      },
    ];
  });
}

/** The unit of an ask as a person may write it after the number. */
const unitsWritten: Readonly<Record<string, RegExp>> = {
  in: /\s*(?:in\.?|")$/i,
  in2: /\s*(?:in²|in\^?2|sq\.? ?in\.?)$/i,
  ft: /\s*(?:ft\.?|')$/i,
  mm: /\s*mm$/i,
  lb: /\s*lbs?\.?$/i,
  lbPerFt: /\s*lbs?\.?\s*(?:\/|per)\s*ft\.?$/i,
  deg: /\s*(?:°|deg\.?|degrees)$/i,
  degF: /\s*°? ?F$/i,
  degC: /\s*°? ?C$/i,
  A: /\s*A$/i,
  ohm: /\s*ohms?$/i,
  percent: /\s*(?:%|percent)$/i,
  hour: /\s*h(?:ours?)?$/i,
  minute: /\s*min(?:utes?)?$/i,
};

/** Units that go below 0. */
const BELOW_0 = new Set(['degF', 'degC']);

/**
 * A number typed plainly: digits with at most one point, the ask's own unit after it or not; a temperature may have its
 * minus sign. Anything else is `undefined` (a comma may part thousands or decimals, so it is asked about, not guessed);
 * empty is `null`.
 */
export function readNumber(text: string, unit = ''): number | null | undefined {
  const written = text.trim();
  if (written === '') return null;
  const ending = unitsWritten[unit];
  const plain = (ending === undefined ? written : written.replace(ending, '')).replace('−', '-');
  const number = BELOW_0.has(unit) ? /^-?\d*\.?\d+$/ : /^\d*\.?\d+$/;
  return number.test(plain) ? Number(plain) : undefined;
}
