/**
 * What a witness saw, as it is put together on the page: what keeps Shown from being offered, what is still open, what
 * the signature will say, and the check that goes to the register. Pure.
 */
import type { AnswersFile, SheetGrade } from '../practice/sheet.ts';
import type { CheckGiven } from '../register/acts/check.ts';
import type { Help, Manner, Measured, Outcome, Point, Variant } from '../register/bodies.ts';
import type { JsonObject } from '../register/canonical.ts';
import { addMonths, isDay } from '../register/days.ts';
import { type MapTask, monthsOf, revisionOn } from '../register/taskMap.ts';
import { type Ticks, ticks } from '../trade/length.ts';
import { shortLength } from '../trade/shortLength.ts';
import { dayText } from './dates.ts';
import type { SiteKey, Speak, Tell } from './speak.ts';
import { variantText } from './variants.ts';

export type How = Point['how'];

/** Nothing is chosen beforehand: `null` and the empty text are open. */
export interface Saw {
  readonly person: string;
  readonly task: string;
  readonly variant: Variant;
  readonly on: string;
  readonly answers: AnswersFile | null;
  /** By critical point. */
  readonly points: Readonly<Record<string, How>>;
  readonly measured: readonly Measured[];
  readonly manner: Manner | null;
  readonly help: Help | null;
  readonly inSight: boolean | null;
  readonly stopped: boolean;
  readonly outcome: Outcome | null;
}

export const nothingSeen: Saw = {
  person: '',
  task: '',
  variant: {},
  on: '',
  answers: null,
  points: {},
  measured: [],
  manner: null,
  help: null,
  inSight: null,
  stopped: false,
  outcome: null,
};

/** What the page knows of the task beside the register's own map. */
export interface WitnessTask extends MapTask {
  /** `null`: they come with the task's procedure. */
  readonly critical: readonly string[] | null;
  /** Pieces or positions that the task wants measured. */
  readonly measures: number;
}

/** Why Shown is not offered. */
export const barKeys = ['stopped', 'missed', 'open', 'answers'] as const;
export type Bar = (typeof barKeys)[number];

export function bars(saw: Saw, task: WitnessTask | undefined, grade: SheetGrade | undefined): readonly Bar[] {
  const critical = task?.critical ?? [];
  const found: Readonly<Record<Bar, boolean>> = {
    stopped: saw.stopped,
    missed: critical.some((point) => saw.points[point] === 'missed'),
    open: critical.some((point) => saw.points[point] === undefined),
    answers: grade !== undefined && !grade.passed,
  };
  return barKeys.filter((bar) => found[bar]);
}

/** The outcome as it stands: Shown falls away when something comes to bar it. */
export const outcomeOf = (saw: Saw, barred: readonly Bar[]): Outcome | null =>
  saw.outcome === 'shown' && barred.length > 0 ? null : saw.outcome;

/** Whether it was done, alone and in sight: all else counts as practice only. */
export const isWhole = ({ manner, help, inSight }: Saw): boolean =>
  manner === 'performed' && help === 'alone' && inSight === true;

/** Whether the answers are the person's own and about the task. */
export const answersBelong = ({ answers, person, task }: Saw): boolean =>
  answers === null || (answers.person === person.trim() && answers.task === task);

/** Pairs of the task for which the witness has not said how it was: none is taken for granted. */
export const openPairs = ({ variant }: Saw, task: WitnessTask | undefined): readonly string[] =>
  Object.keys(task?.variants ?? {}).filter((pair) => variant[pair] === undefined);

/** What must be chosen before anything can be signed. */
export function stillOpen(
  saw: Saw,
  task: WitnessTask | undefined,
  outcome: Outcome | null,
): readonly SiteKey[] {
  const open: readonly (readonly [boolean, SiteKey])[] = [
    [saw.person.trim() === '', 'witness.openWho'],
    [saw.task === '', 'witness.openTask'],
    [openPairs(saw, task).length > 0, 'witness.openPairs'],
    [!isDay(saw.on.trim()), 'witness.openDay'],
    [saw.manner === null, 'witness.openManner'],
    [saw.help === null, 'witness.openHelp'],
    [saw.inSight === null, 'witness.openSight'],
    [!answersBelong(saw), 'witness.openAnswers'],
    [outcome === null, 'witness.openOutcome'],
  ];
  return open.filter(([is]) => is).map(([, key]) => key);
}

