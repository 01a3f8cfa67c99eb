/**
 * One piece between what stands at its two ends, for measuring: the tape goes from edge to edge. The length to cut
 * is not on it. Ends are to scale; a long piece is broken in its middle.
 */

import { formatLength, TICKS_PER_INCH, type Ticks } from '../trade/length.ts';
import { shortLength } from '../trade/shortLength.ts';
import { drawBalloons, type Target } from './balloon.ts';
import { across } from './dimension.ts';
import { frameOf, MARGIN } from './frame.ts';
import { textWidth } from './glyphs.ts';
import { type Meets, meets } from './meets.ts';
import { drawNotes } from './notes.ts';
import { drawPieceEnd, sleeveMiddle } from './pieceEnd.ts';
import type { PieceGiven } from './pieceGiven.ts';
import { cutSaid, endKey, pieceWords, tapeShows } from './pieceWords.ts';
import { Plan, SIZES } from './plan.ts';
import { render, type Sheet } from './svg.ts';
import type { Drawing, Form, How } from './types.ts';

export type { PieceGiven } from './pieceGiven.ts';

export const pieceParts = [
  'measure',
  'piece',
  'first-end',
  'second-end',
  'first-mark',
  'second-mark',
] as const;

interface Layout {
  readonly width: number;
  readonly scale: number;
  readonly stub: number;
  readonly bar: number;
  readonly high: number;
}

const LAYOUT: Readonly<Record<Form, Layout>> = {
  phone: { width: 328, scale: 6, stub: 12, bar: 100, high: 30 },
  desk: { width: 660, scale: 13, stub: 42, bar: 112, high: 40 },
  paper: { width: 660, scale: 13, stub: 42, bar: 112, high: 40 },
};

/**
 * Places along the sheet: the edges the tape goes between, the channel's ends, the break where there is one.
 *
 * @throws {RangeError} when the leg has no piece of that number
 */
export function pieceScale({ leg, piece: number }: PieceGiven, form: Form) {
  const { width, scale: least, stub } = LAYOUT[form];
  const piece = leg.pieces.find((p) => p.number === number);
  if (piece === undefined) throw new RangeError(`the leg has no piece ${number}`);
  const sides = piece.ends.map((end) => meets(leg, end)) as [Meets, Meets];
  // A short piece is drawn larger, so that it fills its sheet.
  const joints = sides.reduce((sum, { joint }) => sum + (joint?.length ?? 0), 0);
  const whole = (joints + piece.clear) / TICKS_PER_INCH;
  const scale = Math.max(least, Math.min((width - 2 * MARGIN[form] - 24 - 2 * stub) / whole, 2.4 * least));
  const px = (t: Ticks | number) => (t / TICKS_PER_INCH) * scale;
  const beyond = ({ end, joint, face }: Meets) => {
    if (joint?.kind === 'socketed') return px(joint.length) + stub;
    if (joint?.kind === 'butt') return px(joint.length) / 2 + stub;
    return face?.joint === 'free' && end.kind === 'free' ? stub * 0.5 + 6 : px(end.insertion) + stub + 10;
  };
  const margin = MARGIN[form];
  const room = width - 2 * margin - 16;
  const [b0, b1] = sides.map(beyond) as [number, number];
  const clear = Math.min(px(piece.clear), room - b0 - b1);
  const broken = clear < px(piece.clear) - 0.01;
  const start = margin + 8 + (room - (b0 + clear + b1)) / 2 + b0;
  const edges = [start, start + clear] as const;
  const ends = [edges[0] - px(piece.ends[0].insertion), edges[1] + px(piece.ends[1].insertion)] as const;
  return { piece, sides, px, edges, ends, broken };
}

export function drawPiece(given: PieceGiven, how: How): Drawing {
  return render(layPiece(given, how), how);
}

