/** Load per foot (T02): cables, channel and what else lies on it, a foot. One cable's sheet gives pounds per 1000 ft. */
import { figure } from '../../../trade/figure.ts';
import type { Drawn } from '../../model.ts';
import { read } from '../parts/reads.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lineOf, numberFact, rowsFact, wordFact } from '../parts/told.ts';

const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  cables: { rows: { count: 'whole', weight: 'decimal' } },
  rolled: 'whole',
  thousand: 'whole',
  other: ['none', 'ice', 'cover'],
  otherWeight: 'decimal',
} as const;

interface Cable {
  readonly count: number;
  readonly lbPerFt: number;
}
interface Job {
  readonly width: string;
  readonly cables: readonly Cable[];
  /** The cable whose sheet speaks of 1000 ft, and how many feet it is taken to mean. */
  readonly rolled: { readonly count: number; readonly lb: number; readonly feet: number };
  readonly tray: number;
  readonly other: 'none' | 'ice' | 'cover';
  readonly otherLb: number;
  /** Kilograms a metre, where someone writes them for pounds a foot. */
  readonly times: number;
}

/** 1 lb/ft in kg/m: 0.45359237 kg over 0.3048 m (international yard and pound agreement, 1959). */
const KG_PER_M = 0.45359237 / 0.3048;
const sumOf = (cables: readonly Cable[]) => cables.reduce((sum, c) => sum + c.count * c.lbPerFt, 0);
const all = ({ cables, rolled }: Job): readonly Cable[] => [
  ...cables,
  { count: rolled.count, lbPerFt: rolled.lb / rolled.feet },
];
const load = (job: Job) => (sumOf(all(job)) + job.tray + job.otherLb) * job.times;
const oneEach = (job: Job): Job => ({
  ...job,
  cables: job.cables.map((c) => ({ ...c, count: 1 })),
  rolled: { ...job.rolled, count: 1 },
});

const say = lineOf('supporting');
const SAYS = ['cable', 'thousand', 'cables', 'load', 'loadWith'];

export const loadPerFoot = slippingModel<typeof wants, Job>({
  wants,
  plan: ({ width, cables, rolled, thousand, other, otherWeight }: Drawn<typeof wants>, world) => ({
    width,
    cables: cables.map(({ count, weight }) => ({ count, lbPerFt: weight })),
    rolled: { count: rolled, lb: thousand, feet: 1000 },
    tray: read(world, width, 'tray').weightLbPerFt,
    other,
    otherLb: other === 'none' ? 0 : otherWeight,
    times: 1,
  }),
  facts: ({ width, cables, rolled, tray, other, otherLb }) => ({
    width: wordFact(width),
    cables: rowsFact(
      cables.map(({ count, lbPerFt }, i) => ({
        letter: wordFact('ABC'[i] ?? ''),
        count: numberFact(count),
        weight: numberFact(lbPerFt, 2),
      })),
    ),
    rolled: numberFact(rolled.count),
    thousand: numberFact(rolled.lb),
    tray: numberFact(tray),
    other: wordFact(other),
    otherWeight: numberFact(otherLb, 2),
  }),
  asks: {
    load: {
      kind: 'number',
      answer: (job) => load(job),
      steps: (job) => [
        ...job.cables.map(({ count, lbPerFt }) =>
          say('cable', { count, weight: figure(lbPerFt) }, count * lbPerFt, 'lbPerFt'),
        ),
        say(
          'thousand',
          { count: job.rolled.count, lb: job.rolled.lb },
          (job.rolled.count * job.rolled.lb) / 1000,
          'lbPerFt',
        ),
        say('cables', {}, sumOf(all(job)), 'lbPerFt'),
        job.other === 'none'
          ? say('load', { tray: figure(job.tray) }, load(job), 'lbPerFt')
          : say('loadWith', { tray: figure(job.tray), other: figure(job.otherLb) }, load(job), 'lbPerFt'),
      ],
    },
  },
  slips: {
    trayLeftOut: (job) => ({ ...job, tray: 0 }),
    otherLeftOut: (job) => ({ ...job, otherLb: 0 }),
    oneOfEach: oneEach,
    placeSlipped: (job) => ({ ...job, rolled: { ...job.rolled, feet: 100 } }),
    placeLost: (job) => ({ ...job, rolled: { ...job.rolled, feet: 10_000 } }),
    kilograms: (job) => ({ ...job, times: KG_PER_M }),
  },
  figures: () => [],
  figured: () => [],
  says: keysOf('supporting', SAYS),
});