/** The check as the register takes it; only once nothing is open. */
export function givenOf(saw: Saw, outcome: Outcome): CheckGiven {
  return {
    person: saw.person.trim(),
    task: saw.task,
    outcome,
    on: saw.on.trim(),
    variant: saw.variant,
    manner: saw.manner ?? undefined,
    help: saw.help ?? undefined,
    inSight: saw.inSight ?? undefined,
    stopped: saw.stopped,
    points: Object.entries(saw.points).map(([point, how]) => ({ point, how })),
    measured: saw.measured,
    evidence: saw.answers === null ? null : (saw.answers as unknown as JsonObject),
  };
}

export interface SayAsked {
  readonly saw: Saw;
  readonly outcome: Outcome;
  readonly task: WitnessTask;
  /** Who signs, as the register knows the key's person. */
  readonly me: string;
  readonly grade: SheetGrade | undefined;
  readonly sheetNumber: number;
  readonly speak: Speak;
  readonly tell: Tell;
}

/** What the signature will say, one sentence in the first person. */
export function signatureSays({ saw, outcome, task, me, grade, sheetNumber, speak, tell }: SayAsked): string {
  const pairs = variantText(task, saw.variant, speak);
  const head = tell(saw.inSight === true ? 'witness.sawAt' : 'witness.enterAt', {
    me,
    person: saw.person.trim(),
    task: `${task.id} ${speak({ say: `${task.id}.name` })}`,
    revision: revisionOn(task, saw.on),
    variant: pairs === '' ? '' : tell('witness.inVariant', { pairs }),
    day: dayText(tell, saw.on.trim()),
  });
  const count = (how: How) => Object.values(saw.points).filter((one) => one === how).length;
  const clauses = [
    [tell(`witness.did-${saw.manner ?? 'performed'}`), tell(`witness.did-${saw.help ?? 'alone'}`)].join(', '),
    grade === undefined || saw.answers === null
      ? ''
      : tell('witness.sayAnswers', {
          held: grade.held,
          draws: grade.draws.length,
          number: sheetNumber,
          bench: grade.bench,
          device: saw.answers.device,
        }),
    Object.keys(saw.points).length === 0
      ? ''
      : tell('witness.sayPoints', { seen: count('seen'), asked: count('asked'), missed: count('missed') }),
    measuredText(saw, task, tell),
    saw.stopped ? tell('witness.sayStopped') : '',
  ].filter((clause) => clause !== '');
  return tell('witness.sentence', {
    head,
    clauses: clauses.join('; '),
    end: endOf(saw, outcome, task, tell),
  });
}

/** How many were measured, against how many the task asks for. */
function measuredText({ measured }: Saw, { measures }: WitnessTask, tell: Tell): string {
  const count = measured.length;
  if (measures > 0) return tell('witness.sayMeasuredOf', { count, n: measures });
  return count === 0 ? '' : tell('witness.sayMeasured', { count });
}

function endOf(saw: Saw, outcome: Outcome, task: WitnessTask, tell: Tell): string {
  if (outcome === 'not-yet') return tell('witness.endNotYet');
  if (!isWhole(saw)) return tell('witness.endPractice');
  if (task.second) return tell('witness.endSecond');
  return tell('witness.endShown', { until: dayText(tell, addMonths(saw.on.trim(), monthsOf(task))) });
}

/** How far a measure is out, in words; a length to 1/64 in. */
export function outText(wanted: Ticks, got: Ticks, tell: Tell): string {
  if (wanted === got) return tell('witness.outNone');
  const amount = shortLength(ticks(Math.abs(got - wanted)), 64);
  return tell(got > wanted ? 'witness.outLong' : 'witness.outShort', { amount });
}
