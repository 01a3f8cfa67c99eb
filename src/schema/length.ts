/** Fields that hold a length: a JSON number of inches, or a text in one of the forms of src/trade/lengthText.ts. */
import { z } from 'zod';
import { inches, lengthRefusal, type Ticks, tryLength } from '../trade/length.ts';

function field(from: 'above 0' | 'from 0') {
  const read = z.unknown().transform((given, ctx): Ticks => {
    const refuse = (message: string, todo: string) => {
      ctx.addIssue({ code: 'custom', message, params: { todo } });
      return z.NEVER;
    };
    if (given === undefined)
      return refuse('this field is missing', 'give a number of inches, or a length as text');
    if (typeof given !== 'number' && typeof given !== 'string')
      return refuse('a length is a number of inches or a text', 'write 147.5, or "12\'-3 1/2\\""');
    const length = tryLength(given);
    if (typeof length !== 'number') {
      const { message, todo } = lengthRefusal(length);
      return refuse(message, todo);
    }
    if (from === 'above 0' && inches(length) <= 0)
      return refuse('this length must be above 0', 'write a length above 0');
    return length;
  });
  // What a published JSON Schema says of it (runJsonSchema.ts): there a text is judged by a digit in it and no more.
  return read.meta({
    description: `A length ${from}: a number of inches, or a text such as 12'-3 1/2" or 2 350 mm`,
    anyOf: [
      { type: 'number', [from === 'above 0' ? 'exclusiveMinimum' : 'minimum']: 0 },
      { type: 'string', pattern: '[0-9\u00bc-\u00be\u2150-\u215e]' },
    ],
  });
}

/** A length above 0: widths, pitches, pieces, stock. */
export const lengthAbove0 = field('above 0');
/** A length from 0. */
export const lengthFrom0 = field('from 0');
