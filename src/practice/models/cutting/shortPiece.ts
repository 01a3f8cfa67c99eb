/**
 * Short piece (T15): a piece that came out short. What it would be to spread the want over the joints; whether one joint
 * may take it or a new piece is cut; and what comes first where it was found.
 */
import { inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import { type Drawn, model, type Slip } from '../../model.ts';

const wants = {
  found: ['bench', 'fitted', 'supported', 'loaded'],
  /** How far a butt joint may stand open: as nothing else is said, or as the maker of the splice states it. */
  widest: 'length',
  /** Whether the joint at its end may take what is missing. */
  takes: ['takes', 'too-short'],
  little: 'length',
  short: 'length',
  joints: 'whole',
  wanted: 'length',
} as const;

interface Plan {
  readonly drawn: Drawn<typeof wants>;
  readonly short: Ticks;
  readonly widest: Ticks;
  /** Joints that the person shares it among. */
  readonly among: number;
  readonly does: 'stand' | 'new' | 'spread' | 'slide' | 'borrow';
  readonly begins: 'leave' | 'log' | 'ask' | 'support' | 'open';
}
const FIRST = { bench: 'log', fitted: 'support', supported: 'open', loaded: 'ask' } as const;
const SAYS = {
  bench: 'cutting.logIt',
  fitted: 'cutting.supportIt',
  supported: 'cutting.openIt',
  loaded: 'cutting.askFirst',
} as const;

function plan(drawn: Drawn<typeof wants>): Plan | null {
  const { widest, joints: among } = drawn;
  if (drawn.takes === 'takes') {
    // Less than a sixty-fourth a joint is nothing that anyone could measure.
    if (drawn.little > widest || inches(drawn.little) / among < 1 / 64) return null;
    return { drawn, short: drawn.little, widest, among, does: 'stand', begins: 'leave' };
  }
  // Spread thinly enough it might be let stand; then this would be a question for the engineer.
  if (drawn.short / drawn.joints <= widest) return null;
  return { drawn, short: drawn.short, widest, among, does: 'new', begins: FIRST[drawn.found] };
}

const share = ({ short, among }: Plan) => inches(short) / among;
const tooShort = ({ drawn }: Plan) => drawn.takes === 'too-short';
/** Shares that lie closer are one to any tape. */
const TOLD = 1 / 32;
const counted = (made: Plan, among: number): Plan | null =>
  Math.abs(share({ ...made, among }) - share(made)) > TOLD ? { ...made, among } : null;

type ShortSlip = Slip<Plan>;
/** Where it must be cut anew, or where the joint takes it. */
const does =
  (taken: Plan['does'], where: (made: Plan) => boolean = () => true): ShortSlip =>
  (made) =>
    where(made) ? { ...made, does: taken } : null;
/** Where it must come out. */
const begins =
  (found: readonly Plan['drawn']['found'][], taken: Plan['begins']): ShortSlip =>
  (made) =>
    tooShort(made) && found.includes(made.drawn.found) ? { ...made, begins: taken } : null;
/** Where nothing is to be opened. */
const disturbs =
  (taken: Plan['begins']): ShortSlip =>
  (made) =>
    tooShort(made) ? null : { ...made, begins: taken };

export const shortPiece = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ drawn, short, widest }) => ({
    found: { kind: 'word', value: drawn.found },
    short: { kind: 'length', ticks: short },
    measured: { kind: 'length', ticks: ticks(drawn.wanted - short) },
    wanted: { kind: 'length', ticks: drawn.wanted },
    joints: { kind: 'number', value: drawn.joints },
    widest: { kind: 'length', ticks: widest },
  }),
  asks: {
    share: {
      kind: 'number',
      answer: share,
      steps: (made) => [
        {
          say: 'cutting.share',
          values: {
            short: shortLength(made.short),
            joints: made.drawn.joints,
            share: share(made).toFixed(3),
            widest: shortLength(made.widest),
          },
        },
      ],
    },
    what: {
      kind: 'choice',
      answer: (made) => made.does,
      touched: (taken, _, made) => taken.does !== made.does,
      // A new piece where the old one would have done harms nobody.
      critical: tooShort,
      steps: (made) =>
        tooShort(made)
          ? [{ say: 'cutting.newPiece' }]
          : [
              {
                say: 'cutting.jointTakes',
                values: { short: shortLength(made.short), widest: shortLength(made.widest) },
              },
            ],
    },
    begin: {
      kind: 'choice',
      critical: tooShort,
      answer: (made) => made.begins,
      touched: (taken, _, made) => taken.begins !== made.begins,
      steps: (made) => [{ say: tooShort(made) ? SAYS[made.drawn.found] : 'cutting.leaveIt' }],
    },
  },
  slips: {
    atTwoJoints: (made) => counted(made, 2),
    atOneJoint: (made) => counted(made, 1),
    oneJointMore: (made) => counted(made, made.drawn.joints + 1),
    oneJointLess: (made) => (made.drawn.joints === 3 ? null : counted(made, made.drawn.joints - 1)),
    letStand: does('stand', tooShort),
    newForNothing: does('new', (made) => !tooShort(made)),
    spread: does('spread', tooShort),
    spreadForNothing: does('spread', (made) => !tooShort(made)),
    slide: does('slide'),
    borrow: does('borrow'),
    leftAsItIs: begins(['bench', 'fitted', 'supported', 'loaded'], 'leave'),
    openedForNothing: disturbs('open'),
    supportedForNothing: disturbs('support'),
    loggedForNothing: disturbs('log'),
    askedForNothing: disturbs('ask'),
    openedUnsupported: begins(['fitted'], 'open'),
    openedLoaded: begins(['loaded'], 'open'),
    supportedLoaded: begins(['loaded'], 'support'),
    supportedTwice: begins(['supported'], 'support'),
    askedOfNone: begins(['fitted', 'supported'], 'ask'),
    loggedOnly: begins(['fitted', 'supported', 'loaded'], 'log'),
    supportedNothing: begins(['bench'], 'support'),
  },
  figures: () => [],
  figured: () => [],
  says: ['share', 'newPiece', 'jointTakes', 'logIt', 'supportIt', 'openIt', 'askFirst', 'leaveIt'].map(
    (key) => `cutting.${key}`,
  ),
});
