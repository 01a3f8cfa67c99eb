/**
 * The room of a drawing that later labels find their places in: boxes that nothing may cover, and a grid of what is
 * inked, which a label would rather not cover.
 */
import { type Box, overlaps, type Point, within } from './shapes.ts';

/** Side of a cell of the grid, px. */
const CELL = 4;
/** What a cell holds: nothing, a line, something that a label must not stand on, a label. */
type Ink = 0 | 1 | 2 | typeof KEPT;
const KEPT = 9;

export class Room {
  readonly bounds: Box;
  private readonly boxes: Box[] = [];
  private readonly columns: number;
  private readonly rows: number;
  private readonly grid: Uint8Array;

  constructor(bounds: Box) {
    this.bounds = bounds;
    this.columns = Math.max(1, Math.ceil(bounds.w / CELL));
    this.rows = Math.max(1, Math.ceil(bounds.h / CELL));
    this.grid = new Uint8Array(this.columns * this.rows);
  }

  /** Nothing later may cover the box. The grid knows it too, so that a search passes over it at a glance. */
  keep(box: Box): void {
    this.boxes.push(box);
    this.inkBox(box, KEPT);
  }

  /** Inks a thick line; `weight` 2 where a label must not stand. */
  ink([x1, y1]: Point, [x2, y2]: Point, radius = 1, weight: Ink = 1): void {
    const steps = Math.max(1, Math.ceil(Math.hypot(x2 - x1, y2 - y1) / CELL));
    for (let i = 0; i <= steps; i++) {
      const [x, y] = [x1 + ((x2 - x1) * i) / steps, y1 + ((y2 - y1) * i) / steps];
      this.inkBox({ x: x - radius, y: y - radius, w: 2 * radius, h: 2 * radius }, weight);
    }
  }

  inkBox(box: Box, weight: Ink = 1): void {
    const { left, top, right, bottom } = this.cellsOf(box);
    for (let row = top; row <= bottom; row++) {
      for (let i = row * this.columns + left; i <= row * this.columns + right; i++) {
        if ((this.grid[i] ?? 0) < weight) this.grid[i] = weight;
      }
    }
  }

  /**
   * How many cells of a box are inked, those where no label must stand twice.
   *
   * @param most  counting stops above it
   */
  inkIn(box: Box, most = Number.POSITIVE_INFINITY): number {
    const cells = this.cellsOf(box);
    let sum = 0;
    for (let row = cells.top; row <= cells.bottom; row++) {
      for (let i = row * this.columns + cells.left; i <= row * this.columns + cells.right; i++) {
        sum += this.grid[i] ?? 0;
      }
      if (sum > most) return sum;
    }
    return sum;
  }

  /** How many cells a line passes that are inked. */
  inkAlong([x1, y1]: Point, [x2, y2]: Point): number {
    const steps = Math.max(1, Math.ceil(Math.hypot(x2 - x1, y2 - y1) / CELL));
    let sum = 0;
    for (let i = 0; i <= steps; i++) {
      const x = x1 + ((x2 - x1) * i) / steps - this.bounds.x;
      const y = y1 + ((y2 - y1) * i) / steps - this.bounds.y;
      const [column, row] = [Math.floor(x / CELL), Math.floor(y / CELL)];
      if (column < 0 || row < 0 || column >= this.columns || row >= this.rows) continue;
      // Labels in the way are found by `open`.
      sum += Math.min(2, this.grid[row * this.columns + column] ?? 0);
    }
    return sum;
  }

  /** Whether a box lies inside and on none that is kept. */
  free(box: Box, air = 0): boolean {
    if (!within(box, this.bounds)) return false;
    for (const b of this.boxes) if (overlaps(b, box, air)) return false;
    return true;
  }

  /** Whether a line stays inside and crosses no kept box. */
  open(a: Point, b: Point): boolean {
    const { x, y, w, h } = this.bounds;
    if (Math.min(a[0], b[0]) < x || Math.max(a[0], b[0]) > x + w) return false;
    if (Math.min(a[1], b[1]) < y || Math.max(a[1], b[1]) > y + h) return false;
    for (const box of this.boxes) if (lineMeets(a, b, box)) return false;
    return true;
  }

  /** The cells that a box covers; none where it lies outside. */
  private cellsOf({ x, y, w, h }: Box) {
    const left = Math.max(0, Math.floor((x - this.bounds.x) / CELL));
    const top = Math.max(0, Math.floor((y - this.bounds.y) / CELL));
    const right = Math.min(this.columns - 1, Math.floor((x + w - this.bounds.x) / CELL));
    const bottom = Math.min(this.rows - 1, Math.floor((y + h - this.bounds.y) / CELL));
    return { left, top, right, bottom };
  }
}

/** Whether a line touches a box: the ends to one side of it, or all its corners to one side of the line, it does not. */
export function lineMeets(a: Point, b: Point, { x, y, w, h }: Box): boolean {
  const [x1, y1] = a;
  const [x2, y2] = b;
  const [r, d] = [x + w, y + h];
  if ((x1 < x && x2 < x) || (x1 > r && x2 > r) || (y1 < y && y2 < y) || (y1 > d && y2 > d)) return false;
  const [dx, dy] = [x2 - x1, y2 - y1];
  const one = dx * (y - y1) - dy * (x - x1);
  const two = dx * (y - y1) - dy * (r - x1);
  const three = dx * (d - y1) - dy * (r - x1);
  const four = dx * (d - y1) - dy * (x - x1);
  return !((one > 0 && two > 0 && three > 0 && four > 0) || (one < 0 && two < 0 && three < 0 && four < 0));
}
