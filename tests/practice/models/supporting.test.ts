/**
 * Right answers and those of slips, each row worked by hand. Weights, load table and rates are training values (the practice
 * catalogue: 4-in channel 1.2 lb/ft; a span alone carries 34, 22, 15, 8.4, 5.4 lb/ft at 4, 5, 6, 8, 10 ft).
 */
import { describe, expect, test } from 'vitest';
import { everyPrecedence, keeps } from '../../../src/practice/models/parts/steps.ts';
import { readLength, type Ticks } from '../../../src/trade/length.ts';
import { family, job } from '../means.ts';

const at = (text: string): Ticks => readLength(text);

describe('support spacing: 62 ft, spans to 6 ft, ends 2 ft in', () => {
  const made = job('support-spacing', { length: at(`62'`), most: '6', end: at('24'), asked: 4 });
  test('11 at 69.6', () => {
    expect(made.answer('layout')).toEqual({ count: 11, spacing: 69.6 }); // 696 over 10 spans
    expect(made.answer('place')).toBeCloseTo(232.8, 9); // 24 + 3 × 69.6
  });
  test.each([
    ['oneForgotten', { count: 10, spacing: 69.6 }],
    ['endsIgnored', { count: 12, spacing: expect.closeTo(67.636, 3) }], // 744 over 11
    ['roundedDown', { count: 10, spacing: expect.closeTo(77.333, 3) }], // 696 over 9
    ['oneEndIgnored', { count: 11, spacing: 72 }], // 720 over 10
    ['mostTaken', { count: 11, spacing: 72 }],
  ])('%s', (slip, wanted) => {
    expect(made.slipped(slip, 'layout')).toEqual(wanted);
  });
  test('where the spans come out whole, nothing is rounded', () => {
    const even = job('support-spacing', { length: at(`64'`), most: '6', end: at('24'), asked: 4 });
    expect(even.answer('layout')).toEqual({ count: 11, spacing: 72 }); // 720 over 10
    expect(even.slipped('roundedDown', 'layout')).toBeNull();
    expect(even.slipped('mostTaken', 'layout')).toBeNull();
  });
  test('place', () => {
    expect(made.slipped('oneTooFar', 'place')).toBeCloseTo(302.4, 9);
    expect(made.slipped('fromTheStart', 'place')).toBeCloseTo(208.8, 9);
  });
});

describe('support pattern: splices at 240 and 480, spacing 72, so a quarter is 18', () => {
  // Between a support and the quarter point: NEMA VE 2 (from memory).
  const made = (start: number, piece = 240) =>
    job('support-pattern', {
      spacing: at('72'),
      piece: at(String(piece)),
      aim: 'any',
      near: at('6'),
      anywhere: at(String(piece - start)),
    });
  test.each([
    [36, 12, 12, 'yes'],
    [31, 7, 17, 'yes'],
    [0, 24, 24, 'far'],
    [60, 36, 12, 'far'],
  ])('first support at %i', (start, first, second, holds) => {
    const { answer } = made(start);
    expect([answer('first'), answer('second'), answer('holds')]).toEqual([first, second, holds]);
  });
  test('a splice over a support', () => {
    // Spacing 80: splices at 240 and 480 from a support at 0 stand over supports 3 and 6.
    const over = job('support-pattern', {
      spacing: at('80'),
      piece: at('240'),
      aim: 'over',
      near: at('6'),
      anywhere: at('6'),
    });
    expect([over.answer('first'), over.answer('second'), over.answer('holds')]).toEqual([0, 0, 'over']);
    expect(over.slipped('overTaken', 'holds')).toBe('yes');
  });
  test('a support closer than 6 in to a splice, or a splice at the quarter point, is no job', () => {
    expect(made(43).plan).toBeNull(); // 19 and 5
    expect(made(30).plan).toBeNull(); // 6 and 18
  });
  test('slips', () => {
    const { slipped } = made(60); // 180 and 420 past the first: 36 and 60 past a support
    expect(slipped('fromBefore', 'second')).toBe(60);
    expect(slipped('startIgnored', 'first')).toBe(24);
    expect(slipped('anywhereTaken', 'holds')).toBe('yes');
    expect(made(0).slipped('third', 'holds')).toBe('yes'); // both lie at a third, 24
    expect(made(0).slipped('anywhereTaken', 'holds')).toBeNull(); // the same answer
    expect(made(36).slipped('refused', 'holds')).toBe('far');
    expect(made(36, 186).slipped('wholeFirst', 'second')).toBe(12); // at 480 in place of 426
  });
});

