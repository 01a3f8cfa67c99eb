/** Shapes as SVG text. Presentation attributes only: a page with a strict policy shows it as it is. */
import { cloudPath } from './cloudPath.ts';
import { type Frame, frameShapes } from './frame.ts';
import { strokeOf } from './pens.ts';
import { groundOf, type Plan } from './plan.ts';
import type { Colour, Pen, Point, Shape } from './shapes.ts';
import type { Drawing, Form, How, Palette, View } from './types.ts';

const n = (v: number) => String(Math.round(v * 100) / 100);
const at = ([x, y]: Point) => `${n(x)} ${n(y)}`;

/** Text as XML holds it. */
export function escapeXml(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}

function look(palette: Palette, form: Form, pen?: Pen, fill?: Colour): string {
  return `${pen === undefined ? '' : strokeOf(pen, form, palette)} fill="${fill === undefined ? 'none' : palette[fill]}"`;
}

/** One shape. */
export function shapeSvg(shape: Shape, form: Form, palette: Palette): string {
  switch (shape.kind) {
    case 'line':
      return `<path d="M${at(shape.from)}L${at(shape.to)}"${look(palette, form, shape.pen)}/>`;
    case 'polygon':
      return `<path d="M${shape.points.map(at).join('L')}${shape.open ? '' : 'Z'}"${look(palette, form, shape.pen, shape.fill)}/>`;
    case 'rect':
      return `<rect x="${n(shape.x)}" y="${n(shape.y)}" width="${n(shape.w)}" height="${n(shape.h)}"${look(palette, form, shape.pen, shape.fill)}/>`;
    case 'circle':
      return `<circle cx="${n(shape.at[0])}" cy="${n(shape.at[1])}" r="${n(shape.r)}"${look(palette, form, shape.pen, shape.fill)}/>`;
    case 'arrow': {
      const half = n(shape.length / 6);
      const l = n(shape.length);
      return `<path d="M0 0L-${l} ${half}L-${l} -${half}Z" transform="translate(${at(shape.at)}) rotate(${n(shape.towardsDeg)})" fill="${palette.ink}"/>`;
    }
    case 'cloud':
      return `<path d="${cloudPath(shape.x, shape.y, shape.w, shape.h)}"${look(palette, form, 'mark', 'sheet')}/>`;
    case 'text': {
      const ground = groundOf(shape);
      const patch = ground === undefined ? '' : shapeSvg({ kind: 'rect', ...ground }, form, palette);
      // The group carries the usual anchor, face and weight; only what differs is written.
      const anchor = shape.anchor === 'middle' ? '' : ` text-anchor="${shape.anchor}"`;
      const weight = shape.weight === 650 ? '' : ` font-weight="${shape.weight}"`;
      return `${patch}<text x="${n(shape.at[0])}" y="${n(shape.at[1])}" font-size="${shape.size}"${anchor}${weight} fill="${palette[shape.colour]}">${escapeXml(shape.text)}</text>`;
    }
  }
}

/** A whole drawing; texts come last, so that lines break for them. */
export function toSvg(
  shapes: readonly Shape[],
  size: { readonly width: number; readonly height: number },
  words: string,
  { form, palette }: Pick<How, 'form' | 'palette'>,
): string {
  const body = shapes.map((s) => shapeSvg(s, form, palette)).join('');
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${n(size.width)} ${n(size.height)}" width="${n(size.width)}" height="${n(size.height)}" role="img" aria-label="${escapeXml(words)}"><g font-family="${escapeXml(palette.letter)}" font-weight="650" text-anchor="middle" stroke-linejoin="miter">${body}</g></svg>`;
}

/** A drawing laid out, and not yet SVG: what tests measure. */
export interface Sheet {
  readonly view: View;
  readonly width: number;
  readonly height: number;
  readonly frame?: Frame | undefined;
  readonly plan: Plan;
  readonly words: string;
  readonly zones: Readonly<Record<string, string>>;
  /** Zone of each triangle by its number. */
  readonly noted?: Readonly<Record<string, string>> | undefined;
}

export function render({ view, width, height, frame, plan, words, zones, noted }: Sheet, how: How): Drawing {
  const ground: Shape = { kind: 'rect', x: 0, y: 0, w: width, h: height, fill: 'sheet' };
  const framed = frame === undefined ? [] : frameShapes(frame);
  const shapes = [ground, ...framed, ...plan.shapes, ...plan.texts];
  return {
    view,
    form: how.form,
    width,
    height,
    svg: toSvg(shapes, { width, height }, words, how),
    words,
    zones,
    ...(noted === undefined ? {} : { noted }),
  };
}
