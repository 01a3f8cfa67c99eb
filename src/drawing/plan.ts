/** A drawing while it is being laid out: shapes in order, texts on top, and the room already taken. */
import { textWidth } from './glyphs.ts';
import type {
  Arrow,
  Box,
  Circle,
  Cloud,
  Colour,
  Line,
  Pen,
  Point,
  Polygon,
  Rect,
  Shape,
  Text,
} from './shapes.ts';

export type Lettering = Partial<Pick<Text, 'size' | 'weight' | 'anchor' | 'colour' | 'ground' | 'part'>>;

/** Sizes of lettering, px. Nothing is under 13. */
export const SIZES = { zone: 13, note: 14, text: 16, big: 21 } as const;

/** The room of a text: its ascent is 0.72 of the size, its descent 0.22. */
export function boxOf(text: Pick<Text, 'at' | 'text' | 'size' | 'anchor'>): Box {
  const w = textWidth(text.text, text.size);
  const left = { start: 0, middle: w / 2, end: w }[text.anchor];
  return { x: text.at[0] - left, y: text.at[1] - text.size * 0.72, w, h: text.size * 0.94 };
}

export class Plan {
  readonly shapes: Shape[] = [];
  readonly texts: Text[] = [];
  /** Room that balloons and late labels keep out of, besides the texts. */
  readonly taken: Box[] = [];

  line(pen: Pen, from: Point, to: Point, part?: string): void {
    this.shapes.push({ kind: 'line', pen, from, to, part } satisfies Line);
  }

  polygon(points: readonly Point[], look: Omit<Polygon, 'kind' | 'points'>): void {
    this.shapes.push({ kind: 'polygon', points, ...look });
  }

  rect(box: Box, look: Omit<Rect, 'kind' | keyof Box>): void {
    this.shapes.push({ kind: 'rect', ...box, ...look });
  }

  circle(at: Point, r: number, look: Omit<Circle, 'kind' | 'at' | 'r'>): void {
    this.shapes.push({ kind: 'circle', at, r, ...look });
  }

  arrow(at: Point, towardsDeg: number, length = 11): void {
    this.shapes.push({ kind: 'arrow', at, towardsDeg, length } satisfies Arrow);
  }

  cloud(box: Box, part?: string): void {
    this.shapes.push({ kind: 'cloud', ...box, part } satisfies Cloud);
  }

  text(at: Point, text: string, lettering: Lettering = {}): Text {
    const made: Text = {
      kind: 'text',
      at,
      text,
      size: SIZES.text,
      weight: 650,
      anchor: 'middle',
      colour: 'ink',
      ...lettering,
    };
    this.texts.push(made);
    return made;
  }

  /** Keeps later balloons out of a box. */
  keep(box: Box): void {
    this.taken.push(box);
  }

  /** Title of a view, ruled once beneath; `below` says what is not to scale. */
  viewTitle(at: Point, title: string, below?: string): void {
    const size = SIZES.text;
    const half = textWidth(title, size) / 2 + 8;
    this.text(at, title, { size, weight: 700 });
    this.line('thin', [at[0] - half, at[1] + 6], [at[0] + half, at[1] + 6]);
    if (below !== undefined) this.text([at[0], at[1] + 25], below, { size: SIZES.note, weight: 600 });
  }

  /** A break: the part goes on beyond the zigzag. */
  breakLine(x: number, top: number, bottom: number): void {
    const m = (top + bottom) / 2;
    const over = 8;
    this.polygon(
      [
        [x, top - over],
        [x, m - 9],
        [x - 6, m - 4],
        [x + 6, m + 4],
        [x, m + 9],
        [x, bottom + over],
      ],
      { pen: 'dimension', open: true },
    );
  }

  /** Hatching of a box at 45°, parts of one phase so that neighbouring boxes run on. */
  hatch(box: Box, way: 'up' | 'down', step = 6): void {
    const { x, y, w, h } = box;
    const sign = way === 'up' ? 1 : -1;
    // A line is x + sign·y = c; it is cut off where it leaves the box.
    const ends = [x + sign * y, x + w + sign * y, x + sign * (y + h), x + w + sign * (y + h)];
    for (let c = Math.ceil(Math.min(...ends) / step) * step; c < Math.max(...ends); c += step) {
      const left = Math.max(x, Math.min(c - sign * y, c - sign * (y + h)));
      const right = Math.min(x + w, Math.max(c - sign * y, c - sign * (y + h)));
      if (right - left > 0.5) {
        this.line('hatch', [left, sign * (c - left)], [right, sign * (c - right)]);
      }
    }
  }

  /** Wraps words of notes into lines no wider than `width`. */
  static lines(parts: readonly string[], width: number, size: number, between = ' · '): readonly string[] {
    const lines: string[] = [];
    for (const part of parts) {
      const longer = lines.length === 0 ? part : `${lines.at(-1)}${between}${part}`;
      if (lines.length > 0 && textWidth(longer, size) <= width) lines[lines.length - 1] = longer;
      else lines.push(part);
    }
    return lines;
  }
}

/** A patch of ground around a text. */
export function groundOf(text: Text): (Box & { readonly fill: Colour }) | undefined {
  if (text.ground === undefined) return undefined;
  const { x, y, w, h } = boxOf(text);
  return { x: x - 4, y: y - 1, w: w + 8, h: h + 2, fill: text.ground };
}