describe('supports beside an elbow: working point 120, take-out 7, within 24 (NEMA VE 2, from memory)', () => {
  const made = (before: string, behind: string) =>
    job('support-before-elbow', {
      width: 'card-4',
      turn: 'elbow',
      angle: '90',
      point: at('120'),
      stoodBefore: at(before),
      stoodBehind: at(behind),
    });
  test.each([
    ['20', '20', 'both'],
    ['28', '20', 'before'],
    ['20', '28', 'behind'],
    ['28', '28', 'neither'],
  ])('supports %s and %s in from the faces', (before, behind, has) => {
    const { answer } = made(before, behind);
    expect([answer('before'), answer('behind'), answer('has')]).toEqual([89, 31, has]);
  });
  test('slips', () => {
    const { slipped } = made('20', '28');
    expect([slipped('fromWorkingPoint', 'before'), slipped('fromWorkingPoint', 'behind')]).toEqual([96, 24]);
    expect([slipped('fromFarFace', 'before'), slipped('fromFarFace', 'behind')]).toEqual([103, 17]);
    expect(slipped('otherTakeOut', 'before')).toBe(87); // vertical: 9
    expect(slipped('oneSideEnough', 'has')).toBe('both');
  });
  test('a support within 1 1/2 in of the limit is no job', () => {
    expect(made('24', '20').plan).toBeNull();
    expect(made('22 1/2', '20').plan).not.toBeNull();
  });
});

describe('load per foot: 6 of 0.15, 2 of 420 lb a 1000 ft, channel 1.2', () => {
  const made = (other: string, otherWeight = 0.5) =>
    job('load-per-foot', {
      width: 'card-4',
      cables: [{ count: 6, weight: 0.15 }],
      rolled: 2,
      thousand: 420,
      other,
      otherWeight,
    });
  test.each([
    [null, 2.94],
    ['trayLeftOut', 1.74],
    ['oneOfEach', 1.77],
    ['placeSlipped', 10.5],
    ['placeLost', 2.184],
    ['kilograms', 4.3752], // × 1.48816, international yard and pound agreement, 1959
  ])('%s', (slip, wanted) => {
    const { answer, slipped } = made('none');
    expect(slip === null ? answer('load') : slipped(slip, 'load')).toBeCloseTo(wanted, 3);
  });
  test('ice', () => {
    expect(made('ice').answer('load')).toBeCloseTo(3.44, 9);
    expect(made('ice').slipped('otherLeftOut', 'load')).toBeCloseTo(2.94, 9);
    expect(made('none').slipped('otherLeftOut', 'load')).toBeNull();
  });
});

describe('longest span', () => {
  const made = (weight: string, lbPerFt: number) =>
    job('longest-span', {
      width: 'card-4',
      where: 'end',
      weight,
      light: 5.2,
      middle: 20,
      over: 40,
      [weight]: lbPerFt,
    });
  test('cables 5.2: 6.4, so 8 ft', () => {
    const { answer, slipped } = made('light', 5.2);
    expect([answer('load'), answer('span')]).toEqual([6.4, 'ft-8']);
    expect(slipped('cablesOnly', 'load')).toBe(5.2);
    expect(slipped('severalSpans', 'span')).toBe('ft-10'); // 5.4 × 1.25 = 6.75
    expect(slipped('readBetween', 'span')).toBe('ft-9'); // 8 + 2 × 2/3 = 9.3
    expect(slipped('nextRow', 'span')).toBeNull(); // 10 ft, as one who counts on several spans
    expect(slipped('beyondTable', 'span')).toBeNull();
    expect(slipped('askedAnyway', 'span')).toBe('ask');
  });
  test('both sides of a row, and clear of it', () => {
    expect(made('light', 7.05).answer('span')).toBe('ft-8'); // 8.25
    expect(made('middle', 7.35).answer('span')).toBe('ft-6'); // 8.55
    expect(made('light', 7.15).plan).toBeNull(); // 8.35
  });
  test('beyond the table: ask', () => {
    const { answer, slipped } = made('over', 45); // 46.2; 34 × 1.25 = 42.5
    expect(answer('span')).toBe('ask');
    expect(slipped('beyondTable', 'span')).toBe('ft-4');
    expect(slipped('severalSpans', 'span')).toBeNull();
    expect(made('over', 40).slipped('severalSpans', 'span')).toBe('ft-4'); // 41.2
  });
});

