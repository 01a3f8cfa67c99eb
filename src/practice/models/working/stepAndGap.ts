/** Step and gap (T07): three plate splices with the step that is felt and the gap that is gauged, each passed or sent back. */
import { type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import type { Drawn } from '../../model.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lengthFact, lineOf, rowsFact, wordFact } from '../parts/told.ts';

const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  stated: ['nothing', 'nothing', 'tight', 'sixteenth', 'quarter'],
  splices: { rows: { step: 'length', gap: 'length' } },
} as const;
type Given = Drawn<typeof wants>;

/** Most that one channel may stand above the other: common practice, no source. */
export const STEP = ticks(8128 / 16);
/** What the maker's page may state for the gap (training values). */
const STATED = { tight: ticks(8128 / 32), sixteenth: ticks(8128 / 16), quarter: ticks(8128 / 4) } as const;

interface Job {
  readonly drawn: Given;
  readonly step: Ticks | null;
  /** `null`: let pass, however wide. */
  readonly gap: Ticks | null;
  readonly atLimit: 'holds' | 'fails';
}

function judged({ drawn, step, gap, atLimit }: Job, i: number): string {
  const { splices } = drawn;
  const row = splices[i];
  if (row === undefined) return 'holds';
  const over = (seen: Ticks, limit: Ticks | null) =>
    limit !== null && (atLimit === 'holds' ? seen > limit : seen >= limit && seen > 0);
  const [tooHigh, tooWide] = [over(row.step, step), over(row.gap, gap)];
  return tooHigh && tooWide ? 'both' : tooHigh ? 'step' : tooWide ? 'gap' : 'holds';
}

const say = lineOf('working');
const ask = (i: number) => ({
  kind: 'choice' as const,
  answer: (job: Job) => judged(job, i),
  steps: (job: Job) => [
    say('stepAndGap', {
      number: i + 1,
      step: shortLength(job.drawn.splices[i]?.step ?? ticks(0)),
      stepLimit: shortLength(job.step ?? ticks(0)),
      gap: shortLength(job.drawn.splices[i]?.gap ?? ticks(0)),
      gapLimit: shortLength(job.gap ?? ticks(0)),
    }),
  ],
});

export const stepAndGap = slippingModel<typeof wants, Job>({
  wants,
  plan: (drawn, world) => {
    const gap = drawn.stated === 'nothing' ? world.tables.limits.buttGap.value : STATED[drawn.stated];
    const job: Job = { drawn, step: STEP, gap, atLimit: 'holds' };
    const found = drawn.splices.map((_, i) => judged(job, i));
    // One that holds and one that does not.
    return found.includes('holds') && found.some((one) => one !== 'holds') ? job : null;
  },
  facts: ({ drawn }, world) => ({
    width: wordFact(drawn.width),
    stated: wordFact(drawn.stated),
    buttGap: lengthFact(world.tables.limits.buttGap.value),
    stepLimit: lengthFact(STEP),
    splices: rowsFact(
      drawn.splices.map(({ step, gap }) => ({ step: lengthFact(step), gap: lengthFact(gap) })),
    ),
    rule: wordFact('rule'),
  }),
  asks: { 'splice-1': ask(0), 'splice-2': ask(1), 'splice-3': ask(2) },
  slips: {
    gapMadeUp: (job) => ({ ...job, gap: null }),
    stepLetPass: (job) => ({ ...job, step: null }),
    statedOverlooked: (job, world) =>
      job.drawn.stated === 'nothing' ? null : { ...job, gap: world.tables.limits.buttGap.value },
    limitsExchanged: (job) => ({ ...job, step: job.gap, gap: job.step }),
    limitFails: (job) => ({ ...job, atLimit: 'fails' }),
  },
  figures: () => [],
  figured: () => [],
  says: keysOf('working', ['stepAndGap']),
});
