import { given, inchesOf, numberIn, rowsOf, type SecondOpinion } from './told.ts';

/**
 * 24 in beside a face, the quarter point: NEMA VE 2, from memory. 4 and 7 diameters: NFPA 70, 336.24 and 330.24, as told. 6 ft:
 * 392.30(B)(3), as told. A cable's area is that of its outside circle. The rest: common practice, as told.
 */
const work: SecondOpinion = (told) => {
  const faults: { rule: string; leg: string; at: number }[] = [];
  const add = (rule: string, leg: string, at: number) => faults.push({ rule, leg, at });
  const legOf = (label: string) => /leg (L\d+)/i.exec(label)?.[1] ?? '';
  const most = inchesOf(/No span is over ([^.]+)\./.exec(told.text)?.[1] ?? '');
  const allowed = Number(/at most ([\d.]+) in²/.exec(told.text)?.[1]);
  const legs = rowsOf(told, 'leg').map(({ label, text }) => ({
    id: legOf(label),
    length: inchesOf(text.split(' from ')[0] ?? ''),
    takeOut: inchesOf(/take-out ([\d /]+")/.exec(label)?.[1] ?? '0'),
    radius: inchesOf(/radius ([\d /]+")/.exec(label)?.[1] ?? '0'),
  }));
  const marks = (id: string) =>
    rowsOf(told, id).map(({ label, text }) => ({
      leg: legOf(label),
      at: inchesOf(text.split(/[;,]/)[0] ?? ''),
      text,
    }));
  const [supports, splices, parted, jumpers] = ['support', 'splice', 'parted', 'jumper'].map(marks) as [
    ReturnType<typeof marks>,
    ReturnType<typeof marks>,
    ReturnType<typeof marks>,
    ReturnType<typeof marks>,
  ];
  const last = legs.at(-1);
  if (last === undefined) throw new Error('no legs');
  given(told, 'start');

  for (const leg of legs) {
    // An expansion splice parts the leg in two straight parts.
    const cuts = parted.filter((one) => one.leg === leg.id).map(({ at }) => at);
    const bounds = [Number.NEGATIVE_INFINITY, ...cuts, Number.POSITIVE_INFINITY];
    for (let k = 1; k < bounds.length; k++) {
      const inside = (at: number) => at > (bounds[k - 1] as number) && at < (bounds[k] as number);
      const here = supports.filter((one) => one.leg === leg.id && inside(one.at)).map(({ at }) => at);
      const spans = here.slice(1).map((b, i) => [here[i] as number, b] as const);
      for (const [a, b] of spans) if (b - a > most) add('span-too-long', leg.id, (a + b) / 2);
      for (const { at } of splices.filter((one) => one.leg === leg.id && inside(one.at))) {
        const span = spans.find(([a, b]) => a < at && at < b);
        if (span !== undefined && Math.min(at - span[0], span[1] - at) > (span[1] - span[0]) / 4)
          add('splice-past-quarter', leg.id, at);
      }
    }
  }
  const near = (leg: string, at: number) =>
    supports.some((one) => one.leg === leg && Math.abs(one.at - at) <= 24);
  if (!near('L1', 0)) add('end-unsupported', 'L1', 0);
  if (!near(last.id, last.length)) add('end-unsupported', last.id, last.length);

  for (const { leg, at, text } of splices) {
    const [a = '', b = ''] = /; (.+) and (.+) go in/.exec(text)?.slice(1) ?? [];
    if (Math.min(inchesOf(a), inchesOf(b)) < 5 - 1 / 16) add('insertion-short', leg, at);
    if (text.includes('large')) add('hole-wrong', leg, at);
  }
  const needed = [{ leg: 'L1', at: 0 }, ...parted, { leg: last.id, at: last.length }];
  for (const { leg, at } of needed)
    if (!jumpers.some((one) => one.leg === leg && Math.abs(one.at - at) < 1 / 64)) add('jumper-missing', leg, at);
  const [low = 0, high = 1, now = 0] = (rowsOf(told, 'temps')[0]?.text.match(/-?\d+/g) ?? []).map(Number);
  for (const { leg, at, text } of parted)
    // The opening is told to the nearest 1/16.
    if (Math.abs(inchesOf(text.split('open by ')[1] ?? '') - (high - now) / (high - low)) > 1 / 16)
      add('gap-wrong', leg, at);

  let way = 0;
  const begins = new Map(legs.map(({ id, length }) => [id, (way += length) - length]));
  const along = ({ leg, at }: { leg: string; at: number }) => (begins.get(leg) ?? 0) + at;
  const ends = [0, ...parted.map(along), way];
  for (let k = 1; k < ends.length && parted.length > 0; k++) {
    const [from, to] = [ends[k - 1] as number, ends[k] as number];
    const clamps = supports.filter((one) => along(one) > from && along(one) < to && one.text.includes('clamp'));
    const off = (one: { leg: string; at: number }) => Math.abs(along(one) - (from + to) / 2);
    const kept = clamps.reduce((a, b) => (off(b) < off(a) ? b : a), clamps[0] as (typeof clamps)[number]);
    for (const one of clamps) if (one !== kept) add('anchor-many', one.leg, one.at);
  }

  const cables = rowsOf(told, 'cable').map(({ label, text }) => ({
    label,
    to: legs.findIndex(({ id }) => label.endsWith(id)),
    count: numberIn(text),
    od: Number(/of ([\d.]+) in/.exec(text)?.[1]),
  }));
  legs.forEach(({ id, radius }, i) => {
    const over = cables.filter(({ to }) => to >= i);
    const is = (sign: RegExp) => over.filter(({ label }) => sign.test(label));
    const [air, power, signal] = [is(/, air,/), is(/, power,/), is(/, signal,/)];
    if (air.length > 0 && power.length + signal.length > 0) add('air-with-cables', id, 0);
    if (power.length > 0 && signal.length > 0) add('power-with-signal', id, 0);
    const area = [...power, ...signal].reduce((sum, { count, od }) => sum + (count * Math.PI * od ** 2) / 4, 0);
    if (area > allowed) add('fill-over', id, 0);
    const needs = Math.max(0, ...is(/ TC,/).map(({ od }) => 4 * od), ...is(/MC/).map(({ od }) => 7 * od));
    if (i > 0 && needs > radius) add('radius-small', id, 0);
  });
  if (inchesOf(given(told, 'end-1').text.split(' open')[0] ?? '') > 72) add('open-gap-long', last.id, last.length);
  for (const { leg, at } of marks('mark')) add('used-as-step', leg, at);
  return { faults };
};
export default work;
