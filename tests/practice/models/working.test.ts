/**
 * Right answers and those of slips in orders of work, safe work and decisions, worked by hand. Limits: 29 CFR 1926.501(b)(1)
 * (6 ft), 1926.52 table D-2 (90 dBA), 1926.1053(b)(1) (36 in), 1910.333(c)(3)(iii) (10 ft), 1910.252(a)(2)(vii) (35 ft, from memory);
 * permits, site figures, weights and torques are training values; what else stands here is common practice, no source.
 */
import { describe, expect, test } from 'vitest';
import { everyPrecedence } from '../../../src/practice/models/parts/steps.ts';
import { readLength, type Ticks } from '../../../src/trade/length.ts';
import { draw, family, finding, grade, job } from '../means.ts';

const at = (text: string): Ticks => readLength(text);

type Reply = 'go' | 'ask' | 'stop';
/** Fills up the scenes that a model asks for: with those that may go on, so many that stopping all fails, and those stopped. */
interface Pool {
  readonly id: string;
  readonly asks: number;
  readonly values: Readonly<Record<string, unknown>>;
  readonly go: string;
  readonly stop: string;
}
/** What is answered in a scene, rightly or with a habit, once these values are drawn. */
function reply(pool: Pool, scene: string, values: Readonly<Record<string, unknown>>, habit?: string) {
  const goes = Math.floor(pool.asks / 5) + 1;
  const fill = Array.from({ length: pool.asks - 1 }, (_, i) => (i < goes ? pool.go : pool.stop));
  const made = job(pool.id, {
    ...pool.values,
    ...values,
    scenes: [scene, ...fill],
  });
  return habit === undefined ? made.answer('scene-1') : made.slipped(habit, 'scene-1');
}
type Row = readonly [scene: string, values: object, habit: string | undefined, wanted: Reply];
const rows = (pool: Pool, all: readonly Row[]) =>
  test.each(all)('%s %j %s: %s', (scene, values, habit, wanted) =>
    expect(reply(pool, scene, values as Record<string, unknown>, habit)).toBe(wanted),
  );

describe('start of work', () => {
  const pool = {
    id: 'start-of-work',
    asks: 5,
    values: { noise: 80, noiseFrom: '85', bundle: 80, each: '50' },
    go: 'dressed',
    stop: 'gloves',
  };
  rows(pool, [
    ['noise', { noise: 84 }, undefined, 'go'],
    ['noise', { noise: 85 }, undefined, 'stop'],
    ['noise', { noise: 88 }, 'lawNotSite', 'go'],
    ['noise', { noise: 99 }, 'onlyWhenItHurts', 'go'],
    // 80 lb is 40 each; 100 lb is 50 each, the limit itself.
    ['lift', { bundle: 100 }, undefined, 'go'],
    ['lift', { bundle: 101 }, undefined, 'ask'],
    ['lift', { bundle: 101 }, 'liftsAnyway', 'go'],
    ['lift', { bundle: 80 }, 'weightNotShared', 'ask'],
    ['gloves', {}, 'glovesAtDrill', 'go'],
    ['card', {}, undefined, 'ask'],
  ]);
});

describe('saw and drill', () => {
  const pool = {
    id: 'saw-and-drill',
    asks: 5,
    values: { teeth: '24', wall: 0.1, rpm: 3000, most: 4000, free: 4, freeMost: 6 },
    go: 'vise',
    stop: 'guard',
  };
  rows(pool, [
    // 24 x 0.1 = 2.4 teeth; 14 x 0.1 = 1.4.
    ['blade', {}, undefined, 'go'],
    ['blade', { teeth: '14' }, undefined, 'stop'],
    ['blade', { teeth: '14' }, 'anyBlade', 'go'],
    ['speed', { rpm: 4000 }, undefined, 'go'],
    ['speed', { rpm: 4001 }, undefined, 'stop'],
    ['overhang', { free: 6 }, undefined, 'go'],
    ['overhang', { free: 7 }, undefined, 'stop'],
  ]);
});

