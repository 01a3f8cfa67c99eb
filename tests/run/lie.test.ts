/** Where the fittings bring a leg: `dir` and `onEdge` must agree with it. Source: plain geometry, each row thought out by hand. */
import { describe, expect, test } from 'vitest';
import { resolveRun } from '../../src/run/resolve.ts';
import { TRADE_USUAL } from '../../src/run/usual.ts';
import { catalogue, faultFields, faultsOf, leg, whole } from './practice.ts';

const edge = { onEdge: true };
const az = (azimuthDeg: number, slopeDeg = 0) => ({ azimuthDeg, slopeDeg });
const elbow = (dir: unknown, rest = {}) => leg('B', dir, 'A', 'card-4-elbow-90', rest);
const inside = (dir: unknown, rest = {}) => leg('B', dir, 'A', 'card-4-inside-90', rest);
const outside = (dir: unknown, rest = {}) => leg('B', dir, 'A', 'card-4-outside-90', rest);
const half = (kind: 'elbow' | 'inside' | 'outside', dir: unknown, rest = {}) =>
  leg('B', dir, 'A', `card-4-${kind}-45`, rest);
const hinge = (dir: unknown, rest = {}) => leg('B', dir, 'A', 'card-4-hinge', rest);
const to = (id: string, from: string, kind: string, dir: unknown, rest = {}) =>
  leg(id, dir, from, `card-4-${kind}`, rest);

