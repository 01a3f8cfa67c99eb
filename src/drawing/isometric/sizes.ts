/** Sizes of an isometric by form, px. */

import type { Ticks } from '../../trade/length.ts';
import { inches } from '../../trade/length.ts';
import type { Form } from '../types.ts';

export interface Sizes {
  readonly width: number;
  /** Room kept round the route for labels and dimensions. */
  readonly pad: { readonly x: number; readonly y: number };
  /** Height of the route, at least and at most. */
  readonly least: number;
  readonly most: number;
  /** Most px to the inch: a short run does not fill the sheet. */
  readonly scale: number;
  /** How far a strut reaches past the channel, and half its thickness. */
  readonly strut: { readonly reach: number; readonly half: number };
  /** Ladder or other tray at an end: half its drawn length, its width, height of its rails. */
  readonly stub: { readonly half: number; readonly wide: number; readonly high: number };
  readonly bubble: number;
  readonly balloon: number;
  /** Least px between struts drawn, and between letters. */
  readonly apart: { readonly strut: number; readonly letter: number; readonly splice: number };
  /** Lettering of lengths. */
  readonly big: number;
}

const desk: Sizes = {
  width: 752,
  pad: { x: 64, y: 58 },
  least: 150,
  most: 400,
  scale: 4,
  strut: { reach: 9, half: 2.6 },
  stub: { half: 38, wide: 32, high: 9 },
  bubble: 21,
  balloon: 15,
  apart: { strut: 14, letter: 22, splice: 26 },
  big: 20,
};

export const SIZES_OF: Readonly<Record<Form, Sizes>> = {
  phone: {
    width: 328,
    pad: { x: 20, y: 56 },
    least: 110,
    most: 300,
    scale: 2.4,
    strut: { reach: 6, half: 1.7 },
    stub: { half: 17, wide: 15, high: 5 },
    bubble: 17.5,
    balloon: 13,
    apart: { strut: 10, letter: 19, splice: 18 },
    big: 16,
  },
  desk,
  paper: { ...desk, width: 718, most: 380 },
};

/** What stands by the channel gets smaller with it, where much stands on little room. */
export function sizesAt(form: Form, least: number): Sizes {
  const sizes = SIZES_OF[form];
  const k = Math.max(0.5, least);
  const { strut, stub } = sizes;
  return {
    ...sizes,
    strut: { reach: strut.reach * k, half: strut.half * k },
    stub: { half: stub.half * k, wide: stub.wide * k, high: stub.high * k },
  };
}

/** Least drawn width of a channel by its nominal width: narrow ones stay narrower than wide ones. */
export function leastWidth(form: Form, width: Ticks): number {
  const wide = inches(width);
  return form === 'phone' ? 5 + wide * 0.85 : 7 + wide * 1.5;
}
