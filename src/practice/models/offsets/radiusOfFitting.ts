/**
 * Radius of a fitting (T08): the radius that the cables ask for, the elbow on offer that has it, and the straight between
 * two elbows of the radius that is put in, whose take-out is their own.
 */
import { type CutEnd, cutBetween } from '../../../run/pieces.ts';
import { figure } from '../../../trade/figure.ts';
import { fromInches, inches, type Ticks, ticks } from '../../../trade/length.ts';
import { type RadiusCable, radius } from '../../../trade/radius.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import type { Drawn, World } from '../../model.ts';
import { read } from '../parts/reads.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lengthFact, lineOf, numberFact, rowsFact, tradeSteps, wordFact } from '../parts/told.ts';

const CABLES = {
  tc: { cable: 'TC', shielded: false },
  'tc-shielded': { cable: 'TC', shielded: true },
  'mc-interlocked': { cable: 'MC interlocked', shielded: false },
} as const satisfies Readonly<Record<string, { cable: RadiusCable; shielded: boolean }>>;
const KINDS = ['tc', 'tc-shielded', 'mc-interlocked'] as const;
const OFFERS = { a: [3, 5, 8], b: [4, 6, 12], c: [4, 7, 10], d: [5, 8, 12] } as const;
const PLACES = ['r1', 'r2', 'r3'] as const;

const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  cables: { rows: { kind: KINDS, od: 'decimal' } },
  offer: ['a', 'b', 'c', 'd'],
  put: ['0', '1', '2'],
  between: 'length',
} as const;

interface Cable {
  readonly kind: (typeof KINDS)[number];
  readonly od: number;
  /** As which kind its rule is read. */
  readonly readAs: (typeof KINDS)[number];
}
interface Job {
  readonly width: string;
  readonly cables: readonly Cable[];
  readonly counts: 'all' | 'thickest';
  /** What the diameter is taken times, and what comes off: radius for diameter, centre line for inner edge. */
  readonly times: number;
  readonly toCentre: boolean;
  readonly offer: readonly number[];
  readonly picks: 'at least' | 'nearest below' | 'largest';
  readonly put: number;
  readonly between: Ticks;
  readonly half: Ticks;
  readonly insertion: Ticks;
  readonly ends: 0 | 1 | 2;
}

function needs({ times, toCentre }: Job, { od, readAs }: Cable, { tables }: World): number {
  const found = radius({ ...CABLES[readAs], odIn: od }, tables.radius).result.radiusIn ?? 0;
  return found * times - (toCentre ? od / 2 : 0);
}
function least(job: Job, world: World): number {
  const thickest = Math.max(...job.cables.map(({ od }) => od));
  const counted = job.counts === 'all' ? job.cables : job.cables.filter(({ od }) => od === thickest);
  return Math.max(...counted.map((cable) => needs(job, cable, world)));
}
function pick({ offer, picks }: Job, wanted: number): string {
  const i = offer.findIndex((r) => r >= wanted - 1e-9);
  if (picks === 'largest') return i === -1 ? 'r3' : (PLACES[i] ?? 'none');
  if (picks === 'nearest below' && i > 0) return PLACES[i - 1] ?? 'none';
  return PLACES[i] ?? 'none';
}
/** Flat elbows of the catalogue: from the working point to the face as far as the centre line's radius. */
const takeOut = (job: Job, put = job.put): Ticks => ticks(fromInches(job.offer[put] ?? 0) + job.half);
function cut(job: Job): Ticks {
  const end: CutEnd = {
    takeOut: takeOut(job),
    insertion: job.ends === 0 ? NONE : job.insertion,
    share: NONE,
  };
  return cutBetween(job.between, [end, job.ends === 1 ? { ...end, takeOut: NONE } : end]);
}
const NONE = ticks(0);
/** How near to a number that is shown, in inches, what is wanted may come: it is not to hang on a digit, or be read off. */
const CLEAR = 0.1;
const say = lineOf('offsets');