describe('a fitting takes the leg where it takes it', () => {
  test.each<[string, Record<string, unknown>[], string[]]>([
    // Level, open side up.
    ['flat, to the left', [leg('A', 'N'), elbow('W')], []],
    ['flat, to the right', [leg('A', 'N'), elbow('E')], []],
    ['flat, not up', [leg('A', 'N'), elbow('U')], ['legs[1].dir']],
    ['flat, not straight on', [leg('A', 'N'), elbow('N')], ['legs[1].dir']],
    ['flat, not back', [leg('A', 'N'), elbow('S')], ['legs[1].dir']],
    ['half, to the right', [leg('A', 'N'), half('elbow', az(45))], []],
    ['half, to the left', [leg('A', 'N'), half('elbow', az(315))], []],
    ['inside goes up', [leg('A', 'E'), inside('U')], []],
    ['inside does not go down', [leg('A', 'E'), inside('D')], ['legs[1].dir']],
    ['outside goes down', [leg('A', 'E'), outside('D')], []],
    ['outside does not go up', [leg('A', 'E'), outside('U')], ['legs[1].dir']],
    ['inside, half', [leg('A', 'E'), half('inside', az(90, 45))], []],
    ['outside, half', [leg('A', 'E'), half('outside', az(90, -45))], []],
    ['a reducer goes straight on', [leg('A', 'E'), to('B', 'A', '2-reducer-left', 'E')], []],
    ['a reducer does not turn', [leg('A', 'E'), to('B', 'A', '2-reducer-left', 'N')], ['legs[1].dir']],
    ['left of a tee is left along the travel', [leg('A', 'E'), to('B', 'A:left', 'tee', 'N')], []],
    ['right of a tee is right', [leg('A', 'E'), to('B', 'A:right', 'tee', 'N')], ['legs[1].dir']],
    ['straight through a cross', [leg('A', az(10)), to('B', 'A', 'cross', az(10))], []],

    // The limit, a tenth of a degree.
    ['0.1° off', [leg('A', 'N'), half('elbow', az(45.1))], []],
    ['0.11° off', [leg('A', 'N'), half('elbow', az(45.11))], ['legs[1].dir']],
    ['0.1° off level', [leg('A', 'N'), elbow(az(90, 0.1))], []],
    ['0.11° off level', [leg('A', 'N'), elbow(az(90, -0.11))], ['legs[1].dir']],

    // Up and over.
    [
      'up, and on in the same direction: outside',
      [leg('A', 'N'), inside('U'), to('C', 'B', 'outside-90', 'N')],
      [],
    ],
    [
      'up, and back over: upside down',
      [leg('A', 'N'), inside('U'), to('C', 'B', 'inside-90', 'S')],
      ['legs[2].dir'],
    ],
    [
      'up, and aside by a flat elbow: on edge',
      [leg('A', 'N'), inside('U'), to('C', 'B', 'elbow-90', 'E', edge)],
      [],
    ],
    [
      'up, and aside, said to be flat',
      [leg('A', 'N'), inside('U'), to('C', 'B', 'elbow-90', 'E')],
      ['legs[2].onEdge'],
    ],
    ['down, and on by an inside', [leg('A', 'N'), outside('D'), to('C', 'B', 'inside-90', 'N')], []],
    [
      'down, and back by an outside: upside down',
      [leg('A', 'N'), outside('D'), to('C', 'B', 'outside-90', 'S')],
      ['legs[2].dir'],
    ],
    [
      'sloping, then level again',
      [leg('A', 'N'), half('inside', az(0, 45)), to('C', 'B', 'outside-45', 'N')],
      [],
    ],
    [
      'sloping twice comes to plumb',
      [leg('A', 'N'), half('inside', az(0, 45)), to('C', 'B', 'inside-45', 'U')],
      [],
    ],
    [
      'aside from a slope: a level leg that is tilted',
      [leg('A', 'N'), half('inside', az(0, 45)), to('C', 'B', 'elbow-90', 'E')],
      ['legs[2].dir'],
    ],
    [
      'hanging under a slope',
      [leg('A', 'N'), inside('U'), to('C', 'B', 'inside-45', az(180, 45))],
      ['legs[2].dir'],
    ],

    // On edge: flat elbows now turn up and down.
    ['on edge, up by a flat elbow', [leg('A', 'N', 'start', null, edge), elbow('U')], []],
    ['on edge, to either side by an inside', [leg('A', 'N', 'start', null, edge), inside('E', edge)], []],
    ['on edge, to the other side as well', [leg('A', 'N', 'start', null, edge), inside('W', edge)], []],
    ['on edge, and not up by an inside', [leg('A', 'N', 'start', null, edge), inside('U')], ['legs[1].dir']],
    ['on edge does not get lost', [leg('A', 'N', 'start', null, edge), inside('E')], ['legs[1].onEdge']],
    ['flat does not come to lie on edge', [leg('A', 'N'), elbow('E', edge)], ['legs[1].onEdge']],
    [
      'on edge: both turns see the same open side',
      [leg('A', 'N', 'start', null, edge), inside('E', edge), to('C', 'B', 'inside-90', 'N', edge)],
      ['legs[2].dir'],
    ],
    [
      'on edge, an offset',
      [leg('A', 'N', 'start', null, edge), inside('E', edge), to('C', 'B', 'outside-90', 'N', edge)],
      [],
    ],
    ['on edge down a slope', [leg('A', 'N', 'start', null, edge), half('elbow', az(0, -45), edge)], []],
    [
      'on edge down a slope, not said',
      [leg('A', 'N', 'start', null, edge), half('elbow', az(0, -45))],
      ['legs[1].onEdge'],
    ],
    [
      'flat down a slope, said to be on edge',
      [leg('A', 'N'), half('outside', az(0, -45), edge)],
      ['legs[1].onEdge'],
    ],
    ['on edge is not judged on a plumb leg', [leg('A', 'N'), inside('U', edge)], []],

    // A plumb first leg: its open side is free.
    ['plumb, flat elbow: on edge', [leg('A', 'U'), elbow('N', edge)], []],
    ['plumb, flat elbow cannot lie flat', [leg('A', 'U'), elbow('N')], ['legs[1].onEdge']],
    ['plumb up, outside', [leg('A', 'U'), outside('N')], []],
    ['plumb up, inside: upside down', [leg('A', 'U'), inside('N')], ['legs[1].dir']],
    ['plumb down, inside', [leg('A', 'D'), inside('N')], []],
    ['plumb down, outside: upside down', [leg('A', 'D'), outside('N')], ['legs[1].dir']],
    ['plumb, a hinge to level: the way that lies flat', [leg('A', 'U'), hinge('N')], []],
    ['plumb, a hinge to level on edge', [leg('A', 'U'), hinge('N', edge)], []],
    ['plumb, a tee to the left: on edge', [leg('A', 'U'), to('B', 'A:left', 'tee', 'S', edge)], []],
    [
      'plumb through a reducer, then out',
      [leg('A', 'U'), to('B', 'A', '2-reducer-left', 'U'), leg('C', 'E', 'B', 'card-2-outside-90')],
      [],
    ],
    [
      'plumb: what leaves a tee must agree with what goes on',
      [
        leg('A', 'U'),
        to('B', 'A', 'tee', 'U'),
        to('C', 'A:left', 'tee', 'N', edge),
        // Left is north, so the open side looks west: outside goes away from it, east.
        to('D', 'B', 'outside-90', 'N'),
      ],
      ['legs[3].dir'],
    ],
    [
      'plumb: the same, agreeing',
      [
        leg('A', 'U'),
        to('B', 'A', 'tee', 'U'),
        to('C', 'A:left', 'tee', 'N', edge),
        to('D', 'B', 'outside-90', 'E'),
      ],
      [],
    ],

    // Hinges: any angle in one plane.
    ['a hinge by 1°', [leg('A', 'N'), hinge(az(1))], []],
    ['a hinge by 137° aside', [leg('A', 'N'), hinge(az(223))], []],
    ['a hinge up by 20°', [leg('A', 'N'), hinge(az(0, 20))], []],
    ['a hinge down to plumb', [leg('A', 'N'), hinge('D')], []],
    ['a hinge aside and up', [leg('A', 'N'), hinge(az(10, 10))], ['legs[1].dir']],
    ['a hinge aside, 0.1° up', [leg('A', 'N'), hinge(az(30, 0.1))], []],
    ['a hinge aside, 0.2° up', [leg('A', 'N'), hinge(az(30, 0.2))], ['legs[1].dir']],
    ['a hinge that stands straight', [leg('A', 'N'), hinge('N')], []],
    ['a hinge folded back', [leg('A', 'N'), hinge('S')], ['legs[1].dir']],
    ['a hinge up over itself: upside down', [leg('A', 'N'), hinge(az(180, 45))], ['legs[1].dir']],
  ])('%s', (_, legs, want) => {
    expect(faultFields(whole(legs))).toEqual(want);
  });
});

