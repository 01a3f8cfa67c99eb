/** Grades answers to a draw: a verdict an ask, with the mistake that explains it. Same draw, same answers, same grade. */
import { readAnswers } from './answer.ts';
import {
  blamedFor,
  brokenBy,
  type Cause,
  carriedMistake,
  leftOutOf,
  mistakeOf,
  partMistakes,
  twoMistakes,
} from './diagnose.ts';
import { askOf, criticalIn, type Draw, goingOn } from './draw.ts';
import type { Ask, PartAsk } from './family.ts';
import { type Found, said, type Verdict } from './gradeWords.ts';
import { kindOf } from './kinds/index.ts';
import { type Parts, partHolds } from './kinds/job.ts';
import type { Mark } from './kinds/marks.ts';
import { isNumber } from './kinds/number.ts';
import { setOf } from './kinds/setOf.ts';
import type { Answer, Answers, World } from './model.ts';
import type { Language } from './words.ts';

export type { Verdict } from './gradeWords.ts';

export interface Finding {
  readonly ask: string;
  readonly verdict: Verdict;
  /** The mistake that explains a wrong answer; two that were made at once are joined by `+`; `null`: none known. */
  readonly mistake: string | null;
  /** A number that is out: above the right one is `long`, below it `short`. */
  readonly direction?: 'long' | 'short';
  /** Place and faults with one right answer: of each mark given, whether it is wanted there. */
  readonly marks?: readonly boolean[];
  /** Job: of each part, whether it holds. */
  readonly parts?: Readonly<Record<string, boolean>>;
  readonly says: string;
}

export interface Grade {
  /** From 0 to 100: the share of asks that hold, or hold from there. */
  readonly score: number;
  /** Every critical ask holds, and the share reaches the family's mark. */
  readonly passed: boolean;
  /** Asks that must hold in this draw, and do not. */
  readonly criticalMissed: readonly string[];
  readonly findings: readonly Finding[];
}

/**
 * @param given  answers by ask as they came in; see `readAnswers` for their forms
 * @throws {GivenError} when an answer cannot be read or is to something that was not asked
 */
export function gradeDraw(
  draw: Draw,
  given: Readonly<Record<string, unknown>>,
  world: World,
  language: Language,
): Grade {
  const { family } = draw;
  const answers = readAnswers(draw, given, world);
  const found = new Map<string, Found>();
  for (const ask of family.asks) found.set(ask.id, judge(draw, ask, answers, found, world));

  const findings = family.asks.map((ask) =>
    finding(draw, ask, found.get(ask.id) as Found, answers[ask.id], world, language),
  );
  const held = findings.filter((f) => f.verdict === 'holds' || f.verdict === 'holds from there').length;
  const score = Math.round((100 * held) / findings.length);
  const criticalMissed = criticalIn(draw, world).filter((id) => found.get(id)?.verdict !== 'holds');
  return { score, passed: criticalMissed.length === 0 && score >= family.mark, criticalMissed, findings };
}

function judge(
  draw: Draw,
  ask: Ask,
  answers: Answers,
  earlier: ReadonlyMap<string, Found>,
  world: World,
): Found {
  const given = answers[ask.id];
  const found = (verdict: Verdict, cause: Cause = []): Found => ({ verdict, cause });
  if (given === undefined) return found('blank');
  if (holds(draw, ask, given, world)) return found('holds');
  const followed = follows(draw, ask, answers, earlier, world);
  if (followed !== null) return found(followed);
  const own = mistakeOf(draw, ask, given);
  if (own.length > 0) return found('rework', own);
  if (kindOf(ask).near(ask, given, draw.right[ask.id] as Answer)) return found('near');
  const carried = carriedMistake(draw, ask, answers, world);
  if (carried.length > 0) return found('rework', carried);
  for (const look of [blamedFor, partMistakes, twoMistakes]) {
    const cause = look(draw, ask, given, world);
    if (cause.length > 0) return found('rework', cause);
  }
  return found('rework');
}

function holds(draw: Draw, ask: Ask, given: Answer, world: World): boolean {
  if (ask.kind === 'order') {
    const order = given as readonly string[];
    return leftOutOf(draw, ask, order).length === 0 && brokenBy(draw, ask, order).length === 0;
  }
  // What lies within the tolerance of the right one holds, whatever else a model lets hold.
  if (kindOf(ask).same(ask, given, draw.right[ask.id] as Answer)) return true;
  return askOf(draw.model, ask.id).holds?.(draw.plan, world, given, ask) ?? false;
}

/**
 * Right for what was answered before: it holds where that held, each inside its tolerance, and else holds from there.
 * `null`: it does not follow.
 */
function follows(
  draw: Draw,
  ask: Ask,
  answers: Answers,
  earlier: ReadonlyMap<string, Found>,
  world: World,
): 'holds' | 'holds from there' | null {
  const wanted = goingOn(draw, ask, draw.plan, answers, world);
  if (wanted === null || !kindOf(ask).same(ask, answers[ask.id] as Answer, wanted)) return null;
  const before = askOf(draw.model, ask.id).follows?.asks ?? [];
  return before.every((id) => earlier.get(id)?.verdict === 'holds') ? 'holds' : 'holds from there';
}

function finding(
  draw: Draw,
  ask: Ask,
  { verdict, cause }: Found,
  given: Answer | undefined,
  world: World,
  language: Language,
): Finding {
  const mistake = cause.length === 0 ? null : cause.map((m) => m.id).join('+');
  const wrong = verdict === 'near' || verdict === 'rework';
  const out = wrong && isNumber(ask) ? (given as number) - (draw.right[ask.id] as number) : undefined;
  const several: Several = given === undefined ? {} : partsOf(draw, ask, given, verdict);
  return {
    ask: ask.id,
    verdict,
    mistake,
    ...(out === undefined ? {} : { direction: out > 0 ? 'long' : 'short' }),
    ...several,
    says: said({ draw, ask, given, out, parts: several.parts, world }, { verdict, cause }, language),
  };
}

type Several = Pick<Finding, 'marks' | 'parts'>;

/** Which of several things in an answer hold: each mark of a run, each part of a step. */
function partsOf(draw: Draw, ask: Ask, given: Answer, verdict: Verdict): Several {
  const right = draw.right[ask.id] as Answer;
  if (ask.kind === 'job') {
    const all = verdict === 'holds' || verdict === 'holds from there';
    const holds = (part: PartAsk) => partHolds(kindOf(part), part, given as Parts, right as Parts);
    return { parts: Object.fromEntries(ask.parts.map((part) => [part.id, all || holds(part)])) };
  }
  if (ask.kind !== 'place' && ask.kind !== 'faults') return {};
  // Where many answers hold, only the model's notes can say which mark does not.
  if (askOf(draw.model, ask.id).holds !== undefined) return {};
  const { extra } = setOf(ask, given, right);
  return { marks: (given as readonly Mark[]).map((mark) => !extra.includes(mark)) };
}