describe('which line of the load table', () => {
  // Simple span wL²/8; end span of three alike 0.1 wL² (standard beam formulas): the figure of one span alone is safe anywhere.
  const made = (figure: string, place: string) =>
    job('single-span-table', { width: 'card-4', figure, place, span: '6', above: 1.1, below: 0.9 });
  test.each([
    ['several', 'single', 'overloads', 'no-gain', 110],
    ['several', 'end', 'overloads', 'no-gain', 110],
    ['several', 'splice', 'overloads', 'no-gain', 110],
    ['several', 'inner', 'as-listed', 'meant-for-it', 110],
    ['alone', 'single', 'as-listed', 'meant-for-it', 90],
    ['alone', 'end', 'reserve', 'bends-less', 90],
    ['alone', 'inner', 'reserve', 'bends-less', 90],
  ])('%s at %s', (figure, place, use, why, percent) => {
    const { answer } = made(figure, place);
    expect([answer('use'), answer('why')]).toEqual([use, why]);
    expect(answer('percent')).toBeCloseTo(percent, 9);
  });
  test('what one span alone carries says nothing of a splice', () => {
    expect(made('alone', 'splice').plan).toBeNull();
  });
  test('slips', () => {
    expect(made('several', 'end').slipped('gainBelieved', 'use')).toBe('as-listed');
    expect(made('several', 'end').slipped('gainCalledReserve', 'use')).toBe('reserve');
    expect(made('alone', 'end').slipped('reserveFeared', 'use')).toBe('overloads');
    expect(made('alone', 'end').slipped('reserveUnseen', 'use')).toBe('as-listed');
    expect(made('several', 'inner').slipped('listedFeared', 'use')).toBe('overloads');
    expect(made('several', 'inner').slipped('listedAsReserve', 'use')).toBe('reserve');
    expect(made('several', 'inner').slipped('gainBelieved', 'use')).toBeNull();
    expect(made('several', 'inner').slipped('ofSeveral', 'percent')).toBeCloseTo(88, 9); // 16.5 of 18.75
    expect(made('several', 'inner').slipped('inverted', 'percent')).toBeCloseTo(90.909, 3);
  });
});

describe('a box of 24 lb at the middle of 6 ft, 6.4 lb/ft along it', () => {
  const made = job('point-load', { width: 'card-4', span: '6', box: 24, cables: 5.2 });
  test.each([
    [null, 14.4], // 2 × 24/6 = 8, and 6.4
    ['once', 10.4],
    ['ignored', 6.4],
    ['addedWhole', 30.4],
    ['trayLeftOut', 13.2],
  ])('%s', (slip, wanted) => {
    expect(slip === null ? made.answer('total') : made.slipped(slip, 'total')).toBeCloseTo(wanted, 9);
  });
  test('the box counts anew at each span', () => {
    expect(made.answer('longest')).toBe('ft-6'); // 8 ft: 6 + 6.4 = 12.4, over 8.4
    expect(made.slipped('ignored', 'longest')).toBe('ft-8');
    expect(made.slipped('addedWhole', 'longest')).toBe('ft-4'); // 30.4
    expect(made.slipped('oneTotal', 'longest')).toBeNull(); // 14.4 at every row: 6 ft all the same
    const ten = job('point-load', { width: 'card-4', span: '4', box: 24, cables: 5.2 }); // 18.4 at 4 ft
    expect([ten.answer('longest'), ten.slipped('oneTotal', 'longest')]).toEqual(['ft-6', 'ft-5']);
    expect(made.slipped('nextRow', 'longest')).toBe('ft-8');
  });
  test('no row carries a heavy box', () => {
    const heavy = job('point-load', { width: 'card-4', span: '6', weight: 'over', over: 100, cables: 5.2 });
    expect(heavy.answer('longest')).toBe('ask'); // 4 ft: 50 + 6.4, over 34
    expect(heavy.slipped('beyondTable', 'longest')).toBe('ft-4');
    expect([heavy.slipped('askedAnyway', 'longest'), made.slipped('askedAnyway', 'longest')]).toEqual([
      null,
      'ask',
    ]);
  });
});

