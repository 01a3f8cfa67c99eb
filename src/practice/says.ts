/** Every sentence that this room says, by its key in content/words; each language must have them all. */
import { UNITS } from './family.ts';
import { placedSays } from './kinds/place.ts';
import { models } from './models/index.ts';
import { passRuleSays } from './passRule/words.ts';
import { tallySays } from './statistics/words.ts';

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
  'nearAll',
  'nearParts',
  'partsHold',
  'placed',
  'found',
  'stopGo',
  'stopAsk',
  'stopStop',
  ...placedSays,
].map((key) => `practice.${key}`);
/** Units of answers and of the working's numbers. */
const units = UNITS.map((unit) => `unit.${unit}`);

export const practiceSays: readonly string[] = [
  ...new Set([
    ...verdicts,
    ...units,
    ...passRuleSays,
    ...tallySays,
    ...[...models.values()].flatMap((m) => m.says),
  ]),
];
