/** Days inside what the register says: written as pages write them. Pure. */
import { isDay } from '../register/days.ts';
import type { Say } from '../trade/answer.ts';
import { dayText } from './dates.ts';
import type { Speak, Tell } from './speak.ts';

/** Speaks a saying whose values may be days. */
export function speakDays(say: Say, speak: Speak, tell: Tell): string {
  const values = Object.entries(say.values ?? {}).map(([name, value]) => [
    name,
    isDay(value) ? dayText(tell, value) : value,
  ]);
  return speak({ ...say, values: Object.fromEntries(values) });
}

/** Whole days from one day to another. */
export const daysBetween = (from: string, to: string): number =>
  Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / 86_400_000);