describe('hot work', () => {
  const pool = {
    id: 'hot-work',
    asks: 5,
    values: { bare: 50, covered: 20, watch: '60', stood: 70, left: 30, cut: 10 },
    go: 'swept',
    stop: 'blow',
  };
  rows(pool, [
    ['bare-planks', { bare: 33 }, undefined, 'stop'],
    ['bare-planks', { bare: 37 }, undefined, 'go'],
    ['bare-planks', { bare: 25 }, 'twentyIsEnough', 'go'],
    ['bare-planks', { bare: 15 }, 'sparksLandNear', 'go'],
    ['covered', { covered: 20 }, undefined, 'go'],
    ['covered', { covered: 20 }, 'coverNotCounted', 'stop'],
    ['watch-leaves', { stood: 59 }, undefined, 'stop'],
    ['watch-leaves', { stood: 60 }, undefined, 'go'],
    ['watch-leaves', { stood: 40 }, 'halfHourAlways', 'go'],
    ['watch-leaves', { stood: 25 }, 'nothingGlows', 'go'],
    ['permit-ends', { left: 10, cut: 20 }, undefined, 'ask'],
    ['permit-ends', { left: 10, cut: 20 }, 'pastThePermit', 'go'],
    ['permit-ends', { left: 20, cut: 10 }, undefined, 'go'],
    ['smell', {}, undefined, 'stop'],
  ]);
});

describe('at height', () => {
  const pool = {
    id: 'at-height',
    asks: 5,
    values: { height: 3, site: '4', above: 40, wind: 12, plate: '28' },
    go: 'named',
    stop: 'webbing',
  };
  rows(pool, [
    ['edge', { height: 3 }, undefined, 'go'],
    ['edge', { height: 4 }, undefined, 'stop'],
    ['edge', { height: 5 }, 'lawNotSite', 'go'],
    ['edge', { height: 5, site: '6' }, undefined, 'go'],
    ['edge', { height: 6, site: '6' }, undefined, 'stop'],
    ['edge', { height: 9, site: '6' }, 'tenFeet', 'go'],
    ['edge', { height: 13, site: '6' }, 'keepsBalance', 'go'],
    ['ladder', { above: 36 }, undefined, 'go'],
    ['ladder', { above: 35 }, undefined, 'stop'],
    ['ladder', { above: 20 }, 'footIsEnough', 'go'],
    ['lift', { wind: 28 }, undefined, 'go'],
    ['lift', { wind: 29 }, undefined, 'stop'],
  ]);
});

describe('lock-out', () => {
  const pool = {
    id: 'lock-out',
    asks: 5,
    values: { people: 4, locks: 4, volts: '0', psi: '0', card: 12, apart: '0' },
    go: 'proven',
    stop: 'lunch',
  };
  rows(pool, [
    ['locks', {}, undefined, 'go'],
    ['locks', { locks: 3 }, undefined, 'stop'],
    ['locks', { locks: 3 }, 'oneMissing', 'go'],
    ['locks', { locks: 1 }, 'oneForAll', 'go'],
    ['reading', { volts: '0' }, undefined, 'go'],
    ['reading', { volts: '4' }, undefined, 'stop'],
    ['reading', { volts: '46' }, 'smallIsDead', 'go'],
    ['reading', { volts: '120' }, 'straysIgnored', 'go'],
    ['one-reading', {}, undefined, 'stop'],
    ['one-reading', {}, 'onePhase', 'go'],
    ['between', {}, 'onePhase', 'go'],
    ['proved-once', {}, undefined, 'stop'],
    ['pressure', { psi: '15' }, undefined, 'stop'],
    ['number', { apart: '2' }, undefined, 'ask'],
  ]);
});

describe('dropped objects', () => {
  const pool = {
    id: 'dropped-objects',
    asks: 5,
    values: { tool: 6, tether: 8, zone: 15, person: 30, load: 200, sling: 300, up: 12, missing: '0' },
    go: 'pouch',
    stop: 'thrown',
  };
  rows(pool, [
    ['tether', { tool: 8 }, undefined, 'go'],
    ['tether', { tool: 8.5 }, undefined, 'stop'],
    ['zone', { person: 12 }, undefined, 'stop'],
    ['zone', { person: 12 }, 'tenFeetClear', 'go'],
    ['zone', { person: 5 }, 'onlyShouts', 'go'],
    ['sling', { load: 301 }, undefined, 'stop'],
    ['sling', { load: 301 }, 'usesUpTheReserve', 'go'],
    ['count', { missing: '1' }, undefined, 'stop'],
    ['count', { missing: '1' }, 'oneTurnsUp', 'go'],
    ['count', { missing: '2' }, 'countsNot', 'go'],
  ]);
});

