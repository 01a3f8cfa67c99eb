/**
 * Short piece (T15): a piece that came out short. What it would be to spread the want over the joints, what is done in
 * place of that, and what comes first where it was found.
 */
import { fromInches, inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import { type Drawn, model, type Slip } from '../../model.ts';

const wants = {
  found: ['bench', 'fitted', 'loaded'],
  short: 'length',
  joints: 'whole',
  wanted: 'length',
} as const;

/** The widest that a butt joint may stand open where nothing else is said (common practice, no source). */
const WIDEST = fromInches(1 / 8);

interface Plan {
  readonly drawn: Drawn<typeof wants>;
  /** Joints that the person shares it among. */
  readonly among: number;
  readonly does: 'new' | 'spread' | 'slide' | 'borrow';
  readonly begins: 'log' | 'ask' | 'support' | 'open';
}
const FIRST = { bench: 'log', fitted: 'support', loaded: 'ask' } as const;

function plan(drawn: Drawn<typeof wants>): Plan | null {
  // Spread thinly enough it might be let stand; then this would be a question for the engineer.
  if (drawn.short / drawn.joints <= WIDEST) return null;
  return { drawn, among: drawn.joints, does: 'new', begins: FIRST[drawn.found] };
}

const share = ({ drawn, among }: Plan) => inches(drawn.short) / among;
/** Shares that lie closer are one to any tape. */
const TOLD = 1 / 32;
const counted = (made: Plan, among: number): Plan | null =>
  Math.abs(share({ ...made, among }) - share(made)) > TOLD ? { ...made, among } : null;

type ShortSlip = Slip<Plan>;
const does =
  (taken: Plan['does']): ShortSlip =>
  (made) => ({ ...made, does: taken });
const begins =
  (found: readonly Plan['drawn']['found'][], taken: Plan['begins']): ShortSlip =>
  (made) =>
    found.includes(made.drawn.found) ? { ...made, begins: taken } : null;

export const shortPiece = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ drawn }) => ({
    found: { kind: 'word', value: drawn.found },
    short: { kind: 'length', ticks: drawn.short },
    measured: { kind: 'length', ticks: ticks(drawn.wanted - drawn.short) as Ticks },
    wanted: { kind: 'length', ticks: drawn.wanted },
    joints: { kind: 'number', value: drawn.joints },
    widest: { kind: 'length', ticks: WIDEST },
  }),
  asks: {
    share: {
      kind: 'number',
      answer: share,
      steps: (made) => [
        {
          say: 'cutting.share',
          values: {
            short: shortLength(made.drawn.short),
            joints: made.drawn.joints,
            share: share(made).toFixed(3),
            widest: shortLength(WIDEST),
          },
        },
      ],
    },
    what: { kind: 'choice', answer: (made) => made.does, steps: () => [{ say: 'cutting.newPiece' }] },
    begin: {
      kind: 'choice',
      answer: (made) => made.begins,
      steps: ({ drawn }) => [
        {
          say: { bench: 'cutting.logIt', fitted: 'cutting.supportIt', loaded: 'cutting.askFirst' }[
            drawn.found
          ],
        },
      ],
    },
  },
  slips: {
    atTwoJoints: (made) => (made.drawn.joints === 2 ? null : { ...made, among: 2 }),
    atOneJoint: (made) => ({ ...made, among: 1 }),
    oneJointMore: (made) => counted(made, made.drawn.joints + 1),
    oneJointLess: (made) => (made.drawn.joints === 3 ? null : counted(made, made.drawn.joints - 1)),
    spread: does('spread'),
    slide: does('slide'),
    borrow: does('borrow'),
    openedUnsupported: begins(['fitted'], 'open'),
    openedLoaded: begins(['loaded'], 'open'),
    supportedLoaded: begins(['loaded'], 'support'),
    loggedOnly: begins(['fitted', 'loaded'], 'log'),
    supportedNothing: begins(['bench'], 'support'),
  },
  figures: () => [],
  figured: () => [],
  says: ['share', 'newPiece', 'logIt', 'supportIt', 'askFirst'].map((key) => `cutting.${key}`),
});
