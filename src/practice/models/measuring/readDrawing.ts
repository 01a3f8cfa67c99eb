/**
 * Read a drawing (T01): which revision a sheet is, whether it may be worked by, one dimension and one elevation read off it.
 * The sheet is drawn and not to scale; a row of its table that is not issued is no revision to build by.
 */
import {
  CHANGES,
  drawExtract,
  type ExtractGiven,
  LEVELS,
  type Level,
  type Revision,
} from '../../../drawing/extract.ts';
import { inches, roundTo, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import type { Drawn } from '../../model.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lineOf, numberFact, wordFact } from '../parts/told.ts';

const wants = {
  sheet: 'whole',
  last: 'whole',
  newest: ['top', 'bottom'],
  state: ['issued', 'for-comment'],
  /** What the register of drawings names, beside what is in hand. */
  register: ['same', 'later', 'earlier'],
  first: 'length',
  second: 'length',
  third: 'length',
  bay: 'whole',
  steel: 'decimal',
  over: 'decimal',
  down: 'decimal',
  level: LEVELS,
} as const;

/** Most rows that the table shows. */
const ROWS = 3;
const rowsOf = (last: number) => Math.min(ROWS, last + 1);
const IDS = ['A', 'B', 'C', 'D', 'E', 'F'] as const;
const idOf = (n: number) => IDS[n] ?? '';
const optionOf = (n: number) => idOf(n).toLowerCase();

interface Job {
  readonly drawn: Drawn<typeof wants>;
  /** Last row of the table, and what is taken for the revision in hand; numbers from A = 0. */
  readonly last: number;
  readonly held: number;
  readonly register: number;
  readonly bays: readonly Ticks[];
  readonly reads: 'bay' | 'next bay' | 'overall' | 'scaled';
  readonly level: Level;
  /** The digits behind the point are taken for inches and tenths. */
  readonly inInches: boolean;
  readonly does: 'by the register' | 'work' | 'newer' | 'ask';
}

const total = (bays: readonly Ticks[]) => bays.reduce((sum, one) => sum + one, 0);

function dimension({ bays, drawn, reads }: Job): Ticks {
  const at = reads === 'next bay' ? drawn.bay % bays.length : drawn.bay - 1;
  if (reads === 'overall') return ticks(total(bays));
  // Drawn alike, the bays measure alike.
  if (reads === 'scaled') return roundTo(ticks(Math.round(total(bays) / bays.length)), 16);
  return bays[at] ?? ticks(0);
}

const ELEVATIONS: Readonly<Record<Level, (drawn: Job['drawn']) => number>> = {
  channel: ({ steel, over }) => steel + over,
  steel: ({ steel }) => steel,
  stand: ({ steel, down }) => steel - down,
};
const hundredths = (ft: number) => Math.round(ft * 100);
const elevationOf = (drawn: Job['drawn'], level: Level) => hundredths(ELEVATIONS[level](drawn)) / 100;

function elevation({ drawn, level, inInches }: Job): number {
  const ft = elevationOf(drawn, level);
  const whole = Math.floor(ft);
  // .75 taken for 7.5 in.
  return inInches ? whole + ((hundredths(ft) - whole * 100) / 10) * (1 / 12) : ft;
}

const nextOf = ({ held, register, does }: Job, revision = held) => {
  if (does !== 'by the register') return does;
  return revision === register ? 'work' : revision < register ? 'newer' : 'ask';
};

function extractOf({ drawn, last, bays }: Job): ExtractGiven {
  const rows = Array.from({ length: rowsOf(last) }, (_, i): Revision => {
    const n = last - i;
    const change = n === 0 ? 'first' : (CHANGES[1 + ((drawn.sheet + n) % (CHANGES.length - 1))] ?? 'first');
    return { id: idOf(n), change, issued: n !== last || drawn.state === 'issued' };
  });
  const lettered = (level: Level) => elevationOf(drawn, level).toFixed(2);
  return {
    sheet: drawn.sheet,
    bays,
    elevations: { channel: lettered('channel'), steel: lettered('steel'), stand: lettered('stand') },
    revisions: drawn.newest === 'top' ? rows : rows.reverse(),
  };
}

const say = lineOf('measuring');

export const readDrawing = slippingModel<typeof wants, Job>({
  wants,
  plan: (drawn) => {
    const { last, state, bay, level } = drawn;
    const held = state === 'issued' ? last : last - 1;
    const register = held + { same: 0, later: 1, earlier: -1 }[drawn.register];
    // A register names a revision that there can be.
    if (idOf(held) === '' || idOf(register) === '' || idOf(last) === '' || bay > 3) return null;
    return {
      drawn,
      last,
      held,
      register,
      bays: [drawn.first, drawn.second, drawn.third],
      reads: 'bay',
      level,
      inInches: false,
      does: 'by the register',
    };
  },
  facts: ({ drawn, register }) => ({
    sheet: numberFact(drawn.sheet),
    register: wordFact(idOf(register)),
    from: numberFact(drawn.bay),
    to: numberFact(drawn.bay + 1),
    level: wordFact(drawn.level),
    signs: wordFact('signs'),
  }),
  asks: {
    revision: {
      kind: 'reading',
      answer: ({ held }) => optionOf(held),
      steps: ({ held }) => [say('revisionHeld', { held: idOf(held) })],
    },
    next: {
      kind: 'choice',
      answer: (job) => nextOf(job),
      // Who asks, or fetches the sheet anew, although it is current harms nobody.
      critical: (job) => nextOf(job) !== 'work',
      steps: ({ held, register }) => [say('againstRegister', { held: idOf(held), register: idOf(register) })],
      follows: {
        asks: ['revision'],
        answer: (job, _, { revision }) =>
          nextOf(job, IDS.map((_id, n) => optionOf(n)).indexOf(revision as string)),
      },
    },
    dimension: {
      kind: 'reading',
      answer: (job) => inches(dimension(job)),
      steps: (job) => [
        say('dimensionRead', {
          from: job.drawn.bay,
          to: job.drawn.bay + 1,
          length: shortLength(dimension(job)),
        }),
      ],
    },
    elevation: {
      kind: 'reading',
      answer: elevation,
      steps: (job) => [say(`levelRead-${job.level}`, { elevation: elevation(job).toFixed(2) })],
    },
  },
  slips: {
    workedByOld: (job) => (nextOf(job) === 'newer' ? { ...job, does: 'work' } : null),
    workedAhead: (job) => (nextOf(job) === 'ask' ? { ...job, does: 'work' } : null),
    askedForOld: (job) => (nextOf(job) === 'newer' ? { ...job, does: 'ask' } : null),
    registerTrusted: (job) => (nextOf(job) === 'ask' ? { ...job, does: 'newer' } : null),
    askedThough: (job) => (nextOf(job) === 'work' ? { ...job, does: 'ask' } : null),
    fetchedThough: (job) => (nextOf(job) === 'work' ? { ...job, does: 'newer' } : null),
    notIssued: (job) => (job.held === job.last ? null : { ...job, held: job.last }),
    otherEnd: (job) => ({ ...job, held: job.last + 1 - rowsOf(job.last) }),
    registerRead: (job) => ({ ...job, held: job.register }),
    nextBay: (job) => ({ ...job, reads: 'next bay' }),
    overall: (job) => ({ ...job, reads: 'overall' }),
    scaled: (job) => ({ ...job, reads: 'scaled' }),
    markAbove: (job) =>
      job.level === 'channel' ? null : { ...job, level: job.level === 'steel' ? 'channel' : 'steel' },
    markBelow: (job) =>
      job.level === 'stand' ? null : { ...job, level: job.level === 'channel' ? 'steel' : 'stand' },
    pointForInches: (job) => ({ ...job, inInches: true }),
  },
  figures: (job, _, how) => [drawExtract(extractOf(job), how)],
  figured: ({ bays }) => {
    const shown = [...bays, ticks(total(bays))];
    return [
      { kind: 'sizes', ticks: shown },
      { kind: 'said', ticks: shown },
    ];
  },
  says: keysOf('measuring', [
    'revisionHeld',
    'againstRegister',
    'dimensionRead',
    ...LEVELS.map((level) => `levelRead-${level}`),
  ]),
});
