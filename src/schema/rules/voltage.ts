import { z } from 'zod';
import type { MarkingRule } from '../../trade/marking.ts';
import type { SeparationRule } from '../../trade/separation.ts';
import { above0 } from '../fields.ts';
import { citedShape } from '../source.ts';
import { type Cite, ruled } from './kind.ts';

const noticeShape = z.strictObject({
  ...ruled('danger notice'),
  aboveV: above0,
  spacingFt: above0,
  source: citedShape,
});

export const dangerNotice = {
  shape: noticeShape,
  read: ({ aboveV, spacingFt, source }: z.infer<typeof noticeShape>, cite: Cite): MarkingRule => ({
    aboveV,
    spacingFt,
    sources: cite.each(source),
  }),
};

const sharedShape = z.strictObject({ ...ruled('shared tray'), aboveV: above0, source: citedShape });

export const sharedTray = {
  shape: sharedShape,
  read: ({ aboveV, source }: z.infer<typeof sharedShape>, cite: Cite): SeparationRule => ({
    aboveV,
    sources: cite.each(source),
  }),
};
