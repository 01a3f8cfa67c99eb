import { describe, expect, test } from 'vitest';
import { catalogueOf, catalogueShape } from '../../src/schema/catalogue.ts';
import { check } from '../../src/schema/faults.ts';
import { formatLength, type Ticks } from '../../src/trade/length.ts';
import { catalogue, catalogueFiles, item } from './practice.ts';

const inch = (t: Ticks) => formatLength(t).replace(/^0'-/, '');

// Every figure of the practice catalogue is a training value, invented; this table says them a second time.
describe('the practice catalogue', () => {
  test.each([
    [2, `2 1/4"`, 0.9],
    [4, `4 1/4"`, 1.2],
    [6, `6 1/4"`, 1.5],
  ])('card-%i is outside %s and weighs %f lb/ft', (width, outside, weight) => {
    const tray = item(`card-${width}`, 'tray');
    expect([inch(tray.width), inch(tray.outsideWidth), inch(tray.thickness), inch(tray.depth)]).toEqual([
      `${width}"`,
      outside,
      `0 1/8"`,
      `1 3/4"`,
    ]);
    expect(tray.weightLbPerFt).toBe(weight);
    expect(tray.loadTable.map((r) => [r.spanFt, r.lbPerFt])).toEqual([
      [4, 34],
      [5, 22],
      [6, 15],
      [8, 8.4],
      [10, 5.4],
    ]);
    expect(tray.plateHoles.map(inch)).toEqual([`0 3/4"`, `2 1/4"`]);
    expect(Object.values(tray.webHoles).map(inch)).toEqual([`0 9/16"`, `6"`, `6"`]);
    for (const metal of ['', '-steel']) {
      const sleeve = item(`card-${width}-sleeve${metal}`, 'sleeve');
      expect([inch(sleeve.length), inch(sleeve.insertion)]).toEqual([`10 1/8"`, `5"`]);
      expect(sleeve.metal).toBe(metal === '' ? 'aluminium' : 'steel');
    }
    expect(inch(item(`card-${width}-plate`, 'plate').length)).toBe(`6"`);
    expect(formatLength(item(`card-${width}-expansion`, 'expansion').length)).toBe(`1'-0"`);
    expect(inch(item(`card-${width}-hinge`, 'hinge').takeOut)).toBe(`3"`);
    for (const turn of ['inside', 'outside'] as const) {
      expect(item(`card-${width}-${turn}-90`, 'elbow')).toMatchObject({
        turn,
        angleDeg: 90,
        insideRadius: 6 * 8128,
      });
      expect(inch(item(`card-${width}-${turn}-90`, 'elbow').takeOut)).toBe(`9"`);
      expect(inch(item(`card-${width}-${turn}-45`, 'elbow').takeOut)).toBe(`4"`);
    }
    expect(inch(item(`card-${width}-tee`, 'tee').takeOut)).toBe(`9"`);
    expect(inch(item(`card-${width}-cross`, 'cross').takeOut)).toBe(`9"`);
  });

  test.each([
    [2, `6"`, `5"`],
    [4, `7"`, `5"`],
    [6, `9"`, `6"`],
  ])('card-%i-elbow-90 takes out %s, radius of its elbows %s', (width, takeOut, radius) => {
    expect(inch(item(`card-${width}-elbow-90`, 'elbow').takeOut)).toBe(takeOut);
    for (const angle of [90, 45])
      expect(inch(item(`card-${width}-elbow-${angle}`, 'elbow').insideRadius)).toBe(radius);
    expect(inch(item(`card-${width}-elbow-45`, 'elbow').takeOut)).toBe(`4"`);
  });

  test('reducers go from 6 to 4 and from 4 to 2, three hands each', () => {
    const reducers = [...catalogue.values()].filter((i) => i.kind === 'reducer');
    expect(reducers.map((r) => r.id).sort()).toEqual(
      ['4-2', '6-4'].flatMap((w) => ['left', 'right', 'straight'].map((h) => `card-${w}-reducer-${h}`)),
    );
    for (const r of reducers) {
      expect([inch(r.faceToFace), inch(r.takeOut), inch(r.insertion)]).toEqual([`9"`, `4 1/2"`, `1 1/2"`]);
      expect(inch(r.width)).toBe(`${r.id[5]}"`);
      expect(inch(r.narrow)).toBe(`${r.id[7]}"`);
    }
  });

  test('all may be relied on for grounding but hinge and expansion', () => {
    const not = [...catalogue.values()].filter((i) => 'grounding' in i && !i.grounding).map((i) => i.kind);
    expect(new Set(not)).toEqual(new Set(['hinge', 'expansion']));
    expect(not).toHaveLength(6);
  });

  test('every value has an origin, and here each is a training value', () => {
    for (const { origin, origins } of catalogue.values()) {
      expect(origin).toBe('training value');
      expect(origins).toBeUndefined();
    }
  });

  test('its files hang together', () => {
    const files = catalogueFiles.map(({ data }) => catalogueShape.parse(data));
    expect(catalogueOf(files).faults).toEqual([]);
    expect(files.map((f) => `${f.id}.yaml`)).toEqual(catalogueFiles.map((f) => f.name));
  });
});

describe('a catalogue file with faults', () => {
  const fastening = {
    id: 'f',
    kind: 'fastening',
    hole: { name: 'small', width: '9/16' },
    bolt: { head: 'round', diameter: '1/2', length: 1 },
    washer: { inside: '9/16', outside: '1 1/4' },
  };
  const file = (...items: object[]) => ({ id: 'a', origin: 'training value', items });
  const fields = (given: unknown) => {
    const read = check(catalogueShape, given);
    return 'faults' in read ? read.faults.map((f) => f.field) : [];
  };

  test('is taken when it has none, and its values may have origins of their own', () => {
    expect(fields(file(fastening))).toEqual([]);
    expect(fields(file({ ...fastening, origins: { bolt: 'common practice' } }))).toEqual([]);
  });

  test.each([
    [{ ...fastening, origins: { nut: 'common practice' } }, ['items[0].origins.nut']],
    [{ ...fastening, colour: 'red' }, ['items[0].colour']],
    [{ ...fastening, bolt: { ...fastening.bolt, diameter: '9/16' } }, ['items[0].bolt.diameter']],
    [{ ...fastening, washer: { inside: '1/2', outside: '9/16' } }, ['items[0].washer.outside']],
    [{ ...fastening, bolt: { head: 'round', diameter: '1/2' } }, ['items[0].bolt.length']],
    [
      { ...fastening, bolt: { head: 'square', diameter: 'thick', length: 1 } },
      ['items[0].bolt.head', 'items[0].bolt.diameter'],
    ],
  ])('%o', (given, wanted) => {
    expect(fields(file(given))).toEqual(wanted);
  });

  test('an id twice, and a name that stands for nothing', () => {
    const splice = { id: 's', kind: 'expansion', metal: 'steel', width: 4, grounding: false, length: 12 };
    const files = [
      catalogueShape.parse(file(fastening, fastening, { ...splice, fastened: { fastening: 'g', count: 4 } })),
    ];
    expect(catalogueOf(files).faults.map((f) => `${f.catalogue} ${f.field}`)).toEqual([
      'a items[1].id',
      'a items[2].fastened.fastening',
    ]);
  });
});
