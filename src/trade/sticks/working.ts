/** The working of a cutting plan, line by line. */
import type { Say, Step } from '../answer.ts';
import { formatLength, inches, ticks } from '../length.ts';
import type { Job } from './job.ts';
import { type Plan, rankOf } from './plan.ts';
import type { Found } from './write.ts';

const text = (n: number): string => formatLength(ticks(n), 64);

/** @param hand  the plan of the trade's rule of thumb, or null where it ran out of bars */
export function workingOf(job: Job, found: Found, hand: Plan | null): readonly Step[] {
  const [stock, used, longest, setups, stops] = rankOf(found.plan, job);
  const used0 = job.bars.some((b) => b.offcut);
  return [
    ...givenSteps(job),
    ...(hand === null ? [] : [byHandStep(job, hand)]),
    {
      say: 'sticks.plan',
      values: { count: opened(job, found.plan), total: text(stock) },
      value: inches(ticks(stock)),
      unit: 'in',
    },
    ...(used0
      ? [
          {
            say: 'sticks.offcuts',
            values: { length: text(-used) },
            value: inches(ticks(0 - used)),
            unit: 'in',
          },
        ]
      : []),
    ...(longest === 0
      ? []
      : [
          {
            say: 'sticks.reusable',
            values: { length: text(-longest) },
            value: inches(ticks(-longest)),
            unit: 'in',
          },
        ]),
    { say: 'sticks.settings', values: { setups, stops } },
    ...boundSteps(job, found, stock),
    ...(job.rounded ? [{ say: 'sticks.rounded' }] : []),
  ];
}

export function givenSteps(job: Job): readonly Step[] {
  const pieces = job.kinds.reduce((n, k) => n + k.count, 0);
  const total = job.kinds.reduce((n, k) => n + k.count * k.ticks, 0);
  return [
    {
      say: 'sticks.pieces',
      values: { pieces, lengths: job.kinds.length, total: text(total) },
      value: inches(ticks(total)),
      unit: 'in',
    },
    { say: 'sticks.fits', values: { kerf: text(job.kerfTicks) } },
  ];
}

function opened(job: Job, plan: Plan): number {
  return plan.reduce((n, cut) => n + (job.bars[cut.bar]?.offcut ? 0 : cut.times), 0);
}

function byHandStep(job: Job, hand: Plan): Step {
  const stock = rankOf(hand, job)[0];
  return {
    say: 'sticks.byHand',
    values: { count: opened(job, hand), total: text(stock) },
    value: inches(ticks(stock)),
    unit: 'in',
  };
}

function boundSteps(job: Job, { bound, levels, tried }: Found, stock: number): readonly Step[] {
  const proven = stock === bound.ticks;
  if (!proven)
    return [
      {
        say: tried ? 'sticks.tried' : 'sticks.best',
        values: { bound: text(bound.ticks) },
        value: inches(ticks(bound.ticks)),
        unit: 'in',
      },
    ];
  const weight = job.kinds.reduce((sum, { count }, i) => sum + count * (bound.weights[i] ?? 0), 0);
  const steps: Say[] =
    stock === 0
      ? [{ say: 'sticks.none' }]
      : !job.several
        ? [{ say: 'sticks.weigh', values: { weight, most: bound.most[0] ?? 0 } }, { say: 'sticks.proven' }]
        : [
            { say: 'sticks.weighStock', values: { weight } },
            { say: 'sticks.provenStock', values: { total: text(stock) } },
          ];
  return [...steps, { say: 'sticks.levels', values: { levels } }];
}
