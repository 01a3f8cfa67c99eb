/** Strut and rod (T03): four hangers, each passed, or sent back for its rod, locknut, strap or torque. */
import { type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import type { Drawn } from '../../model.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lengthFact, lineOf, numberFact, rowsFact, wordFact } from '../parts/told.ts';

const wants = {
  rod: ['three-eighths', 'half'],
  stated: 'whole',
  hangers: {
    rows: {
      fault: ['none', 'none', 'rod', 'locknut', 'strap', 'torque'],
      hung: ['clamp', 'clamp', 'through'],
      more: 'length',
      less: 'length',
      over: 'whole',
      under: 'whole',
    },
  },
} as const;
type Given = Drawn<typeof wants>;

/** A rod stands in its nut or coupling by its own diameter at least: common practice, no source. */
export const ROD: Readonly<Record<Given['rod'], Ticks>> = {
  'three-eighths': ticks((8128 * 3) / 8),
  half: ticks(8128 / 2),
};

interface Hanger {
  readonly engaged: Ticks;
  readonly locknut: 'tight' | 'missing';
  readonly hung: 'clamp' | 'through';
  readonly strap: 'on' | 'off';
  readonly torque: number;
}
interface Job {
  readonly drawn: Given;
  readonly hangers: readonly Hanger[];
  /** Least engagement, least torque. */
  readonly rod: number;
  readonly torque: number;
  readonly looksAt: { readonly locknut: boolean; readonly strap: 'at clamps' | 'nowhere' | 'everywhere' };
}

function hangerOf(row: Given['hangers'][number], rod: Ticks, stated: number): Hanger | null {
  // A strap belongs to a beam clamp; rod through a drilled angle has none.
  if (row.fault === 'strap' && row.hung === 'through') return null;
  return {
    engaged: ticks(row.fault === 'rod' ? rod - row.less : rod + row.more),
    locknut: row.fault === 'locknut' ? 'missing' : 'tight',
    hung: row.hung,
    strap: row.hung === 'clamp' && row.fault !== 'strap' ? 'on' : 'off',
    torque: row.fault === 'torque' ? stated - row.under : stated + row.over,
  };
}

function judged({ hangers, rod, torque, looksAt }: Job, i: number): string {
  const hanger = hangers[i];
  if (hanger === undefined) return 'holds';
  if (hanger.engaged < rod) return 'rod';
  if (looksAt.locknut && hanger.locknut === 'missing') return 'locknut';
  const strapWanted =
    looksAt.strap === 'everywhere' || (looksAt.strap === 'at clamps' && hanger.hung === 'clamp');
  if (strapWanted && hanger.strap === 'off') return 'strap';
  return hanger.torque < torque ? 'torque' : 'holds';
}

const say = lineOf('working');
const ask = (i: number) => ({
  kind: 'choice' as const,
  answer: (job: Job) => judged(job, i),
  steps: (job: Job) => [
    say('hanger', {
      number: i + 1,
      engaged: shortLength(job.hangers[i]?.engaged ?? ticks(0)),
      rod: shortLength(ticks(job.rod)),
      torque: job.hangers[i]?.torque ?? 0,
      stated: job.torque,
    }),
  ],
});

export const strutAndRod = slippingModel<typeof wants, Job>({
  wants,
  plan: (drawn) => {
    const rod = ROD[drawn.rod];
    const hangers = drawn.hangers.flatMap((row) => hangerOf(row, rod, drawn.stated) ?? []);
    if (hangers.length < drawn.hangers.length) return null;
    const job: Job = {
      drawn,
      hangers,
      rod,
      torque: drawn.stated,
      looksAt: { locknut: true, strap: 'at clamps' },
    };
    const found = hangers.map((_, i) => judged(job, i));
    return found.includes('holds') && found.some((one) => one !== 'holds') ? job : null;
  },
  facts: ({ drawn, hangers }) => ({
    rod: wordFact(drawn.rod),
    stated: numberFact(drawn.stated),
    hangers: rowsFact(
      hangers.map(({ engaged, locknut, hung, strap, torque }) => ({
        engaged: lengthFact(engaged),
        locknut: wordFact(locknut),
        hung: wordFact(hung),
        strap: wordFact(strap),
        torque: numberFact(torque),
      })),
    ),
    rule: wordFact('rule'),
  }),
  asks: { 'hanger-1': ask(0), 'hanger-2': ask(1), 'hanger-3': ask(2), 'hanger-4': ask(3) },
  slips: {
    rodUnseen: (job) => ({ ...job, rod: 0 }),
    locknutForgotten: (job) => ({ ...job, looksAt: { ...job.looksAt, locknut: false } }),
    strapForgotten: (job) => ({ ...job, looksAt: { ...job.looksAt, strap: 'nowhere' } }),
    tightByFeel: (job) => ({ ...job, torque: 0 }),
    strapEverywhere: (job) => ({ ...job, looksAt: { ...job.looksAt, strap: 'everywhere' } }),
    twiceTheRod: (job) => ({ ...job, rod: 2 * job.rod }),
  },
  figures: () => [],
  figured: () => [],
  says: keysOf('working', ['hanger']),
});
