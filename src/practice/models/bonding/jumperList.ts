/** Jumper list (T11): each joint of a route, whether it needs a jumper, and why. The reasons are those of run/jumpers.ts. */
import type { Step } from '../../../trade/answer.ts';
import type { Answer, Facts } from '../../model.ts';
import { type Drawn, model, type Slip, type World } from '../../model.ts';
import { word } from '../parts/asks.ts';

const wants = { joints: 'some' } as const;

/** Why a joint has a jumper; `none`: it needs none; `every`: because every joint gets one. */
type Why = 'none' | 'moves' | 'hinge' | 'gap' | 'paint' | 'meets' | 'part' | 'every';

const RIGHT = {
  ladder: 'meets',
  splice: 'none',
  'second-splice': 'none',
  elbow: 'none',
  reducer: 'none',
  expansion: 'moves',
  hinge: 'hinge',
  painted: 'paint',
  'wall-gap': 'gap',
  unmarked: 'part',
  stand: 'meets',
} as const satisfies Readonly<Record<string, Why>>;
type Joint = keyof typeof RIGHT;

interface Plan {
  /** Along the route. */
  readonly joints: readonly Joint[];
  readonly why: (joint: Joint) => Why;
}

const right = (joint: Joint): Why => RIGHT[joint];

/** A route begins at the ladder tray and ends at the stand; between them anything may come. */
function plan({ joints }: Drawn<typeof wants>): Plan {
  const place = (joint: string) => (joint === 'ladder' ? 0 : joint === 'stand' ? 2 : 1);
  return { joints: [...(joints as readonly Joint[])].sort((a, b) => place(a) - place(b)), why: right };
}

/** Passes over the joints whose reason is one of these. */
const missed =
  (...reasons: readonly Why[]): Slip<Plan> =>
  (one) =>
    one.joints.some((joint) => reasons.includes(right(joint)))
      ? { ...one, why: (joint) => (reasons.includes(one.why(joint)) ? 'none' : one.why(joint)) }
      : null;

/** What one reason is taken for. */
const TAKEN_FOR: Readonly<Record<Why, Why>> = {
  moves: 'hinge',
  hinge: 'moves',
  gap: 'moves',
  paint: 'part',
  part: 'paint',
  meets: 'gap',
  none: 'none',
  every: 'every',
};

/** What an answer shows that passes over no joint: reasons alone are wrong. Blank parts say nothing. */
function blames({ joints }: Plan, _: World, answer: Answer): readonly string[] {
  const given = answer as Readonly<Record<string, string>>;
  const out = joints.flatMap((joint, i) => {
    const [why, wanted] = [given[`j${i + 1}`], right(joint)];
    return why === undefined || why === wanted ? [] : [{ why, wanted }];
  });
  if (out.some(({ why }) => why === 'none')) return [];
  return out.map(({ why, wanted }) =>
    why === 'every' ? 'everywhere' : wanted === 'none' ? 'identifiedCounted' : 'otherReason',
  );
}

const byPart = (of: (joint: Joint) => Why, joints: readonly Joint[]): Answer =>
  Object.fromEntries(joints.map((joint, i) => [`j${i + 1}`, of(joint)]));

export const jumperList = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ joints }): Facts =>
    Object.fromEntries(joints.map((joint, i) => [`j${i + 1}`, word(joint, 'joint')] as const)),
  asks: {
    joints: {
      kind: 'job',
      answer: ({ joints, why }) => byPart(why, joints),
      steps: ({ joints, why }) =>
        joints.map((joint, i): Step => ({ say: `bonding.why-${why(joint)}`, values: { number: i + 1 } })),
      blames,
    },
  },
  slips: {
    hingeMissed: missed('hinge'),
    paintMissed: missed('paint'),
    gapMissed: missed('gap'),
    endsMissed: missed('meets'),
    unmarkedMissed: missed('part'),
    onlyExpansion: missed('hinge', 'paint', 'gap', 'meets', 'part'),
    expansionMissed: missed('moves'),
    identifiedCounted: (one) =>
      one.joints.some((joint) => right(joint) === 'none')
        ? { ...one, why: (joint) => (right(joint) === 'none' ? 'part' : one.why(joint)) }
        : null,
    otherReason: (one) => ({ ...one, why: (joint) => TAKEN_FOR[one.why(joint)] }),
    everywhere: (one) => ({ ...one, why: (joint) => (right(joint) === 'none' ? 'every' : one.why(joint)) }),
  },
  figures: () => [],
  figured: () => [],
  says: ['none', 'moves', 'hinge', 'gap', 'paint', 'meets', 'part'].map((why) => `bonding.why-${why}`),
});
