/** Where the pointer of a drawn tape stands: counted from its marks, and from the numerals and the foot beside them. */
import { allOf, type DrawnFigure, type DrawnLine, isUpright } from './shapes.ts';

/** A mark of one in so many is longer than those between: whole inches, halves, quarters, eighths, sixteenths. */
const STEPS = [16, 8, 4, 2, 1];
/** Px within which two places are one: coordinates have two decimals. */
const HAIR = 0.03;
/** Px behind its mark within which a numeral begins; a foot stands on a flag, its middle farther off. */
const [NUMERAL, FLAG] = [12, 40];

/** Inches from the hook; null where it is no tape, or one that cannot be read, or read in two ways. */
export function tapeReading(figure: DrawnFigure): number | null {
  const marks = marksOf(figure);
  const wholes = marks.filter((one) => lengthOf(one) === Math.max(...marks.map(lengthOf)));
  const [left, right, whole] = [marks[0], marks.at(-1), wholes[0]];
  const pointer = pointerOf(figure);
  if (left === undefined || right === undefined || whole === undefined || pointer === undefined) return null;
  const inch = ((right.x1 - left.x1) / (marks.length - 1)) * 16;
  if (!marksStandRight(marks, whole.x1, inch)) return null;
  const readings = numbered(figure, wholes).map(({ x, inches }) => inches + (pointer - x) / inch);
  const [reading] = readings;
  if (reading === undefined || readings.some((one) => Math.abs(one - reading) > HAIR / inch)) return null;
  return reading;
}

const lengthOf = ({ y1, y2 }: DrawnLine) => Math.round((y2 - y1) * 100);

/** Upright lines that hang from one edge: the most there are. */
function marksOf(figure: DrawnFigure): readonly DrawnLine[] {
  const rows = Map.groupBy(allOf(figure, 'line').filter(isUpright), ({ y1 }) => y1);
  const [most = []] = [...rows.values()].sort((a, b) => b.length - a.length);
  return most.toSorted((a, b) => a.x1 - b.x1);
}

/** The tip of the pointer. */
function pointerOf(figure: DrawnFigure): number | undefined {
  const [pointer] = allOf(figure, 'triangle');
  return pointer?.corners.toSorted((a, b) => b[1] - a[1])[0]?.[0];
}

/** No sixteenth is left out, and each mark is as long as what it stands for. */
function marksStandRight(marks: readonly DrawnLine[], whole: number, inch: number): boolean {
  const lengths = [...new Set(marks.map(lengthOf))].sort((a, b) => b - a);
  const [left] = marks;
  if (left === undefined || lengths.length !== STEPS.length) return false;
  const start = Math.round(((left.x1 - whole) / inch) * 16);
  return marks.every((mark, i) => {
    const sixteenth = start + i;
    const step = STEPS.findIndex((each) => sixteenth % each === 0);
    return Math.abs(mark.x1 - whole - (sixteenth * inch) / 16) <= HAIR && lengthOf(mark) === lengths[step];
  });
}

/** Whole inches that say what they are: a numeral within its foot, or the foot itself. */
function numbered(
  figure: DrawnFigure,
  wholes: readonly DrawnLine[],
): readonly { readonly x: number; readonly inches: number }[] {
  const letters = allOf(figure, 'letters');
  const feet = letters.flatMap(({ x, text }) => {
    const written = /^(\d+) \D+$/.exec(text);
    return written === null ? [] : [{ x, feet: Number(written[1]) }];
  });
  const beside = <T extends { readonly x: number }>(all: readonly T[], x: number, room: number) =>
    all.find((one) => one.x > x && one.x - x <= room);
  return wholes.flatMap(({ x1: x }) => {
    const foot = beside(feet, x, FLAG);
    if (foot !== undefined) return [{ x, inches: 12 * foot.feet }];
    const numeral = beside(
      letters.filter(({ text }) => /^\d+$/.test(text)),
      x,
      NUMERAL,
    );
    if (numeral === undefined) return [];
    // Without a flag before it the tape begins at its hook.
    const before = feet.filter((one) => one.x < x).at(-1)?.feet ?? 0;
    return [{ x, inches: 12 * before + Number(numeral.text) }];
  });
}
