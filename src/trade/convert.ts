import type { Answered } from './answer.ts';
import { INCH } from './habits.ts';
import { type Denominator, formatLength, inches, millimetres, roundTo, type Ticks } from './length.ts';

export interface ConvertGiven {
  readonly text: Ticks;
  /** The rounded text is to this part of an inch; 16 when left out. */
  readonly toFraction?: Denominator | undefined;
}

export interface ConvertResult {
  /** As read: nothing is lost but what is finer than a tick (1/8128 in). */
  readonly in: number;
  readonly mm: number;
  readonly text: string;
  readonly roundedIn: number;
}

/** One length in inches, millimetres and as the trade writes it; only `text` and `roundedIn` are rounded. */
export function convert({ text: length, toFraction = 16 }: ConvertGiven): Answered<ConvertResult> {
  const rounded = roundTo(length, toFraction);
  const text = formatLength(length, toFraction);
  const exact = rounded === length;
  return {
    result: { in: inches(length), mm: millimetres(length), text, roundedIn: inches(rounded) },
    steps: [
      { say: 'length.inches', value: inches(length), unit: 'in' },
      { say: 'length.metric', value: millimetres(length), unit: 'mm' },
      exact
        ? { say: 'length.exact', values: { text, part: toFraction } }
        : {
            say: 'length.rounded',
            values: { text, part: toFraction },
            value: inches(ticksApart(rounded, length)),
            unit: 'in',
          },
    ],
    sources: [INCH],
  };
}

function ticksApart(a: Ticks, b: Ticks): Ticks {
  return (a - b) as Ticks;
}