describe('near live parts', () => {
  const pool = {
    id: 'near-live-parts',
    asks: 5,
    values: { boundary: '48', flash: '36', reach: 60, stand: 100, rod: 20, line: 15 },
    go: 'dead',
    stop: 'leads',
  };
  rows(pool, [
    // Beside open live gear nobody goes on by a sum of his own: inside 48 it is stopped, outside it is asked.
    ['boundary', { reach: 45 }, undefined, 'stop'],
    ['boundary', { reach: 51 }, undefined, 'ask'],
    ['boundary', { reach: 51 }, 'ownSum', 'go'],
    // The label has 72: outside 48 is not outside the farther.
    ['boundary', { flash: '72' }, undefined, 'stop'],
    ['boundary', { flash: '72' }, 'flashForgotten', 'go'],
    ['boundary', { flash: '72', reach: 75 }, undefined, 'ask'],
    ['boundary', { reach: 44 }, 'leastOfTheTable', 'go'],
    ['boundary', { reach: 25 }, 'armsLength', 'go'],
    // 100 - 60 = 40 is inside 48; 100 - 20 = 80 is not.
    ['rod', { rod: 60 }, undefined, 'stop'],
    ['rod', { rod: 60 }, 'feetNotRod', 'go'],
    ['rod', {}, undefined, 'ask'],
    ['rod', {}, 'ownSum', 'go'],
    ['rod', { flash: '84', rod: 30 }, 'flashForgotten', 'go'],
    ['shown', {}, undefined, 'go'],
    ['line', { line: 12 }, undefined, 'go'],
    ['line', { line: 8 }, undefined, 'stop'],
    ['line', { line: 8 }, 'sixFeetFromLine', 'go'],
  ]);
});

describe('classified area', () => {
  const pool = {
    id: 'classified-area',
    asks: 5,
    values: { gas: 1, gasLimit: '5', ago: 10, every: '30', inch: '2' },
    go: 'hand-saw',
    stop: 'phone',
  };
  rows(pool, [
    ['gas', { gas: 4.5 }, undefined, 'go'],
    ['gas', { gas: 5.5 }, undefined, 'stop'],
    ['gas', { gas: 8 }, 'tenAlways', 'go'],
    ['gas', { gas: 15 }, 'waitsForAlarm', 'go'],
    ['tested', { ago: 32 }, undefined, 'stop'],
    ['tested', { ago: 32 }, 'testedThisMorning', 'go'],
    ['alarm', {}, 'finishFirst', 'go'],
    ['silent', {}, undefined, 'ask'],
  ]);
});

describe('go, ask or stop', () => {
  const pool = {
    id: 'go-ask-stop',
    asks: 8,
    values: {
      height: 3,
      site: '6',
      bare: 50,
      watch: '30',
      stood: 40,
      gas: 1,
      gasLimit: '10',
      off: 3,
      torque: 15,
      stated: 15,
      span: 5,
      spanMost: '6',
    },
    go: 'dead',
    stop: 'alarm',
  };
  rows(pool, [
    ['alarm', {}, 'finishFirst', 'go'],
    ['tray-anchor', {}, 'harnessToTray', 'go'],
    ['unknown', {}, 'movesUnknownCable', 'go'],
    ['conflict', {}, undefined, 'ask'],
    ['conflict', {}, 'bendsRound', 'go'],
    ['torque', { torque: 13 }, undefined, 'stop'],
    ['torque', { torque: 13 }, 'tightByFeel', 'go'],
    ['span', { span: 7 }, undefined, 'ask'],
    ['span', { span: 7 }, 'ladderSpan', 'go'],
    ['span', { span: 9 }, 'spanByEye', 'go'],
  ]);
});

describe('support before opening', () => {
  const pool = {
    id: 'support-before-opening',
    asks: 5,
    values: { free: 10, freeMost: '18', stand: 22, feet: 6, tray: 1.2, cables: 5.2 },
    go: 'both-sides',
    stop: 'below',
  };
  rows(pool, [
    ['hangs', { free: 19 }, undefined, 'stop'],
    ['hangs', { free: 17 }, undefined, 'go'],
    // 6.4 lb/ft x 6 ft / 2 = 19.2 lb; on 10 ft 32 lb, the tray alone 6.
    ['stand', {}, undefined, 'go'],
    ['stand', { feet: 10 }, undefined, 'stop'],
    ['stand', { feet: 10 }, 'cablesForgotten', 'go'],
    ['widen', {}, 'jointsWidened', 'go'],
  ]);
});

