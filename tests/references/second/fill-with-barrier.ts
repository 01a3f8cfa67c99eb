import { given, numberIn, rowsOf, type SecondOpinion } from './told.ts';

/** NEC 2023, 392.22(A): each side of the barrier by itself, against the row for half the width: the project's rule (training value). */
const work: SecondOpinion = (told) => {
  const half = numberIn(given(told, 'width').text) / 2;
  const row = rowsOf(told, given(told, 'bottom').text).find(({ label }) => label.endsWith(`, ${half} in wide`));
  const side = (id: string) => {
    const [, count = '', od = ''] = /(\d+) of ([\d.]+) in/.exec(given(told, id).text) ?? [];
    const [one = 0, more = 0] = [...(row?.text ?? '').matchAll(/([\d.]+) in²/g)].map(([, n]) => Number(n));
    const area = Number(count) * 0.7853982 * Number(od) ** 2;
    return { area, fits: area <= (Number(count) === 1 ? one : more) };
  };
  const [power, signal] = [side('power'), side('signal')];
  const sides =
    row === undefined
      ? 'ask'
      : power.fits && signal.fits
        ? 'both'
        : power.fits
          ? 'power'
          : signal.fits
            ? 'signal'
            : 'neither';
  return {
    power: power.area,
    signal: signal.area,
    sides,
    next: sides === 'both' ? 'lay' : 'elsewhere',
  };
};
export default work;
