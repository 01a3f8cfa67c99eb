/** The frame of a drawing with its zones: numbers across, letters down; a place on it is "B2". */

import { SIZES } from './plan.ts';
import type { Box, Point, Shape } from './shapes.ts';
import type { Form } from './types.ts';

/** Letters that cannot be taken for a figure: no I, O, Q. */
export const LETTERS = 'ABCDEFGHJKLMNPRSTUVWXYZ';

/** Width of the band that holds the zone letters. */
export const MARGIN: Readonly<Record<Form, number>> = { phone: 17, desk: 18, paper: 18 };

export interface Frame {
  readonly width: number;
  readonly height: number;
  readonly margin: number;
  readonly across: number;
  readonly down: number;
}

/** Zones of about 110 px across and 100 px down; the phone's are closer. */
export function frameOf(form: Form, width: number, height: number): Frame {
  const margin = MARGIN[form];
  const [w, h] = form === 'phone' ? [74, 90] : [108, 100];
  return {
    width,
    height,
    margin,
    across: Math.max(2, Math.round((width - 2 * margin) / w)),
    down: Math.max(2, Math.round((height - 2 * margin) / h)),
  };
}

export function inside({ width, height, margin }: Frame): Box {
  return { x: margin, y: margin, w: width - 2 * margin, h: height - 2 * margin };
}

/** The zone that a point stands in; outside the frame the nearest one. */
export function zoneOf({ width, height, margin, across, down }: Frame, [x, y]: Point): string {
  const cell = (v: number, size: number, count: number) =>
    Math.min(count - 1, Math.max(0, Math.floor((v - margin) / ((size - 2 * margin) / count))));
  return `${LETTERS[cell(y, height, down)]}${cell(x, width, across) + 1}`;
}

export function frameShapes(frame: Frame): readonly Shape[] {
  const { width, height, margin: m, across, down } = frame;
  const shapes: Shape[] = [
    { kind: 'rect', x: 1.5, y: 1.5, w: width - 3, h: height - 3, pen: 'zone' },
    { kind: 'rect', ...inside(frame), pen: 'frame' },
  ];
  const zone = (at: Point, text: string): Shape => ({
    kind: 'text',
    at,
    text,
    size: SIZES.zone,
    weight: 600,
    anchor: 'middle',
    colour: 'ink2',
  });
  const wide = (width - 2 * m) / across;
  for (let i = 0; i < across; i++) {
    shapes.push(zone([m + wide * (i + 0.5), m - 4.5], String(i + 1)));
    if (i > 0) shapes.push({ kind: 'line', pen: 'zone', from: [m + wide * i, 1.5], to: [m + wide * i, m] });
  }
  const high = (height - 2 * m) / down;
  for (let i = 0; i < down; i++) {
    shapes.push(zone([m / 2 + 0.5, m + high * (i + 0.5) + 5], LETTERS[i] ?? ''));
    if (i > 0) shapes.push({ kind: 'line', pen: 'zone', from: [1.5, m + high * i], to: [m, m + high * i] });
  }
  return shapes;
}