describe('scenes as they are answered', () => {
  const SAFE = [
    'start-of-work',
    'saw-and-drill',
    'hot-work',
    'at-height',
    'lock-out',
    'dropped-objects',
    'near-live-parts',
    'classified-area',
    'go-ask-stop',
    'support-before-opening',
  ];
  const drawnOf = SAFE.flatMap((id) => Array.from({ length: 20 }, (_, i) => draw(id, `scenes-${i}`)));
  test('a stop holds wherever asking is enough, and nowhere else than where it is right', () => {
    for (const drawn of drawnOf)
      for (const { id } of drawn.family.asks) {
        const { verdict } = finding(drawn, id, 'stop');
        expect(verdict).toBe(drawn.right[id] === 'go' ? 'rework' : 'holds');
      }
  });
  test('every wrong answer has its mistake', () => {
    for (const drawn of drawnOf)
      for (const { id } of drawn.family.asks)
        for (const answer of ['go', 'ask', 'stop']) {
          const found = finding(drawn, id, answer);
          if (found.verdict !== 'holds') expect(found.mistake).not.toBeNull();
        }
  });
  test('one answer that is more careful than needed decides nothing', () => {
    for (const drawn of drawnOf) {
      const go = Object.keys(drawn.right).find((id) => drawn.right[id] === 'go') as string;
      for (const answer of ['ask', 'stop'])
        expect(grade(drawn, { ...drawn.right, [go]: answer }).passed).toBe(true);
    }
  });
  test('no one answer does for all', () => {
    for (const drawn of drawnOf)
      for (const answer of ['go', 'ask', 'stop']) {
        const all = Object.fromEntries(drawn.family.asks.map(({ id }) => [id, answer]));
        expect(grade(drawn, all).passed).toBe(false);
      }
  });
});

type SlipRow = readonly [slip: string, ask: string, wanted: number | string | null];
const slips = (made: ReturnType<typeof job>, all: readonly SlipRow[]) =>
  test.each(all)('%s on %s', (slip, ask, wanted) => {
    const answer = made.slipped(slip, ask);
    if (typeof wanted === 'number') expect(answer).toBeCloseTo(wanted, 9);
    else expect(answer).toBe(wanted);
  });

describe('tools for the place', () => {
  // Stainless, 20 ft up, classified: cold saw, stainless brush, tether, marked lamp.
  const made = job('tools-for-the-place', {
    metal: 'stainless',
    area: 'division-2',
    height: 20,
    tool: 4.5,
    battery: 1.6,
    torque: 12,
  });
  test('right', () =>
    expect(['blade', 'brush', 'tether', 'lamp', 'wrench'].map(made.answer)).toEqual([
      'blade-stainless',
      'brush-stainless',
      'tether-10',
      'lamp-division-2',
      'small',
    ]));
  slips(made, [
    ['grinder', 'blade', 'grinder'],
    ['carbonSteel', 'brush', 'brush-galvanised'],
    ['untethered', 'tether', 'none'],
    ['batteryForgotten', 'tether', 'tether-5'],
    ['weightDoubled', 'tether', 'tether-15'],
    ['plainLamp', 'lamp', 'lamp-plain'],
    ['impact', 'wrench', 'impact'],
    ['outOfRange', 'wrench', 'large'],
    ['steelOnAluminium', 'blade', null],
  ]);
});

describe('revision and kit', () => {
  // Card C, drawing D, D is current; a steel kit on aluminium: two faults.
  const values = {
    current: 3,
    wrong: 'card-and-metal',
    cardBehind: 1,
    drawingBehind: 1,
    tray: 'aluminium',
    trayWidth: '4',
    otherMetal: 'steel',
    otherWidth: '6',
    sheet: 101,
  };
  const made = job('revision-and-kit', values);
  test('right', () =>
    expect(['papers', 'kit', 'count', 'next'].map(made.answer)).toEqual(['card', 'metal', 2, 'report']));
  slips(made, [
    ['stoppedAtFirst', 'count', 1],
    ['tookNewer', 'next', 'newer'],
    ['swappedKit', 'next', 'swap'],
    ['wentOn', 'next', 'go-on'],
    ['paperAgainstPaper', 'papers', 'drawing'],
    ['papersNotLookedAt', 'papers', 'none'],
    ['metalNotLookedAt', 'kit', 'fits'],
    ['reportedAllWell', 'next', null],
  ]);
  test('both papers old in the same way', () => {
    const old = job('revision-and-kit', { ...values, wrong: 'papers' });
    expect([old.answer('papers'), old.answer('count')]).toEqual(['both', 2]);
    expect(old.slipped('paperAgainstPaper', 'papers')).toBe('none');
  });
  test('nothing to report', () => {
    const fine = job('revision-and-kit', { ...values, wrong: 'none' });
    expect([fine.answer('count'), fine.answer('next')]).toEqual([0, 'go-on']);
    expect(fine.slipped('reportedAllWell', 'next')).toBe('report');
  });
});

