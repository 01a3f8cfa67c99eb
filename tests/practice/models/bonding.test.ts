/** Right answers and the answers of slips of the models of bonding and expansion, each row worked by hand. */
import { describe, expect, test } from 'vitest';
import type { AnyPlan } from '../../../src/practice/model.ts';
import { models } from '../../../src/practice/models/index.ts';
import { readLength, type Ticks } from '../../../src/trade/length.ts';
import { shortLength } from '../../../src/trade/shortLength.ts';
import { draw, finding, job, world } from '../means.ts';

const at = (text: string): Ticks => readLength(text);

describe('jumper list: NEMA VE 2, 2013 (from memory); NFPA 70-2023, 392.60(B)', () => {
  const route = [
    'splice',
    'expansion',
    'elbow',
    'hinge',
    'painted',
    'reducer',
    'second-splice',
    'wall-gap',
    'stand',
  ];
  const made = job('jumper-list', { joints: route });
  /** Places of the list, by number. */
  const listed = (answer: unknown) =>
    Object.entries(answer as Record<string, string>)
      .filter(([, why]) => why !== 'none')
      .map(([id]) => Number(id.slice(1)));
  test('2, 4, 5, 8 and 9', () => expect(listed(made.answer('joints'))).toEqual([2, 4, 5, 8, 9]));
  test.each([
    ['hingeMissed', [2, 5, 8, 9]],
    ['paintMissed', [2, 4, 8, 9]],
    ['onlyExpansion', [2]],
    ['gapMissed', [2, 4, 5, 9]],
    ['endsMissed', [2, 4, 5, 8]],
    ['expansionMissed', [4, 5, 8, 9]],
    ['everywhere', [1, 2, 3, 4, 5, 6, 7, 8, 9]],
    ['identifiedCounted', [1, 2, 3, 4, 5, 6, 7, 8, 9]],
    ['otherReason', [2, 4, 5, 8, 9]],
  ])('%s', (slip, wanted) => expect(listed(made.slipped(slip, 'joints'))).toEqual(wanted));
  test('a wrong reason is told from a joint passed over', () => {
    // Seed hand-1 beside the family: meets, moves, part, hinge, paint, none, none, meets.
    const drawn = draw('jumper-list', 'hand-1');
    const named = (other: object) =>
      finding(drawn, 'joints', { ...(drawn.right['joints'] as object), ...other }).mistake;
    expect(named({ j5: 'gap' })).toBe('reason-of-another');
    expect(named({ j2: 'hinge', j4: 'moves' })).toBe('reason-of-another');
    expect(named({ j6: 'part' })).toBe('identified-counted');
    expect(named({ j7: 'moves' })).toBe('identified-counted');
    expect(named({ j5: 'every' })).toBe('everywhere');
    expect(named({ j5: 'none' })).toBe('paint-missed');
    expect(named({ j4: 'none', j5: 'gap' })).toContain('hinge-missed');
  });
  test('nothing unmarked here', () => expect(made.slipped('unmarkedMissed', 'joints')).toBeNull());
  test('the ladder tray comes first, the stand last', () => {
    const turned = job('jumper-list', { joints: ['stand', 'splice', 'ladder'] });
    expect(turned.answer('joints')).toEqual({ j1: 'meets', j2: 'none', j3: 'meets' });
  });
});