describe('a rod of a trapeze', () => {
  const made = (where: string, strut = 0) =>
    job('rod-load', { where, before: at(`6'`), behind: at(`6'`), overhang: at('12'), load: 6.4, strut });
  const LONG = { where: 'end', before: at(`6'`), behind: at(`6'`), load: 6.4, strut: 0 };
  test.each([
    ['inside', 0, null, 19.2], // 6 ft × 6.4 over two rods
    ['inside', 0, 'rodsForgotten', 38.4],
    ['inside', 0, 'oneSide', 9.6],
    ['inside', 0, 'wholeSpans', 38.4],
    ['inside', 5, null, 21.7],
    ['inside', 5, 'strutLeftOut', 19.2],
    // Statics: (6 + 1)² / 12 = 4.0833 ft; × 6.4 = 26.1333, and 5, over two rods.
    ['end', 5, null, 15.56667],
    ['end', 5, 'rodsForgotten', 31.13333],
    ['end', 5, 'oneSide', 12.1],
    ['end', 5, 'wholeSpans', 24.9],
    ['end', 5, 'asInside', 21.7],
  ])('%s, strut %f, %s', (where, strut, slip, wanted) => {
    const { answer, slipped } = made(where, strut);
    expect(slip === null ? answer('rod') : slipped(slip, 'rod')).toBeCloseTo(wanted, 4);
  });
  test('an overhang that is added only: half of 6 ft and 2 ft, where (6 + 2)² / 12 = 5.333 ft hang there', () => {
    const long = job('rod-load', { ...LONG, overhang: at('24') });
    expect(long.answer('rod')).toBeCloseTo(17.06667, 4); // 5.333 × 6.4 / 2
    expect(long.slipped('notPrised', 'rod')).toBeCloseTo(16, 9); // 5 × 6.4 / 2
    // 6 in: 0.5² / 12 × 6.4 / 2 = 0.07 lb, within what an answer may be out.
    expect(job('rod-load', { ...LONG, overhang: at('6') }).slipped('notPrised', 'rod')).toBeNull();
  });
  test('nothing to take for an inner one at an inner one', () => {
    expect(made('inside').slipped('asInside', 'rod')).toBeNull();
    expect(made('inside').slipped('strutLeftOut', 'rod')).toBeNull();
  });
});

describe('a drop of 14 ft, 2.94 lb/ft, three brackets', () => {
  const made = (drop: string, sheet: string, rated = 60) =>
    job('drop-load', { width: 'card-4', drop: at(drop), cables: 1.74, brackets: 3, sheet, rated });
  test.each([
    [null, 41.16],
    ['shared', 13.72],
    ['trayOnly', 16.8],
    ['cablesOnly', 24.36],
  ])('%s', (slip, wanted) => {
    const { answer, slipped } = made(`14'`, 'rated');
    expect(slip === null ? answer('load') : slipped(slip, 'load')).toBeCloseTo(wanted, 9);
  });
  test('inches written as tenths', () => {
    expect(made(`14'-6"`, 'rated').slipped('inchesAsTenths', 'load')).toBeCloseTo(42.924, 9); // 14.6
    expect(made(`14'-10"`, 'rated').slipped('inchesAsTenths', 'load')).toBeCloseTo(41.454, 9); // 14.10
    expect(made(`14'-1"`, 'rated').slipped('inchesAsTenths', 'load')).toBeNull(); // 14.1 and 14.083
  });
  test('within, over, and no rating', () => {
    expect(made(`14'`, 'rated', 44).answer('may')).toBe('yes');
    expect(made(`14'`, 'rated', 39).answer('may')).toBe('no');
    expect(made(`14'`, 'rated', 42).plan).toBeNull(); // too near
    const silent = made(`14'`, 'silent');
    expect(silent.answer('may')).toBe('ask');
    expect(silent.slipped('guessed', 'may')).toBe('yes');
    expect(made(`14'`, 'rated', 39).slipped('shared', 'may')).toBe('yes');
    expect(made(`14'`, 'rated', 39).slipped('overTaken', 'may')).toBe('yes');
    expect(made(`14'`, 'rated', 10).slipped('overTaken', 'may')).toBe('yes');
    expect(made(`14'`, 'rated', 44).slipped('withinRefused', 'may')).toBe('no');
    expect(made(`14'`, 'rated', 44).slipped('askedAnyway', 'may')).toBe('ask');
  });
});