describe('splice fasteners', () => {
  const values = { width: 'card-4', lengths: 6, state: 'all', large: 1, proud: 3, empty: 1 };
  const made = job('splice-fasteners', values);
  // 5 splices of 4 are 20; 1 + 3 + 1 are not as they must be.
  test('right', () => expect(['wanted', 'good', 'verdict'].map(made.answer)).toEqual([20, 15, 'rework']));
  slips(made, [
    ['spliceALength', 'wanted', 24],
    ['oneASide', 'wanted', 10],
    ['sidesForgotten', 'wanted', 40],
    ['largeCounted', 'good', 16],
    ['proudCounted', 'good', 18],
    ['emptyOverlooked', 'good', 16],
    ['mostAreIn', 'verdict', 'accept'],
  ]);
  test('all as they must be', () =>
    expect(job('splice-fasteners', { ...values, state: 'sound' }).answer('verdict')).toBe('accept'));
  test('of a kind that the sheet does not name: asked', () => {
    const other = job('splice-fasteners', { ...values, state: 'other', other: 2 });
    expect(['good', 'verdict'].map(other.answer)).toEqual([18, 'ask']);
    expect([other.slipped('otherCounted', 'good'), other.slipped('otherCounted', 'verdict')]).toEqual([
      20,
      'accept',
    ]);
    expect(other.slipped('otherTakenOut', 'verdict')).toBe('rework');
    expect(made.slipped('askedAnyway', 'verdict')).toBe('ask');
  });
  test.each([
    ['large', 'largeCounted', 19],
    ['proud', 'proudCounted', 17],
    ['empty', 'emptyOverlooked', 19],
  ])('only %s: overlooked, it passes', (state, slip, good) => {
    const one = job('splice-fasteners', { ...values, state });
    expect([one.answer('good'), one.answer('verdict')]).toEqual([good, 'rework']);
    expect([one.slipped(slip, 'good'), one.slipped(slip, 'verdict')]).toEqual([20, 'accept']);
  });
});

describe('bolts and marks', () => {
  // 9 splices of 4 are 36; two splices with two bolts leave 32; 30 of them have a mark.
  const made = job('bolts-and-marks', { width: 'card-4', lengths: 10, half: 2, unmarked: 2 });
  test('right', () => expect(['bolts', 'unmarked', 'verdict'].map(made.answer)).toEqual([32, 2, 'both']));
  slips(made, [
    ['twoOfFour', 'verdict', 'marks'],
    ['marksOverlooked', 'verdict', 'bolts'],
    ['halfOverlooked', 'bolts', 36],
    ['spliceALength', 'bolts', 36],
    ['marksCounted', 'bolts', 30],
    ['halfAsOne', 'bolts', 34],
  ]);
});

describe('splice place', () => {
  const values = (from: string, span = 'inner') =>
    job('splice-place', {
      width: 'card-4',
      kind: 'sleeve',
      span,
      first: at("12'"),
      length: at("6'"),
      from: at(from),
    });
  // A 72-in span: quarter point at 18; the sleeve is 10 1/8 long, so it lies over the support within 5 1/16.
  test.each([
    ['12', 'inner', 12, 'holds'],
    ['17 1/2', 'inner', 17.5, 'holds'],
    ['18 1/2', 'inner', 18.5, 'past'],
    ['36', 'inner', 36, 'past'],
    ['60', 'inner', 12, 'holds'],
    ['4', 'inner', 4, 'over-support'],
    ['12', 'end', 12, 'wrong-span'],
    ['12', 'single', 12, 'wrong-span'],
  ])('%s in, %s', (from, span, nearest, verdict) => {
    const made = values(from, span);
    expect(made.answer('nearest')).toBeCloseTo(nearest, 9);
    expect([made.answer('quarter'), made.answer('verdict')]).toEqual([18, verdict]);
  });
  test('on the quarter point itself it is drawn again', () => expect(values('18').plan).toBeNull());
  test.each([
    ['36', 'end'],
    ['30', 'single'],
    ['4', 'single'],
  ])('%s in of the %s span would be wrong twice: drawn again', (from, span) =>
    expect(values(from, span).plan).toBeNull(),
  );
  slips(values('60'), [
    ['fromFirst', 'nearest', 60],
    ['fromEdge', 'nearest', 12 - 5.0625],
    ['third', 'quarter', 24],
    ['halfOfIt', 'quarter', 36],
    ['inTheMiddle', 'verdict', 'past'],
  ]);
  slips(values('36'), [['inTheMiddle', 'verdict', 'holds']]);
  slips(values('4'), [['overSupport', 'verdict', 'holds']]);
  slips(values('12', 'end'), [['anySpan', 'verdict', 'holds']]);
});

