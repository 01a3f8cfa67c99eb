/** Measures a sheet: texts that run into each other, shapes that leave the frame. */
import { frameShapes, inside } from '../../src/drawing/frame.ts';
import { boxOf } from '../../src/drawing/plan.ts';
import { type Box, BULGE, overlaps, type Shape, type Text, within } from '../../src/drawing/shapes.ts';
import type { Sheet } from '../../src/drawing/svg.ts';

/** The room that a shape takes. */
export function extent(shape: Shape): Box {
  const of = (points: readonly (readonly [number, number])[]) => {
    const xs = points.map((p) => p[0]);
    const ys = points.map((p) => p[1]);
    const [x, y] = [Math.min(...xs), Math.min(...ys)];
    return { x, y, w: Math.max(...xs) - x, h: Math.max(...ys) - y };
  };
  switch (shape.kind) {
    case 'line':
      return of([shape.from, shape.to]);
    case 'polygon':
      return of(shape.points);
    case 'rect':
      return { x: shape.x, y: shape.y, w: shape.w, h: shape.h };
    case 'circle':
      return { x: shape.at[0] - shape.r, y: shape.at[1] - shape.r, w: 2 * shape.r, h: 2 * shape.r };
    case 'arrow':
      return { x: shape.at[0], y: shape.at[1], w: 0, h: 0 };
    case 'cloud':
      return { x: shape.x - BULGE, y: shape.y - BULGE, w: shape.w + 2 * BULGE, h: shape.h + 2 * BULGE };
    case 'text':
      return boxOf(shape);
  }
}

/** Pairs of texts that run into each other. */
export function clashes({ plan, frame }: Sheet): readonly string[] {
  const zones = frame === undefined ? [] : frameShapes(frame).filter((s): s is Text => s.kind === 'text');
  const texts = [...plan.texts, ...zones].map(({ text, ...rest }) => ({
    text,
    box: boxOf({ text, ...rest }),
  }));
  return texts.flatMap((a, i) =>
    texts.slice(i + 1).flatMap((b) => (overlaps(a.box, b.box) ? [`${a.text} × ${b.text}`] : [])),
  );
}

/** What leaves the frame. */
export function outside({ plan, frame, width, height }: Sheet): readonly string[] {
  const room = frame === undefined ? { x: 0, y: 0, w: width, h: height } : inside(frame);
  return [...plan.shapes, ...plan.texts].flatMap((s) => {
    const box = extent(s);
    return within(box, room, -0.01) ? [] : [`${s.kind} ${s.part ?? ''} ${JSON.stringify(box)}`];
  });
}

/** What no text may hold: a place that was not filled, a key that has no words. */
const UNFILLED = /[{}]|undefined|NaN|detail\./;
/** Least height of lettering, px. */
const LEAST = 13;

/**
 * Everything that is wrong with a sheet whatever it shows; nothing when it is sound. One list, since a check of each
 * number by itself takes longer than the drawing.
 */
export function flaws(sheet: Sheet): readonly string[] {
  const { shapes, texts } = sheet.plan;
  return [
    ...clashes(sheet).map((pair) => `texts run into each other: ${pair}`),
    ...outside(sheet).map((shape) => `leaves the frame: ${shape}`),
    ...texts.filter(({ text }) => UNFILLED.test(text)).map(({ text }) => `not filled: ${text}`),
    ...texts.filter(({ size }) => !(size >= LEAST)).map(({ text, size }) => `too small, ${size} px: ${text}`),
    ...[...shapes, ...texts]
      .filter((shape) => !Object.values(extent(shape)).every(Number.isFinite))
      .map(({ kind, part }) => `no number: ${kind} ${part ?? ''}`),
    ...(UNFILLED.test(sheet.words) || sheet.words.includes('"') ? [`words: ${sheet.words}`] : []),
  ];
}
