/** Legs that do not hang together: each fault at its field, all at once. Source: RUN, "The shape" (rules of the format). */
import { describe, expect, test } from 'vitest';
import { resolveRun } from '../../src/run/resolve.ts';
import { TRADE_USUAL } from '../../src/run/usual.ts';
import { catalogue, faultFields, faultsOf, item, leg, whole } from './practice.ts';

const A = leg('A', 'N');
const fields = (legs: Record<string, unknown>[], rest = {}) => faultFields(whole(legs, rest));

describe('ids', () => {
  test.each<[string, Record<string, unknown>[], string[]]>([
    [
      'twice',
      [A, leg('B', 'E', 'A', 'card-4-elbow-90'), leg('B', 'E', 'B', 'card-4-elbow-90')],
      ['legs[2].dir', 'legs[2].id'],
    ],
    ['twice, the second good but for it', [A, { ...leg('A', 'E', 'A', 'card-4-elbow-90') }], ['legs[1].id']],
    ['start', [leg('start', 'N')], ['legs[0].id']],
    ['with a colon', [leg('A:left', 'N')], ['legs[0].id']],
    [
      'with a colon, and another goes on from it',
      [leg('A:b', 'N'), leg('B', 'E', 'A:b', 'card-4-elbow-90')],
      ['legs[0].id'],
    ],
    [
      'plain, of several words',
      [leg('to the panel', 'N'), leg('B', 'E', 'to the panel', 'card-4-elbow-90')],
      [],
    ],
  ])('%s', (_, legs, want) => {
    expect(fields(legs)).toEqual(want);
  });
});

describe('who leaves whom', () => {
  const elbow = 'card-4-elbow-90';
  const tee = 'card-4-tee';
  const cross = 'card-4-cross';
  test.each<[string, Record<string, unknown>[], string[]]>([
    ['parents in any order', [leg('B', 'E', 'A', elbow), A], []],
    ['a leg that is not there', [A, leg('B', 'E', 'X', elbow)], ['legs[1].from']],
    ['a way out that is none', [A, leg('B', 'E', 'A:up', tee)], ['legs[1].from']],
    ['a way out of the start', [A, leg('B', 'E', 'start:left', tee)], ['legs[1].from']],
    ['itself', [A, leg('B', 'E', 'B', elbow)], ['legs[1].from']],
    [
      'a ring of three beside the run, and a leg that leaves it',
      [
        A,
        leg('B', 'N', 'D', elbow),
        leg('C', 'N', 'B', elbow),
        leg('D', 'N', 'C', elbow),
        leg('E', 'W', 'D:left', tee),
      ],
      // The leg that hangs from the ring is judged by its own way out, and its fitting is not the ring's.
      ['legs[1].from', 'legs[2].from', 'legs[3].from'],
    ],
    [
      'a ring, and none leaves the start',
      [leg('A', 'N', 'B', elbow), leg('B', 'E', 'A', elbow)],
      ['legs[0].from', 'legs[1].from'],
    ],
    ['a second leg at the start', [A, leg('B', 'S')], ['legs[1].from']],
    ['a second leg at the start, with a fitting', [A, leg('B', 'S', 'start', elbow)], ['legs[1].from']],
    [
      'a second leg on one way out',
      [A, leg('B', 'E', 'A', elbow), leg('C', 'W', 'A', elbow)],
      ['legs[2].from'],
    ],
    [
      'a second leg to the left',
      [A, leg('B', 'W', 'A:left', tee), leg('C', 'W', 'A:left', tee)],
      ['legs[2].from'],
    ],
    ['left at an elbow', [A, leg('B', 'W', 'A:left', elbow)], ['legs[1].from']],
    ['right at a reducer', [A, leg('B', 'N', 'A:right', 'card-4-2-reducer-left')], ['legs[1].from']],
    ['right at a hinge', [A, leg('B', 'E', 'A:right', 'card-4-hinge')], ['legs[1].from']],
    ['left and right at a tee', [A, leg('B', 'W', 'A:left', tee), leg('C', 'E', 'A:right', tee)], []],
    ['straight on and right at a tee', [A, leg('B', 'N', 'A', tee), leg('C', 'E', 'A:right', tee)], []],
    [
      'three ways out of a tee',
      [A, leg('B', 'N', 'A', tee), leg('C', 'E', 'A:right', tee), leg('D', 'W', 'A:left', tee)],
      ['legs[3].from'],
    ],
    [
      'three ways out of a cross',
      [A, leg('B', 'N', 'A', cross), leg('C', 'E', 'A:right', cross), leg('D', 'W', 'A:left', cross)],
      [],
    ],
    [
      'different fittings at one tee',
      [A, leg('B', 'N', 'A', tee), leg('C', 'E', 'A:right', cross)],
      ['legs[2].fitting'],
    ],
  ])('%s', (_, legs, want) => {
    expect(fields(legs)).toEqual(want);
  });
});

