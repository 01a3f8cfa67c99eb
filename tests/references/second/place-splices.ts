import { given, inchesOf, lengthOf, rowsOf, type SecondOpinion } from './told.ts';

/** The quarter point, none in an end span, one a span: NEMA VE 2, from memory. What goes into a socket: told. */
const work: SecondOpinion = (told) => {
  const stock = lengthOf(told, 'stock');
  const sleeve = lengthOf(told, 'sleeve');
  const goesIn = inchesOf(/([\d /]+") of each piece/.exec(told.text)?.[1] ?? '');
  const socket = inchesOf(/piece goes ([\d /]+") beyond/.exec(told.text)?.[1] ?? '');
  const half = (sleeve - 2 * goesIn) / 2;
  const legOf = (label: string) => /L\d+/.exec(label)?.[0] ?? '';
  const legs = rowsOf(told, 'leg').map(({ label, text }) => ({
    id: legOf(label),
    length: inchesOf(text.split(' from ')[0] ?? ''),
    takeOut: inchesOf(/take-out ([\d /]+")/.exec(label)?.[1] ?? '0'),
  }));
  const free = (id: string) => given(told, id).text.includes('free');
  return {
    splices: legs.flatMap(({ id, length, takeOut }, i) => {
      const supports = rowsOf(told, 'support').flatMap(({ label, text }) =>
        legOf(label) === id ? [inchesOf(text)] : [],
      );
      const next = legs[i + 1];
      let begin = takeOut - (i === 0 && free('start') ? 0 : socket);
      const end =
        next === undefined ? length + (free('end-1') ? 0 : socket) : length - next.takeOut + socket;
      // Where a splice may stand: beside either support of each inner span.
      const windows = supports.slice(1, -2).flatMap((a, k) => {
        const b = supports[k + 2] as number;
        const quarter = (b - a) / 4;
        return [
          [a + sleeve / 2, a + quarter, a],
          [b - quarter, b - sleeve / 2, a],
        ] as const;
      });
      const marks: { leg: string; at: number; what: string }[] = [];
      let used = Number.NEGATIVE_INFINITY;
      while (end - begin > stock) {
        const reach = begin + stock + half;
        const best = windows
          .filter(([from, to, span]) => span > used && from <= to && from <= reach)
          .map(([, to, span]) => ({ at: Math.floor(Math.min(to, reach) * 16) / 16, span }))
          .reduce((a, b) => (b.at > a.at ? b : a));
        marks.push({ leg: id, at: best.at, what: 'splice' });
        used = best.span;
        begin = best.at + half;
      }
      return marks;
    }),
  };
};
export default work;
