/** Lengths that are wanted against those that were read. */
import { formatLength, inches, type Ticks } from '../../trade/length.ts';

/** In; coordinates are written to hundredths of a px, and a run is drawn to about a px to the inch. */
const OFF = 1 / 24;

export const text = (ticks: Ticks) => formatLength(ticks, 64);
export const near = (drawn: number | null | undefined, wanted: number, off: number) =>
  drawn !== null && drawn !== undefined && Math.abs(drawn - wanted) <= off;
export const sum = (all: readonly number[]) => all.reduce((a, b) => a + b, 0);

/** The first of these lengths that is not there, or not as often as it stands here. */
export function notAmong(ticks: readonly Ticks[], drawn: readonly number[]): string | null {
  const left = [...drawn];
  const missing = ticks.find((length) => {
    const i = left.indexOf(inches(length));
    if (i >= 0) left.splice(i, 1);
    return i < 0;
  });
  return missing === undefined ? null : text(missing);
}

/** The first of these lengths that is not said behind those before it. */
export function notInOrder(ticks: readonly Ticks[], words: readonly number[]): string | null {
  let from = 0;
  const missing = ticks.find((length) => {
    from = words.indexOf(inches(length), from) + 1;
    return from === 0;
  });
  return missing === undefined ? null : `${text(missing)} in its words`;
}

/** Px by this scale as long as these lengths. */
export const alike = (drawn: readonly number[], wanted: readonly Ticks[], pxPerInch: number) =>
  drawn.length === wanted.length &&
  drawn.every((px, i) => near(px / pxPerInch, inches(wanted[i] as Ticks), OFF));