describe('jumper size: NFPA 70-2023, table 250.122 and 250.102(D)', () => {
  const jumper = { place: 2, metal: 'copper', wire: 'jumper' };
  const small = (...amps: readonly string[]) => amps.map((one) => ({ amps: one }));
  const made = job('jumper-size', { ...jumper, small: small('20', '30'), large: '100' });
  test('20, 30, 100 A: 8 AWG', () => {
    expect([made.answer('decides'), made.answer('size')]).toEqual(['largest', 'awg-8']);
  });
  test.each([
    ['devicesAdded', 'awg-6'], // 150 A
    ['smallest', 'awg-12'],
    ['otherMetal', 'awg-6'],
    ['inTray', 'awg-4'], // 392.10(B)(1)(c)
    ['rowBelow', 'awg-8'], // 100 A stands in the table itself
  ])('%s', (slip, wanted) => expect(made.slipped(slip, 'size')).toBe(wanted));
  test('both sides of a row, and above the table', () => {
    const size = (large: string) => job('jumper-size', { ...jumper, small: small('20'), large, place: 0 });
    expect([size('200').answer('size'), size('225').answer('size')]).toEqual(['awg-6', 'awg-4']);
    expect(size('225').slipped('rowBelow', 'size')).toBe('awg-6');
    expect(size('1600').answer('size')).toBe('ask');
  });
  describe('laid in the tray as equipment ground: 4 AWG at least (392.10(B)(1)(c))', () => {
    const laid = (large: string, metal = 'copper') =>
      job('jumper-size', { ...jumper, wire: 'laid', small: small('20', '30'), large, metal });
    const both = (one: ReturnType<typeof laid>, by?: string) =>
      ['decides', 'size'].map((ask) => (by === undefined ? one.answer(ask) : one.slipped(by, ask)));
    test('100 A is 8 AWG by the table, so 4', () => {
      expect(both(laid('100'))).toEqual(['in-tray', 'awg-4']);
      expect(both(laid('100'), 'leastForgotten')).toEqual(['largest', 'awg-8']);
      expect(laid('100').slipped('smallest', 'size')).toBeNull();
    });
    test('350 A is 3 AWG by the table, which is larger', () => {
      expect(both(laid('350'))).toEqual(['largest', 'awg-3']);
      expect(both(laid('350'), 'leastForSize')).toEqual(['in-tray', 'awg-4']);
      expect(laid('350').slipped('leastForgotten', 'size')).toBeNull();
    });
    test('aluminium: 100 A is 6 AWG, 225 A is 2 AWG; 200 A is 4 AWG itself, and is not asked', () => {
      expect(both(laid('100', 'aluminium'))).toEqual(['in-tray', 'awg-4']);
      expect(both(laid('225', 'aluminium'))).toEqual(['largest', 'awg-2']);
      expect(laid('200', 'aluminium').plan).toBeNull();
    });
  });
});

describe('channel as ground path: NFPA 70-2023, table 392.60(B)', () => {
  const steel = { metal: 'steel', device: '200', marked: 0.45, serviced: 'qualified' };
  const made = job('ground-path', steel);
  test('steel, 0.45 marked, 200 A: 0.70 wanted', () => {
    expect([made.answer('row'), made.answer('may')]).toEqual(['a070', 'no']);
    expect([made.slipped('otherColumn', 'row'), made.slipped('otherColumn', 'may')]).toEqual(['a020', 'yes']);
    expect([made.slipped('rowBelow', 'row'), made.slipped('rowBelow', 'may')]).toEqual(['a040', 'yes']);
    expect(made.slipped('markIgnored', 'may')).toBe('yes');
    expect([
      made.answer('up-to'),
      made.slipped('rowBelow', 'up-to'),
      made.slipped('otherColumn', 'up-to'),
    ]).toEqual([
      'd100', // 0.40 for 100 A, 0.70 for 200 A
      'd200',
      'd600', // aluminium: 0.40 to 600 A
    ]);
  });
  test.each([
    ['steel', '100', 0.45, 'a040', 'yes'],
    ['steel', '150', 0.71, 'a070', 'yes'],
    ['steel', '800', 1.25, 'not-permitted', 'no'],
    ['aluminium', '1200', 0.99, 'a100', 'no'],
    ['stainless', '60', 0.45, 'no-column', 'ask'],
  ])('%s to %s A, %s marked', (metal, device, marked, row, may) => {
    const one = job('ground-path', { ...steel, metal, device, marked });
    expect([one.answer('row'), one.answer('may')]).toEqual([row, may]);
  });
  test('only where qualified persons maintain it: 392.60(A)', () => {
    const where = (serviced: string, device = '60') => job('ground-path', { ...steel, device, serviced });
    const others = where('others');
    expect([others.answer('may'), others.slipped('whoOverlooked', 'may')]).toEqual(['no', 'yes']);
    expect(others.slipped('markIgnored', 'may')).toBeNull();
    // Enough metal, and nothing said of the place: it is asked. Too little is refused whoever maintains it.
    const unsaid = where('unsaid');
    expect([unsaid.answer('may'), unsaid.slipped('placeRefused', 'may')]).toEqual(['ask', 'no']);
    expect(unsaid.slipped('whoOverlooked', 'may')).toBe('yes');
    expect(where('unsaid', '200').answer('may')).toBe('no'); // 0.45 of 0.70
  });
});

