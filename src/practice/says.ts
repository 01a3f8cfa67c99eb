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
/** Units of answers and of the working's numbers. */
const units = ['unit.in', 'unit.in2', 'unit.mm'];

export const practiceSays: readonly string[] = [
  ...new Set([...verdicts, ...units, ...[...models.values()].flatMap((m) => m.says)]),
];