describe('step and gap', () => {
  const row = (step: string, gap: string) => ({ step: at(step), gap: at(gap) });
  const made = (stated: string) =>
    job('step-and-gap', {
      width: 'card-4',
      stated,
      splices: [row('1/16', '1/8'), row('5/64', '3/32'), row('1/32', '3/8')],
    });
  const all = (one: ReturnType<typeof job>) => ['splice-1', 'splice-2', 'splice-3'].map(one.answer);
  test('nothing stated: 1/16 and 1/8', () => expect(all(made('nothing'))).toEqual(['holds', 'step', 'gap']));
  test('a sixteenth stated', () => expect(made('sixteenth').plan).toBeNull());
  test('a quarter stated', () => expect(all(made('quarter'))).toEqual(['holds', 'step', 'gap']));
  slips(made('nothing'), [
    ['gapMadeUp', 'splice-3', 'holds'],
    ['stepLetPass', 'splice-2', 'holds'],
    ['limitFails', 'splice-1', 'both'],
    // 5/64 under 1/8, and 3/32 over 1/16.
    ['limitsExchanged', 'splice-2', 'gap'],
  ]);
});

describe('strut and rod', () => {
  const hanger = (fault: string, hung: string) => ({
    fault,
    hung,
    more: at('1/8'),
    less: at('1/16'),
    over: 0,
    under: 5,
  });
  const made = job('strut-and-rod', {
    rod: 'half',
    stated: 30,
    hangers: [
      hanger('none', 'through'),
      hanger('rod', 'clamp'),
      hanger('strap', 'clamp'),
      hanger('torque', 'clamp'),
    ],
  });
  test('right', () =>
    expect([1, 2, 3, 4].map((n) => made.answer(`hanger-${n}`))).toEqual(['holds', 'rod', 'strap', 'torque']));
  slips(made, [
    ['rodUnseen', 'hanger-2', 'holds'],
    ['strapForgotten', 'hanger-3', 'holds'],
    ['tightByFeel', 'hanger-4', 'holds'],
    ['strapEverywhere', 'hanger-1', 'strap'],
    ['twiceTheRod', 'hanger-1', 'rod'],
  ]);
});

describe('bends and ends', () => {
  const piece = (fault: string, kind: string, side: string, far = 1.3, small = '1/16') => ({
    fault,
    kind,
    side,
    near: 0.8,
    far,
    small: at(small),
    large: at('3/32'),
  });
  const made = job('bends-and-ends', {
    set: 30,
    pieces: [
      piece('none', 'bend', 'under'),
      piece('lip', 'bend', 'over'),
      piece('angle', 'hinge', 'under'),
      piece('square', 'hinge', 'over'),
    ],
  });
  // 29.2 is 0.8 off and 1/16 the limit itself; 28.7 is 1.3 off; 3/32 is more than 1/16.
  test('right', () =>
    expect([1, 2, 3, 4].map((n) => made.answer(`piece-${n}`))).toEqual(['holds', 'lip', 'angle', 'square']));
  slips(made, [
    ['tornLip', 'piece-2', 'holds'],
    ['setByEye', 'piece-3', 'holds'],
    ['wedge', 'piece-4', 'holds'],
    ['toTheTenth', 'piece-1', 'angle'],
    ['halfTheLimit', 'piece-1', 'square'],
  ]);
  test('a hinge is not torn by bending: drawn again', () =>
    expect(
      job('bends-and-ends', {
        set: 30,
        pieces: [
          piece('none', 'bend', 'over'),
          piece('lip', 'hinge', 'over'),
          piece('none', 'bend', 'over'),
          piece('none', 'bend', 'over'),
        ],
      }).plan,
    ).toBeNull());
});