describe('length of a strut: 4-in channel, 4 1/4 outside', () => {
  const made = (trays: string) =>
    job('strut-length', {
      width: 'card-4',
      trays,
      gap: at('3'),
      clamp: at('1 1/2'),
      edge: at('1'),
      count: 6,
    });
  test.each([
    ['one', null, 9.25], // 4 1/4 + 3 + 2
    ['one', 'insideWidth', 9],
    ['one', 'oneClamp', 7.75],
    ['one', 'noClamps', 6.25],
    ['one', 'edgesForgotten', 7.25],
    ['one', 'gapForgotten', null],
    ['two', null, 16.5], // 8 1/2 + 3 + 3 + 2
    ['two', 'gapForgotten', 13.5],
    ['two', 'oneTray', 9.25],
  ])('%s, %s', (trays, slip, wanted) => {
    const { answer, slipped } = made(trays);
    expect(slip === null ? answer('strut') : slipped(slip, 'strut')).toBe(wanted);
  });
  test('six of 9 1/4 with six cuts of 1/8', () => {
    expect(made('one').answer('all')).toBe(56.25);
    expect(made('one').slipped('noKerf', 'all')).toBe(55.5);
    expect(made('one').slipped('oneKerf', 'all')).toBe(55.625);
    expect(made('one').slipped('oneFewer', 'all')).toBe(46.875);
  });
});

describe('string and level: 1/8 in each, 1/4 in over 20 ft (common practice, no source)', () => {
  const made = (offs: readonly number[], string: string, wild = 0, wildOff = 3) =>
    job('string-and-level', {
      wanted: at('3'),
      supports: offs.map((off) => ({ off })),
      wild,
      wildOff,
      wildWay: 'low',
      string,
    });
  test.each([
    // Off in sixteenths, high plus.
    [[2, -2, 0, 0, 0], 'flat', 'none', 0.25, 'accept'], // both sides at their limit, and 1/4 in all
    [[2, -2, 0, 0, 0], 'eighth', 'none', 0.28125, 'string'], // the second a thirty-second lower
    [[0, 0, 0, 0, 0], 'quarter', 'none', 0.25, 'accept'],
    [[1, 0, 0, 0, 0], 'quarter', 'none', 0.3125, 'string'],
    [[0, 0, 0, 0, 1], 'quarter', 'none', 0.1875, 'accept'], // the fourth is the lowest
  ])('%j, string %s', (offs, string, off, spread, next) => {
    const { answer } = made(offs, string);
    expect([answer('off'), answer('spread'), answer('next')]).toEqual([off, spread, next]);
  });
  test('one that is off comes first', () => {
    const { answer, slipped } = made([0, 0, 0, 0, 0], 'flat', 3);
    expect([answer('off'), answer('spread'), answer('next')]).toEqual(['s3', 0.1875, 'reset']);
    expect(slipped('quarterEach', 'off')).toBe('none');
    expect(slipped('taken', 'next')).toBe('accept');
  });
  test('slips', () => {
    const { slipped } = made([1, 0, 0, 0, 0], 'quarter');
    expect(slipped('fallIgnored', 'spread')).toBe(0.0625);
    expect(slipped('fallIgnored', 'next')).toBe('accept');
    expect(slipped('fallTurned', 'spread')).toBe(0.1875); // heights 1, 1, 2, 3, 4 sixteenths
  });
});

