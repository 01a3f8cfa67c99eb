/** What of a run was judged, and what was not for want of something: a run of which little is known is not one without fault. */
import type { Finding, RuleId } from '../../run/inspect/finding.ts';
import type { Inspected } from '../../run/inspect/inspect.ts';
import type { ResolvedRun } from '../../run/resolved.ts';
import type { Run } from '../../run/types.ts';
import type { Answered, Say } from '../../trade/answer.ts';
import type { SiteKey } from '../speak.ts';

export interface NotJudged {
  /** In a word or two; several may have the same. */
  readonly name: SiteKey;
  /** What was not judged, why, and whom to ask. */
  readonly say: Say;
}

/** Sentences of an inspection that say what it did not judge, each in a word or two. */
const NAMES: Readonly<Record<string, SiteKey>> = {
  'inspect.noSpanLimit': 'yourRun.unjudged-spans',
  'inspect.flatTable-edge': 'yourRun.unjudged-edge',
  'inspect.flatTable-slope': 'yourRun.unjudged-slope',
  'inspect.flatTable-plumb': 'yourRun.unjudged-plumb',
  'inspect.overStock': 'yourRun.unjudged-overStock',
  'inspect.noSize': 'yourRun.unjudged-jumpers',
  'inspect.singles': 'yourRun.unjudged-singles',
  'inspect.noRadius-fitting': 'yourRun.unjudged-bends',
  'inspect.noRadius-tube': 'yourRun.unjudged-bends',
  'inspect.noRadius-conductor': 'yourRun.unjudged-bends',
  'inspect.noRadius-figure': 'yourRun.unjudged-bends',
  'inspect.noRadius-silent': 'yourRun.unjudged-bends',
  'inspect.plainRadius': 'yourRun.unjudged-bends',
  'inspect.noKeeps': 'yourRun.unjudged-hands',
  'inspect.noMiddle': 'yourRun.unjudged-anchors',
  'inspect.noGap': 'yourRun.unjudged-gaps',
  'inspect.noOpenGap': 'yourRun.unjudged-open',
};

export function notJudged({ run }: ResolvedRun, { steps }: Answered<Inspected>): readonly NotJudged[] {
  const opened = run.ends?.some(({ open }) => open !== undefined) === true;
  const wanting = (name: SiteKey, key: SiteKey): NotJudged => ({ name, say: { say: key, values: {} } });
  return [
    ...((run.cables ?? []).length === 0
      ? [wanting('yourRun.unjudged-cables', 'yourRun.unjudged-cablesWhy')]
      : []),
    ...(isLaidOut(run) ? [] : [wanting('yourRun.unjudged-supports', 'yourRun.unjudged-supportsWhy')]),
    ...steps.flatMap((step) => {
      const name = NAMES[step.say];
      // The limit of an open gap is said of every run; it matters to those that have one.
      if (name === undefined || (step.say === 'inspect.noOpenGap' && !opened)) return [];
      return [{ name, say: { say: step.say, values: step.values ?? {} } }];
    }),
  ];
}

/** Whether any support stands on it. */
export const isLaidOut = ({ supports = [] }: Pick<Run, 'supports'>): boolean => supports.length > 0;

const WANT_SUPPORTS: readonly RuleId[] = [
  'span-too-long',
  'fitting-unsupported',
  'expansion-unsupported',
  'end-unsupported',
  'anchor-none',
];

export interface Numbered {
  readonly finding: Finding;
  /** As the figure numbers it. */
  readonly number: number;
}

/** Where no support stands yet, what only a lay-out can settle stands apart from what is wrong besides. */
export function parted(
  run: Run,
  findings: readonly Finding[],
): { readonly wrong: readonly Numbered[]; readonly unlaid: readonly Numbered[] } {
  const all = findings.map((finding, k) => ({ finding, number: k + 1 }));
  const waits = ({ finding }: Numbered) => !isLaidOut(run) && WANT_SUPPORTS.includes(finding.rule);
  return { wrong: all.filter((one) => !waits(one)), unlaid: all.filter(waits) };
}
