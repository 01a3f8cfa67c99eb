/** What the calculators of geometry are given; the description of a field is its manual. */
import { z } from 'zod';
import { above0 } from './fields.ts';
import { lengthAbove0, lengthFrom0 } from './length.ts';
import { acute, from0, turn } from './ranges.ts';

export const offsetInput = z.strictObject({
  offset: lengthAbove0.describe('how far the run moves over, above 0'),
  angleDeg: acute.describe('angle of each bend, between 0 and 90 degrees, neither included'),
  roll: lengthFrom0.optional().describe('how far it also moves at right angles to that, from 0 (0)'),
});

export const mitreInput = z.strictObject({
  widthIn: above0.describe('width across the cut, above 0'),
  turnDeg: turn.describe('how far the run turns, between 0 and 180 degrees, neither included'),
});

export const notchInput = z.strictObject({
  depthIn: above0.describe('depth of the leg from web to edge, above 0'),
  bendDeg: turn.describe('how far the channel is bent, between 0 and 180 degrees, neither included'),
});

export const arcInput = z.strictObject({
  insideRadiusIn: from0.describe('radius of the inner wall, from 0'),
  widthIn: above0.describe('between the walls, above 0'),
  turnDeg: turn.describe('how far the fitting turns, between 0 and 180 degrees, neither included'),
});
