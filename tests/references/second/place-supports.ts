import { given, inchesOf, lengthOf, numberIn, rowsOf, type SecondOpinion } from './told.ts';

/** 24 in beside a face; between strut and quarter point, none in an end span, one a span: NEMA VE 2, from memory. */
const BESIDE = 24;

/** Whole inches from support to support with the fewest of them: steps outward, one support after another. */
function supports(from: number, to: number, splices: readonly number[], span: number, half: number): number[] {
  const splicesIn = (a: number, b: number) => splices.filter((s) => s >= a && s <= b);
  const good = (a: number, b: number, end: boolean) => {
    const inside = splicesIn(a, b);
    return inside.every(
      (s) => !end && Math.min(s - a, b - s) >= half && Math.min(s - a, b - s) <= (b - a) / 4,
    );
  };
  const places = Array.from({ length: Math.floor(to) - Math.ceil(from) + 1 }, (_, i) => Math.ceil(from) + i);
  let ways = new Map(
    places.filter((x) => x <= from + BESIDE && splicesIn(from, x).length === 0).map((x) => [x, [x]]),
  );
  for (let count = 1; count < 20; count++) {
    const next = new Map<number, number[]>();
    for (const [a, way] of ways) {
      const over = splicesIn(a, to).length === 0;
      if (a >= to - BESIDE && over) return way;
      for (const b of places) {
        if (b <= a || b - a > span) continue;
        const last = b >= to - BESIDE && splicesIn(b, to).length === 0;
        if (last && good(a, b, true)) return [...way, b];
        if (splicesIn(a, b).length <= 1 && good(a, b, count === 1) && !next.has(b)) next.set(b, [...way, b]);
      }
    }
    ways = next;
  }
  throw new Error('no supports');
}

const work: SecondOpinion = (told) => {
  const cables = rowsOf(told, 'cable').reduce((sum, { text }) => {
    const [, count, lb] = /(\d+) of ([\d.]+) lb/.exec(text) ?? [];
    return sum + Number(count) * Number(lb);
  }, 0);
  const load = cables + numberIn(given(told, 'tray').text);
  const feet = rowsOf(told, 'table').flatMap(({ label, text }) =>
    numberIn(text.replace('up to', '')) >= load - 1e-9 ? [numberIn(label)] : [],
  );
  const span = 12 * Math.max(...feet);
  const legs = rowsOf(told, 'leg').map(({ label, text }) => ({
    id: /L\d+/.exec(label)?.[0] ?? '',
    length: inchesOf(text.split(' from ')[0] ?? ''),
    takeOut: inchesOf(/take-out ([\d /]+")/.exec(label)?.[1] ?? '0'),
  }));
  return {
    supports: legs.flatMap(({ id, length, takeOut }, i) => {
      const splices = rowsOf(told, 'splice').flatMap(({ label, text }) =>
        label.includes(`leg ${id},`) ? [inchesOf(text)] : [],
      );
      const to = length - (legs[i + 1]?.takeOut ?? 0);
      return supports(takeOut, to, splices, span, lengthOf(told, 'sleeve') / 2).map((at) => ({
        leg: id,
        at,
        what: 'support',
      }));
    }),
  };
};
export default work;