export function layPiece(given: PieceGiven, how: How): Sheet {
  const { insertion = 'shown', measured = 'edges', cut = 'asked', balloons = [] } = given;
  const { form, speak } = how;
  const { width, bar, high, stub } = LAYOUT[form];
  const margin = MARGIN[form];
  const { piece, sides, px, edges, ends, broken } = pieceScale(given, form);
  const plan = new Plan();
  const middle = (edges[0] + edges[1]) / 2;

  // The piece to cut; what of it lies inside is drawn hidden by its end.
  const seen = { x: edges[0], y: bar, w: edges[1] - edges[0], h: high };
  plan.rect(seen, { fill: 'galv', part: 'piece' });
  for (const y of [bar, bar + high]) plan.line('edge', [edges[0], y], [edges[1], y]);
  plan.keep({ x: margin + 8, y: bar - 8, w: width - 2 * margin - 16, h: high + 16 });
  sides.forEach((side, i) => {
    drawPieceEnd(plan, side, { edge: edges[i] ?? 0, way: i === 0 ? -1 : 1, bar, high, stub, px });
  });
  // What is said of the cut stands on the piece, between its breaks; where it has no room there, under the title.
  const said = cutSaid(piece, cut, speak);
  const half = textWidth(said, SIZES.text) / 2;
  const outer = (edges[1] - edges[0]) / 2 - 12;
  const onPiece = half + (broken ? 16 : 4) <= outer + (broken ? 0 : 12);
  if (broken) {
    const off = onPiece ? Math.min(outer, half + 30) : outer * 0.4;
    for (const x of [middle - off, middle + off]) {
      plan.rect({ x: x - 4, y: bar - 3, w: 8, h: high + 6 }, { fill: 'sheet' });
      plan.breakLine(x - 4, bar, bar + high);
      plan.breakLine(x + 4, bar, bar + high);
    }
  }
  if (onPiece) plan.text([middle, bar + high / 2 + 5.5], said, { part: 'piece', ground: 'galv' });

  const row = bar - 48;
  const size = form === 'phone' ? SIZES.text : SIZES.big;
  const [from, to] = sides.map((side, i) =>
    measured === 'edges'
      ? (edges[i] ?? 0)
      : sleeveMiddle(side, { edge: edges[i] ?? 0, way: i === 0 ? -1 : 1, px }),
  ) as [number, number];
  const shows = tapeShows(piece, measured);
  const besideEnds = to + textWidth(formatLength(shows), size) + 18 > width - margin;
  across(plan, from, to, row, formatLength(shows), {
    from: bar - 7,
    size,
    part: 'measure',
    beside: besideEnds ? 'before' : 'behind',
  });

  const below = bar + high + (form === 'phone' ? 34 : 36);
  sides.forEach(({ end }, i) => {
    if (end.insertion === 0 || insertion === 'hidden') return;
    const [x1, x2] = i === 0 ? [ends[0], edges[0]] : [edges[1], ends[1]];
    across(plan, x1, x2, below, shortLength(end.insertion), {
      from: bar + high + 7,
      part: 'insertion',
      beside: i === 0 ? 'behind' : 'before',
      size: form === 'phone' ? SIZES.note : SIZES.text,
    });
  });

  const names = below + 30;
  sides.forEach((side, i) => {
    const text = speak({
      say: endKey(side),
      values: side.joint === undefined ? {} : { name: side.joint.name },
    });
    const at: [number, number] = [i === 0 ? margin + 12 : width - margin - 12, names];
    plan.text(at, text, { size: SIZES.note, anchor: i === 0 ? 'start' : 'end', part: 'end' });
  });
  const title = names + (form === 'phone' ? 32 : 8);
  const heading = speak({ say: 'drawing.pieceTitle', values: { number: piece.number } });
  plan.viewTitle([width / 2, title], heading, onPiece ? undefined : said);
  const notes = [
    speak({ say: measured === 'edges' ? 'drawing.edgeToEdge' : 'drawing.middleToMiddle' }),
    ...(broken ? [speak({ say: form === 'phone' ? 'drawing.brokenShort' : 'drawing.broken' })] : []),
  ];
  const height = Math.ceil(
    drawNotes(plan, notes, { form, width, margin, top: title + (onPiece ? 22 : 40) }) + margin,
  );
  const frame = frameOf(form, width, height);
  const targets: Record<string, Target> = {
    measure: { at: [edges[0] + (edges[1] - edges[0]) * 0.1, row], likes: 60 },
    piece: { at: [middle + 36, bar + high - 6], likes: 80 },
    'first-end': { at: [ends[0], bar + high - 5], likes: 100 },
    'second-end': { at: [ends[1], bar + high - 5], likes: 80 },
    'first-mark': { at: [edges[0] + 3, bar + 6], likes: -60 },
    'second-mark': { at: [edges[1] - 3, bar + 6], likes: -120 },
  };
  const zones = drawBalloons(plan, frame, form, balloons, targets);
  return {
    view: 'piece',
    width,
    height,
    frame,
    plan,
    zones,
    words: pieceWords(piece, sides, { insertion, measured, cut }, how),
  };
}