export const radiusOfFitting = slippingModel<typeof wants, Job>({
  wants,
  plan: ({ width, cables, offer, put, between }: Drawn<typeof wants>, world) => {
    const tray = read(world, width, 'tray');
    const job: Job = {
      width,
      cables: cables.map(({ kind, od }) => ({ kind, od, readAs: kind })),
      counts: 'all',
      times: 1,
      toCentre: false,
      offer: OFFERS[offer],
      picks: 'at least',
      put: Number(put),
      between,
      half: ticks(tray.width / 2),
      insertion: read(world, `${width}-elbow-90`, 'elbow').insertion,
      ends: 2,
    };
    const ods = new Set(cables.map(({ od }) => od));
    const wanted = least(job, world);
    const shown = [
      ...job.offer,
      ...job.offer.map((_, i) => inches(takeOut(job, i))),
      inches(job.insertion),
      inches(tray.width),
      // The diameters at which the rule of Type TC steps.
      ...(world.tables.radius.TC.plain ?? []).flatMap(({ upToIn }) => upToIn ?? []),
    ];
    if (ods.size < cables.length || shown.some((n) => Math.abs(n - wanted) < CLEAR)) return null;
    return job;
  },
  facts: (job, { tables }) => {
    const { TC, 'MC interlocked': MC } = tables.radius;
    return {
      width: wordFact(job.width),
      cables: rowsFact(
        job.cables.map(({ kind, od }, i) => ({
          letter: wordFact('ABC'[i] ?? ''),
          kind: wordFact(kind),
          od: numberFact(od, 2),
        })),
      ),
      offers: rowsFact(
        job.offer.map((r, i) => ({ radius: numberFact(r), takeOut: lengthFact(takeOut(job, i)) })),
      ),
      r1: numberFact(job.offer[0] ?? 0),
      r2: numberFact(job.offer[1] ?? 0),
      r3: numberFact(job.offer[2] ?? 0),
      put: numberFact(job.offer[job.put] ?? 0),
      between: lengthFact(job.between),
      insertion: lengthFact(job.insertion),
      tcSmall: numberFact(TC.plain?.[0]?.multiple ?? 0),
      tcMiddle: numberFact(TC.plain?.[1]?.multiple ?? 0),
      tcShield: numberFact(TC.shielded ?? 0),
      interlocked: numberFact(MC.plain?.[0]?.multiple ?? 0),
    };
  },
  asks: {
    least: {
      kind: 'number',
      answer: least,
      steps: (job, { tables }) =>
        job.cables.flatMap(({ kind, od }) =>
          tradeSteps(radius({ ...CABLES[kind], odIn: od }, tables.radius).steps.slice(0, 1)),
        ),
    },
    pick: {
      kind: 'choice',
      answer: (job, world) => pick(job, least(job, world)),
      steps: (job, world) => [say('radiusPick', { least: figure(least(job, world)) })],
      follows: { asks: ['least'], answer: (job, _, earlier) => pick(job, earlier['least'] as number) },
    },
    cut: {
      kind: 'number',
      answer: (job) => inches(cut(job)),
      steps: (job) => [
        say(
          'radiusCut',
          {
            between: figure(inches(job.between)),
            takeOut: shortLength(takeOut(job)),
            insertion: shortLength(job.insertion),
          },
          inches(cut(job)),
          'in',
        ),
      ],
    },
  },
  slips: {
    nearestBelow: (job) => ({ ...job, picks: 'nearest below' }),
    largestTaken: (job) => ({ ...job, picks: 'largest' }),
    onRadius: (job) => ({ ...job, times: 1 / 2 }),
    toCentreLine: (job) => ({ ...job, toCentre: true }),
    shieldForgotten: (job) => readAs(job, 'tc-shielded', 'tc'),
    shieldForAll: (job) => readAs(job, 'tc', 'tc-shielded'),
    armourAsPlain: (job) => readAs(job, 'mc-interlocked', 'tc'),
    thickestOnly: (job) => ({ ...job, counts: 'thickest' }),
    otherRadius: (job) => ({ ...job, put: job.put === 0 ? 1 : job.put - 1 }),
    noTakeOut: (job) => ({ ...job, half: NONE, offer: [0, 0, 0] }),
    oneTakeOut: (job) => ({ ...job, ends: 1 }),
    noInsertion: (job) => ({ ...job, ends: 0 }),
  },
  figures: () => [],
  figured: () => [],
  says: [...keysOf('offsets', ['radiusPick', 'radiusCut']), 'radius.plain', 'radius.underShield'],
});

function readAs(job: Job, from: Cable['kind'], to: Cable['kind']): Job {
  return { ...job, cables: job.cables.map((c) => (c.kind === from ? { ...c, readAs: to } : c)) };
}
