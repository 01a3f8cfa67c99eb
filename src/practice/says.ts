/** Every sentence that this room says, by its key in content/words; each language must have them all. */
import { models } from './models/index.ts';

const verdicts = [
  'holds',
  'holdsFromThere',
  'blank',
  'nearLong',
  'nearShort',
  'notRecognised',
  'andAlso',
  'comesBefore',
  'leftOut',
  'orderStep',
].map((key) => `practice.${key}`);

export const practiceSays: readonly string[] = [
  ...new Set([...verdicts, ...[...models.values()].flatMap((m) => m.says)]),
];
