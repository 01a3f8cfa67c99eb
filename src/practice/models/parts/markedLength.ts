/**
 * A length of channel on the bench, its marks enlarged and not to scale: the piece, its mark, the X on the waste and the
 * saw cut; or two ends, one with its factory holes and one to be drilled.
 */
import { across } from '../../../drawing/dimension.ts';
import { Plan, SIZES } from '../../../drawing/plan.ts';
import { render } from '../../../drawing/svg.ts';
import type { Drawing, How } from '../../../drawing/types.ts';

const WIDTH = { phone: 328, desk: 480, paper: 480 } as const;
const [TOP, BOTTOM] = [52, 108];
const MIDDLE = (TOP + BOTTOM) / 2;

/** A bar of channel, whole or going on beyond a break. */
function bar(how: How, broken: boolean): { plan: Plan; width: number; ends: readonly [number, number] } {
  const width = WIDTH[how.form];
  const plan = new Plan();
  const ends = [12, width - 12] as const;
  plan.rect({ x: ends[0], y: TOP, w: ends[1] - ends[0], h: BOTTOM - TOP }, { fill: 'galv', part: 'piece' });
  for (const y of [TOP, BOTTOM]) plan.line('edge', [ends[0], y], [ends[1], y]);
  for (const x of ends)
    if (broken) plan.breakLine(x, TOP, BOTTOM);
    else plan.line('edge', [x, TOP], [x, BOTTOM]);
  return { plan, width, ends };
}

const sheet = (plan: Plan, width: number, height: number, words: string, how: How): Drawing =>
  render({ view: 'piece', width, height, plan, words, zones: {} }, how);

/** Where the saw cut lies, from the mark towards the right: its two edges, as shares of its width. */
const CUT = {
  wrong: { left: [-1, 0], right: [0, 1] },
  on: { left: [-1 / 2, 1 / 2], right: [-1 / 2, 1 / 2] },
} as const;

/** What such a drawing shows of the mark and the saw cut, for its model's `figured`. */
export function markedCut(piece: 'left' | 'right', ran: 'wrong' | 'on') {
  const into = piece === 'left' ? -1 / 2 : 1 / 2;
  return { waste: piece === 'left' ? 'right' : 'left', off: ran === 'on' ? 0 : into } as const;
}

/** @param given  on which side of the mark the piece lies, and where the blade ran */
export function drawMark(
  given: { readonly piece: 'left' | 'right'; readonly ran: 'wrong' | 'on' },
  how: How,
): Drawing {
  const { plan, width } = bar(how, true);
  const say = (key: string) => how.speak({ say: `cutting.${key}` });
  const mark = width / 2;
  const way = given.piece === 'left' ? 1 : -1;
  const [from, to] = CUT[given.ran][given.piece];
  const wide = 26;
  const cut = { x: mark + from * wide, y: TOP - 5, w: (to - from) * wide, h: BOTTOM - TOP + 10 };
  plan.rect(cut, { fill: 'sheet', part: 'cut' });
  plan.hatch(cut, 'up');
  for (const x of [cut.x, cut.x + cut.w]) plan.line('thin', [x, cut.y], [x, cut.y + cut.h]);
  plan.line('mark', [mark, TOP - 14], [mark, BOTTOM + 14], 'mark');
  plan.text([mark, TOP - 22], say('drawnMark'), { colour: 'mark', part: 'mark' });
  plan.text([mark, BOTTOM + 32], say('drawnCut'), { size: SIZES.note, part: 'cut' });
  const x = mark + way * width * 0.17;
  for (const up of [-1, 1])
    plan.line('mark', [x - 14, MIDDLE - up * 14], [x + 14, MIDDLE + up * 14], 'waste');
  const at = mark - way * width * 0.26;
  plan.text([at, MIDDLE + 6], say('drawnPiece'), { ground: 'galv', part: 'piece' });
  const words = how.speak({ say: `cutting.markWords${given.piece === 'left' ? 'Left' : 'Right'}` });
  return sheet(plan, width, BOTTOM + 42, words, how);
}

/** @param given  texts of the length, of the two holes from their end, and which end keeps the factory's */
export function drawHoles(
  given: {
    readonly kept: 'end-a' | 'end-b';
    readonly length: string;
    readonly first: string;
    readonly second: string;
  },
  how: How,
): Drawing {
  const { plan, width, ends } = bar(how, false);
  const say = (key: string) => how.speak({ say: `cutting.${key}` });
  const [near, far] = [width * 0.07, width * 0.2];
  const middle = width / 2;
  for (const x of [middle - 5, middle + 5]) plan.breakLine(x, TOP, BOTTOM);
  const places = (end: 0 | 1) => [near, far].map((off) => (end === 0 ? ends[0] + off : ends[1] - off));
  const kept = given.kept === 'end-a' ? 0 : 1;
  for (const x of places(kept)) plan.circle([x, MIDDLE], 7, { fill: 'sheet', pen: 'thin', part: 'hole' });
  for (const x of places(kept === 0 ? 1 : 0)) {
    plan.line('thin', [x - 14, MIDDLE], [x + 14, MIDDLE], 'drill');
    plan.line('thin', [x, MIDDLE - 20], [x, MIDDLE + 20], 'drill');
  }
  across(plan, ends[0], ends[1], TOP - 22, given.length, { from: TOP });
  ['A', 'B'].forEach((name, i) => {
    plan.text([i === 0 ? ends[0] : ends[1], BOTTOM + 24], say(`drawnEnd${name}`), {
      size: SIZES.note,
      anchor: i === 0 ? 'start' : 'end',
    });
  });
  const words = how.speak({
    say: `cutting.holesWords${kept === 0 ? 'A' : 'B'}`,
    values: { length: given.length, first: given.first, second: given.second },
  });
  return sheet(plan, width, BOTTOM + 34, words, how);
}

export const markSays = ['drawnMark', 'drawnCut', 'drawnPiece', 'markWordsLeft', 'markWordsRight'].map(
  (key) => `cutting.${key}`,
);
export const holesSays = ['drawnEndA', 'drawnEndB', 'holesWordsA', 'holesWordsB'].map(
  (key) => `cutting.${key}`,
);