test('it says where the fitting does take the leg', () => {
  expect(faultsOf(whole([leg('A', 'N'), elbow('U')]))).toEqual([
    'legs[1].dir: card-4-elbow-90 brings the leg to W or E',
  ]);
  expect(faultsOf(whole([leg('A', 'N'), half('inside', 'U')]))).toEqual([
    'legs[1].dir: card-4-inside-45 brings the leg to azimuth 0°, slope 45°',
  ]);
});

test('what follows a leg that lies wrong is judged from that leg as it is given: one fault, not a row of them', () => {
  const legs = [
    leg('A', 'N'),
    inside('E'),
    to('C', 'B', 'elbow-90', 'S'),
    to('D', 'C', 'elbow-90', 'U'),
    to('E', 'D', 'outside-90', 'S'),
  ];
  expect(faultFields(whole(legs))).toEqual(['legs[1].dir', 'legs[3].dir']);
});

test('turns are named along the travel', () => {
  const run = whole([
    leg('A', 'N'),
    elbow('W'),
    to('C', 'B', 'elbow-90', 'N'),
    to('D', 'C', 'inside-90', 'U'),
    to('E', 'D', 'outside-90', 'N'),
    to('F', 'E', '2-reducer-left', 'N'),
    leg('G', az(0, -30), 'F', 'card-2-hinge'),
    leg('H', az(0, -30), 'G', 'card-2-cross'),
    leg('I', 'W', 'G:left', 'card-2-cross', edge),
  ]);
  // The last lies tilted: left of a slope is level, but its open side leans with the slope.
  expect(faultFields(run)).toEqual(['legs[8].onEdge']);
  const legs = resolveRun({ ...run, legs: run.legs.slice(0, 8) }, catalogue, TRADE_USUAL).legs;
  expect(legs.map((l) => l.turn)).toEqual([
    'none',
    'left',
    'right',
    'inside',
    'outside',
    'none',
    'outside',
    'none',
  ]);
  expect(legs.map((l) => l.fittingBefore?.turnDeg ?? null)).toEqual([
    null,
    90,
    90,
    90,
    90,
    0,
    expect.closeTo(30, 9),
    90,
  ]);
});

test('axes stay exact, and places add up exactly along them', () => {
  const { legs } = resolveRun(
    whole([leg('A', 'N'), elbow('E'), to('C', 'B', 'inside-90', 'U'), to('D', 'C', 'outside-90', 'E')]),
    catalogue,
    TRADE_USUAL,
  );
  const ten = 120 * 8128;
  expect(legs.map((l) => l.at[1])).toEqual([
    [0, ten, 0],
    [ten, ten, 0],
    [ten, ten, ten],
    [2 * ten, ten, ten],
  ]);
  expect(legs.at(-1)?.frame).toEqual({ along: [1, 0, 0], open: [0, 0, 1], left: [0, 1, 0] });
});