describe('fittings', () => {
  test.each<[string, Record<string, unknown>[], string[]]>([
    ['one at the start', [leg('A', 'N', 'start', 'card-4-elbow-90')], ['legs[0].fitting']],
    ['none on a later leg', [A, leg('B', 'E', 'A')], ['legs[1].fitting']],
    ['one that the catalogue has not', [A, leg('B', 'E', 'A', 'card-4-elbow-91')], ['legs[1].fitting']],
    ['a sleeve', [A, leg('B', 'N', 'A', 'card-4-sleeve')], ['legs[1].fitting']],
    ['an expansion splice', [A, leg('B', 'N', 'A', 'card-4-expansion')], ['legs[1].fitting']],
    ['of another width', [A, leg('B', 'E', 'A', 'card-6-elbow-90')], ['legs[1].fitting']],
    ['a tee of another width', [A, leg('B', 'W', 'A:left', 'card-2-tee')], ['legs[1].fitting']],
    [
      'a reducer of other widths',
      [
        leg('A', 'N'),
        leg('B', 'N', 'A', 'card-4-2-reducer-left'),
        leg('C', 'N', 'B', 'card-6-4-reducer-left'),
      ],
      ['legs[2].fitting'],
    ],
    [
      'of the width behind a reducer',
      [A, leg('B', 'N', 'A', 'card-4-2-reducer-left'), leg('C', 'E', 'B', 'card-2-elbow-90')],
      [],
    ],
    [
      'of the width before the reducer',
      [A, leg('B', 'N', 'A', 'card-4-2-reducer-left'), leg('C', 'E', 'B', 'card-4-elbow-90')],
      ['legs[2].fitting'],
    ],
  ])('%s', (_, legs, want) => {
    expect(fields(legs)).toEqual(want);
  });

  test('reducers change the width either way of travel, and the channel goes with it', () => {
    const { legs } = resolveRun(
      whole([
        A,
        leg('B', 'N', 'A', 'card-6-4-reducer-right'),
        leg('C', 'N', 'B', 'card-6-4-reducer-straight'),
        leg('D', 'N', 'C', 'card-4-2-reducer-left'),
      ]),
      catalogue,
      TRADE_USUAL,
    );
    expect(legs.map((l) => l.tray.id)).toEqual(['card-4', 'card-6', 'card-4', 'card-2']);
  });

  test('a catalogue without the channel behind a reducer: that is said', () => {
    const few = new Map(catalogue);
    const run = whole([A, leg('B', 'N', 'A', 'card-4-2-reducer-left')]);
    few.delete('card-2');
    expect(faultsOf(run, few)).toEqual([
      `legs[1].fitting: the catalogue has no channel 0'-2" wide that goes with card-4`,
    ]);
    // Of another metal, bottom, depth or origin it does not go with it.
    const two = item('card-2', 'tray');
    for (const other of [
      { metal: 'steel' as const },
      { bottom: 'solid' as const },
      { depth: two.width },
      { origin: 'adopted by the site' as const },
    ]) {
      expect(faultFields(run, new Map([...few, ['card-2', { ...two, ...other }]]))).toEqual([
        'legs[1].fitting',
      ]);
    }
    expect(faultFields(run, new Map([...few, ['other', two]]))).toEqual([]);
  });

  test('a fitting of another metal is a finding for another day, not a fault of the run', () => {
    const elbow = { ...item('card-4-elbow-90', 'elbow'), metal: 'steel' as const };
    const run = whole([A, leg('B', 'E', 'A', 'card-4-elbow-90')]);
    expect(faultFields(run, new Map([...catalogue, [elbow.id, elbow]]))).toEqual([]);
  });
});

