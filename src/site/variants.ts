/** Variants of a task in words: the values of its pairs, in the order of the task map. Pure. */
import type { Variant } from '../register/bodies.ts';
import type { MapTask } from '../register/taskMap.ts';
import { type Speak, saidOr } from './speak.ts';

/** Pairs and values that these pages do not know are as they were signed. */
export const pairName = (pair: string, speak: Speak): string => saidOr(speak, `variant.${pair}`, pair);
export const valueName = (pair: string, value: string, speak: Speak): string =>
  saidOr(speak, `variant.${pair}-${value}`, value);

/** Pairs that the task does not know, as they were signed. */
const strange = (task: MapTask, variant: Variant): readonly string[] =>
  Object.entries(variant).flatMap(([pair, value]) =>
    Object.hasOwn(task.variants, pair) ? [] : [`${pair} ${value}`],
  );

/** "4 in, sleeve (socketed)"; empty for a task without pairs. */
export const variantText = (task: MapTask, variant: Variant, speak: Speak): string =>
  [
    ...Object.keys(task.variants).map((pair) =>
      valueName(pair, variant[pair] ?? task.variants[pair]?.[0] ?? '', speak),
    ),
    ...strange(task, variant),
  ].join(', ');

/** Values that are not the plain ones, in words. */
export const otherThanPlain = (task: MapTask, variant: Variant, speak: Speak): readonly string[] => [
  ...Object.entries(task.variants).flatMap(([pair, [plain]]) => {
    const value = variant[pair] ?? plain;
    return value === undefined || value === plain ? [] : [valueName(pair, value, speak)];
  }),
  ...strange(task, variant),
];
