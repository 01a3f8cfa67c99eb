/** What a whole run comes to, in the notes of its sheets. */
import type { FittingItem, ResolvedRun } from '../run/resolved.ts';
import { ticks } from '../trade/length.ts';
import type { Speak } from '../trade/say.ts';
import { inchNumber, shortLength } from '../trade/shortLength.ts';
import { textWidth } from './glyphs.ts';
import { SIZES } from './plan.ts';

export const KINDS = [
  'elbow',
  'tee',
  'cross',
  'reducer',
  'hinge',
] as const satisfies readonly FittingItem['kind'][];

/** Px that one note may take on the narrowest sheet. */
const NARROW = 272;

/** `4 in aluminium`, `3 legs, 2 elbows`, the whole along the centre line, the longest span allowed. */
export function runNotes({ legs, fittings, run, tray }: ResolvedRun, speak: Speak): readonly string[] {
  const widths = [...new Set(legs.map((l) => l.tray.width))].map((w) =>
    speak({ say: 'drawing.inches', values: { inches: inchNumber(w) } }),
  );
  const counted = (key: string, count: number) =>
    speak({ say: `rundrawing.${key}-${count === 1 ? 'one' : 'many'}`, values: { count } });
  const kinds = KINDS.flatMap((kind) => {
    const count = fittings.filter((f) => f.item.kind === kind).length;
    return count === 0 ? [] : [counted(kind, count)];
  });
  const counts = counted('leg', legs.length);
  const whole = ticks(legs.reduce((sum, l) => sum + l.length, 0));
  const limit = run.limits?.maxSpan;
  return [
    speak({ say: `rundrawing.metal-${tray.metal}`, values: { widths: widths.join(' · ') } }),
    ...(textWidth([counts, ...kinds].join(', '), SIZES.note) < NARROW
      ? [[counts, ...kinds].join(', ')]
      : [counts, ...kinds]),
    speak({ say: 'rundrawing.whole', values: { length: shortLength(whole) } }),
    ...(limit === undefined
      ? []
      : [speak({ say: 'rundrawing.noSpanOver', values: { length: shortLength(limit) } })]),
  ];
}
