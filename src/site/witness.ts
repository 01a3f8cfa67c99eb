/**
 * What a witness saw, as it is put together on the page: what keeps Shown from being offered, what is still open, what
 * the signature will say, and the check that goes to the register. Pure.
 */
import type { AnswersFile, SheetGrade } from '../practice/sheet.ts';
import type { CheckGiven } from '../register/acts/check.ts';
import { covers } from '../register/appointments.ts';
import type { Bodies, Help, Manner, Measured, Outcome, Point, Variant } from '../register/bodies.ts';
import type { JsonObject } from '../register/canonical.ts';
import {
  type Circumstances,
  circumstanceRows,
  circumstancesOf,
  measuresOf,
} from '../register/circumstances.ts';
import { addMonths, isDay } from '../register/days.ts';
import type { Judged } from '../register/judged.ts';
import { type MapTask, monthsOf, revisionOn } from '../register/taskMap.ts';
import type { Fault } from '../trade/given.ts';
import { formatLength, readLength, type Ticks, ticks } from '../trade/length.ts';
import { shortLength } from '../trade/shortLength.ts';
import { dayText } from './dates.ts';
import type { SiteKey, Speak, Tell } from './speak.ts';
import { tried } from './tried.ts';
import { valueName, variantText } from './variants.ts';

export type How = Point['how'];

/** Nothing is chosen beforehand: `null` and the empty text are open. Shift and place may stay open. */
export interface Saw extends Circumstances {
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
  shift: null,
  place: null,
  paper: false,
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

/** Fields of the page that what a register refuses may be about while other things are still open. */
const early: Readonly<Record<string, (saw: Saw) => boolean>> = {
  person: ({ person }) => person.trim() !== '',
  task: ({ task }) => task !== '',
  key: ({ task }) => task !== '',
  on: ({ on }) => on.trim() !== '',
  device: () => true,
  at: () => true,
};

/** What is refused of who, which task and which day, as far as those are written: the rest is not chosen yet. */
export const earlyFaults = (saw: Saw, faults: readonly Fault[]): readonly Fault[] =>
  faults.filter(({ field }) => early[field]?.(saw) === true);

/** Whether a key is appointed for a task on the day seen; of a day that is none yet, on any. */
export const mayCheck = ({ authority }: Judged, key: string, task: string, on: string): boolean =>
  authority.appointments.some(
    (a) => a.key === key && covers(a, task, isDay(on.trim()) ? on.trim() : '9999-12-31'),
  );

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
    measured: [...saw.measured, ...circumstanceRows(saw)],
    evidence: saw.answers === null ? null : (saw.answers as unknown as JsonObject),
  };
}

/** A check of the register as it was once put together, to be said again. */
export function sawOf(person: string, body: Bodies['check']): Saw {
  const { task, variant, on, points, measured, manner, help, inSight, stopped, outcome, evidence } = body;
  return {
    ...{ person, task, variant, on, manner, help, inSight, stopped, outcome },
    answers: evidence as unknown as AnswersFile | null,
    points: Object.fromEntries(points.map(({ point, how }) => [point, how])),
    measured: measuresOf(measured),
    ...circumstancesOf(measured),
  };
}

export interface SayAsked {
  readonly saw: Saw;
  readonly outcome: Outcome;
  readonly task: WitnessTask;
  /** The revision signed for; that in force on the day seen when left out. */
  readonly revision?: number | undefined;
  /** The day it is entered, in the register's zone. */
  readonly entered: string;
  /** The person as he is spoken of, his id within; the id when left out. */
  readonly spoken?: string | undefined;
  /** Who signs, as the register knows the key's person. */
  readonly me: string;
  readonly grade: SheetGrade | undefined;
  readonly sheetNumber: number;
  readonly speak: Speak;
  readonly tell: Tell;
}

/** "seen 3 March 2026, entered 9 March 2026, from paper"; empty where both are one day and no paper lies between. */
export function seenEntered({ on, paper }: Pick<Saw, 'on' | 'paper'>, entered: string, tell: Tell): string {
  const from = paper ? tell('look.fromPaper') : '';
  if (on.trim() === entered) return paper ? tell('look.sameDay', { from }) : '';
  return tell('look.seenEntered', { seen: dayText(tell, on.trim()), entered: dayText(tell, entered), from });
}

