import { measureText, tape } from '../calculators/measure.ts';
import type { Tell } from '../speak.ts';
import { useSettings } from './useSettings.ts';

/** A length in millimetres under an answer in feet and inches, where the device shows metric. */
export function InMetric({ inches, tell }: { readonly inches: number; readonly tell: Tell }) {
  const settings = useSettings();
  if (settings.metric === 'none') return null;
  const text = measureText(tape(inches), { ...settings, metric: 'instead' }, tell);
  return <p>{tell('measure.thatIs', { text })}</p>;
}