describe('what names a leg', () => {
  const B = leg('B', 'E', 'A', 'card-4-elbow-90');
  test.each<[Record<string, unknown>, string[]]>([
    [{ ends: [{ leg: 'A', kind: 'free', joint: 'free' }] }, ['ends[0].leg']],
    [{ ends: [{ leg: 'B', kind: 'free', joint: 'free' }] }, []],
    [{ ends: ['free', 'tray'].map((kind) => ({ leg: 'B', kind, joint: 'free' })) }, ['ends[1].leg']],
    [{ ends: [{ leg: 'C', kind: 'free', joint: 'free' }] }, ['ends[0].leg']],
    [{ joints: [{ leg: 'C', at: 60, kind: 'butt' }] }, ['joints[0].leg']],
    [{ supports: [{ leg: 'C', at: 60, way: 'horizontal', hold: 'clamp' }] }, ['supports[0].leg']],
    [{ marks: [{ leg: 'C', at: 60, kind: 'step' }] }, ['marks[0].leg']],
    [{ marks: [{ leg: 'A', at: `10'`, kind: 'step' }] }, []],
    [{ marks: [{ leg: 'A', at: `10'-0 1/16"`, kind: 'step' }] }, ['marks[0].at']],
    [{ places: [{ leg: 'C', at: [60] }] }, ['places[0].leg']],
    [{ places: [{ leg: 'A', at: [0, 60, 120] }] }, []],
    [{ places: [{ leg: 'A', at: [0, 121, 60] }] }, ['places[0].at[1]']],
  ])('%o', (rest, want) => {
    expect(fields([A, B], rest)).toEqual(want);
  });
});

describe('cables', () => {
  const cable = (rest: object) => ({
    ...{
      id: 'C',
      type: 'TC',
      odIn: 0.5,
      lbPerFt: 0.2,
      count: 1,
      make: 'multiconductor',
      use: 'power',
      to: 'B',
    },
    ...rest,
  });
  const tee = [
    A,
    leg('B', 'N', 'A', 'card-4-tee'),
    leg('C', 'E', 'A:right', 'card-4-tee', { barrier: true }),
    leg('D', 'N', 'C', 'card-4-elbow-90'),
  ];
  test.each<[string, object[], string[]]>([
    ['to a leg that is not there', [{ to: 'X' }], ['cables[0].to']],
    ['of one id', [{}, {}], ['cables[1].id']],
    ['tube that carries no air', [{ type: 'tube' }], ['cables[0].use']],
    ['tube that carries air', [{ type: 'tube', use: 'air' }], []],
    ['no barrier on the way', [{ to: 'B' }], []],
    ['a barrier on the leg, and no side', [{ to: 'C' }], ['cables[0].side']],
    ['a barrier on the way, and no side', [{ to: 'D' }], ['cables[0].side']],
    ['a barrier on the way, and a side', [{ to: 'D', side: 'right' }], []],
    ['air over a barrier has no side', [{ to: 'D', type: 'tube', use: 'air' }], []],
    ['elsewhere a side is ignored', [{ to: 'B', side: 'left' }], []],
  ])('%s', (_, cables, want) => {
    expect(fields(tee, { cables: cables.map(cable) })).toEqual(want);
  });
});

test('all faults come at once, one of each kind', () => {
  const legs = [
    leg('A', 'N'),
    leg('B', 'U', 'A', 'card-4-elbow-90'),
    leg('C', 'W', 'A:left', 'card-6-tee'),
    leg('C', 'E', 'Q', 'card-4-hose'),
    leg('start', 'E', 'B', null),
  ];
  const rest = {
    tray: 'card-4',
    start: { kind: 'ladder', joint: 'expansion' },
    ends: [{ leg: 'A', kind: 'free', joint: 'free' }],
    joints: [
      { leg: 'A', at: 300, kind: 'gap' },
      { leg: 'A', at: 60, kind: 'butt', insertions: [1, 1] },
    ],
    supports: [{ leg: 'A', at: 60, way: 'vertical', hold: 'load' }],
    marks: [{ leg: 'Z', at: 0, kind: 'step' }],
  };
  expect(fields(legs, rest)).toEqual([
    'ends[0].leg',
    'joints[0].gap',
    'joints[1].insertions',
    'legs[1].dir',
    'legs[2].fitting',
    'legs[2].fitting',
    'legs[3].fitting',
    'legs[3].from',
    'legs[3].id',
    'legs[4].fitting',
    'legs[4].id',
    'marks[0].leg',
    'start.joint',
    'supports[0].way',
  ]);
});
