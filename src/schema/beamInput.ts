/** What `beam` is given. */
import { z } from 'zod';
import { HAIR } from '../trade/hair.ts';
import { above0 } from './fields.ts';
import { from0, whole } from './ranges.ts';
import { type Loose, numberIn, rowsOf, type TogetherFault, together } from './together.ts';

export const beamInput = together(
  z.strictObject({
    spansIn: z.array(above0).min(1).describe('support to support, from the left, each above 0'),
    loadLbPerFt: from0.optional().describe('the same on every span, from 0; either this or loads'),
    loads: z
      .array(z.strictObject({ span: whole(0), lbPerFt: from0 }))
      .optional()
      .describe(
        'span by span; each span (from 0), lbPerFt from 0; spans not named carry 0, two for one span add up',
      ),
    points: z
      .array(z.strictObject({ span: whole(-1), atIn: from0, lb: from0 }))
      .optional()
      .describe(
        "each span (-1 the left overhang, the number of spans the right one), atIn from the span's left support or the left overhang's tip, lb down, from 0",
      ),
    overhangLeftIn: from0.optional().describe('beyond the first support, from 0 (0)'),
    overhangRightIn: from0.optional().describe('beyond the last support, from 0 (0)'),
    ePsi: above0.describe('modulus of elasticity, above 0'),
    iIn4: above0.describe('moment of inertia, above 0'),
  }),
  (given) => [...oneLoad(given), ...loadFaults(given), ...pointFaults(given)],
);

function oneLoad({ loadLbPerFt, loads }: Loose): readonly TogetherFault[] {
  if (loadLbPerFt !== undefined && loads !== undefined)
    return [
      {
        path: ['loads'],
        message: 'loadLbPerFt is given too',
        todo: 'keep one of loadLbPerFt (the same on every span) and loads (span by span)',
      },
    ];
  if (loadLbPerFt === undefined && loads === undefined)
    return [
      {
        path: ['loadLbPerFt'],
        message: 'neither loadLbPerFt nor loads is given',
        todo: 'give one of them; loadLbPerFt 0 where there is no uniform load',
      },
    ];
  return [];
}

const spansOf = ({ spansIn }: Loose): readonly unknown[] => (Array.isArray(spansIn) ? spansIn : []);

function loadFaults(given: Loose): readonly TogetherFault[] {
  const spans = spansOf(given);
  if (spans.length === 0) return [];
  return rowsOf(given['loads']).flatMap(([i, row]) => {
    const span = numberIn(row['span'], (n) => Number.isInteger(n) && n >= 0);
    if (span === undefined || span < spans.length) return [];
    return [
      {
        path: ['loads', i, 'span'],
        message: 'there is no such span',
        todo: `write a whole number from 0 up to ${spans.length - 1}; an overhang carries the load of the span beside it`,
      },
    ];
  });
}

function pointFaults(given: Loose): readonly TogetherFault[] {
  const spans = spansOf(given);
  if (spans.length === 0) return [];
  return rowsOf(given['points']).flatMap(([i, row]) => {
    const span = numberIn(row['span'], (n) => Number.isInteger(n) && n >= -1);
    if (span === undefined) return [];
    if (span > spans.length)
      return [
        {
          path: ['points', i, 'span'],
          message: 'there is no such span',
          todo: `write a whole number from -1 (left overhang) up to ${spans.length} (right overhang)`,
        },
      ];
    const overhang = span === -1 ? 'overhangLeftIn' : span === spans.length ? 'overhangRightIn' : undefined;
    if (overhang !== undefined && (given[overhang] === undefined || given[overhang] === 0))
      return [
        {
          path: ['points', i, 'span'],
          message: 'the load stands on an overhang that is not there',
          todo: `give ${overhang}, or name a span from 0 up to ${spans.length - 1}`,
        },
      ];
    const length = numberIn(overhang === undefined ? spans[span] : given[overhang], (n) => n > 0);
    const at = numberIn(row['atIn'], (n) => n >= 0);
    if (length === undefined || at === undefined || at <= length + HAIR) return [];
    return [
      {
        path: ['points', i, 'atIn'],
        message: `this is beyond the ${overhang === undefined ? 'span' : 'overhang'} of ${length} in`,
        todo: `write a number from 0 up to ${length}`,
      },
    ];
  });
}
