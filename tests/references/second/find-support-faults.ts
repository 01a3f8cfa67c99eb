import { given, inchesOf, lengthOf, rowsOf, type SecondOpinion } from './told.ts';

/** 24 in beside a face; the quarter point; no splice in an end span: NEMA VE 2, from memory. */
const BESIDE = 24;

const work: SecondOpinion = (told) => {
  const found: { rule: string; leg: string; at: number }[] = [];
  const most = lengthOf(told, 'span');
  const [sleeve, plate] = [/Sleeves are ([\d /]+")/, /plates ([\d /]+")/].map((sign) =>
    inchesOf(sign.exec(told.text)?.[1] ?? ''),
  ) as [number, number];
  const legs = rowsOf(told, 'leg').map(({ label, text }) => ({
    id: /L\d+/.exec(label)?.[0] ?? '',
    length: inchesOf(text.split(' from ')[0] ?? ''),
    takeOut: inchesOf(/take-out ([\d /]+")/.exec(label)?.[1] ?? '0'),
  }));
  const on = (id: string, leg: string) => rowsOf(told, id).filter(({ label }) => label.includes(`leg ${leg}`));
  given(told, 'start');
  for (const [i, { id, length, takeOut }] of legs.entries()) {
    const next = legs[i + 1];
    const supports = on('support', id).map(({ text }) => inchesOf(text));
    const add = (rule: string, at: number) => found.push({ rule, leg: id, at });
    const gap = (face: number) => Math.min(...supports.map((one) => Math.abs(one - face)));
    if (gap(takeOut) > BESIDE) add(i === 0 ? 'end-unsupported' : 'fitting-unsupported', takeOut);
    const to = length - (next?.takeOut ?? 0);
    if (gap(to) > BESIDE) add(next === undefined ? 'end-unsupported' : 'fitting-unsupported', to);
    const spans = supports.slice(1).map((b, k) => ({ a: supports[k] as number, b }));
    for (const { a, b } of spans) if (b - a > most) add('span-too-long', (a + b) / 2);
    const splices = on('splice', id).map(({ label, text }) => ({
      at: inchesOf(text),
      half: (label.includes('plate') ? plate : sleeve) / 2,
    }));
    const inner = spans.slice(1, -1);
    for (const { at, half } of splices) {
      const span = inner.find(({ a, b }) => a <= at && at <= b);
      if (span === undefined) add('splice-in-end-span', at);
      else {
        const strut = gap(at);
        if (strut < half) add('splice-on-support', at);
        else if (strut > (span.b - span.a) / 4) add('splice-past-quarter', at);
      }
    }
    for (const { a, b } of inner) {
      const inside = splices.filter(({ at }) => a < at && at < b);
      if (inside.length > 1) add('two-splices-in-span', (inside[1] as { at: number }).at);
    }
  }
  return { faults: found };
};
export default work;