describe('a drop beside the plumb line: 1/8 in on 4 ft, 1/4 in on 10 ft, both faces (common practice, no source)', () => {
  const made = (front: readonly number[], side: readonly number[]) =>
    job('plumb-drop', {
      front: at('3'),
      side: at('4'),
      places: [
        { front: front[0], side: side[0] },
        { front: front[1], side: side[1] },
      ],
      frontEnd: front[2],
      sideEnd: side[2],
    });
  test.each([
    // In sixteenths against the top, at 4, 6 and 10 ft.
    [[2, 2, 4], [0, 0, 0], 0.25, 0, 'yes'],
    [[3, 3, 4], [0, 0, 0], 0.25, 0, 'front'], // 3/16 on the upper 4 ft
    [[2, 3, 5], [0, 0, 0], 0.3125, 0, 'front'], // 5/16 on 10 ft
    [[0, 0, 0], [0, 3, 0], 0, 0, 'side'], // 3/16 on the lower 4 ft
    [[3, 3, 3], [0, 0, -3], 0.1875, 0.1875, 'both'],
  ])('%j and %j', (front, side, leanFront, leanSide, stands) => {
    const { answer } = made(front, side);
    expect([answer('front'), answer('side'), answer('stands')]).toEqual([leanFront, leanSide, stands]);
  });
  test('slips', () => {
    expect(made([0, 0, 0], [0, 3, 0]).slipped('frontOnly', 'stands')).toBe('yes');
    expect(made([3, 3, 4], [0, 0, 0]).slipped('tenOnly', 'stands')).toBe('yes');
    expect(made([2, 3, 5], [0, 0, 0]).slipped('carriedOn', 'stands')).toBe('yes');
    expect(made([1, 3, 4], [0, 0, 0]).slipped('firstFour', 'front')).toBe(0.0625);
    expect(made([1, 3, 4], [0, 0, 0]).slipped('foursAdded', 'front')).toBe(0.125);
  });
});

describe('fastening to the structure', () => {
  const made = (scenes: readonly string[], more: object) =>
    job('attach-to-steel', {
      scenes,
      edge: 3,
      leastEdge: 3,
      depth: 2.5,
      wantedDepth: 2.5,
      flange: 0.75,
      jaw: 0.75,
      ...more,
    });
  const five = ['edge', 'depth', 'flange', 'holes', 'clamped'];
  const all = (m: ReturnType<typeof made>) => [1, 2, 3, 4, 5].map((n) => m.answer(`scene-${n}`));
  test('at the limit of a sheet it holds, beyond it not', () => {
    expect(all(made(five, {}))).toEqual(['go', 'go', 'go', 'ask', 'go']);
    expect(
      all(
        made(['edge', 'depth', 'flange', 'clamped', 'answered'], {
          edge: 2.75,
          depth: 2.375,
          flange: 0.8125,
        }),
      ),
    ).toEqual(['ask', 'stop', 'ask', 'go', 'go']);
  });
  test('habits show in their own scene', () => {
    const { slipped } = made(['edge', 'depth', 'holes', 'clamped', 'answered'], { edge: 2.5, depth: 2 });
    expect(slipped('edgeByEye', 'scene-1')).toBe('go');
    expect(slipped('shallowHole', 'scene-2')).toBe('go');
    expect(slipped('drillsSteel', 'scene-3')).toBe('go');
    expect(slipped('forcesClamp', 'scene-1')).toBeNull();
  });
});

describe('orders (common practice, no source)', () => {
  test.each([
    // May not change places, and may.
    ['order-of-layout', ['leave', 'mark'], ['fittings', 'expansion']],
    ['order-of-layout', ['span', 'fill'], ['leave', 'span']],
    ['order-of-horizontal-supports', ['height', 'tighten'], ['base', 'cut']],
    ['order-of-horizontal-supports', ['base', 'ends'], ['touch', 'ends']],
    ['order-of-vertical-supports', ['clamp', 'release'], ['guide', 'release']],
    ['order-of-vertical-supports', ['bearing', 'sling'], ['bar', 'which']],
  ])('%s', (id, [before = '', after = ''], free) => {
    const ask = family(id).asks[0];
    if (ask?.kind !== 'order') throw new Error(`${id} asks for no order`);
    const items = ask.items.map((item) => item.id);
    const every = everyPrecedence(items, ask.precedence);
    expect(keeps(items, every)).toBe(true);
    expect(every).toContainEqual([before, after]);
    expect(every).not.toContainEqual(free);
    expect(every).not.toContainEqual([...free].reverse());
  });
});