describe('expansion spacing: 12.8 millionths for 1 °F, aluminium (metal handbooks, no edition)', () => {
  const drawn = { metal: 'aluminium', scale: 'f', low: 10, swing: 100, movement: 1, run: 200 };
  const made = job('expansion-spacing', drawn);
  test.each([
    [null, 65.1],
    ['otherMetal', 128.2], // 6.5 millionths
    ['otherScale', 117.2],
    ['inchesForFeet', 781.25],
    ['hottestAlone', 59.2], // 110
  ])('%s', (slip, wanted) => {
    expect(slip === null ? made.answer('spacing') : made.slipped(slip, 'spacing')).toBeCloseTo(wanted, 1);
  });
  test('200 ft: 3.07, so 4 parts', () => {
    expect([made.answer('parts'), made.slipped('roundedDown', 'parts')]).toEqual([4, 3]);
    expect(made.slipped('wholeInch', 'spacing')).toBeNull();
  });
  test('told in Celsius: −12 to 44 is a swing of 56 °C, 100.8 °F', () => {
    const celsius = job('expansion-spacing', { ...drawn, scale: 'c', run: 210 });
    expect(celsius.answer('spacing')).toBeCloseTo(64.59, 2);
    expect(celsius.slipped('otherScale', 'spacing')).toBeCloseTo(116.26, 2); // 56 as it stands
  });
});

describe('expansion gap: NEMA VE 2, 2013 (from memory)', () => {
  const drawn = { low: 10, high: 110, share: 0.6, warmer: 'metal', differ: 15, movement: 1, later: 50 };
  const made = job('expansion-gap', drawn);
  test.each([
    [null, 0.4],
    ['reversed', 0.6],
    ['air', 0.55],
    ['half', 0.5],
    ['full', 1],
    ['closed', 0],
  ])('metal 70, air 55, 10 to 110: %s', (slip, wanted) => {
    expect(slip === null ? made.answer('gap') : made.slipped(slip, 'gap')).toBeCloseTo(wanted, 9);
  });
  test('outside its range the engineer is asked', () => {
    expect(made.answer('later')).toBe('worked');
    const hot = job('expansion-gap', { ...drawn, later: 114 });
    expect([hot.answer('later'), hot.slipped('stretched', 'later')]).toEqual(['asked', 'worked']);
    expect(job('expansion-gap', { ...drawn, later: 106 }).answer('later')).toBe('worked');
    expect(job('expansion-gap', { ...drawn, later: 6 }).answer('later')).toBe('asked');
  });
});

test('gap twice: metal 45 at 06:00 and 95 at 13:00 (NEMA VE 2, 2013, from memory)', () => {
  const made = job('gap-twice', { low: 10, high: 110, morning: 0.35, noon: 0.85, movement: 1 });
  const both = (of: (ask: string) => unknown) => ['morning', 'noon'].map(of);
  expect(both((ask) => made.answer(ask))).toEqual([0.65, 0.15]); // 5/8 and 1/8 to the nearest 1/16
  expect(made.slipped('morningKept', 'noon')).toBe(0.65);
  expect(made.slipped('reversed', 'morning')).toBeCloseTo(0.35, 9);
  expect(made.slipped('reversed', 'noon')).toBeCloseTo(0.85, 9);
});

test('one anchor: 60 ft, supports 24, 96 … 672 (NEMA VE 2, 2013, from memory)', () => {
  const made = job('one-anchor', { section: at(`60'`), first: at('24'), spacing: at('72') });
  expect([made.answer('anchor'), made.answer('guides')]).toEqual([384, 9]);
  expect(made.slipped('atStart', 'anchor')).toBe(24);
  expect(made.slipped('atEnd', 'anchor')).toBe(672);
  expect(made.slipped('beforeMiddle', 'anchor')).toBe(312);
  expect(made.slipped('theMiddle', 'anchor')).toBe(360);
  expect(made.slipped('afterMiddle', 'anchor')).toBeNull(); // that is the right one
  expect([made.slipped('allClamped', 'guides'), made.slipped('bothEnds', 'guides')]).toEqual([0, 8]);
});

