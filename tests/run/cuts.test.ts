/**
 * Cuts and faults of every kind of joint, worked by hand from `cut = D − T1 − T2 + i1 + i2 − s1 − s2` and the figures of
 * the practice catalogue: sleeve 10 1/8 with 5 and 5; hinge T 3, i 1 1/2; elbow of 4 in T 7; tee, cross T 9; inside,
 * outside 90° T 9, 45° T 4; reducer T 4 1/2; all fittings i 1 1/2; socket of start and end i 1 1/2.
 */
import { describe, expect, test } from 'vitest';
import { resolveRun } from '../../src/run/resolve.ts';
import { TRADE_USUAL } from '../../src/run/usual.ts';
import { formatLength, readLength } from '../../src/trade/length.ts';
import { catalogue, faultFields, leg, whole } from './practice.ts';

const temps = { lowF: 10, highF: 110, nowF: 60 };
const L = (id: string, dir: unknown, from: string, fitting: string, length: string | number, rest = {}) => ({
  ...leg(id, dir, from, fitting, rest),
  length,
});
const A = leg('A', 'N');

/** Cuts of each leg, in sixty-fourths. */
function cuts(legs: Record<string, unknown>[], rest: Record<string, unknown> = {}): Record<string, string[]> {
  const resolved = resolveRun(whole(legs, rest), catalogue, TRADE_USUAL);
  return Object.fromEntries(
    resolved.legs.map((l) => [l.leg, l.pieces.map((p) => formatLength(p.cut, 64).replace(/"$/, ''))]),
  );
}
const on = (kind: string, at: string | number, rest = {}) => ({ leg: 'A', at, kind, ...rest });

describe('joints along a leg of 10 ft', () => {
  test.each<[string, Record<string, unknown>, string[]]>([
    [
      'hinged, standing straight: 60 − 3 + 1 1/2 both sides',
      { joints: [on('hinged', 60)] },
      [`4'-10 1/2`, `4'-10 1/2`],
    ],
    [
      'hinged, 1 and 2 in: 60 − 3 + 1, 60 − 3 + 2',
      { joints: [on('hinged', 60, { insertions: [1, 2] })] },
      [`4'-10`, `4'-11`],
    ],
    [
      'hinged, ends meeting: 60 both',
      { joints: [on('hinged', 60, { insertions: [3, 3] })] },
      [`5'-0`, `5'-0`],
    ],
    ['gap of 6: 60 − 3', { joints: [on('gap', 60, { gap: 6 })] }, [`4'-9`, `4'-9`]],
    [
      'expansion set to 1/2: 60 − 1/4',
      { joints: [on('expansion', 60, { gap: '1/2' })] },
      [`4'-11 3/4`, `4'-11 3/4`],
    ],
    [
      'expansion at 60 °F of 10 to 110: half of 1 in',
      { temps, joints: [on('expansion', 60)] },
      [`4'-11 3/4`, `4'-11 3/4`],
    ],
    [
      'expansion at 110: closed',
      { temps: { ...temps, nowF: 110 }, joints: [on('expansion', 60)] },
      [`5'-0`, `5'-0`],
    ],
    [
      'expansion at 10: 1 in',
      { temps: { ...temps, nowF: 10 }, joints: [on('expansion', 60)] },
      [`4'-11 1/2`, `4'-11 1/2`],
    ],
    [
      'a gap given wins over the temperatures',
      { temps, joints: [on('expansion', 60, { gap: 0 })] },
      [`5'-0`, `5'-0`],
    ],
    [
      'a steel sleeve is as long',
      { joints: [on('socketed', 60, { item: 'card-4-sleeve-steel' })] },
      [`4'-11 15/16`, `4'-11 15/16`],
    ],
    [
      'one after the other: 24; 30; 66 − 24 − 30 … each less its own',
      { joints: [on('gap', 24, { gap: 2 }), on('hinged', 54), on('butt', 96, { gap: '1/8' })] },
      // 24 − 1; 30 − 1 − 3 + 1 1/2; 42 − 3 + 1 1/2 − 1/16; 24 − 1/16
      [`1'-11`, `2'-3 1/2`, `3'-4 7/16`, `1'-11 15/16`],
    ],
  ])('%s', (_, rest, want) => {
    expect(cuts([A], rest)['A']).toEqual(want);
  });
});

describe('what the run starts and ends at, on a leg of 10 ft', () => {
  const end = (joint: string) => ({ ends: [{ leg: 'A', kind: 'tray', joint }] });
  const start = (joint: string) => ({ start: { kind: 'ladder', joint } });
  test.each<[string, Record<string, unknown>, string]>([
    ['free and free', {}, `10'-0`],
    ['butt and butt: no gap', { ...start('butt'), ...end('butt') }, `10'-0`],
    ['socketed at the start: + 1 1/2', start('socketed'), `10'-1 1/2`],
    ['socketed at both: + 3', { ...start('socketed'), ...end('socketed') }, `10'-3`],
    ['expansion at the start, half of 1/2: − 1/4', { ...start('expansion'), temps }, `9'-11 3/4`],
    ['expansion at both: − 1/2', { ...start('expansion'), ...end('expansion'), temps }, `9'-11 1/2`],
    [
      'an instrument 6 ft off: beyond the length',
      { ends: [{ leg: 'A', kind: 'instrument', joint: 'free', open: `6'` }] },
      `10'-0`,
    ],
  ])('%s', (_, rest, want) => {
    expect(cuts([A], rest)['A']).toEqual([want]);
  });

  test('half of an odd tick goes to the channel behind the splice', () => {
    // 1 in · 1/2048: 4 ticks less a hair; of 3 ticks the start gives 2, an end 1.
    const odd = { temps: { lowF: 0, highF: 8128, nowF: 8125 } };
    const both = {
      start: { kind: 'ladder', joint: 'expansion' },
      ends: [{ leg: 'A', kind: 'tray', joint: 'expansion' }],
    };
    const [only] = resolveRun(whole([A], { ...odd, ...both }), catalogue, TRADE_USUAL).legs;
    expect(only?.start.gap).toBe(3);
    expect([only?.start.share, only?.end.share]).toEqual([2, 1]);
  });
});

describe('fittings', () => {
  test.each<[string, Record<string, unknown>[], Record<string, string[]>]>([
    [
      'an elbow of 4 in: 120 − 7 + 1 1/2; between two 120 − 14 + 3',
      [A, leg('B', 'E', 'A', 'card-4-elbow-90'), leg('C', 'N', 'B', 'card-4-elbow-90')],
      { A: [`9'-6 1/2`], B: [`9'-1`], C: [`9'-6 1/2`] },
    ],
    [
      'up and over: T 9',
      [A, leg('B', 'U', 'A', 'card-4-inside-90'), leg('C', 'N', 'B', 'card-4-outside-90')],
      { A: [`9'-4 1/2`], B: [`8'-9`], C: [`9'-4 1/2`] },
    ],
    [
      'half turns: T 4',
      [
        A,
        leg('B', { azimuthDeg: 45, slopeDeg: 0 }, 'A', 'card-4-elbow-45'),
        leg('C', 'N', 'B', 'card-4-elbow-45'),
      ],
      { A: [`9'-9 1/2`], B: [`9'-7`], C: [`9'-9 1/2`] },
    ],
    [
      'a tee: T 9 on every side',
      [A, leg('B', 'N', 'A', 'card-4-tee'), leg('C', 'E', 'A:right', 'card-4-tee')],
      { A: [`9'-4 1/2`], B: [`9'-4 1/2`], C: [`9'-4 1/2`] },
    ],
    [
      'a reducer: T 4 1/2; behind it an elbow of 2 in, T 6',
      [A, leg('B', 'N', 'A', 'card-4-2-reducer-left'), leg('C', 'E', 'B', 'card-2-elbow-90')],
      { A: [`9'-9`], B: [`9'-4 1/2`], C: [`9'-7 1/2`] },
    ],
    [
      'a hinge that turns: T 3',
      [A, leg('B', { azimuthDeg: 20, slopeDeg: 0 }, 'A', 'card-4-hinge')],
      { A: [`9'-10 1/2`], B: [`9'-10 1/2`] },
    ],
    [
      'elbows as near as they go: 12 1/2 − 14 + 3',
      [A, L('B', 'E', 'A', 'card-4-elbow-90', '12 1/2'), leg('C', 'N', 'B', 'card-4-elbow-90')],
      { A: [`9'-6 1/2`], B: [`0'-1 1/2`], C: [`9'-6 1/2`] },
    ],
  ])('%s', (_, legs, want) => {
    expect(cuts(legs)).toEqual(want);
  });

  test('a whole leg with all of it', () => {
    // Start in a socket; sleeve at 60; expansion at 120 set to 1/2; elbow (T 7) at 180.
    const legs = [L('A', 'N', 'start', '', `15'`), leg('B', 'E', 'A', 'card-4-elbow-90')];
    const rest = {
      start: { kind: 'ladder', joint: 'socketed' },
      joints: [on('expansion', `10'`, { gap: '1/2' }), on('socketed', `5'`)],
    };
    // 60 − 5 1/16 + 5 + 1 1/2; 60 − 5 1/16 + 5 − 1/4; 60 − 1/4 − 7 + 1 1/2
    expect(
      cuts([{ ...legs[0], fitting: null }, legs[1] as object as Record<string, unknown>], rest)['A'],
    ).toEqual([`5'-1 7/16`, `4'-11 11/16`, `4'-6 1/4`]);
  });
});

describe('the ends of pieces say what they meet', () => {
  test('kind, take-out, insertion and share of each', () => {
    const { legs } = resolveRun(
      whole([A, leg('B', 'E', 'A', 'card-4-elbow-90')], {
        start: { kind: 'ladder', joint: 'butt' },
        joints: [on('gap', 40, { gap: 1 }), on('hinged', 80)],
      }),
      catalogue,
      TRADE_USUAL,
    );
    const t = readLength;
    expect(legs[0]?.pieces.map((p) => p.ends)).toEqual([
      [
        { joint: 'start', kind: 'butt', takeOut: 0, insertion: 0, share: 0 },
        { joint: 'S1', kind: 'gap', takeOut: 0, insertion: 0, share: t('1/2') },
      ],
      [
        { joint: 'S1', kind: 'gap', takeOut: 0, insertion: 0, share: t('1/2') },
        { joint: 'S2', kind: 'hinged', takeOut: t(3), insertion: t('1 1/2'), share: 0 },
      ],
      [
        { joint: 'S2', kind: 'hinged', takeOut: t(3), insertion: t('1 1/2'), share: 0 },
        { joint: 'end', kind: 'fitting', takeOut: t(7), insertion: t('1 1/2'), share: 0 },
      ],
    ]);
  });
});

describe('what a joint may say', () => {
  test.each<[string, Record<string, unknown>, string[]]>([
    ['expansion without temperatures or gap', { joints: [on('expansion', 60)] }, ['joints[0].gap']],
    [
      'expansion, now below the range',
      { temps: { ...temps, nowF: 9 }, joints: [on('expansion', 60)] },
      ['joints[0].gap'],
    ],
    [
      'expansion, now above the range',
      { temps: { ...temps, nowF: 111 }, joints: [on('expansion', 60)] },
      ['joints[0].gap'],
    ],
    [
      'expansion, a range of none',
      { temps: { lowF: 60, highF: 60, nowF: 60 }, joints: [on('expansion', 60)] },
      ['joints[0].gap'],
    ],
    [
      'a range upside down',
      { temps: { lowF: 60, highF: 50, nowF: 55 }, joints: [on('expansion', 60)] },
      ['temps.highF'],
    ],
    ['a gap of none', { joints: [on('gap', 60)] }, ['joints[0].gap']],
    ['a gap of 0', { joints: [on('gap', 60, { gap: 0 })] }, ['joints[0].gap']],
    ['a gap with an item', { joints: [on('gap', 60, { gap: 1, item: 'card-4-plate' })] }, ['joints[0].item']],
    [
      'insertions at a gap',
      { joints: [on('gap', 60, { gap: 1, insertions: [0, 0] })] },
      ['joints[0].insertions'],
    ],
    [
      'insertions at an expansion',
      { joints: [on('expansion', 60, { gap: 1, insertions: [0, 0] })] },
      ['joints[0].insertions'],
    ],
    ['insertions at a butt', { joints: [on('butt', 60, { insertions: [0, 0] })] }, ['joints[0].insertions']],
    ['a gap at a hinge', { joints: [on('hinged', 60, { gap: 3 })] }, ['joints[0].gap']],
    ['a gap at a sleeve', { joints: [on('socketed', 60, { gap: '1/8' })] }, ['joints[0].gap']],
    ['a hinge holds 6 in', { joints: [on('hinged', 60, { insertions: [3, 3] })] }, []],
    [
      'a hinge holds no more',
      { joints: [on('hinged', 60, { insertions: [3, '3 1/16'] })] },
      ['joints[0].insertions'],
    ],
    ['a sleeve holds 10 1/8', { joints: [on('socketed', 60, { insertions: [5, '5 1/8'] })] }, []],
    [
      'a sleeve holds no more',
      { joints: [on('socketed', 60, { insertions: [5, '5 3/16'] })] },
      ['joints[0].insertions'],
    ],
    [
      'a hinge of another width',
      { joints: [on('hinged', 60, { item: 'card-6-hinge' })] },
      ['joints[0].item'],
    ],
    ['a tee for a hinge', { joints: [on('hinged', 60, { item: 'card-4-tee' })] }, ['joints[0].item']],
    [
      'a sleeve for an expansion',
      { joints: [on('expansion', 60, { gap: 1, item: 'card-4-sleeve' })] },
      ['joints[0].item'],
    ],
    [
      'expansion at the start without temperatures',
      { start: { kind: 'tray', joint: 'expansion' } },
      ['start.joint'],
    ],
    [
      'expansion at the start, out of range',
      { start: { kind: 'tray', joint: 'expansion' }, temps: { ...temps, nowF: 0 } },
      ['start.joint'],
    ],
    [
      'expansion at an end without temperatures',
      { ends: [{ leg: 'A', kind: 'tray', joint: 'expansion' }] },
      ['ends[0].joint'],
    ],
    [
      'every fault of one joint',
      { joints: [on('gap', 60, { item: 'x', insertions: [1, 1] })] },
      ['joints[0].gap', 'joints[0].insertions', 'joints[0].item'],
    ],
  ])('%s', (_, rest, want) => {
    expect(faultFields(whole([A], rest))).toEqual(want);
  });

  test('behind a reducer items are of the width there, and the tray’s own are taken', () => {
    const legs = [A, leg('B', 'N', 'A', 'card-4-2-reducer-left')];
    const joint = { leg: 'B', at: 60, kind: 'socketed' };
    expect(faultFields(whole(legs, { joints: [{ ...joint, item: 'card-4-sleeve' }] }))).toEqual([
      'joints[0].item',
    ]);
    expect(
      resolveRun(whole(legs, { joints: [joint] }), catalogue, TRADE_USUAL).legs[1]?.joints[0]?.item,
    ).toBe('card-2-sleeve');
  });
});

describe('a piece of no length', () => {
  const elbowed = (length: string | number) => [
    A,
    L('B', 'E', 'A', 'card-4-elbow-90', length),
    leg('C', 'N', 'B', 'card-4-elbow-90'),
  ];
  test.each<[string, Record<string, unknown>[], Record<string, unknown>, string[]]>([
    ['two elbows: 11 − 14 + 3', elbowed(11), {}, ['legs[1].length']],
    ['two elbows: a sixteenth more', elbowed('11 1/16'), {}, []],
    [
      'a joint in the elbow: 5 1/2 − 7 + 1 1/2',
      elbowed(120),
      { joints: [{ leg: 'B', at: '5 1/2', kind: 'butt' }] },
      ['joints[0].at'],
    ],
    ['a joint just out of it', elbowed(120), { joints: [{ leg: 'B', at: '5 9/16', kind: 'butt' }] }, []],
    [
      'a joint in the elbow behind it',
      elbowed(120),
      { joints: [{ leg: 'B', at: '114 1/2', kind: 'butt' }] },
      ['joints[0].at'],
    ],
    [
      'a gap as wide as the leg',
      [A],
      { joints: [on('gap', 60, { gap: 120 })] },
      ['joints[0].at', 'joints[0].at'],
    ],
    ['two hinges: 3 − 6 + 3', [A], { joints: [on('hinged', 63), on('hinged', 60)] }, ['joints[0].at']],
  ])('%s', (_, legs, rest, want) => {
    expect(faultFields(whole(legs, rest))).toEqual(want);
  });
});

describe('where a support may stand', () => {
  const legs = [A, leg('B', 'E', 'A', 'card-4-elbow-90'), leg('C', 'U', 'B', 'card-4-inside-90')];
  const support = (on: string, at: string | number, way = 'horizontal') => ({
    leg: on,
    at,
    way,
    hold: 'guide',
  });
  test.each<[string, object, Record<string, unknown>, string[]]>([
    ['at the very start', support('A', 0), {}, []],
    ['at the face of the elbow', support('A', 113), {}, []],
    ['on the elbow', support('A', '113 1/16'), {}, ['supports[0].at']],
    ['beyond the leg', support('A', 121), {}, ['supports[0].at']],
    ['on the elbow, behind it', support('B', '6 15/16'), {}, ['supports[0].at']],
    ['at its face, behind it', support('B', 7), {}, []],
    ['at the end', support('C', 120), {}, []],
    ['beyond the end', support('C', '120 1/16'), {}, ['supports[0].at']],
    ['under a splice: a finding, not a fault', support('A', 60), { joints: [on('butt', 60)] }, []],
    [
      'under an expansion splice as well',
      support('A', 60),
      { joints: [on('expansion', 60, { gap: 1 })] },
      [],
    ],
    ['under a hinge', support('A', '62 15/16'), { joints: [on('hinged', 60)] }, ['supports[0].at']],
    ['at the face of a hinge', support('A', 63), { joints: [on('hinged', 60)] }, []],
    [
      'in the open of a gap',
      support('A', '62 15/16'),
      { joints: [on('gap', 60, { gap: 6 })] },
      ['supports[0].at'],
    ],
    ['at the end of a gap', support('A', 57), { joints: [on('gap', 60, { gap: 6 })] }, []],
    ['vertical on a leg that goes up', support('C', 60, 'vertical'), {}, []],
    ['horizontal there as well', support('C', 60), {}, []],
    ['vertical on a level leg', support('B', 60, 'vertical'), {}, ['supports[0].way']],
  ])('%s', (_, one, rest, want) => {
    expect(faultFields(whole(legs, { ...rest, supports: [one] }))).toEqual(want);
  });

  test('vertical on a leg whose slope is 90° is on a leg that goes up', () => {
    const up = leg('A', { azimuthDeg: 20, slopeDeg: -90 });
    const slope = leg('A', { azimuthDeg: 20, slopeDeg: -45 });
    const rest = { supports: [support('A', 60, 'vertical')] };
    expect(faultFields(whole([up], rest))).toEqual([]);
    expect(faultFields(whole([slope], rest))).toEqual(['supports[0].way']);
  });
});
