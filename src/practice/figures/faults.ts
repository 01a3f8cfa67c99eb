/** Holds the drawings of a draw against what its model says that they show. */
import { formatLength, fromInches, inches, type Ticks } from '../../trade/length.ts';
import type { Speak } from '../../trade/say.ts';
import type { Figured, FiguredKind, FiguredLeg, FiguredOf } from '../figured.ts';
import { barsIn, cutIn, holesIn, slopesIn } from './bench.ts';
import { type DrawnLeg, legsIn, placesIn } from './legs.ts';
import { sectionIn } from './section.ts';
import { allOf, type DrawnFigure, readSvg } from './shapes.ts';
import { tapeReading } from './tape.ts';
import { countsIn, lengthsOn, numbersIn } from './texts.ts';

/** Coordinates are written to hundredths of a px, and a run is drawn to about a px to the inch; in. */
const OFF = { place: 1 / 24, tape: 1 / 128, diameter: 0.005, deg: 0.1, cut: 0.01 };

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

const text = (ticks: Ticks) => formatLength(ticks, 64);
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
    const stand = names.map((name) => allOf(figure, 'letters').find((one) => one.text === name)?.x);
    const right = stand.every((x, i) => x !== undefined && (i === 0 || x > (stand[i - 1] ?? x)));
    return right ? null : names.join(', then ');
  },
  tape: ({ ticks }, figure) => {
    const reading = tapeReading(figure);
    return near(reading, inches(ticks), OFF.tape)
      ? null
      : `${text(ticks)} on its tape: it reads ${said(reading)}`;
  },
  slope: ({ deg }, figure) =>
    numbersIn(lettersOf(figure), 'deg').includes(deg) &&
    slopesIn(figure).some((one) => near(one, deg, OFF.deg))
      ? null
      : `a slope of ${deg}°`,
  legs: ({ legs }, figure) => notAlong(legs, figure),
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
      drawn.legend.length === cables.length &&
      drawn.legend.every(({ count, odIn }, i) => count === cables[i]?.count && odIn === cables[i]?.odIn);
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

const near = (drawn: number | null | undefined, wanted: number, off: number) =>
  drawn !== null && drawn !== undefined && Math.abs(drawn - wanted) <= off;
const sum = (all: readonly number[]) => all.reduce((a, b) => a + b, 0);
const said = (reading: number | null) =>
  reading === null ? 'nothing' : formatLength(fromInches(reading), 64);

/** The first of these lengths that is not there, or not as often as it stands here. */
function notAmong(ticks: readonly Ticks[], drawn: readonly number[]): string | null {
  const left = [...drawn];
  const missing = ticks.find((length) => {
    const i = left.indexOf(inches(length));
    if (i >= 0) left.splice(i, 1);
    return i < 0;
  });
  return missing === undefined ? null : text(missing);
}

/** The first of these lengths that is not said behind those before it. */
function notInOrder(ticks: readonly Ticks[], words: readonly number[]): string | null {
  let from = 0;
  const missing = ticks.find((length) => {
    from = words.indexOf(inches(length), from) + 1;
    return from === 0;
  });
  return missing === undefined ? null : `${text(missing)} in its words`;
}

/** Px by this scale as long as these lengths. */
const alike = (drawn: readonly number[], wanted: readonly Ticks[], pxPerInch: number) =>
  drawn.length === wanted.length &&
  drawn.every((px, i) => near(px / pxPerInch, inches(wanted[i] as Ticks), OFF.place));

/**
 * Legs by what is said of them, by the places lettered on them, and by where things stand. A leg that is broken over two
 * rows has no place to measure from: where there is one, words and letters have to do.
 */
function notAlong(legs: readonly FiguredLeg[], figure: DrawnFigure): string | null {
  const unsaid = notInOrder(
    legs.flatMap(({ length, supports, joints }) => [
      length,
      ...joints.map(({ at }) => at),
      // Of many supports the first and the last are said.
      ...[supports[0], supports.length > 1 ? supports.at(-1) : undefined].flatMap((one) => one?.at ?? []),
    ]),
    lengthsOn(figure.words),
  );
  if (unsaid !== null) return unsaid;
  const places = legs.flatMap(({ supports, joints }) => [...supports, ...joints]);
  const lettered = placesIn(figure);
  const misplaced = places.find(({ name, at }) => lettered.has(name) && lettered.get(name) !== inches(at));
  if (misplaced !== undefined) return `${misplaced.name} at ${text(misplaced.at)}`;
  const drawn = legsIn(figure);
  if (drawn.length !== legs.length && figure.shapes.some(({ kind }) => kind === 'break')) return null;
  const scale =
    sum(drawn.map(({ length }) => length)) / inches(sum(legs.map(({ length }) => length)) as Ticks);
  const wrong = legs.find((leg, i) => !standsAs(drawn[i], leg, scale));
  return wrong === undefined ? null : `a leg of ${text(wrong.length)} with all that stands on it`;
}

function standsAs(drawn: DrawnLeg | undefined, leg: FiguredLeg, scale: number): boolean {
  const at = (places: FiguredLeg['supports']) => places.map((one) => one.at);
  return (
    drawn !== undefined &&
    alike([drawn.length], [leg.length], scale) &&
    alike(drawn.supports, at(leg.supports), scale) &&
    alike(drawn.joints, at(leg.joints), scale)
  );
}
