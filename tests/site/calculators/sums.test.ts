import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { fieldsOf, shownValues, workOut } from '../../../src/site/calculators/answer.ts';
import { formOf } from '../../../src/site/calculators/form.ts';
import type { Line } from '../../../src/site/calculators/sum.ts';
import { type SumId, sumIds } from '../../../src/site/calculators/sum.ts';
import { SumSheet } from '../../../src/site/islands/SumSheet.tsx';
import { type Settings, usual } from '../../../src/site/settings.ts';
import { readLength as length } from '../../../src/trade/length.ts';
import { dataOf, speak, sums, tell, words } from './all.ts';

function asked(id: SumId, part: Readonly<Record<string, unknown>> = {}, settings: Settings = usual) {
  const data = dataOf(id);
  const form = formOf(fieldsOf(sums[id], data), { ...sums[id].example, ...part }, settings);
  return workOut(sums[id], data, form, settings, tell);
}
const said = ({ key, values = {} }: Line) =>
  tell(key, shownValues(values, usual, tell)).replaceAll('\u00a0', ' ');

/** The large line and those under it. */
function answer(id: SumId, part: Readonly<Record<string, unknown>> = {}): readonly string[] {
  const { answer: got } = asked(id, part);
  if (got?.good !== true) throw new Error(`no answer: ${JSON.stringify(asked(id, part))}`);
  const { said: lines } = got.value;
  return [lines.huge, ...(lines.more ?? [])].map(said);
}

describe.each(sumIds)('%s', (id) => {
  test('answers its example, every sentence of it in words', () => {
    const { answer: got, messages } = asked(id);
    expect(messages).toEqual({});
    if (got?.good !== true) throw new Error('the example has no answer');
    const { said: lines, answered } = got.value;
    const all = [
      lines.asked,
      lines.huge,
      ...(lines.more ?? []),
      ...(lines.rows ?? []).map(({ label }) => label),
    ];
    for (const line of all) if (line !== undefined) expect(said(line)).not.toMatch(/[{}]|undefined|NaN/);
    expect(answered.steps.length).toBeGreaterThan(0);
    for (const step of answered.steps) expect(speak(step)).not.toMatch(/[{}]|undefined|NaN/);
  });

  test('the page as it is built, before script, shows the example and says that it is one', () => {
    const sheet = createElement(SumSheet<unknown>, {
      sum: sums[id],
      words,
      data: dataOf(id),
      edition: 2023 as const,
    });
    const page = renderToStaticMarkup(sheet)
      .replaceAll(/<[^>]*>/g, ' ')
      .replaceAll('&#x27;', "'")
      .replaceAll('&quot;', '"')
      .replaceAll(/[\s\u00a0]+/g, ' ');
    expect(page).toContain(`Example: ${answer(id)[0]}`);
    for (const part of ['The sum', 'Your measurements', 'Change measurements']) expect(page).toContain(part);
  });

  test.each(
    Object.entries(sums[id].fields).flatMap(([name, field]) =>
      ['number', 'size', 'count', 'temperature', 'text'].includes(field.kind) && field.only === undefined
        ? [[name] as const]
        : [],
    ),
  )('says in words that %s cannot be read, and gives no answer', (name) => {
    const data = dataOf(id);
    const fields = fieldsOf(sums[id], data);
    const form = { ...formOf(fields, sums[id].example, usual), [name]: 'about a yard' };
    const { answer: got, messages } = workOut(sums[id], data, form, usual, tell);
    expect(got).toBeUndefined();
    const message = messages[name];
    if (message === undefined) throw new Error('no message');
    expect(tell(message.key, message.values)).toContain('about a yard');
  });
});

