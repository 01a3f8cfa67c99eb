/** Revision and kit (T01, T07): job card and drawing against the register of drawings, splice kit against the tray; what is done then. */
import type { Drawn } from '../../model.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lineOf, numberFact, wordFact } from '../parts/told.ts';

const REVISIONS = ['A', 'B', 'C', 'D', 'E', 'F'] as const;
const METALS = ['aluminium', 'steel', 'stainless'] as const;
const WIDTHS = ['2', '4', '6'] as const;
/** What does not agree. */
const WRONG = {
  none: [],
  card: ['card'],
  drawing: ['drawing'],
  papers: ['card', 'drawing'],
  metal: ['metal'],
  width: ['width'],
  kit: ['metal', 'width'],
  'card-and-metal': ['card', 'metal'],
  'drawing-and-width': ['drawing', 'width'],
  all: ['card', 'drawing', 'metal', 'width'],
} as const;
type Wrong = keyof typeof WRONG;

const wants = {
  current: 'whole',
  wrong: Object.keys(WRONG) as Wrong[],
  cardBehind: 'whole',
  drawingBehind: 'whole',
  tray: METALS,
  trayWidth: WIDTHS,
  otherMetal: METALS,
  otherWidth: WIDTHS,
  sheet: 'whole',
} as const;

interface Job {
  readonly drawn: Drawn<typeof wants>;
  readonly card: number;
  readonly drawing: number;
  /** What the papers are held against. */
  readonly against: number;
  readonly kit: { readonly metal: string; readonly width: string };
  readonly sees: {
    readonly papers: boolean;
    readonly metal: boolean;
    readonly width: boolean;
    readonly most: number;
  };
  readonly does: 'by count' | 'newer' | 'swap' | 'go-on' | 'report';
}

const oldCard = (job: Job) => job.sees.papers && job.card !== job.against;
const oldDrawing = (job: Job) => job.sees.papers && job.drawing !== job.against;
const wrongMetal = ({ kit, drawn, sees }: Job) => sees.metal && kit.metal !== drawn.tray;
const wrongWidth = ({ kit, drawn, sees }: Job) => sees.width && kit.width !== drawn.trayWidth;
const both = (one: boolean, other: boolean, names: readonly [string, string, string, string]) =>
  one && other ? names[3] : other ? names[2] : one ? names[1] : names[0];
const count = (job: Job) =>
  Math.min(
    job.sees.most,
    [oldCard(job), oldDrawing(job), wrongMetal(job), wrongWidth(job)].filter(Boolean).length,
  );

const revision = (n: number) => REVISIONS[n] ?? '';
const say = lineOf('working');
const ALL = { papers: true, metal: true, width: true, most: Infinity };

export const revisionAndKit = slippingModel<typeof wants, Job>({
  wants,
  plan: (drawn) => {
    const wrong: readonly string[] = WRONG[drawn.wrong];
    const card = drawn.current - (wrong.includes('card') ? drawn.cardBehind : 0);
    const drawing = drawn.current - (wrong.includes('drawing') ? drawn.drawingBehind : 0);
    if (Math.min(card, drawing) < 0 || drawn.current >= REVISIONS.length) return null;
    if (drawn.otherMetal === drawn.tray || drawn.otherWidth === drawn.trayWidth) return null;
    const kit = {
      metal: wrong.includes('metal') ? drawn.otherMetal : drawn.tray,
      width: wrong.includes('width') ? drawn.otherWidth : drawn.trayWidth,
    };
    return { drawn, card, drawing, against: drawn.current, kit, sees: ALL, does: 'by count' };
  },
  facts: ({ drawn, card, drawing, kit }) => ({
    sheet: numberFact(drawn.sheet),
    current: wordFact(revision(drawn.current)),
    card: wordFact(revision(card)),
    drawing: wordFact(revision(drawing)),
    tray: wordFact(drawn.tray),
    trayWidth: wordFact(drawn.trayWidth),
    kit: wordFact(kit.metal),
    kitWidth: wordFact(kit.width),
    rule: wordFact('rule'),
  }),
  asks: {
    papers: {
      kind: 'choice',
      answer: (job) => both(oldCard(job), oldDrawing(job), ['none', 'card', 'drawing', 'both']),
      steps: ({ drawn, card, drawing }) => [
        say('papers', { current: revision(drawn.current), card: revision(card), drawing: revision(drawing) }),
      ],
    },
    kit: {
      kind: 'choice',
      answer: (job) => both(wrongMetal(job), wrongWidth(job), ['fits', 'metal', 'width', 'both']),
      steps: () => [],
    },
    count: { kind: 'number', answer: count, steps: (job) => [say('faultsCounted', {}, count(job), 'count')] },
    next: {
      kind: 'choice',
      answer: (job) => (job.does !== 'by count' ? job.does : count(job) === 0 ? 'go-on' : 'report'),
      // Who reports although all agrees harms nobody.
      critical: (job) => count(job) > 0,
      steps: () => [],
    },
  },
  slips: {
    paperAgainstPaper: (job) => ({ ...job, against: job.card }),
    newestByItself: (job) => ({ ...job, against: Math.max(job.card, job.drawing) }),
    papersNotLookedAt: (job) => ({ ...job, sees: { ...job.sees, papers: false } }),
    metalNotLookedAt: (job) => ({ ...job, sees: { ...job.sees, metal: false } }),
    widthNotLookedAt: (job) => ({ ...job, sees: { ...job.sees, width: false } }),
    stoppedAtFirst: (job) => ({ ...job, sees: { ...job.sees, most: 1 } }),
    tookNewer: (job) => (oldCard(job) || oldDrawing(job) ? { ...job, does: 'newer' } : null),
    swappedKit: (job) => (wrongMetal(job) || wrongWidth(job) ? { ...job, does: 'swap' } : null),
    wentOn: (job) => (count(job) === 0 ? null : { ...job, does: 'go-on' }),
    reportedAllWell: (job) => (count(job) === 0 ? { ...job, does: 'report' } : null),
  },
  figures: () => [],
  figured: () => [],
  says: keysOf('working', ['papers', 'faultsCounted']),
});
