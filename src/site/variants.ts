/** Variants of a task in words: the values of its pairs, in the order of the task map. Pure. */
import type { Variant } from '../register/bodies.ts';
import type { MapTask } from '../register/taskMap.ts';
import type { Speak } from './speak.ts';

export const pairName = (pair: string, speak: Speak): string => speak({ say: `variant.${pair}` });
export const valueName = (pair: string, value: string, speak: Speak): string =>
  speak({ say: `variant.${pair}-${value}` });

/** "4 in, sleeve (socketed)"; empty for a task without pairs. */
export const variantText = (task: MapTask, variant: Variant, speak: Speak): string =>
  Object.keys(task.variants)
    .map((pair) => valueName(pair, variant[pair] ?? task.variants[pair]?.[0] ?? '', speak))
    .join(', ');

/** Values that are not the plain ones, in words. */
export const otherThanPlain = (task: MapTask, variant: Variant, speak: Speak): readonly string[] =>
  Object.entries(task.variants).flatMap(([pair, [plain]]) => {
    const value = variant[pair] ?? plain;
    return value === undefined || value === plain ? [] : [valueName(pair, value, speak)];
  });
