/**
 * `calc VERB`: one object in, one answer out; a list in, a list of answers out, each with its own faults. A new
 * calculator is a line of one of the lists in calculators/.
 */

import { answering } from './answering.ts';
import { calcContent } from './calcContent.ts';
import type { Calculator } from './calculator.ts';
import { channel } from './calculators/channel.ts';
import { geometry } from './calculators/geometry.ts';
import { mechanics } from './calculators/mechanics.ts';
import { sticks } from './calculators/sticks.ts';
import { tables } from './calculators/tables.ts';
import { table } from './help.ts';
import type { Group, Verb } from './verb.ts';

export const CALCULATORS: readonly Calculator[] = [
  ...channel,
  ...sticks,
  ...mechanics,
  ...geometry,
  ...tables,
];

function verbOf({ name, line, fields, results, options, work }: Calculator): Verb {
  return {
    name,
    line,
    takesInput: true,
    ...(options === undefined ? {} : { options }),
    manual: () => [
      'In: one object, or a list of them. Fields with a value in brackets may be left out.',
      ...table(Object.entries(fields.shape).map(([field, shape]) => [field, shape.description ?? ''])),
      '',
      'Out, in "result":',
      ...table(results),
      '',
      'A length is a number of inches or a text: 12\'-3 1/2", 7-3 5/8, 87 5/8, 112.5 ft, 2 350 mm.',
    ],
    run: answering(work, calcContent),
  };
}

export const group: Group = {
  name: 'calc',
  line: 'the calculators: lengths, cutting, marking, fill, sections, beams, spans, offsets, tables of the code',
  verbs: CALCULATORS.map(verbOf),
};
