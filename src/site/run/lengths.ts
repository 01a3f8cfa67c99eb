/** How the sheets of a run write lengths: one way for the page and the job card, metric as the device is set. */
import { inches, type Ticks } from '../../trade/length.ts';
import { shortLength } from '../../trade/shortLength.ts';
import { measureText, tape } from '../calculators/measure.ts';
import type { Settings } from '../settings.ts';
import type { Tell } from '../speak.ts';

export type Long = (length: Ticks) => string;

/** The length as a tape holds it, to 1/64 in where it must; with millimetres beside it, or instead. */
export function longAs(settings: Settings, tell: Tell): Long {
  if (settings.metric === 'none') return (length) => shortLength(length);
  const metric = (length: Ticks) =>
    measureText(tape(inches(length)), { ...settings, metric: 'instead' }, tell);
  if (settings.metric === 'instead') return metric;
  return (length) => tell('measure.beside', { own: shortLength(length), metric: metric(length) });
}