describe('off a ladder tray: 12 in between rails of 1 in, end 7 ft from its middle (training values)', () => {
  const drawn = {
    distance: at(`7'`),
    inside: '12',
    rail: at('1'),
    start: 'butt',
    gap: at('20'),
    state: 'ready',
  };
  test('half of the ladder over its rails comes off', () => {
    const made = job('ladder-transition', drawn);
    expect([made.answer('length'), made.answer('support')]).toEqual([77, 31]); // 84 − 7; 7 + 24
    expect(made.slipped('fromCentre', 'length')).toBe(84);
    expect(made.slipped('wholeWidth', 'length')).toBe(70);
    expect(made.slipped('insideWidth', 'length')).toBe(78);
    expect(made.slipped('fromCentre', 'support')).toBe(24);
    expect(made.slipped('gapForgotten', 'length')).toBeNull();
  });
  test('an open gap comes off too', () => {
    const made = job('ladder-transition', { ...drawn, start: 'open' });
    expect([made.answer('length'), made.slipped('gapForgotten', 'length')]).toEqual([57, 77]);
  });
  test('what is missing; the gap on both sides of 6 ft (NFPA 70-2023, 392.30(B)(3))', () => {
    const missing = (other: object) =>
      job('ladder-transition', { ...drawn, distance: at(`15'`), start: 'open', ...other }).answer('missing');
    expect(missing({ gap: at('70') })).toBe('nothing');
    expect(missing({ gap: at('74') })).toBe('closer');
    expect(missing({ state: 'no-jumper' })).toBe('jumper');
    expect(missing({ state: 'hung' })).toBe('support');
  });
});

describe('joint resistance: 0.00033 ohm is the laboratory’s (NEMA VE 1, from memory); the project’s is a training value', () => {
  const drawn = { joint: 'jumper', across: 42, leads: 60, limit: 10, stated: 'stated' };
  const made = job('joint-resistance', drawn);
  test('1.02 less 0.60 milliohm, of 0.0005', () => {
    expect(made.answer('joint')).toBeCloseTo(0.00042, 9);
    expect([made.answer('verdict'), made.slipped('laboratory', 'verdict')]).toEqual(['accept', 'rework']);
    expect(made.slipped('leadsLeftIn', 'joint')).toBeCloseTo(0.00102, 9);
    expect(made.slipped('leadsAdded', 'joint')).toBeCloseTo(0.00162, 9);
    expect(made.slipped('hundredth', 'joint')).toBeCloseTo(0.0042, 9);
    expect(made.slipped('tenThousandth', 'joint')).toBeCloseTo(0.000042, 9);
  });
  test('both sides of the project’s value, and none stated', () => {
    const verdict = (other: object) => job('joint-resistance', { ...drawn, ...other }).answer('verdict');
    expect([verdict({ across: 47 }), verdict({ across: 53 })]).toEqual(['accept', 'rework']);
    expect(verdict({ stated: 'missing' })).toBe('ask');
  });
});

test('sixteenths are told as a tape shows them: 12 of them 3/4", 20 of them 1 1/4" (arithmetic)', () => {
  const values = { wide: 12, bared: 20, movement: 8, slack: 16 };
  const facts = models.get('bare-metal')?.facts(
    job('bare-metal', {
      scenes: ['half-bared', 'slack-over-gap', 'over-paint', 'lug-turns', 'plain-splice'],
      bolts: 2,
      ...values,
    }).plan as AnyPlan,
    world,
  );
  const told = Object.keys(values).map((name) => {
    const fact = facts?.[name];
    return fact?.kind === 'length' ? shortLength(fact.ticks) : fact;
  });
  expect(told).toEqual(['3/4"', '1 1/4"', '1/2"', '1"']);
});

test('a lug on paint stops the job; half a bared face too (NFPA 70-2023, 250.96)', () => {
  const made = job('bare-metal', {
    scenes: ['over-paint', 'half-bared', 'slack-over-gap', 'plain-splice', 'bared-wide'],
    wide: 12,
    bared: 9,
    movement: 16,
    slack: 20,
    bolts: 2,
  });
  expect([1, 2, 3, 4, 5].map((i) => made.answer(`scene-${i}`))).toEqual(['stop', 'stop', 'go', 'go', 'go']);
  expect(made.slipped('overPaint', 'scene-1')).toBe('go');
  expect(made.slipped('halfIsEnough', 'scene-2')).toBe('go');
});