describe('tape sag', () => {
  const made = (hangs: string, slight = '1 1/2') =>
    job('tape-sag', { hangs, reading: at('200'), slight: at(slight), deep: at('6') });
  // Surveying, flat parabola (from memory): 8 x 36 / 600 = 0.48; 8 x 2.25 / 600 = 0.03.
  const deep = made('deep');
  test('deep', () => {
    expect(deep.answer('excess')).toBeCloseTo(0.48, 9);
    expect(deep.answer('straight')).toBeCloseTo(199.52, 9);
    expect(deep.answer('verdict')).toBe('again');
  });
  slips(deep, [
    ['sagIgnored', 'straight', 200],
    ['sagTakenOff', 'straight', 194],
    ['addedOn', 'straight', 200.48],
    ['notSquared', 'excess', 0.08],
    ['notByThree', 'excess', 1.44],
    ['sagIgnored', 'verdict', 'take'],
    ['againAnyway', 'verdict', null],
  ]);
  test('slight', () => {
    expect(made('slight').answer('excess')).toBeCloseTo(0.03, 9);
    expect(made('slight').answer('verdict')).toBe('take');
    expect(made('slight').slipped('againAnyway', 'verdict')).toBe('again');
    expect(made('slight').slipped('sagIgnored', 'straight')).toBeNull();
  });
  test('near a sixteenth, or next to nothing: drawn again', () => {
    // 8 x 4.5156 / 600 = 0.060; 8 x 1.2656 / 600 = 0.017.
    expect(made('slight', '2 1/8').plan).toBeNull();
    expect(made('slight', '1 1/8').plan).toBeNull();
  });
});

describe('hit and miss', () => {
  const made = (state: string, other: number, missed: number, alarms: number) =>
    job('hit-and-miss', { state, critical: 3, criticalMissed: 1, other, missed, alarms });
  // 9 of 10 others; 1 of 13 entries is none.
  const good = made('enough', 10, 1, 1);
  test('good enough', () => {
    expect(good.answer('hits')).toBe(90);
    expect(good.answer('false-alarms')).toBeCloseTo(100 / 13, 9);
    expect(good.answer('verdict')).toBe('holds');
  });
  slips(good, [
    ['pooled', 'hits', (12 / 13) * 100],
    ['alarmsAsHits', 'hits', 100],
    ['falseOfHits', 'false-alarms', 100 / 12],
    // 13 entries and 13 faults: the same by chance.
    ['falseOfFaults', 'false-alarms', null],
    ['askedForMore', 'verdict', 'again'],
  ]);
  test('one critical fault of three missed; 1 of 12 entries is none', () => {
    const missed = made('critical', 10, 1, 1);
    expect(missed.answer('false-alarms')).toBeCloseTo(100 / 12, 9);
    expect(missed.answer('verdict')).toBe('again');
    expect(missed.slipped('criticalLikeOthers', 'verdict')).toBe('holds');
    expect(missed.slipped('askedForMore', 'verdict')).toBeNull();
  });
  test('7 of 10 others, no false alarm', () => {
    const few = made('others', 10, 0, 0);
    expect([few.answer('hits'), few.answer('verdict')]).toEqual([70, 'again']);
  });
  test('3 of 15 entries are none', () => {
    const many = made('false', 10, 1, 1);
    expect(many.answer('false-alarms')).toBeCloseTo(20, 9);
    expect(many.answer('verdict')).toBe('again');
    expect(many.slipped('falseLetPass', 'verdict')).toBe('holds');
  });
  test('short in all three: 2 of 3 critical, 7 of 10 others, 2 of 11 entries are none', () => {
    const all = made('all', 10, 0, 0);
    expect([all.answer('hits'), all.answer('verdict')]).toEqual([70, 'again']);
    expect(all.answer('false-alarms')).toBeCloseTo(200 / 11, 9);
  });
  test('on the limit itself it is drawn again', () => expect(made('enough', 10, 2, 0).plan).toBeNull());
});

describe('who closes', () => {
  const person = (did: string, shown: string) => ({ did, shown, days: 30 });
  const made = (...people: readonly ReturnType<typeof person>[]) =>
    job('who-closes', { fault: 'splice', people });
  const own = made(
    person('built', 'yes'),
    person('mended', 'yes'),
    person('neither', 'lapsed'),
    person('neither', 'practice'),
  );
  test('the one who put it right could have inspected before, and may not close', () =>
    expect([own.answer('inspect'), own.answer('close')]).toEqual(['person-2', 'none']));
  slips(own, [
    ['menderCloses', 'close', 'person-2'],
    ['builderInspects', 'inspect', 'person-1'],
    ['builderInspects', 'close', 'person-1'],
    ['lapsedTaken', 'close', 'person-3'],
    ['practiceTaken', 'close', 'person-4'],
    ['overlooked', 'inspect', 'none'],
  ]);
  test('one who did neither does both', () => {
    const fresh = made(
      person('built', 'yes'),
      person('mended', 'lapsed'),
      person('neither', 'yes'),
      person('neither', 'practice'),
    );
    expect([fresh.answer('inspect'), fresh.answer('close')]).toEqual(['person-3', 'person-3']);
  });
  test('two who may: drawn again', () =>
    expect(
      made(
        person('built', 'yes'),
        person('mended', 'lapsed'),
        person('neither', 'yes'),
        person('neither', 'yes'),
      ).plan,
    ).toBeNull());
});

