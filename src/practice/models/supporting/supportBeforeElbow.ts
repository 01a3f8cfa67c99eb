/** Supports beside an elbow (T02): the farthest place before it and behind it, from its faces, and whether those there do. */
import { figure } from '../../../trade/figure.ts';
import { inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import type { Drawn } from '../../model.ts';
import { read } from '../parts/reads.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lengthFact, lineOf, rowsFact, wordFact } from '../parts/told.ts';

const TURNS = ['elbow', 'inside', 'outside'] as const;
const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  turn: TURNS,
  angle: ['90', '45'],
  point: 'length',
  stoodBefore: 'length',
  stoodBehind: 'length',
} as const;

interface Job {
  readonly width: string;
  readonly turn: (typeof TURNS)[number];
  readonly angle: '90' | '45';
  /** Working point from the start of the run. */
  readonly point: Ticks;
  readonly takeOut: Ticks;
  readonly within: Ticks;
  /** Face from which it is measured before the elbow: the near one, the working point, the far one. */
  readonly from: 'near face' | 'working point' | 'far face';
  /** Supports there are: from the start, and from the working point behind it. */
  readonly stands: { readonly before: Ticks; readonly behind: Ticks };
  readonly sides: 'both' | 'first' | 'passed' | 'refused';
}

const partOf = (width: string, turn: string, angle: string) => `${width}-${turn}-${angle}`;
const FACES = { 'near face': 1, 'working point': 0, 'far face': -1 } as const;
const reach = ({ from, takeOut, within }: Job) => FACES[from] * takeOut + within;
const before = (job: Job) => inches(ticks(job.point - reach(job)));
const behind = (job: Job) => inches(ticks(reach(job)));
function has(job: Job, [first, second] = [before(job), behind(job)] as const): string {
  if (job.sides === 'passed') return 'both';
  if (job.sides === 'refused') return 'neither';
  const ok = [inches(job.stands.before) >= first, inches(job.stands.behind) <= second];
  if (ok[0] === true) return ok[1] === true || job.sides === 'first' ? 'both' : 'behind';
  return ok[1] === true || job.sides === 'first' ? 'before' : 'neither';
}
/** A support nearer to the limit than this would make the answer hang on a mark's width. */
const CLEAR = 1.5;
const say = lineOf('supporting');

export const supportBeforeElbow = slippingModel<typeof wants, Job>({
  wants,
  plan: ({ width, turn, angle, point, stoodBefore, stoodBehind }: Drawn<typeof wants>, world) => {
    const { takeOut } = read(world, partOf(width, turn, angle), 'elbow');
    const job: Job = {
      width,
      turn,
      angle,
      point,
      takeOut,
      within: world.tables.limits.supportWithin.value,
      from: 'near face',
      stands: { before: ticks(point - takeOut - stoodBefore), behind: ticks(takeOut + stoodBehind) },
      sides: 'both',
    };
    const close = [before(job) - inches(job.stands.before), behind(job) - inches(job.stands.behind)];
    return close.some((d) => Math.abs(d) < CLEAR) ? null : job;
  },
  facts: ({ width, turn, angle, point, within, stands }, world) => ({
    width: wordFact(width),
    turn: wordFact(turn),
    angle: wordFact(angle),
    point: lengthFact(point),
    within: lengthFact(within),
    stoodBefore: lengthFact(stands.before),
    stoodBehind: lengthFact(stands.behind),
    takeOuts: rowsFact(
      TURNS.map((one) => ({
        kind: { kind: 'word', value: one, words: 'turn' },
        takeOut: lengthFact(read(world, partOf(width, one, angle), 'elbow').takeOut),
      })),
    ),
  }),
  asks: {
    before: {
      kind: 'number',
      answer: (job) => before(job),
      steps: (job) => [
        say(
          'beforeElbow',
          {
            point: figure(inches(job.point)),
            takeOut: shortLength(job.takeOut),
            within: shortLength(job.within),
          },
          before(job),
          'in',
        ),
      ],
    },
    behind: {
      kind: 'number',
      answer: (job) => behind(job),
      steps: (job) => [
        say(
          'behindElbow',
          { takeOut: shortLength(job.takeOut), within: shortLength(job.within) },
          behind(job),
          'in',
        ),
      ],
    },
    has: {
      kind: 'choice',
      answer: (job) => has(job),
      steps: () => [say('eachSide')],
      follows: {
        asks: ['before', 'behind'],
        answer: (job, _, earlier) => has(job, [earlier['before'] as number, earlier['behind'] as number]),
      },
    },
  },
  slips: {
    oneSideEnough: (job) => ({ ...job, sides: 'first' }),
    farTaken: (job) => ({ ...job, sides: 'passed' }),
    nearRefused: (job) => (has(job) === 'both' ? { ...job, sides: 'refused' } : null),
    fromWorkingPoint: (job) => ({ ...job, from: 'working point' }),
    fromFarFace: (job) => ({ ...job, from: 'far face' }),
    otherTakeOut: (job, world) => {
      const turn = job.turn === 'elbow' ? 'inside' : 'elbow';
      return { ...job, takeOut: read(world, partOf(job.width, turn, job.angle), 'elbow').takeOut };
    },
  },
  figures: () => [],
  figured: () => [],
  says: keysOf('supporting', ['beforeElbow', 'behindElbow', 'eachSide']),
});
