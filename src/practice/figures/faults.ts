/** Holds the drawings of a draw against what its model says that they show. */
import { formatLength, fromInches, inches, type Ticks } from '../../trade/length.ts';
import type { Speak } from '../../trade/say.ts';
import type { Figured, FiguredKind, FiguredOf } from '../figured.ts';
import { notAlong } from './along.ts';
import { barsIn, cutIn, holesIn, slopesIn } from './bench.ts';
import { alike, near, notAmong, notInOrder, sum, text } from './compare.ts';
import { dimensionsFit } from './isometric.ts';
import { type CablesListed, sectionIn } from './section.ts';
import { allOf, type DrawnFigure, readSvg } from './shapes.ts';
import { tapeReading } from './tape.ts';
import { countsIn, lengthsOn, numbersIn } from './texts.ts';

/** Coordinates are written to hundredths of a px. Inches, degrees, cuts. */
const OFF = { tape: 1 / 128, diameter: 0.005, deg: 0.1, cut: 0.01 };

/** What no figure shows, or shows otherwise; one text each. */
export function notFigured(
  figured: readonly Figured[],
  svgs: readonly string[],
  speak: Speak,
): readonly string[] {
  const figures = svgs.map(readSvg);
  return figured.flatMap((wanted) => {
    const faults = figures.map((figure) => faultIn(wanted, figure, speak));
    return faults.includes(null) ? [] : [`no figure shows ${faults[0] ?? wanted.kind}`];
  });
}

/** Lengths that must stand among the givens as well. */
export function givenBy(figured: Figured): readonly Ticks[] {
  if (figured.kind === 'lengths') return figured.ticks;
  return figured.kind === 'legs' ? figured.legs.map(({ length }) => length) : [];
}

/** What is not shown, or null. */
type Find<K extends FiguredKind> = (wanted: FiguredOf<K>, figure: DrawnFigure, speak: Speak) => string | null;

const faultIn = <K extends FiguredKind>(wanted: FiguredOf<K>, figure: DrawnFigure, speak: Speak) =>
  FIND[wanted.kind](wanted, figure, speak);

const lettersOf = (figure: DrawnFigure) =>
  allOf(figure, 'letters')
    .map((one) => one.text)
    .join('\n');

const FIND: { readonly [K in FiguredKind]: Find<K> } = {
  lengths: ({ ticks }, figure) => notAmong(ticks, lengthsOn(lettersOf(figure))),
  sizes: ({ ticks }, figure) => notAmong(ticks, lengthsOn(lettersOf(figure))),
  said: ({ ticks }, { words }) => notInOrder(ticks, lengthsOn(words)),
  count: ({ value }, { words }) => (countsIn(words).includes(value) ? null : `the number ${value}`),
  names: ({ says }, figure, speak) => {
    const names = says.map(speak);
    const stand = allOf(figure, 'letters')
      .filter((one) => names.includes(one.text))
      .toSorted((a, b) => a.x - b.x)
      .map((one) => one.text);
    return stand.join('\n') === names.join('\n') ? null : names.join(', then ');
  },
  tape: ({ ticks }, figure) => {
    const reading = tapeReading(figure);
    if (!near(reading, inches(ticks), OFF.tape))
      return `${text(ticks)} on its tape: it reads ${said(reading)}`;
    const told = countsIn(figure.words);
    return onTape(ticks).every((count) => told.includes(count)) ? null : `${text(ticks)} in its words`;
  },
  slope: ({ deg }, figure) =>
    numbersIn(lettersOf(figure), 'deg').includes(deg) &&
    slopesIn(figure).some((one) => near(one, deg, OFF.deg))
      ? null
      : `a slope of ${deg}°`,
  legs: ({ legs }, figure) => notAlong(legs, figure),
  courses: ({ courses }, figure) => {
    const ticks = courses.map(({ length }) => length);
    const missing =
      notAmong(ticks, lengthsOn(lettersOf(figure))) ?? notInOrder(ticks, lengthsOn(figure.words));
    if (missing !== null) return missing;
    return dimensionsFit(courses, figure) ? null : `legs of ${ticks.map(text).join(', ')} the way they go`;
  },
  bars: ({ ticks }, figure) => {
    const bars = barsIn(figure);
    const scale = sum(bars) / inches(sum(ticks) as Ticks);
    return alike(bars, ticks, scale) ? null : `bars as long as ${ticks.map(text).join(', ')}`;
  },
  cables: ({ widthIn, cables }, figure) => {
    const drawn = sectionIn(figure);
    const thick = cables.flatMap(({ odIn, count }) => Array<number>(count).fill(odIn)).sort((a, b) => b - a);
    const right =
      drawn !== null &&
      drawn.widthIn === widthIn &&
      drawn.diameters.length === thick.length &&
      drawn.diameters.every((one, i) => near(one, thick[i] ?? 0, OFF.diameter)) &&
      [drawn.legend, drawn.told].every((listed) => listsAll(cables, listed));
    const wanted = cables.map(({ odIn, count }) => `${count} of ${odIn} in`).join(', ');
    return right ? null : `${wanted} in a channel of ${widthIn} in`;
  },
  cut: ({ waste, off }, figure) => {
    const cut = cutIn(figure);
    return cut !== null && cut.waste === waste && near(cut.off, off, OFF.cut)
      ? null
      : `the waste ${waste} of the mark and the saw cut off it by ${off}`;
  },
  holes: ({ end, count }, figure) => {
    const holes = holesIn(figure);
    return holes[end] === count && holes.left + holes.right === count
      ? null
      : `${count} holes at its ${end} end`;
  },
};

/** Feet, inches of the foot, sixteenths of the inch. */
function onTape(ticks: Ticks): readonly number[] {
  const long = inches(ticks);
  return [Math.floor(long / 12), Math.floor(long % 12), Math.round((long % 1) * 1600) / 100];
}

const listsAll = (wanted: FiguredOf<'cables'>['cables'], listed: readonly CablesListed[]) =>
  listed.length === wanted.length &&
  listed.every(({ count, odIn }, i) => count === wanted[i]?.count && odIn === wanted[i]?.odIn);
const said = (reading: number | null) =>
  reading === null ? 'nothing' : formatLength(fromInches(reading), 64);