describe('critical scenes', () => {
  test.each(['go-ask-stop', 'at-height', 'hot-work', 'lock-out', 'near-live-parts', 'classified-area'])(
    '%s: stopped everywhere, no critical point is missed; gone on everywhere, all are',
    (id) => {
      for (let n = 1; n <= 20; n++) {
        const drawn = draw(id, `critical-${n}`);
        const all = (given: Reply) => Object.fromEntries(Object.keys(drawn.right).map((ask) => [ask, given]));
        const toMind = Object.keys(drawn.right).filter((ask) => drawn.right[ask] !== 'go');
        expect(grade(drawn, all('stop')).criticalMissed).toEqual([]);
        expect(grade(drawn, all('go')).criticalMissed).toEqual(toMind);
        expect(grade(drawn, all('stop')).passed).toBe(false);
      }
    },
  );
  test('a line of sound splices sent back misses none, one let pass that is not does', () => {
    const found = (wanted: string) => {
      const seeds = Array.from({ length: 60 }, (_, i) => draw('splice-fasteners', `critical-${i}`));
      return seeds.find(({ right }) => right['verdict'] === wanted) as ReturnType<typeof draw>;
    };
    const [sound, bad] = [found('accept'), found('rework')];
    expect(grade(sound, { ...sound.right, verdict: 'rework' }).criticalMissed).toEqual([]);
    expect(grade(bad, { ...bad.right, verdict: 'accept' }).criticalMissed).toEqual(['verdict']);
  });
});

describe('orders of work', () => {
  /** What one site does before the permit is signed and another after it (common practice, no source). */
  test.each([
    ['order-of-hot-work', ['cut', 'permit'], ['clear', 'floor', 'extinguisher', 'watch']],
    ['order-in-classified-area', ['work', 'permit'], ['gas', 'tools']],
  ])(
    '%s: the permit comes before the work, and its place beside what is made ready is free',
    (id, [work = '', permit = ''], ready) => {
      const ask = family(id).asks[0];
      if (ask?.kind !== 'order') throw new Error(`${id} asks for no order`);
      const all = everyPrecedence(
        ask.items.map((item) => item.id),
        ask.precedence,
      );
      const has = (before: string, after: string) => all.some(([a, b]) => a === before && b === after);
      expect(has(permit, work)).toBe(true);
      for (const step of ready) {
        expect([has(permit, step), has(step, permit)]).toEqual([false, false]);
        expect(has(step, work)).toBe(true);
      }
    },
  );
  /** An order that holds, as the mistake's step done too late breaks it. */
  test.each([
    ['order-of-hot-work', 'cut-before-permit'],
    ['order-of-lock-out', 'work-before-test'],
    ['order-of-tie-off', 'step-before-hook'],
    ['order-in-classified-area', 'work-before-gas'],
    ['order-of-planning', 'cut-before-walk'],
    ['order-of-marking', 'waste-before-line'],
    ['order-of-splicing', 'tighten-before-bolts'],
    ['order-of-sleeve', 'slide-before-mark'],
    ['order-of-fitting', 'release-before-support'],
    ['order-of-correcting', 'loosen-before-support'],
    ['order-of-the-job', 'cables-before-bond'],
    ['order-of-inspection', 'bonding-before-documents'],
  ])('%s: %s is a critical point', (id, mistake) => {
    const found = Array.from({ length: 60 }, (_, i) => draw(id, `order-${i}`)).find((drawn) =>
      drawn.wrong.some((w) => w.mistake.id === mistake),
    );
    if (found === undefined) throw new Error(`${id}: no draw has ${mistake}`);
    const wrong = found.wrong.find((w) => w.mistake.id === mistake);
    expect(finding(found, 'order', wrong?.answer)).toMatchObject({ verdict: 'rework', mistake });
    expect(grade(found, { order: wrong?.answer }).passed).toBe(false);
    expect(family(id).critical).toEqual(['order']);
  });
});
