/** Who inspects, who closes (T14, T15): of four people, the one who may look at the work, and the one who may close the fault. */
import type { Drawn } from '../../model.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lineOf, numberFact, rowsFact, wordFact } from '../parts/told.ts';

const wants = {
  fault: ['splice', 'jumper', 'radius', 'support', 'gap'],
  people: {
    rows: {
      did: ['built', 'mended', 'neither'],
      shown: ['yes', 'yes', 'lapsed', 'practice'],
      days: 'whole',
    },
  },
} as const;
type Given = Drawn<typeof wants>;
type Person = Given['people'][number];

type Need = (one: Person) => boolean;
const shown: Need = (one) => one.shown === 'yes';
const ownWork: Need = (one) => one.did === 'built';
const ownMend: Need = (one) => one.did === 'mended';

interface Job {
  readonly drawn: Given;
  /** Who comes first to mind; the rules come after. */
  readonly prefers: Need | null;
  readonly lets: {
    readonly own: boolean;
    readonly mender: boolean;
    readonly unshown: Person['shown'] | null;
  };
  readonly none: boolean;
}

/** The first who may, of those whom the person thinks of first; `none` where nobody may. */
function chosen({ drawn, prefers, none }: Job, may: Need): string {
  if (none) return 'none';
  const able = drawn.people.flatMap((one, i) => (may(one) ? [{ one, i }] : []));
  const first = able.find(({ one }) => prefers?.(one) ?? false) ?? able[0];
  return first === undefined ? 'none' : `person-${first.i + 1}`;
}

const mayDo = ({ lets }: Job, one: Person) =>
  (shown(one) || one.shown === lets.unshown) && (lets.own || !ownWork(one));
/** Inspects what was built: shown, in date, built none of it. Nothing had been put right then. */
const inspects = (job: Job) => chosen(job, (one) => mayDo(job, one));
/** Closes what was put right: and did not put it right either. */
const closes = (job: Job) => chosen(job, (one) => mayDo(job, one) && (job.lets.mender || !ownMend(one)));

const say = lineOf('working');
const STRICT = { own: false, mender: false, unshown: null };

export const whoCloses = slippingModel<typeof wants, Job>({
  wants,
  plan: (drawn) => {
    const job: Job = { drawn, prefers: null, lets: STRICT, none: false };
    const able = drawn.people.filter((one) => mayDo(job, one));
    const count = (did: Person['did']) => drawn.people.filter((one) => one.did === did).length;
    // One at most may; one has built it and one has mended it.
    return able.length > 1 || count('built') !== 1 || count('mended') !== 1 ? null : job;
  },
  facts: ({ drawn }) => ({
    fault: wordFact(drawn.fault),
    people: rowsFact(
      drawn.people.map(({ did, shown: is, days }) => ({
        did: wordFact(did),
        shown: wordFact(is),
        days: numberFact(days),
      })),
    ),
    rule: wordFact('rule'),
  }),
  asks: {
    inspect: { kind: 'choice', answer: inspects, steps: () => [say('mayInspect')] },
    close: { kind: 'choice', answer: closes, steps: () => [say('mayClose')] },
  },
  slips: {
    menderCloses: (job) => ({ ...job, prefers: ownMend, lets: { ...job.lets, mender: true } }),
    builderInspects: (job) => ({ ...job, prefers: ownWork, lets: { ...job.lets, own: true } }),
    lapsedTaken: (job) => ({
      ...job,
      prefers: (one) => one.shown === 'lapsed',
      lets: { ...job.lets, unshown: 'lapsed' },
    }),
    practiceTaken: (job) => ({
      ...job,
      prefers: (one) => one.shown === 'practice',
      lets: { ...job.lets, unshown: 'practice' },
    }),
    overlooked: (job) => ({ ...job, none: true }),
  },
  figures: () => [],
  figured: () => [],
  says: keysOf('working', ['mayInspect', 'mayClose']),
});