describe('what the sheets say', () => {
  test.each([
    // Cosecant and tangent of the half angle by hand: 14 × 1.41421 = 19.799, 14 × 0.41421 = 5.799.
    [
      'offset',
      {},
      [
        `Bend to bend 1'-7 13/16". It shortens the run by 5 13/16"`,
        `The trade’s rounded figures give a shrink of 5 1/4": 9/16" too little.`,
      ],
    ],
    // 8 and 12 make 14.42 (rolling offset, a published worked example); at 45° travel 20.396.
    [
      'offset',
      { offset: length('8'), roll: length('12') },
      [`Bend to bend 1'-8 3/8". It shortens the run by 6"`],
    ],
    ['mark', { at: length('93') }, ['It is clear. Cut there.']],
    [
      'mark',
      { at: length('0'), firstHole: length('0'), pitch: length('1') },
      ['No clear place. Ask the engineer'],
    ],
    // 4 1/4 × tan 22.5° = 1.760
    ['mitre', {}, ['Cut the short wall back by 1 3/4"']],
    // 2 × 1.75 × tan 15° = 0.938
    ['notch', {}, ['Open the V 15/16" at the edge']],
    // (12 + 2) × pi / 2 = 21.991
    ['arc', {}, [`Along the centre 1'-10"`]],
    ['length', { text: length('2350 mm') }, [`It reads 7'-8 1/2"`]],
    // The practice catalogue's table: 6 ft carries 15 lb/ft, 8 ft carries 8.4.
    ['span', {}, [`Supports at most 6'-0" apart`]],
    ['span', { loadLbPerFt: 200 }, ['Ask the engineer']],
    ['span', { by: 'section' }, ['Ask the engineer', 'An estimate to ask with']],
    ['equivalent', {}, ['It counts as 7.5 lb/ft along the span']],
    ['vertical', {}, ['31.5 lb on each support']],
    ['vertical', { loadSupports: 1 }, ['The one support carries 63 lb']],
    // 8 and 8 ft, 10 lb/ft on the first only: 35, 50, −5 lb (three-moment equation, by hand).
    [
      'beam',
      {
        spans: [
          { length: length(`8'`), lbPerFt: 10 },
          { length: length(`8'`), lbPerFt: 0 },
        ],
        points: [],
      },
      ['Support 1 carries most: 50 lb', 'Support 2 lifts by 5 lb: its clamp must hold the run down.'],
    ],
    ['expansion', { metal: 'steel', lowF: -28, highF: 100, installF: 50 }, [`Set the gap at 3/8"`]],
    ['expansion', { installF: 120 }, ['Ask the engineer']],
    ['transition', {}, ['It holds', 'The limit is 6 ft.']],
    ['transition', { gap: length(`6' 1"`) }, ['Too long. Carry the tray on']],
    [
      'transition',
      { gap: length(`6'`), secured: false },
      ['Not yet', 'The limit is 6 ft.', 'Fasten the cables on both sides.'],
    ],
    ['transition', { edition: 2017 }, ['Ask the engineer']],
    // NFPA 70-2023 Table 250.122: 60 A 10 AWG copper, 200 A 4 AWG aluminium, nothing above 1200 A.
    ['jumper', {}, ['10 AWG copper, or larger', 'Table 250.122, row 60 A.']],
    ['jumper', { devices: [{ a: 101 }], metal: 'aluminium' }, ['4 AWG aluminium, or larger']],
    ['jumper', { devices: [{ a: 1201 }] }, ['Ask the engineer']],
    // NFPA 70-2023 Table 392.60(B): aluminium 60 A 0.20 in²; steel not above 600 A.
    ['groundpath', {}, ['0.4 in² marked, 0.2 in² wanted. It holds', 'Table 392.60(B).']],
    ['groundpath', { edition: 2017 }, ['0.4 in² marked, 0.2 in² wanted. It holds', 'Table 392.60(A).']],
    ['groundpath', { metal: 'steel', deviceA: 601 }, ['Not permitted here. Run a ground wire']],
    ['groundpath', { metal: 'steel', deviceA: 600 }, ['0.4 in² marked, 1.5 in² wanted. Not enough metal']],
    ['groundpath', { metal: 'stainless' }, ['Ask the engineer']],
    ['groundpath', { qualifiedService: false }, ['Not permitted here. Run a ground wire']],
    // NFPA 70-2023 336.24: TC up to 1 in 4 times; under a metallic shield 12.
    // 4 × 0.72 = 2.88: a least radius goes up to what a tape shows.
    ['radius', {}, ['Not tighter than 2 15/16"']],
    ['radius', { shielded: true }, [`Not tighter than 8 11/16"`]],
    ['radius', { cable: 'ITC' }, ['Ask the engineer']],
    // NFPA 70-2023 Table 310.15(C)(1): 7 to 9 conductors 70 %; 392.80(A)(1): 95 % of it under more than 6 ft of cover.
    ['ampacity', {}, ['70 % of it stays']],
    ['ampacity', { cover: length(`6' 1"`) }, ['66.5 % of it stays']],
    ['ampacity', { cover: length(`6'`), currentCarrying: 3 }, ['All of it stays']],
    // NFPA 70-2023 392.18(H) above 600 V; 392.20 above 1000 V.
    ['marking', {}, ['No danger notice is asked for']],
    ['marking', { volts: 601 }, ['Danger notices, at most 10 ft apart']],
    ['separation', {}, ['No barrier asked for by voltage']],
    ['separation', { cables: [{ v: 4160 }, { v: 480 }] }, ['A solid, fixed barrier between them']],
    ['separation', { cables: [{ v: 4160 }, { v: 480 }], mc: true }, ['No barrier asked for by voltage']],
    ['section', {}, ['Section modulus']],
  ] as const satisfies readonly (readonly [SumId, object, readonly string[]])[])(
    '%s %j',
    (id, part, want) => {
      const got = answer(id, part);
      for (const [i, text] of want.entries()) expect(got[i]).toContain(text);
    },
  );
});

describe('entries that do not go together are said where they stand', () => {
  test.each([
    ['expansion', { lowF: 100, highF: 20 }, 'highF'],
    ['expansion', { movesLength: length(`10'`) }, 'movesBy'],
    ['radius', { cable: 'MC shielded' }, 'conductorOdIn'],
    ['radius', { cable: 'MC shielded', odIn: 0.5, conductorOdIn: 0.6 }, 'conductorOdIn'],
    ['section', { thicknessIn: 1.75 }, 'thicknessIn'],
    ['section', { lipIn: 2.2 }, 'lipIn'],
    ['section', { holes: [{ in: 'web', diameterIn: 4, count: 1 }] }, 'holes.1.diameterIn'],
    ['section', { holes: [{ in: 'legs', diameterIn: 1, count: 1, heightIn: 0.2 }] }, 'holes.1.heightIn'],
    ['span', { by: 'section', thicknessIn: 2.2 }, 'thicknessIn'],
    ['beam', { points: [{ place: 'span', span: 3, at: length('1'), lb: 1 }] }, 'points.1.span'],
    ['beam', { points: [{ place: 'left', span: undefined, at: length('1'), lb: 1 }] }, 'points.1.place'],
    ['beam', { points: [{ place: 'span', span: 2, at: length(`5' 1"`), lb: 1 }] }, 'points.1.at'],
  ] as const)('%s %j', (id, part, at) => {
    const { answer: got, messages } = asked(id, part);
    expect(got).toBeUndefined();
    expect(Object.keys(messages)).toEqual([at]);
    for (const { key, values } of Object.values(messages)) expect(tell(key, values)).not.toMatch(/[{}]/);
  });
});
