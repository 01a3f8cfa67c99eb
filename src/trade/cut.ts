/**
 * The length to cut a piece of channel to, from what was measured on the run: the clear length up to the edges of its
 * splices, and what goes into each splice.
 */
import type { Answered, Source, Step } from './answer.ts';
import { INCH, INSERTED, INSERTION, STOCK } from './habits.ts';
import { formatLength, inches, millimetres, type Ticks, ticks } from './length.ts';
import { type Limit, restsOn } from './limit.ts';

export interface CutGiven {
  /** Measured from the beginning of the run to the splice's edge, or between the edges of two splices; from 0. */
  readonly toSpliceEdge: Ticks;
  /** Ends that go into a splice: none, one (from the beginning), two (from edge to edge). */
  readonly insertedEnds: 0 | 1 | 2;
  /** How far one end goes in, from 0; the trade's 5 in when left out. */
  readonly insertion?: Ticks | undefined;
  /** One length as it comes, above 0; 20 ft when left out. */
  readonly stock?: Ticks | undefined;
}

export interface CutResult {
  readonly cutIn: number;
  readonly cutMm: number;
  readonly text: string;
  /** Whether one stock length is long enough; a piece of exactly the stock's length is. */
  readonly fitsStock: boolean;
}

/** The trade's own insertion, until the site adopts one. */
const TRADE: Limit<Ticks> = { value: INSERTION.length, source: INSERTION.source, rests: 'training' };

/** The cut itself, in ticks. */
export function cutLength({ toSpliceEdge, insertedEnds, insertion = INSERTION.length }: CutGiven): Ticks {
  return ticks(toSpliceEdge + insertedEnds * insertion);
}

/** @param usual  the insertion where none is given: the site's, when it has adopted one */
export function cut(given: CutGiven, usual: Limit<Ticks> = TRADE): Answered<CutResult> {
  const { toSpliceEdge, insertedEnds, insertion = usual.value, stock = STOCK.length } = given;
  const length = cutLength({ ...given, insertion });
  const text = formatLength(length);
  const fitsStock = length <= stock;
  const measured = formatLength(toSpliceEdge);
  const goesIn = formatLength(insertion);
  const all = formatLength(ticks(insertedEnds * insertion));
  const steps: Step[] = [
    { say: `cut.measured${insertedEnds}`, values: { measured }, value: inches(toSpliceEdge), unit: 'in' },
    ...(insertedEnds === 0
      ? []
      : [
          { say: 'cut.insertion', values: { ends: insertedEnds, insertion: goesIn, all } },
          ...(given.insertion === undefined ? restsOn(usual) : []),
          { say: 'cut.sum', values: { measured, all, text }, value: inches(length), unit: 'in' },
          { say: 'cut.back', values: { text, all, measured } },
        ]),
    { say: 'cut.metric', values: { text }, value: millimetres(length), unit: 'mm' },
    { say: fitsStock ? 'cut.fits' : 'cut.tooLong', values: { text, stock: formatLength(stock) } },
  ];
  return {
    result: { cutIn: inches(length), cutMm: millimetres(length), text, fitsStock },
    steps,
    sources: sources(given, usual),
  };
}

/** A figure's source is named only where the figure was used: not when the caller gave his own. */
function sources({ insertedEnds, insertion, stock }: CutGiven, usual: Limit<Ticks>): readonly Source[] {
  return [
    ...(insertedEnds > 0 ? [INSERTED] : []),
    ...(insertedEnds > 0 && insertion === undefined ? [usual.source] : []),
    ...(stock === undefined ? [STOCK.source] : []),
    INCH,
  ];
}