/** What the signature will say, one sentence in the first person; what goes with it stands in `signatureRows`. */
export function signatureSays(asked: SayAsked): string {
  const { saw, outcome, task, me, speak, tell } = asked;
  const revision = asked.revision ?? revisionOn(task, saw.on);
  const pairs = variantText(task, saw.variant, speak);
  const head = tell(saw.inSight === true ? 'witness.sawAt' : 'witness.enterAt', {
    me,
    person: asked.spoken ?? saw.person.trim(),
    task: `${task.id} ${speak({ say: `${task.id}.name` })}`,
    revision,
    variant: pairs === '' ? '' : tell('witness.inVariant', { pairs }),
    day: dayText(tell, saw.on.trim()),
  });
  const from = saw.paper ? tell('look.fromPaper') : '';
  const late = saw.on.trim() !== asked.entered;
  const enter = late
    ? tell('look.enterOn', { entered: dayText(tell, asked.entered), from })
    : saw.paper
      ? tell('look.enterSameDay', { from })
      : '';
  const count = (how: How) => Object.values(saw.points).filter((one) => one === how).length;
  const clauses = [
    [tell(`witness.did-${saw.manner ?? 'performed'}`), tell(`witness.did-${saw.help ?? 'alone'}`)].join(', '),
    answersText(asked),
    Object.keys(saw.points).length === 0
      ? ''
      : tell('witness.sayPoints', { seen: count('seen'), asked: count('asked'), missed: count('missed') }),
    measuredText(saw, task, tell),
    saw.stopped ? tell('witness.sayStopped') : '',
  ].filter((clause) => clause !== '');
  return tell('witness.sentence', {
    head: [
      head,
      saw.shift === null ? '' : tell(`look.on-${saw.shift}`),
      saw.place === null ? '' : tell('look.atPlace', { place: valueName('place', saw.place, speak) }),
      enter,
    ]
      .filter((part) => part !== '')
      .join(', '),
    clauses: clauses.join('; '),
    end: endOf(saw, outcome, task, tell),
  });
}

/** The answers that go along, and whether they were given in sight. */
function answersText({ saw: { answers, inSight }, grade, sheetNumber, tell }: SayAsked): string {
  if (answers === null) return '';
  const { bench, device } = answers;
  const said =
    grade === undefined
      ? tell('look.sayAnswers', { sheet: answers.sheet, bench, device })
      : tell('witness.sayAnswers', {
          held: grade.held,
          draws: grade.draws.length,
          number: sheetNumber,
          bench: grade.bench,
          device,
        });
  return tell(inSight === true ? 'look.inMySight' : 'look.outOfSight', { said });
}

/** What is signed along with the sentence, row by row: every measure with its tool, every point not simply seen. */
export function signatureRows(
  { saw, task }: Pick<SayAsked, 'saw' | 'task'>,
  speak: Speak,
  tell: Tell,
): readonly string[] {
  const named = (point: string) =>
    task.critical?.includes(point) === true ? speak({ say: `${task.id}.critical-${point}` }) : point;
  return [
    ...Object.entries(saw.points).flatMap(([point, how]) =>
      how === 'seen' ? [] : [tell(`look.point-${how}`, { point: named(point) })],
    ),
    ...saw.measured.map(({ what, wanted, got, tool }) =>
      tell(tool === null ? 'look.measure' : 'look.measureWith', { what, wanted, got, tool: tool ?? '' }),
    ),
  ];
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

/** How far a measure is out, where both of its texts are lengths as they are written here; empty for other readings. */
export function outOfTexts({ wanted, got }: Pick<Measured, 'wanted' | 'got'>, tell: Tell): string {
  const length = (text: string): Ticks | undefined => {
    const read = tried(() => readLength(text));
    return read.good && formatLength(read.value, 64) === text ? read.value : undefined;
  };
  const [a, b] = [length(wanted), length(got)];
  return a === undefined || b === undefined ? '' : outText(a, b, tell);
}
