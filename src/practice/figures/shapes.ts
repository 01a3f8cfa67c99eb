/** A drawing's SVG taken apart again: straight lines, boxes, circles, triangles, arrowheads and letters, in its order. Px. */
import { lettersOf } from './texts.ts';

export interface DrawnLine {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
  readonly dash: string;
  /** Px across it. */
  readonly pen: number;
}
export interface DrawnBox {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
  /** Only filled, where it has no outline. */
  readonly outlined: boolean;
  readonly dash: string;
}
export interface DrawnCircle {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}
export interface DrawnLetters {
  readonly x: number;
  readonly y: number;
  readonly text: string;
}
/** A dimension, from its first arrowhead to its second. */
export type DrawnSpan = Omit<DrawnLine, 'dash' | 'pen'>;

export type DrawnShape =
  | ({ readonly kind: 'line' } & DrawnLine)
  | ({ readonly kind: 'box' } & DrawnBox)
  | ({ readonly kind: 'circle' } & DrawnCircle)
  | ({ readonly kind: 'letters' } & DrawnLetters)
  | ({ readonly kind: 'span' } & DrawnSpan)
  /** A line of more than two corners that does not close: where something is broken off, and where along the sheet. */
  | { readonly kind: 'break'; readonly x: number }
  /** A closed triangle, by its corners. */
  | { readonly kind: 'triangle'; readonly corners: readonly (readonly [number, number])[] };

export interface DrawnFigure {
  readonly shapes: readonly DrawnShape[];
  /** What is said of it to someone who cannot see its lines. */
  readonly words: string;
}

type Attributes = (name: string) => string;
const ELEMENT = /<(path|rect|circle|text)\s([^>]*?)(?:\/>|>([^<]*)<\/text>)/g;
const NUMBER = /-?\d+(?:\.\d+)?/g;

export function readSvg(svg: string): DrawnFigure {
  const shapes: DrawnShape[] = [];
  let before: Arrowhead | undefined;
  for (const [, name = '', written = '', text = ''] of svg.matchAll(ELEMENT)) {
    const at: Attributes = (attribute) =>
      new RegExp(`(?:^|\\s)${attribute}="([^"]*)"`).exec(written)?.[1] ?? '';
    const head = name === 'path' ? arrowhead(at) : undefined;
    if (head !== undefined) {
      if (before !== undefined && apart(before, head))
        shapes.push({ kind: 'span', x1: before.x, y1: before.y, x2: head.x, y2: head.y });
      before = head;
      continue;
    }
    const shape = READ[name]?.(at, text);
    if (shape !== undefined) shapes.push(shape);
  }
  return { shapes, words: lettersOf(/aria-label="([^"]*)"/.exec(svg)?.[1] ?? '') };
}

const READ: Readonly<Record<string, (at: Attributes, text: string) => DrawnShape | undefined>> = {
  path: (at) => {
    const d = at('d');
    const numbers = [...d.matchAll(NUMBER)].map(([n]) => Number(n));
    const corners = numbers.flatMap((x, i) => (i % 2 === 0 ? [[x, numbers[i + 1] ?? 0] as const] : []));
    const [from, to] = corners;
    if (corners.length === 3 && d.endsWith('Z')) return { kind: 'triangle', corners };
    if (from === undefined || to === undefined || corners.length < 2) return undefined;
    if (corners.length > 2) return d.endsWith('Z') ? undefined : { kind: 'break', x: from[0] };
    const [dash, pen] = [at('stroke-dasharray'), Number(at('stroke-width'))];
    return { kind: 'line', x1: from[0], y1: from[1], x2: to[0], y2: to[1], dash, pen };
  },
  rect: (at) => ({
    kind: 'box',
    x: Number(at('x')),
    y: Number(at('y')),
    w: Number(at('width')),
    h: Number(at('height')),
    outlined: at('stroke') !== '',
    dash: at('stroke-dasharray'),
  }),
  circle: (at) => ({ kind: 'circle', x: Number(at('cx')), y: Number(at('cy')), r: Number(at('r')) }),
  text: (at, text) => ({ kind: 'letters', x: Number(at('x')), y: Number(at('y')), text: lettersOf(text) }),
};

/** Its tip, and its turn in degrees: 0 points to the right, 90 down the sheet. */
interface Arrowhead {
  readonly x: number;
  readonly y: number;
  readonly turn: number;
}
function arrowhead(at: Attributes): Arrowhead | undefined {
  const moved = /^translate\((\S+) (\S+)\) rotate\((\S+)\)$/.exec(at('transform'));
  return moved === null ? undefined : { x: Number(moved[1]), y: Number(moved[2]), turn: Number(moved[3]) };
}

/** Two arrowheads that point away from each other, along the line between them. */
function apart(one: Arrowhead, other: Arrowhead): boolean {
  const way = (Math.atan2(other.y - one.y, other.x - one.x) * 180) / Math.PI;
  const same = (a: number, b: number) => Math.abs(Math.cos(((a - b) * Math.PI) / 360)) > 0.9999;
  return same(other.turn, way) && same(one.turn, way + 180);
}

/** The shapes of one kind, in the drawing's order. */
export const allOf = <K extends DrawnShape['kind']>(
  { shapes }: DrawnFigure,
  kind: K,
): readonly Extract<DrawnShape, { readonly kind: K }>[] =>
  shapes.filter((one): one is Extract<DrawnShape, { readonly kind: K }> => one.kind === kind);

/** Dimensions along the sheet, from the left to the right. */
export const isAcross = ({ x1, x2, y1, y2 }: DrawnSpan): boolean => y1 === y2 && x1 < x2;
export const isUpright = ({ x1, x2, y1, y2 }: DrawnSpan): boolean => x1 === x2 && y1 !== y2;
/** A long dash and a short one: a centre line. */
export const isCentre = ({ dash }: DrawnLine): boolean => /^\S+ \S+ \S+ \S+$/.test(dash);
/** What stands in the middle of a dimension. */
export const letteredOn = (figure: DrawnFigure, { x1, x2, y1, y2 }: DrawnSpan): string =>
  allOf(figure, 'letters').find(
    ({ x, y }) => Math.abs(x - (x1 + x2) / 2) < 1 && Math.abs(y - (y1 + y2) / 2) < LINE,
  )?.text ?? '';
/** Px from the middle of a line of letters to its foot, at most. */
const LINE = 10;
