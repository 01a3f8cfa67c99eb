import { given, inchesOf, numberIn, rowsOf, type SecondOpinion } from './told.ts';

/** Wire from thin to thick, as far as the told table goes and one below it. */
const WIRES = ['14 AWG', '12 AWG', '10 AWG', '8 AWG', '6 AWG'];

/** Where a jumper belongs is told; the largest device decides its size: NFPA 70, 250.122 with 250.102(D), as told. */
const work: SecondOpinion = (told) => {
  const largest = Math.max(...rowsOf(told, 'cable').map(({ text }) => numberIn(text)));
  const row = rowsOf(told, 'size').find(({ label }) => numberIn(label) >= largest);
  const size = WIRES.indexOf(row?.text ?? '');
  const legOf = (label: string) => /L\d+/.exec(label)?.[0] ?? '';
  const needed: { leg: string; at: number }[] = [];
  const legs = rowsOf(told, 'leg');
  for (const [i, { label }] of legs.entries()) {
    const onTray = i === 0 && !given(told, 'start').text.includes('free');
    if (onTray || label.includes('hinge') || label.includes('painted')) needed.push({ leg: legOf(label), at: 0 });
  }
  for (const { label, text } of rowsOf(told, 'parted')) needed.push({ leg: legOf(label), at: inchesOf(text) });
  for (const { label, text } of rowsOf(told, 'end')) {
    const leg = legs.find((one) => legOf(one.label) === legOf(label));
    const long = inchesOf(leg?.text.replace(' long', '') ?? '');
    if (!text.includes('free')) needed.push({ leg: legOf(label), at: long });
  }
  const there = rowsOf(told, 'jumper').map(({ label, text }) => ({
    leg: legOf(label),
    at: inchesOf(text),
    wire: WIRES.indexOf(/\d+ AWG/.exec(label)?.[0] ?? ''),
  }));
  const here = (one: { leg: string; at: number }, other: { leg: string; at: number }) =>
    one.leg === other.leg && Math.abs(one.at - other.at) < 1 / 64;
  return {
    faults: [
      ...needed.flatMap((place) => {
        const jumper = there.find((one) => here(one, place));
        if (jumper === undefined) return [{ ...place, rule: 'jumper-missing' }];
        return jumper.wire < size ? [{ ...place, rule: 'jumper-small' }] : [];
      }),
      ...there
        .filter((one) => !needed.some((place) => here(one, place)))
        .map(({ leg, at }) => ({ leg, at, rule: 'jumper-needless' })),
    ],
  };
};
export default work;
