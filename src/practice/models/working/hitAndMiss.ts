/** Hit and miss (T14): what a list found of the faults that were there, what it named that was none, and whether that is enough. */
import { figure } from '../../../trade/figure.ts';
import type { Drawn } from '../../model.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lineOf, numberFact, wordFact } from '../parts/told.ts';

const STATES = ['enough', 'critical', 'others', 'false', 'all'] as const;
const wants = {
  /** In what the list falls short: nothing, one thing alone, or all three. */
  state: STATES,
  critical: 'whole',
  criticalMissed: 'whole',
  other: 'whole',
  missed: 'whole',
  alarms: 'whole',
} as const;

/** Acceptance of T14, common practice, no source: every critical fault, four in five of the others, one false alarm in ten. */
export const LEAST_OTHER = 80;
export const MOST_FALSE = 10;

interface Job {
  readonly critical: number;
  readonly criticalFound: number;
  readonly other: number;
  readonly found: number;
  readonly alarms: number;
  readonly pooled: boolean;
  readonly of: 'list' | 'faults' | 'hits';
  readonly asks: { readonly allCritical: boolean; readonly fewFalse: boolean; readonly more: boolean };
}

const hits = (job: Job) =>
  job.pooled
    ? (100 * (job.criticalFound + job.found)) / (job.critical + job.other)
    : (100 * job.found) / job.other;
function falseShare({ alarms, criticalFound, found, critical, other, of }: Job): number {
  const base = {
    list: criticalFound + found + alarms,
    hits: criticalFound + found,
    faults: critical + other,
  }[of];
  return (100 * alarms) / base;
}
function verdict(job: Job): string {
  if (job.asks.allCritical && job.criticalFound < job.critical) return 'again';
  if (job.asks.fewFalse && falseShare(job) > MOST_FALSE) return 'again';
  return hits(job) < LEAST_OTHER || job.asks.more ? 'again' : 'holds';
}
/** What is drawn, as a number within a limit, or beyond it. */
const counted = (drawn: number, most: number, beyond: boolean): number =>
  beyond ? Math.floor(most) + 1 + (drawn % 3) : drawn % (Math.floor(most) + 1);
const say = lineOf('working');
const near = (one: number, other: number) => Math.abs(one - other) < 0.6;

export const hitAndMiss = slippingModel<typeof wants, Job>({
  wants,
  plan: (drawn: Drawn<typeof wants>) => {
    const short = (one: Drawn<typeof wants>['state']) => drawn.state === one || drawn.state === 'all';
    const criticalFound = drawn.critical - (short('critical') ? drawn.criticalMissed : 0);
    const mayMiss = (drawn.other * (100 - LEAST_OTHER)) / 100;
    const found = drawn.other - counted(drawn.missed, mayMiss, short('others'));
    const mayName = ((criticalFound + found) * MOST_FALSE) / (100 - MOST_FALSE);
    const job: Job = {
      critical: drawn.critical,
      criticalFound,
      other: drawn.other,
      found,
      alarms: counted(drawn.alarms, mayName, short('false')),
      pooled: false,
      of: 'list',
      asks: { allCritical: true, fewFalse: true, more: false },
    };
    return job.found < 1 || near(hits(job), LEAST_OTHER) || near(falseShare(job), MOST_FALSE) ? null : job;
  },
  facts: ({ critical, criticalFound, other, found, alarms }) => ({
    critical: numberFact(critical),
    criticalFound: numberFact(criticalFound),
    other: numberFact(other),
    found: numberFact(found),
    alarms: numberFact(alarms),
    entries: numberFact(criticalFound + found + alarms),
    leastOther: numberFact(LEAST_OTHER),
    mostFalse: numberFact(MOST_FALSE),
    rule: wordFact('rule'),
  }),
  asks: {
    hits: {
      kind: 'number',
      answer: hits,
      steps: (job) => [say('hitRate', { found: job.found, other: job.other }, hits(job), 'percent')],
    },
    'false-alarms': {
      kind: 'number',
      answer: falseShare,
      steps: (job) => [
        say(
          'falseRate',
          { alarms: job.alarms, entries: figure(job.criticalFound + job.found + job.alarms) },
          falseShare(job),
          'percent',
        ),
      ],
    },
    verdict: {
      kind: 'choice',
      answer: verdict,
      // Who is to show it again although it was enough harms nobody.
      critical: (job) => verdict(job) === 'again',
      steps: (job) => [say('criticalFound', { found: job.criticalFound, critical: job.critical })],
    },
  },
  slips: {
    criticalLikeOthers: (job) => ({ ...job, asks: { ...job.asks, allCritical: false } }),
    pooled: (job) => ({ ...job, pooled: true }),
    alarmsAsHits: (job) => ({ ...job, found: job.found + job.alarms }),
    falseOfFaults: (job) => ({ ...job, of: 'faults' }),
    falseOfHits: (job) => ({ ...job, of: 'hits' }),
    falseLetPass: (job) => ({ ...job, asks: { ...job.asks, fewFalse: false } }),
    askedForMore: (job) => ({ ...job, asks: { ...job.asks, more: true } }),
  },
  figures: () => [],
  figured: () => [],
  says: keysOf('working', ['hitRate', 'falseRate', 'criticalFound']),
});
